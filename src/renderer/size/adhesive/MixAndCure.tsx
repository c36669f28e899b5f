/** What the bench needs of an adhesive: density, parts of the mix, open time, steps of the cure. */
import { createUniqueId, Index, type JSX, Show } from 'solid-js';
import type { Adhesive, Process } from '../../../shared/project.ts';
import { RemoveButton } from '../../parts/RemoveButton.tsx';
import { Disclosure } from '../Disclosure.tsx';
import { NumberField } from '../NumberField.tsx';
import { NumberRow } from '../NumberRow.tsx';
import { SourceField } from '../SourceField.tsx';
import type { OfAdhesive } from './AdhesiveProperties.tsx';

/** Of a toughened epoxy paste that cures in the warm; to be replaced, and marked until it is. */
const typicalProcess: Process = {
  mix: { resin: 100, hardener: 50 },
  openTime: 45,
  cure: [{ temperature: 23, hours: 16 }],
  source: { kind: 'typical', text: 'Typical, from memory: follow the data sheet of the adhesive.' },
};
const MOST = 10;

const adhesiveOf = (props: OfAdhesive): Adhesive | undefined =>
  props.project.document()?.adhesives[props.index];

function CureSteps(props: OfAdhesive): JSX.Element {
  const path = (...rest: readonly (string | number)[]) => [
    'adhesives',
    props.index,
    'process',
    'cure',
    ...rest,
  ];
  const steps = () => adhesiveOf(props)?.process?.cure ?? [];
  const plain = () => steps().map((one) => ({ ...one }));
  return (
    <>
      <Index each={steps()}>
        {(_step, k) => (
          <div class="row gap-row">
            <NumberField
              project={props.project}
              issues={props.issues}
              input={{
                path: path(k, 'hours'),
                quantity: 'cureHours',
                name: `Hours of cure step ${k + 1}`,
                help: 'How long this step lasts; the first one on the jig.',
              }}
            />
            <NumberField
              project={props.project}
              issues={props.issues}
              input={{
                path: path(k, 'temperature'),
                quantity: 'temperature',
                name: `Temperature of cure step ${k + 1}`,
                help: 'Of the bond itself, not of the oven’s dial.',
              }}
            />
            <RemoveButton
              label={`Remove cure step ${k + 1}`}
              title="Remove"
              onRemove={() =>
                props.project.edit(
                  path(),
                  plain().filter((_, i) => i !== k),
                )
              }
            />
          </div>
        )}
      </Index>
      <Show when={steps().length < MOST}>
        <button
          type="button"
          class="link"
          onClick={() =>
            props.project.edit(path(), [
              ...plain(),
              { ...(plain().at(-1) ?? { temperature: 23, hours: 16 }) },
            ])
          }
        >
          Add a cure step
        </button>
      </Show>
    </>
  );
}

export function MixAndCure(props: OfAdhesive): JSX.Element {
  const title = createUniqueId();
  const path = (...rest: readonly string[]) => ['adhesives', props.index, 'process', ...rest];
  const process = () => adhesiveOf(props)?.process;
  const setMix = (mix: Process['mix']): void => props.project.edit(path('mix'), mix);
  const parts = (label: string, key: 'resin' | 'hardener'): JSX.Element => (
    <NumberRow
      project={props.project}
      issues={props.issues}
      label={`${label}, parts by mass`}
      input={{ path: path('mix', key), quantity: 'mixParts', name: `Parts of ${key}` }}
    />
  );
  return (
    <Disclosure
      title="Mix and cure"
      about={{
        issues: props.issues,
        fields: [['adhesives', props.index, 'density'], path()],
      }}
    >
      <NumberRow
        project={props.project}
        issues={props.issues}
        label="Density"
        input={{
          path: ['adhesives', props.index, 'density'],
          quantity: 'density',
          name: 'Adhesive density',
          help: 'Mass over volume of the cured adhesive; not set, the bench is told a volume, not a mass.',
          optional: true,
        }}
      />
      <section class="part" aria-labelledby={title}>
        <h3 id={title}>Process</h3>
        <Show
          when={process()}
          fallback={
            <>
              <p class="about">None: the bench is told neither mix nor cure.</p>
              <button
                type="button"
                class="link"
                onClick={() =>
                  props.project.edit(path(), JSON.parse(JSON.stringify(typicalProcess)))
                }
              >
                Add a process
              </button>
            </>
          }
        >
          <Show
            when={process()?.mix}
            fallback={
              <button
                type="button"
                class="link"
                onClick={() => setMix({ resin: 100, hardener: 50 })}
              >
                Add a mix ratio
              </button>
            }
          >
            {parts('Resin', 'resin')}
            {parts('Hardener', 'hardener')}
            <button type="button" class="link" onClick={() => setMix(undefined)}>
              One part: no mix ratio
            </button>
          </Show>
          <NumberRow
            project={props.project}
            issues={props.issues}
            label="Open time"
            input={{
              path: path('openTime'),
              quantity: 'openTime',
              name: 'Open time',
              help: 'From mixing until the parts must be together.',
              optional: true,
            }}
          />
          <CureSteps {...props} />
          <SourceField
            project={props.project}
            issues={props.issues}
            path={path('source')}
            of="Mix and cure"
          />
          <button type="button" class="link" onClick={() => props.project.edit(path(), undefined)}>
            Remove the process
          </button>
        </Show>
      </section>
    </Disclosure>
  );
}
