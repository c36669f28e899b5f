/** A number that belongs to a question, not to the document; empty leaves it to the program. */
import { createUniqueId, type JSX, Show } from 'solid-js';
import { readBox } from '../../shared/expression-entry.ts';
import { helpOfNumber } from '../../shared/field-help.ts';
import { type QuantityName, quantities } from '../../shared/quantities.ts';
import { toDisplay } from '../../shared/units.ts';
import { sentence } from '../../shared/words.ts';
import { tellHelp } from '../help/known-fields.ts';
import { createRemark } from '../help/remark.ts';

export interface LooseNumberProps {
  readonly label: string;
  readonly text: string;
  readonly onText: (text: string) => void;
  /** What stands in for it while the field is empty. */
  readonly placeholder: string;
  readonly quantity: QuantityName;
}

export type Loose =
  | { readonly value: number | undefined; readonly understood?: string }
  | { readonly wrong: string };

/** Reads such a field: no number, a number in the range of its quantity, or what is wrong. */
export function readLoose(text: string, quantity: QuantityName): Loose {
  if (text.trim() === '') return { value: undefined };
  const entry = readBox(text, quantity);
  if (!entry.ok) return { wrong: entry.message };
  const { ok: _, ...read } = entry;
  return read;
}

export function LooseNumber(props: LooseNumberProps): JSX.Element {
  const id = createUniqueId();
  const read = (): Loose => readLoose(props.text, props.quantity);
  const wrong = (): string | null => {
    const found = read();
    return 'wrong' in found ? found.wrong : null;
  };
  const understood = (): string | undefined => {
    const found = read();
    return 'wrong' in found ? undefined : found.understood;
  };
  const remark = createRemark(props.quantity, () => {
    const found = read();
    return 'wrong' in found ? undefined : found.value;
  });
  /** Left, it shows the plain figure. */
  const leave = (): void => {
    const found = read();
    if ('wrong' in found || found.value === undefined || found.understood === undefined) return;
    props.onText(toDisplay(props.quantity, found.value));
  };
  const unit = (): string => (quantities[props.quantity].unit === 'mm' ? 'mm' : '');
  return (
    <span class="loose">
      <label for={id}>{props.label}</label>
      <input
        ref={(field) => tellHelp(field, () => helpOfNumber(props.quantity))}
        id={id}
        class="figure"
        type="text"
        inputmode="decimal"
        autocomplete="off"
        spellcheck={false}
        placeholder={props.placeholder}
        value={props.text}
        aria-invalid={wrong() === null ? undefined : 'true'}
        aria-describedby={
          wrong() !== null
            ? `${id}-error`
            : understood()
              ? `${id}-read`
              : remark()
                ? `${id}-unusual`
                : undefined
        }
        onInput={(event) => props.onText(event.currentTarget.value)}
        onBlur={leave}
      />
      <span class="unit">{unit()}</span>
      <Show when={understood()}>
        {(words) => (
          <span class="loose-read" id={`${id}-read`} role="status">
            {words()}
          </span>
        )}
      </Show>
      <Show when={wrong() === null && remark()}>
        {(words) => (
          <span class="unusual" id={`${id}-unusual`}>
            {words()}
          </span>
        )}
      </Show>
      <Show when={wrong()}>
        {(words) => (
          <span class="loose-error" id={`${id}-error`}>
            {sentence(words())}
          </span>
        )}
      </Show>
    </span>
  );
}
