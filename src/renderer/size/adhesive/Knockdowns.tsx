/**
 * The ledger of knockdowns: what is taken off the strengths, step by step. The factors are put in
 * here; what they leave together is the core's figure, for the gap that is drawn.
 */
import { createUniqueId, For, type JSX, Show } from 'solid-js';
import type { Knockdowns as Ledger } from '../../../shared/project.ts';
import { figure } from '../../../shared/words.ts';
import { useAnswers } from '../answers.ts';
import { Disclosure } from '../Disclosure.tsx';
import type { FieldSource } from '../entry.ts';
import { NumberRow } from '../NumberRow.tsx';
import { SourceField } from '../SourceField.tsx';
import { GapTable } from './GapTable.tsx';
import { LedgerTable } from './LedgerTable.tsx';

export interface KnockdownsProps extends FieldSource {
  /** Place of the adhesive in the project. */
  readonly index: number;
}

const steps: readonly {
  readonly key: 'environment' | 'ageing' | 'scatter';
  readonly label: string;
  readonly help: string;
}[] = [
  {
    key: 'environment',
    label: 'Environment',
    help: 'Heat and moisture beyond the states above.',
  },
  { key: 'ageing', label: 'Ageing', help: 'Left at the end of the joint’s life.' },
  { key: 'scatter', label: 'Scatter', help: 'From the mean of coupons to a basis value.' },
];

/** Takes nothing away: whoever adds a ledger sets its steps. */
const nothingTaken = (): Ledger => ({
  environment: 1,
  ageing: 1,
  scatter: 1,
  gap: [],
  source: { kind: 'typical', text: 'Nothing taken off yet: replace by your coupons.' },
});

export function Knockdowns(props: KnockdownsProps): JSX.Element {
  const id = createUniqueId();
  const answers = useAnswers();
  const path = ['adhesives', props.index, 'knockdowns'];
  const ledger = (): Ledger | undefined =>
    props.project.document()?.adhesives[props.index]?.knockdowns;
  const set = (value: Ledger | undefined): void => props.project.edit(path, value);
  const aside = (): string | undefined => {
    if (!ledger()) return 'none';
    const left = answers.stale() ? [] : (answers.stress()?.ledgers ?? []);
    return left.length === 0 ? undefined : `left ${left.map((one) => figure(one.left)).join(', ')}`;
  };

  return (
    <Disclosure
      title="Knockdowns"
      aside={aside()}
      about={{
        issues: props.issues,
        fields: [
          ['adhesives', props.index, 'knockdowns'],
          ['settings', 'factors', 'fitting'],
        ],
      }}
    >
      <Show
        when={ledger()}
        fallback={
          <>
            <p class="about">Nothing is taken off this adhesive’s strengths.</p>
            <button type="button" class="link" onClick={() => set(nothingTaken())}>
              Add knockdowns
            </button>
          </>
        }
      >
        <p class="about">What is left of the strength: 1 takes nothing away.</p>
        <For each={steps}>
          {({ key, label, help }) => (
            <div class="step">
              <NumberRow
                project={props.project}
                issues={props.issues}
                label={label}
                input={{
                  path: [...path, key],
                  quantity: 'knockdown',
                  name: `Knockdown, ${label.toLowerCase()}`,
                  help,
                }}
              />
              <p class="about">{help}</p>
            </div>
          )}
        </For>
        <GapTable project={props.project} issues={props.issues} path={[...path, 'gap']} />
        <SourceField
          project={props.project}
          issues={props.issues}
          path={[...path, 'source']}
          of="Knockdowns"
        />
        <button type="button" class="link" onClick={() => set(undefined)}>
          Remove knockdowns
        </button>
      </Show>
      <section class="part" aria-labelledby={id}>
        <h3 id={id}>Fitting factor</h3>
        <NumberRow
          project={props.project}
          issues={props.issues}
          label="Factor"
          input={{
            path: ['settings', 'factors', 'fitting'],
            quantity: 'factor',
            name: 'Fitting factor',
            help: 'Asked of the loads in addition, at every joint of the project.',
          }}
        />
        <p class="about">Asked of the loads in addition, at every joint of the project.</p>
      </section>
      <LedgerTable />
    </Disclosure>
  );
}
