/** The S-N line of an adhesive: what cyclic load cases are judged by. */
import { createUniqueId, type JSX, Show } from 'solid-js';
import type { Adhesive } from '../../../shared/project.ts';
import { Disclosure } from '../Disclosure.tsx';
import { NumberRow } from '../NumberRow.tsx';
import { SourceField } from '../SourceField.tsx';
import type { OfAdhesive } from './AdhesiveProperties.tsx';

/** Of another adhesive; to be replaced, and it says so. */
const anotherLine: NonNullable<Adhesive['fatigue']> = {
  coefficient: 1.71,
  exponent: 0.12,
  source: {
    kind: 'published',
    text: 'Epoxy-polyamide single laps: J. Soc. Mater. Sci. Japan 34 (386), 1985, abstract. Another adhesive: replace by your coupons.',
  },
};

export function Cycles(props: OfAdhesive): JSX.Element {
  const title = createUniqueId();
  const path = (...keys: readonly string[]) => ['adhesives', props.index, 'fatigue', ...keys];
  const line = (): Adhesive['fatigue'] => props.project.document()?.adhesives[props.index]?.fatigue;
  const set = (value: Adhesive['fatigue']): void => props.project.edit(path(), value);
  return (
    <Disclosure
      title="Cycles"
      aside={line() ? undefined : 'none'}
      about={{ issues: props.issues, path: ['adhesives', props.index, 'fatigue'] }}
    >
      <section class="part" aria-labelledby={title}>
        <h3 id={title}>S-N line</h3>
        <Show
          when={line()}
          fallback={
            <>
              <p class="about">None: cyclic shear is not checked.</p>
              <button
                type="button"
                class="link"
                onClick={() => set({ ...anotherLine, source: { ...anotherLine.source } })}
              >
                Add an S-N line
              </button>
            </>
          }
        >
          <p class="about">Allowed peak shear over yield: coefficient × cycles to the −exponent.</p>
          <NumberRow
            project={props.project}
            issues={props.issues}
            label="Coefficient"
            input={{
              path: path('coefficient'),
              quantity: 'fatigueCoefficient',
              name: 'S-N line, coefficient',
            }}
          />
          <NumberRow
            project={props.project}
            issues={props.issues}
            label="Exponent"
            input={{
              path: path('exponent'),
              quantity: 'fatigueExponent',
              name: 'S-N line, exponent',
            }}
          />
          <NumberRow
            project={props.project}
            issues={props.issues}
            label="Load ratio R"
            input={{
              path: path('ratio'),
              quantity: 'loadRatio',
              name: 'S-N line, load ratio',
              help: 'Lowest over highest load in the tests behind the line; not set, that of each case is taken to be the same.',
              optional: true,
            }}
          />
          <SourceField
            project={props.project}
            issues={props.issues}
            path={path('source')}
            of="S-N line"
          />
          <button type="button" class="link" onClick={() => set(undefined)}>
            Remove the S-N line
          </button>
        </Show>
      </section>
    </Disclosure>
  );
}
