/** A number that belongs to a question, not to the document; empty leaves it to the program. */
import { createUniqueId, type JSX, Show } from 'solid-js';
import { type QuantityName, quantities } from '../../shared/quantities.ts';
import { readQuantity } from '../../shared/quantity-entry.ts';
import { sentence } from '../../shared/words.ts';

export interface LooseNumberProps {
  readonly label: string;
  readonly text: string;
  readonly onText: (text: string) => void;
  /** What stands in for it while the field is empty. */
  readonly placeholder: string;
  readonly quantity: QuantityName;
}

export type Loose = { readonly value: number | undefined } | { readonly wrong: string };

/** Reads such a field: no number, a number in the range of its quantity, or what is wrong. */
export function readLoose(text: string, quantity: QuantityName): Loose {
  if (text.trim() === '') return { value: undefined };
  const entry = readQuantity(text, quantity);
  return entry.ok ? { value: entry.value } : { wrong: entry.message };
}

export function LooseNumber(props: LooseNumberProps): JSX.Element {
  const id = createUniqueId();
  const wrong = (): string | null => {
    const read = readLoose(props.text, props.quantity);
    return 'wrong' in read ? read.wrong : null;
  };
  const unit = (): string => (quantities[props.quantity].unit === 'mm' ? 'mm' : '');
  return (
    <span class="loose">
      <label for={id}>{props.label}</label>
      <input
        id={id}
        class="figure"
        type="text"
        inputmode="decimal"
        autocomplete="off"
        spellcheck={false}
        placeholder={props.placeholder}
        value={props.text}
        aria-invalid={wrong() === null ? undefined : 'true'}
        aria-describedby={wrong() === null ? undefined : `${id}-error`}
        onInput={(event) => props.onText(event.currentTarget.value)}
      />
      <span class="unit">{unit()}</span>
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
