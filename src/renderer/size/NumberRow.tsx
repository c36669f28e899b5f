/** A label, a number and its unit on one line. */
import { createUniqueId, type JSX } from 'solid-js';
import type { FieldSource } from './entry.ts';
import type { NumberInput } from './form-model.ts';
import { NumberField } from './NumberField.tsx';

export interface NumberRowProps extends FieldSource {
  readonly label: string;
  readonly input: NumberInput;
}

export function NumberRow(props: NumberRowProps): JSX.Element {
  const id = createUniqueId();
  return (
    <div class="row">
      <label for={id} title={props.input.help}>
        {props.label}
      </label>
      <NumberField project={props.project} issues={props.issues} input={props.input} id={id} />
    </div>
  );
}
