/** The project's conditions: surroundings for those load cases that are judged in all of them. */
import { Index, type JSX, Show } from 'solid-js';
import type { Condition } from '../../../shared/project.ts';
import { RemoveButton } from '../../parts/RemoveButton.tsx';
import { Choice } from '../../size/Choice.tsx';
import type { FieldSource } from '../../size/entry.ts';
import { moistures } from '../../size/form-model.ts';
import { NumberField } from '../../size/NumberField.tsx';
import { TextField } from '../../size/TextField.tsx';

const MOST = 20;

/** An id that no other condition has. */
function freeId(conditions: readonly Condition[]): string {
  for (let n = conditions.length + 1; ; n++) {
    const id = `condition-${n}`;
    if (!conditions.some((one) => one.id === id)) return id;
  }
}

export function Conditions(props: FieldSource): JSX.Element {
  const conditions = (): readonly Condition[] => props.project.document()?.conditions ?? [];
  const add = (): void => {
    const all = conditions();
    const id = freeId(all);
    const name = `Condition ${id.replace('condition-', '')}`;
    props.project.edit(['conditions'], [...all, { id, name, temperature: 20, moisture: 'dry' }]);
  };
  const remove = (k: number): void =>
    props.project.edit(
      ['conditions'],
      conditions().filter((_one, i) => i !== k),
    );

  return (
    <section data-pane class="conditions" aria-labelledby="conditions-title">
      <h2 id="conditions-title">Conditions</h2>
      <p class="units">
        Surroundings that load cases can be judged in besides their own: those that are marked so
        above. A cell of the table is the worst over all of them.
      </p>
      <Index each={conditions()}>
        {(condition, k) => (
          <div class="condition">
            <TextField
              project={props.project}
              issues={props.issues}
              path={['conditions', k, 'name']}
              name={`Name of condition ${k + 1}`}
            />
            <div class="row">
              <NumberField
                project={props.project}
                issues={props.issues}
                input={{
                  path: ['conditions', k, 'temperature'],
                  quantity: 'temperature',
                  name: `Temperature of condition ${k + 1}`,
                }}
              />
            </div>
            <Choice
              name={`Moisture of condition ${k + 1}`}
              help="moisture"
              options={moistures}
              value={condition().moisture}
              onChoose={(moisture) => props.project.edit(['conditions', k, 'moisture'], moisture)}
            />
            <RemoveButton
              label={`Remove condition ${k + 1}, ${condition().name}`}
              title="Take this condition away"
              onRemove={() => remove(k)}
            />
          </div>
        )}
      </Index>
      <Show when={conditions().length < MOST}>
        <button type="button" class="link" onClick={add}>
          Add a condition
        </button>
      </Show>
    </section>
  );
}
