/** The load cases that act on the joint, each with its kind and the state of the adhesive in it. */

import { createMemo, For, type JSX, Show } from 'solid-js';
import type { Joint, LoadCase } from '../../shared/project.ts';
import { environment, kindOf } from '../../shared/words.ts';
import { RemoveButton } from '../parts/RemoveButton.tsx';
import { Choice } from './Choice.tsx';
import type { FieldSource } from './entry.ts';
import { loadInputs, noLoad } from './form-model.ts';
import { Rows } from './Rows.tsx';

export interface LoadsProps extends FieldSource {
  readonly joint: Joint;
  readonly index: number;
}

export function Loads(props: LoadsProps): JSX.Element {
  const cases = (): readonly LoadCase[] => props.project.document()?.loadCases ?? [];
  const caseOf = (id: string): LoadCase | undefined => cases().find((load) => load.id === id);
  const used = createMemo(() => props.joint.loads.map((load) => load.case));
  const unused = (): readonly LoadCase[] => cases().filter(({ id }) => !used().includes(id));

  const add = (caseId: string): void => {
    if (caseId === '') return;
    props.project.edit(
      ['joints', props.index, 'loads', props.joint.loads.length],
      noLoad(props.joint, caseId),
    );
  };
  const remove = (caseId: string): void =>
    props.project.edit(
      ['joints', props.index, 'loads'],
      props.joint.loads.filter((load) => load.case !== caseId),
    );

  return (
    <section class="group" aria-labelledby="loads-title">
      <h2 id="loads-title">Loads</h2>
      {/* Keyed by the case, so that a figure that changes does not rebuild the field it is typed in. */}
      <For each={used()} fallback={<p class="about">No case acts on this joint yet.</p>}>
        {(caseId, load) => {
          const name = (): string => caseOf(caseId)?.name ?? caseId;
          const rows = createMemo(() => loadInputs(props.joint.type, props.index, load(), name()));
          return (
            <div class="load">
              <div class="load-head">
                <h3>{name()}</h3>
                <RemoveButton
                  label={`Remove ${name()}`}
                  title={`Take ${name()} off this joint`}
                  onRemove={() => remove(caseId)}
                />
              </div>
              <Show when={caseOf(caseId)}>
                {(load) => (
                  <p class="about">
                    {kindOf(load())} · {environment(load().temperature, load().moisture)}
                  </p>
                )}
              </Show>
              <Rows
                project={props.project}
                issues={props.issues}
                rows={rows()}
                joint={props.joint}
                index={props.index}
              />
            </div>
          );
        }}
      </For>
      <Show when={unused().length > 0}>
        <Choice
          name="Add a load case"
          class="add"
          value=""
          options={[
            { value: '', text: 'Add a load case …' },
            ...unused().map((load) => ({ value: load.id, text: load.name })),
          ]}
          onChoose={add}
        />
      </Show>
    </section>
  );
}
