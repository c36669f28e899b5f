/** One number of the document. One that may be left out is taken away by emptying its field. */
import { createUniqueId, type JSX, Show } from 'solid-js';
import { type FieldEntry, readEntry } from '../../shared/expression-entry.ts';
import { helpOfNumber } from '../../shared/field-help.ts';
import { type QuantityName, quantities } from '../../shared/quantities.ts';
import {
  displayUnit,
  toDisplay,
  toDisplayWhole,
  withinRange,
  withUnit,
} from '../../shared/units.ts';
import { sentence } from '../../shared/words.ts';
import { tellHelp } from '../help/known-fields.ts';
import { createRemark } from '../help/remark.ts';
import { watchField } from '../parts/own-typing.ts';
import { valueAt } from '../state/project.ts';
import { createEntry, type FieldSource, type Reading } from './entry.ts';
import type { NumberInput } from './form-model.ts';

/** Out of its range it is said how it was read, where the text does not show it. */
function inRange(quantity: QuantityName, entry: FieldEntry): Reading<number> {
  const within = withinRange(quantity, entry);
  if (within.ok || !entry.ok) return within;
  const read = entry.understood === undefined ? '' : `${entry.understood}. `;
  return { ok: false, message: `${read}${within.message}`, holds: 'is out of its range' };
}

export interface NumberFieldProps extends FieldSource {
  readonly input: NumberInput;
  /** Id of the label's target; made up when left out. */
  readonly id?: string;
}

export function NumberField(props: NumberFieldProps): JSX.Element {
  const own = createUniqueId();
  const id = (): string => props.id ?? own;
  const { quantity, optional } = props.input;
  const stored = (): number | undefined =>
    valueAt(props.project.document(), props.input.path) as number | undefined;
  const { text, message, understood, enter, typed, leave, key, takeBack } = createEntry<
    number | undefined
  >(props, {
    path: props.input.path,
    name: props.input.name,
    stored,
    shown: () => {
      const value = stored();
      return value === undefined ? '' : toDisplay(quantity, value);
    },
    whole: () => {
      const value = stored();
      return value === undefined ? '' : toDisplayWhole(quantity, value);
    },
    stays: () => {
      const value = stored();
      return value === undefined ? 'no value' : withUnit(quantity, value);
    },
    read: (written) =>
      optional && written.trim() === ''
        ? { ok: true, value: undefined }
        : inRange(quantity, readEntry(quantity, written)),
  });
  const remark = createRemark(quantity, stored, props.input);
  const describedBy = (): string => {
    const note = message() !== undefined ? `${id()}-error ` : understood() ? `${id()}-read ` : '';
    const usual = message() === undefined && remark() ? `${id()}-unusual ` : '';
    return `${note}${usual}${id()}-unit`;
  };
  const unit = (): string => displayUnit(props.input.quantity).symbol;

  return (
    <>
      <input
        ref={(field) => {
          tellHelp(field, () => helpOfNumber(quantity, props.input));
          watchField(field, { takeBack, number: true });
        }}
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
        aria-describedby={describedBy()}
        value={text()}
        onFocus={enter}
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
            <Show when={understood()}>{(read) => <>{read()}. </>}</Show>
            {sentence(words())}
          </p>
        )}
      </Show>
      <Show when={message() === undefined && understood()}>
        {(read) => (
          <p class="understood" id={`${id()}-read`} role="status">
            {read()}
          </p>
        )}
      </Show>
      <Show when={message() === undefined && remark()}>
        {(words) => (
          <p class="unusual" id={`${id()}-unusual`}>
            {words()}
          </p>
        )}
      </Show>
    </>
  );
}
