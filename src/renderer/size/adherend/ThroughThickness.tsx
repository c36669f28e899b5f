/** What peel needs of an orthotropic wall through its thickness; each may be left out. */
import { For, type JSX } from 'solid-js';
import type { QuantityName } from '../../../shared/quantities.ts';
import { Disclosure } from '../Disclosure.tsx';
import type { FieldSource } from '../entry.ts';
import { NumberRow } from '../NumberRow.tsx';

export interface ThroughThicknessProps extends FieldSource {
  /** Place of the wall's material among the adherends. */
  readonly index: number;
  readonly part: string;
}

const fields: readonly (readonly [
  key: string,
  label: string,
  quantity: QuantityName,
  help: string,
])[] = [
  [
    'throughModulus',
    'E3',
    'modulus',
    'Young’s modulus through the thickness; not set, the wall is taken as rigid there.',
  ],
  [
    'throughExpansion',
    'α3',
    'expansion',
    'Expansion through the thickness; not set, thermal peel leaves it out.',
  ],
  [
    'interlaminarTension',
    'Zt between plies',
    'interlaminarStrength',
    'Tension through the thickness at which plies part; not set, it is not checked.',
  ],
  [
    'interlaminarShear',
    'S13 between plies',
    'interlaminarStrength',
    'Shear between plies at which they part; not set, it is not checked.',
  ],
];

export function ThroughThickness(props: ThroughThicknessProps): JSX.Element {
  return (
    <Disclosure
      title="Through the thickness"
      about={{
        issues: props.issues,
        fields: fields.map(([key]) => ['adherends', props.index, key]),
      }}
    >
      <For each={fields}>
        {([key, label, quantity, help]) => (
          <NumberRow
            project={props.project}
            issues={props.issues}
            label={label}
            input={{
              path: ['adherends', props.index, key],
              quantity,
              name: `${props.part}, ${label}`,
              help,
              optional: true,
            }}
          />
        )}
      </For>
      <p class="about">For peel. What is not set is not checked.</p>
    </Disclosure>
  );
}
