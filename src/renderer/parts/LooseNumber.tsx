/** A number that belongs to a question, not to the document; empty leaves it to the program. */
import { createUniqueId, type JSX, Show } from 'solid-js';
import { readBox } from '../../shared/box-entry.ts';
import type { FieldEntry } from '../../shared/expression-entry.ts';
import { helpOfNumber } from '../../shared/field-help.ts';
import type { QuantityName } from '../../shared/quantities.ts';
import { sentence } from '../../shared/words.ts';
import { tellHelp } from '../help/known-fields.ts';
import { createRemark } from '../help/remark.ts';
import type { Act } from '../state/act.ts';
import { createBox } from './box.ts';
import { watchField } from './own-typing.ts';

export interface LooseNumberProps {
  readonly label: string;
  /** In the unit that is stored. */
  readonly text: string;
  readonly onText: (text: string) => void;
  /** What stands in for it while the field is empty. */
  readonly placeholder: string;
  readonly quantity: QuantityName;
  /** Of what changes the document: what cannot be read leaves nothing of itself behind. */
  readonly act?: Act;
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
  const box = createBox({
    quantity: () => props.quantity,
    kept: () => props.text,
    keep: (text) => props.onText(text),
  });
  const read = (): FieldEntry | null => (box.text().trim() === '' ? null : box.read());
  const wrong = (): string | null => {
    const entry = read();
    return entry === null || entry.ok ? null : entry.message;
  };
  const understood = (): string | undefined => {
    const entry = read();
    return entry?.ok ? entry.understood : undefined;
  };
  const remark = createRemark(props.quantity, () => {
    const entry = read();
    return entry?.ok ? entry.value : undefined;
  });
  return (
    <span class="loose">
      <label for={id}>{props.label}</label>
      <input
        ref={(field) => {
          tellHelp(field, () => helpOfNumber(props.quantity));
          watchField(field, { number: true });
        }}
        id={id}
        class="figure"
        type="text"
        inputmode="decimal"
        autocomplete="off"
        spellcheck={false}
        placeholder={props.placeholder}
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
        onInput={(event) => {
          props.act?.begin();
          box.typed(event.currentTarget.value);
          if (wrong() !== null) props.act?.drop();
        }}
        onBlur={() => {
          box.leave();
          props.act?.end();
        }}
      />
      <span class="unit">{box.unit()}</span>
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
