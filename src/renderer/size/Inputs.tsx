/** The left column: everything that is put in about one joint. */

import { createMemo, For, type JSX, Show } from 'solid-js';
import type { Joint } from '../../shared/project.ts';
import { saidText } from '../../shared/said.ts';
import { sentence } from '../../shared/words.ts';
import { type Answers, AnswersContext } from './answers.ts';
import { Choice } from './Choice.tsx';
import type { FieldSource } from './entry.ts';
import { groupsOf } from './form-model.ts';
import { Loads } from './Loads.tsx';
import { Rows } from './Rows.tsx';
import { TextField } from './TextField.tsx';

export interface InputsProps extends FieldSource {
  readonly joint: Joint;
  readonly index: number;
  readonly onJoint: (id: string) => void;
  readonly answers: Answers;
}

export function Inputs(props: InputsProps): JSX.Element {
  /** Rebuilt when the kind of joint changes, never when a figure does. */
  const type = createMemo(() => props.joint.type);
  const groups = createMemo(() => groupsOf(type(), props.index));
  const joints = () => props.project.document()?.joints ?? [];

  return (
    <AnswersContext.Provider value={props.answers}>
      <form class="inputs" aria-label="Inputs" onSubmit={(event) => event.preventDefault()}>
        <Choice
          name="Joint"
          help="joint"
          class="joint-choice"
          options={joints().map(({ id, name }) => ({ value: id, text: name }))}
          value={props.joint.id}
          onChoose={props.onJoint}
        />
        <Show when={props.issues.elsewhere()}>
          {(error) => (
            <p class="refused" role="alert">
              {sentence(saidText(error()))}
            </p>
          )}
        </Show>
        <For each={groups()}>
          {(group) => (
            <section class="group" aria-label={group.title}>
              <h2>{group.title}</h2>
              <Rows
                project={props.project}
                issues={props.issues}
                rows={group.rows}
                joint={props.joint}
                index={props.index}
              />
            </section>
          )}
        </For>
        <Loads
          project={props.project}
          issues={props.issues}
          joint={props.joint}
          index={props.index}
        />
        <section class="group" aria-label="Name of the joint">
          <h2>Name</h2>
          <TextField
            project={props.project}
            issues={props.issues}
            path={['joints', props.index, 'name']}
            name="Name"
          />
        </section>
      </form>
    </AnswersContext.Provider>
  );
}
