/** A number of a question, its name read out but not seen: what stands beside it says what it is. */
import { createUniqueId, type JSX, Show } from 'solid-js';
import { type FieldEntry, readBox } from '../../shared/expression-entry.ts';
import { helpOfNumber } from '../../shared/field-help.ts';
import type { QuantityName } from '../../shared/quantities.ts';
import { toDisplay } from '../../shared/units.ts';
import { tellHelp } from '../help/known-fields.ts';
import { createRemark } from '../help/remark.ts';

export interface NumberBoxProps {
  readonly name: string;
  readonly quantity: QuantityName;
  readonly text: string;
  readonly onText: (text: string) => void;
  readonly unit?: string;
  /** True of what is counted. */
  readonly whole?: boolean;
}

export function NumberBox(props: NumberBoxProps): JSX.Element {
  const id = createUniqueId();
  const read = (): FieldEntry => readBox(props.text, props.quantity);
  const wrong = (): string | null => {
    const entry = read();
    if (!entry.ok) return entry.message;
    return props.whole && !Number.isInteger(entry.value) ? 'A whole number is needed here.' : null;
  };
  const understood = (): string | undefined => {
    const entry = read();
    return entry.ok && wrong() === null ? entry.understood : undefined;
  };
  const remark = createRemark(props.quantity, () => {
    const entry = read();
    return entry.ok ? entry.value : undefined;
  });
  /** Left, it shows the plain figure. */
  const leave = (): void => {
    const entry = read();
    if (entry.ok && understood() !== undefined) {
      props.onText(toDisplay(props.quantity, entry.value));
    }
  };
  return (
    <span class="number-box">
      <input
        ref={(field) => tellHelp(field, () => helpOfNumber(props.quantity))}
        class="figure"
        type="text"
        inputmode="decimal"
        autocomplete="off"
        spellcheck={false}
        aria-label={props.name}
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
      <Show when={props.unit}>{(unit) => <span class="unit">{unit()}</span>}</Show>
      <Show when={understood()}>
        {(words) => (
          <span class="understood" id={`${id}-read`} role="status">
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
            {words()}
          </span>
        )}
      </Show>
    </span>
  );
}

/** The number, or undefined where it is none or out of its range. */
export const boxValue = (text: string, quantity: QuantityName): number | undefined => {
  const entry = readBox(text, quantity);
  return entry.ok ? entry.value : undefined;
};

/** A whole number that counts something. */
export const countValue = (
  text: string,
  quantity: 'batchCount' | 'couponCount',
): number | undefined => {
  const value = boxValue(text, quantity);
  return value !== undefined && Number.isInteger(value) ? value : undefined;
};
