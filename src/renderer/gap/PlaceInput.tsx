/** A station or a clocking, where a diameter was not read as planned. */
import { createSignal, createUniqueId, type JSX, Show } from 'solid-js';
import { helpOfNumber } from '../../shared/field-help.ts';
import type { QuantityName } from '../../shared/quantities.ts';
import { readQuantity } from '../../shared/quantity-entry.ts';
import { tellHelp } from '../help/known-fields.ts';

export interface PlaceInputProps {
  readonly name: string;
  readonly quantity: QuantityName;
  readonly value: number;
  readonly fixed: boolean;
  readonly onPlace: (value: number) => void;
}

export function PlaceInput(props: PlaceInputProps): JSX.Element {
  const id = createUniqueId();
  const [wrong, setWrong] = createSignal<string | null>(null);
  return (
    <>
      <input
        ref={(field) => tellHelp(field, () => helpOfNumber(props.quantity))}
        class="place"
        type="text"
        inputmode="decimal"
        autocomplete="off"
        aria-label={props.name}
        title="Where it was read in truth"
        readonly={props.fixed}
        value={props.value}
        aria-invalid={wrong() === null ? undefined : 'true'}
        aria-describedby={wrong() === null ? undefined : `${id}-error`}
        onChange={(event) => {
          const entry = readQuantity(event.currentTarget.value, props.quantity);
          setWrong(entry.ok ? null : entry.message);
          if (entry.ok) props.onPlace(entry.value);
        }}
      />
      <Show when={wrong()}>
        {(message) => (
          <span class="place-error" id={`${id}-error`} role="alert">
            {message()}
          </span>
        )}
      </Show>
    </>
  );
}
