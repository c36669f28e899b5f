/** What a metal, or a wall of given stiffness, is called, its figures and where they come from. */
import { For, type JSX } from 'solid-js';
import type { Path } from '../../state/project.ts';
import { Copies } from '../Copies.tsx';
import { Disclosure } from '../Disclosure.tsx';
import type { FieldSource } from '../entry.ts';
import { NumberRow } from '../NumberRow.tsx';
import { SourceField } from '../SourceField.tsx';
import { TextField } from '../TextField.tsx';
import { adherendFields } from './adherend-fields.ts';

export interface AdherendPropertiesProps extends FieldSource {
  readonly kind: 'isotropic' | 'orthotropic';
  /** Place of the material among the adherends. */
  readonly index: number;
  /** Where the joint names it. */
  readonly path: Path;
  /** The part that is made of it, such as `Socket`. */
  readonly part: string;
  readonly flat: boolean;
  /** Other joints that are made of it. */
  readonly sharedWith: readonly string[];
  readonly opened: boolean;
  readonly onFresh: (id: string | null) => void;
}

export function AdherendProperties(props: AdherendPropertiesProps): JSX.Element {
  return (
    <Disclosure
      title="Material properties"
      opened={props.opened}
      about={{ issues: props.issues, path: ['adherends', props.index] }}
    >
      <TextField
        project={props.project}
        issues={props.issues}
        path={['adherends', props.index, 'name']}
        label="Name"
        name={`${props.part} material, name`}
      />
      <For each={adherendFields(props.kind, props.flat)}>
        {({ key, label, ...field }) => (
          <NumberRow
            project={props.project}
            issues={props.issues}
            label={label}
            input={{
              ...field,
              path: ['adherends', props.index, key],
              name: `${props.part}, ${label}`,
            }}
          />
        )}
      </For>
      <SourceField
        project={props.project}
        issues={props.issues}
        path={['adherends', props.index, 'source']}
        of={`${props.part} material`}
      />
      <Copies
        project={props.project}
        list="adherends"
        index={props.index}
        path={props.path}
        what="material"
        sharedWith={props.sharedWith}
        onFresh={props.onFresh}
      />
    </Disclosure>
  );
}
