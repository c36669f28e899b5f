/** The load cases that act on the joint, each with its kind and the state of the adhesive in it. */

import { batch, createMemo, For, type JSX, Show } from 'solid-js';
import type { Joint, LoadCase } from '../../shared/project.ts';
import { RemoveButton } from '../parts/RemoveButton.tsx';
import { TakeOut } from '../parts/TakeOut.tsx';
import { loadsSheet } from '../sheets/margin-sheets.ts';
import { addLoadCase, MOST_CASES } from '../state/load-cases.ts';
import { Choice } from './Choice.tsx';
import type { FieldSource } from './entry.ts';
import { loadInputs, noLoad } from './form-model.ts';
import { CaseFields } from './load-cases/CaseFields.tsx';
import { Rows } from './Rows.tsx';

/** No id looks like this. */
const NEW = '+';

export interface LoadsProps extends FieldSource {
  readonly joint: Joint;
  readonly index: number;
}

export function Loads(props: LoadsProps): JSX.Element {
  const cases = (): readonly LoadCase[] => props.project.document()?.loadCases ?? [];
  const placeOf = (id: string): number => cases().findIndex((load) => load.id === id);
  const used = createMemo(() => props.joint.loads.map((load) => load.case));
  const unused = (): readonly LoadCase[] => cases().filter(({ id }) => !used().includes(id));

  /** The case that is being made: its fields are open from the start. */
  let made: string | null = null;
  let section!: HTMLElement;

  const add = (caseId: string): void =>
    props.project.edit(
      ['joints', props.index, 'loads', props.joint.loads.length],
      noLoad(props.joint, caseId),
    );
  const choose = (wanted: string): void => {
    if (wanted === '') return;
    batch(() => {
      const caseId = wanted === NEW ? addLoadCase(props.project) : wanted;
      if (wanted === NEW) made = caseId;
      if (caseId !== null) add(caseId);
    });
    made = null;
  };
  const remove = (caseId: string): void =>
    props.project.edit(
      ['joints', props.index, 'loads'],
      props.joint.loads.filter((load) => load.case !== caseId),
    );

  return (
    <section class="group" aria-labelledby="loads-title" ref={section}>
      <div class="take-head">
        <h2 id="loads-title">Loads</h2>
        <Show when={used().length > 0}>
          <TakeOut what="Loads" sheet={() => loadsSheet(props.joint, cases())} />
        </Show>
      </div>
      {/* Keyed by the case, so that a figure that changes does not rebuild the field it is typed in. */}
      <For each={used()} fallback={<p class="about">No case acts on this joint yet.</p>}>
        {(caseId, load) => {
          const place = createMemo(() => placeOf(caseId));
          const name = (): string => cases()[place()]?.name ?? caseId;
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
              {/* Keyed by place: the fields are of one case. */}
              <Show when={place() >= 0 && `${place()}`} keyed>
                {(at) => (
                  <Show when={cases()[Number(at)]}>
                    {(loadCase) => (
                      <CaseFields
                        project={props.project}
                        issues={props.issues}
                        index={Number(at)}
                        loadCase={loadCase()}
                        jointId={props.joint.id}
                        opened={made === caseId}
                        onGone={() => section.querySelector<HTMLElement>('.add select')?.focus()}
                      />
                    )}
                  </Show>
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
      <Show when={unused().length > 0 || cases().length < MOST_CASES}>
        <Choice
          name="Add a load case"
          help="addCase"
          class="add"
          value=""
          options={[
            { value: '', text: 'Add a load case …' },
            ...unused().map((load) => ({ value: load.id, text: load.name })),
            ...(cases().length < MOST_CASES ? [{ value: NEW, text: 'New load case …' }] : []),
          ]}
          onChoose={choose}
        />
      </Show>
    </section>
  );
}
