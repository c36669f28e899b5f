/** A number of a question, its name read out but not seen: what stands beside it says what it is. */
import { createUniqueId, type JSX, Show } from 'solid-js';
import { readBox } from '../../shared/box-entry.ts';
import { helpOfNumber } from '../../shared/field-help.ts';
import type { QuantityName } from '../../shared/quantities.ts';
import { tellHelp } from '../help/known-fields.ts';
import { createRemark } from '../help/remark.ts';
import { createBox } from '../parts/box.ts';
import { watchField } from '../parts/own-typing.ts';

export interface NumberBoxProps {
  readonly name: string;
  readonly quantity: QuantityName;
  /** In the unit that is stored. */
  readonly text: string;
  readonly onText: (text: string) => void;
  /** True for that of its quantity; or what is counted. */
  readonly unit?: string | true;
  /** True of what is counted. */
  readonly whole?: boolean;
}

export function NumberBox(props: NumberBoxProps): JSX.Element {
  const id = createUniqueId();
  const box = createBox({
    quantity: () => props.quantity,
    kept: () => props.text,
    keep: (text) => props.onText(text),
    wrong: (value) =>
      props.whole && !Number.isInteger(value) ? 'A whole number is needed here.' : null,
  });
  const wrong = (): string | null => {
    const entry = box.read();
    return entry.ok ? null : entry.message;
  };
  const understood = (): string | undefined => {
    const entry = box.read();
    return entry.ok ? entry.understood : undefined;
  };
  const remark = createRemark(props.quantity, () => {
    const entry = box.read();
    return entry.ok ? entry.value : undefined;
  });
  return (
    <span class="number-box">
      <input
        ref={(field) => {
          tellHelp(field, () => helpOfNumber(props.quantity));
          watchField(field, { number: true });
        }}
        class="figure"
        type="text"
        inputmode="decimal"
        autocomplete="off"
        spellcheck={false}
        aria-label={props.name}
        value={box.text()}
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
        onFocus={box.enter}
        onInput={(event) => box.typed(event.currentTarget.value)}
        onBlur={box.leave}
      />
      <Show when={props.unit === true ? box.unit() : props.unit}>
        {(unit) => <span class="unit">{unit()}</span>}
      </Show>
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
