/** The ply that a laminate is made of, and its figures. */
import { For, type JSX, Show } from 'solid-js';
import type { Ply } from '../../../shared/project.ts';
import { withUnit } from '../../../shared/units.ts';
import { type Path, valueAt } from '../../state/project.ts';
import { Disclosure } from '../Disclosure.tsx';
import type { FieldSource } from '../entry.ts';
import { MaterialField } from '../MaterialField.tsx';
import { NumberRow } from '../NumberRow.tsx';
import { SourceField } from '../SourceField.tsx';
import { TextField } from '../TextField.tsx';
import { addTypicalPly } from './new-laminate.ts';
import { plyFields } from './ply-fields.ts';

export interface PlyChoiceProps extends FieldSource {
  /** Of the ply's id in the laminate. */
  readonly path: Path;
  /** The part that is made of it, such as `Tube`. */
  readonly part: string;
}

export function PlyChoice(props: PlyChoiceProps): JSX.Element {
  const plies = (): readonly Ply[] => props.project.document()?.plies ?? [];
  const chosen = (): unknown => valueAt(props.project.document(), props.path);
  const place = (): number => plies().findIndex(({ id }) => id === chosen());
  const add = (): void => {
    const id = addTypicalPly(props.project);
    if (id !== null) props.project.edit(props.path, id);
  };
  const about = (): string => {
    const ply = plies()[place()];
    return ply ? `${withUnit('plyThickness', ply.thickness)} thick` : 'no such ply';
  };
  return (
    <>
      <MaterialField
        project={props.project}
        issues={props.issues}
        all={plies()}
        path={props.path}
        label="Ply"
        name={`${props.part} ply`}
        help="ply"
        about={about()}
      />
      {/* Keyed by place: the fields are of one ply. */}
      <Show when={place() >= 0 && `${place()}`} keyed>
        {(at) => (
          <Disclosure title="Ply properties">
            <TextField
              project={props.project}
              issues={props.issues}
              path={['plies', Number(at), 'name']}
              label="Name"
              name={`${props.part} ply, name`}
            />
            <For each={plyFields}>
              {({ key, label, ...field }) => (
                <NumberRow
                  project={props.project}
                  issues={props.issues}
                  label={label}
                  input={{
                    path: ['plies', Number(at), key],
                    ...field,
                    name: `${props.part} ply, ${label}`,
                  }}
                />
              )}
            </For>
            <SourceField
              project={props.project}
              issues={props.issues}
              path={['plies', Number(at), 'source']}
              of={`${props.part} ply`}
            />
            <button
              type="button"
              class="link"
              title="Adds a ply of typical figures to the project and lays up this part of it."
              onClick={add}
            >
              Add a typical ply
            </button>
          </Disclosure>
        )}
      </Show>
    </>
  );
}
