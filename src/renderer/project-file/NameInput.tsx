/** The field of a name, of a project or a joint, in a question. */
import type { JSX } from 'solid-js';

/** Longest name that the project file takes. */
const LONGEST_NAME = 120;

export interface NameInputProps {
  readonly name: string;
  readonly onName: (name: string) => void;
  readonly required?: boolean;
}

export function NameInput(props: NameInputProps): JSX.Element {
  return (
    <label class="ask-field">
      <span>Name</span>
      <input
        type="text"
        autocomplete="off"
        required={props.required ?? false}
        maxlength={LONGEST_NAME}
        value={props.name}
        onInput={(event) => props.onName(event.currentTarget.value)}
      />
    </label>
  );
}
