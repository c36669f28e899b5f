/** A few words of the document: a name, a source. Stored as typed; the core refuses what cannot be. */
import { createUniqueId, type JSX, onCleanup, Show } from 'solid-js';
import type { ChoiceName } from '../../shared/choice-help.ts';
import { helpOfChoice } from '../../shared/field-help.ts';
import { sentence } from '../../shared/words.ts';
import { tellHelp } from '../help/known-fields.ts';
import { watchField } from '../parts/own-typing.ts';
import { type Path, pathText, valueAt } from '../state/project.ts';
import type { FieldSource } from './entry.ts';

export interface TextFieldProps extends FieldSource {
  readonly path: Path;
  /** Seen beside the field; left out, the name is only read out. */
  readonly label?: string;
  readonly name: string;
  readonly help?: string;
  /** What is said of it on asking; that of a name when left out. */
  readonly about?: ChoiceName;
  /** Most letters that the project file takes. */
  readonly most?: number;
}

export function TextField(props: TextFieldProps): JSX.Element {
  const id = createUniqueId();
  const path = pathText(props.path);
  props.issues.mount(path);
  onCleanup(() => props.issues.unmount(path));
  const message = (): string | undefined => props.issues.at(path);
  return (
    <div class={`row ${props.label === undefined ? 'is-wide' : 'is-choice'}`}>
      <label class={props.label === undefined ? 'hidden' : ''} for={id}>
        {props.label ?? props.name}
      </label>
      <input
        ref={(field) => {
          tellHelp(field, () => helpOfChoice(props.about ?? 'name'));
          watchField(field);
        }}
        id={id}
        class="words"
        type="text"
        autocomplete="off"
        title={props.help}
        maxlength={props.most}
        aria-label={props.name}
        value={String(valueAt(props.project.document(), props.path) ?? '')}
        aria-invalid={message() === undefined ? undefined : 'true'}
        aria-describedby={message() === undefined ? undefined : `${id}-error`}
        onInput={(event) => props.project.edit(props.path, event.currentTarget.value)}
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
