/** One number of the document. One that may be left out is taken away by emptying its field. */
import { createUniqueId, type JSX, Show } from 'solid-js';
import { quantities } from '../../shared/quantities.ts';
import { displayUnit, fromDisplay, toDisplay, withinRange } from '../../shared/units.ts';
import { sentence } from '../../shared/words.ts';
import { valueAt } from '../state/project.ts';
import { createEntry, type FieldSource } from './entry.ts';
import type { NumberInput } from './form-model.ts';

export interface NumberFieldProps extends FieldSource {
  readonly input: NumberInput;
  /** Id of the label's target; made up when left out. */
  readonly id?: string;
}

export function NumberField(props: NumberFieldProps): JSX.Element {
  const own = createUniqueId();
  const id = (): string => props.id ?? own;
  const { quantity, optional, within } = props.input;
  const stored = (): number | undefined =>
    valueAt(props.project.document(), props.input.path) as number | undefined;
  const { text, message, typed, leave, key } = createEntry(props, {
    path: props.input.path,
    stored,
    shown: () => {
      const value = stored();
      return value === undefined ? '' : toDisplay(quantity, value);
    },
    read: (written) =>
      optional && written.trim() === ''
        ? { ok: true, value: undefined }
        : within
          ? withinRange(quantity, fromDisplay(quantity, written))
          : fromDisplay(quantity, written),
  });
  const unit = (): string => displayUnit(props.input.quantity).symbol;

  return (
    <>
      <input
        id={id()}
        class="figure"
        type="text"
        inputmode="decimal"
        autocomplete="off"
        spellcheck={false}
        title={props.input.help ?? quantities[props.input.quantity].help}
        placeholder={props.input.optional ? (props.input.empty ?? 'not set') : undefined}
        aria-label={props.input.name}
        aria-invalid={message() === undefined ? undefined : 'true'}
        aria-describedby={message() === undefined ? `${id()}-unit` : `${id()}-error ${id()}-unit`}
        value={text()}
        onInput={(event) => typed(event.currentTarget.value)}
        onBlur={leave}
        onKeyDown={key}
      />
      <span class="unit" id={`${id()}-unit`}>
        {unit()}
      </span>
      <Show when={message()}>
        {(words) => (
          <p class="callout" id={`${id()}-error`}>
            {sentence(words())}
          </p>
        )}
      </Show>
    </>
  );
}
