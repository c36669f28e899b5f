/** The left column: everything that is put in about one joint. */
import { createMemo, createUniqueId, For, type JSX, onCleanup, Show } from 'solid-js';
import type { Joint } from '../../shared/project.ts';
import { sentence } from '../../shared/words.ts';
import { pathText } from '../state/project.ts';
import { Choice } from './Choice.tsx';
import { groupsOf } from './form-model.ts';
import { Loads } from './Loads.tsx';
import type { FieldSource } from './NumberField.tsx';
import { Rows } from './Rows.tsx';

export interface InputsProps extends FieldSource {
  readonly joint: Joint;
  readonly index: number;
  readonly onJoint: (id: string) => void;
}

function NameField(
  props: FieldSource & { readonly joint: Joint; readonly index: number },
): JSX.Element {
  const id = createUniqueId();
  const path = pathText(['joints', props.index, 'name']);
  props.issues.mount(path);
  onCleanup(() => props.issues.unmount(path));
  const message = (): string | undefined => props.issues.at(path);
  return (
    <div class="row is-wide">
      <label class="hidden" for={id}>
        Name
      </label>
      <input
        id={id}
        class="words"
        type="text"
        autocomplete="off"
        value={props.joint.name}
        aria-invalid={message() === undefined ? undefined : 'true'}
        aria-describedby={message() === undefined ? undefined : `${id}-error`}
        onInput={(event) =>
          props.project.edit(['joints', props.index, 'name'], event.currentTarget.value)
        }
      />
      <Show when={message()}>
        {(words) => (
          <p class="callout" id={`${id}-error`}>
            {sentence(words())}
          </p>
        )}
      </Show>
    </div>
  );
}

export function Inputs(props: InputsProps): JSX.Element {
  /** Rebuilt when the kind of joint changes, never when a figure does. */
  const type = createMemo(() => props.joint.type);
  const groups = createMemo(() => groupsOf(type(), props.index));
  const joints = () => props.project.document()?.joints ?? [];

  return (
    <form class="inputs" aria-label="Inputs" onSubmit={(event) => event.preventDefault()}>
      <Choice
        name="Joint"
        class="joint-choice"
        options={joints().map(({ id, name }) => ({ value: id, text: name }))}
        value={props.joint.id}
        onChoose={props.onJoint}
      />
      <Show when={props.issues.elsewhere()}>
        {(error) => (
          <p class="refused" role="alert">
            {sentence(error().message)}
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
        <NameField
          project={props.project}
          issues={props.issues}
          joint={props.joint}
          index={props.index}
        />
      </section>
    </form>
  );
}
