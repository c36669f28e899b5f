/** A number that is typed and read at once; what cannot be read stays in the field, with the reason. */
import { createEffect, createSignal, createUniqueId, type JSX, on, Show } from 'solid-js';
import { helpOfNumber } from '../../../shared/field-help.ts';
import { readNumber } from '../../../shared/number-entry.ts';
import type { QuantityName } from '../../../shared/quantities.ts';
import { sentence } from '../../../shared/words.ts';
import { tellHelp } from '../../help/known-fields.ts';
import { watchField } from '../../parts/own-typing.ts';
import type { Act } from '../../state/act.ts';

export interface PlainNumberProps {
  /** What it is called when read out. */
  readonly name: string;
  readonly value: number;
  readonly min: number;
  readonly max: number;
  readonly whole?: boolean;
  /** Stands behind the field. */
  readonly unit?: string;
  /** What is said of it on asking. */
  readonly help?: QuantityName;
  readonly onValue: (value: number) => void;
  /** Of what changes the document: what cannot be read leaves nothing of itself behind. */
  readonly act?: Act;
}

export function PlainNumber(props: PlainNumberProps): JSX.Element {
  const id = createUniqueId();
  const shown = (): string => String(props.value);
  const [text, setText] = createSignal(shown());
  const [wrong, setWrong] = createSignal('');
  let typing = false;
  const read = (typed: string): number | null => {
    const entry = readNumber(typed);
    if (!entry.ok) {
      setWrong(entry.message);
      return null;
    }
    const fits =
      entry.value >= props.min &&
      entry.value <= props.max &&
      (!props.whole || Number.isInteger(entry.value));
    const kind = props.whole ? 'a whole number' : 'a number';
    setWrong(fits ? '' : `It takes ${kind} from ${props.min} to ${props.max}.`);
    return fits ? entry.value : null;
  };
  // Changed from elsewhere: what was typed no longer says what is stored.
  createEffect(
    on(
      () => props.value,
      (value) => {
        if (typing && wrong() !== '') return;
        if (read(text()) !== value) setText(shown());
        setWrong('');
      },
      { defer: true },
    ),
  );
  return (
    <span class="plain-number">
      <input
        ref={(field) => {
          const { help } = props;
          if (help) tellHelp(field, () => helpOfNumber(help));
          watchField(field, { number: true });
        }}
        type="text"
        class="figure"
        inputmode="decimal"
        autocomplete="off"
        spellcheck={false}
        aria-label={props.name}
        aria-invalid={wrong() === '' ? undefined : 'true'}
        aria-describedby={wrong() === '' ? undefined : id}
        value={text()}
        onInput={(event) => {
          typing = true;
          props.act?.begin();
          setText(event.currentTarget.value);
          const value = read(event.currentTarget.value);
          if (value === null) props.act?.drop();
          if (value !== null && value !== props.value) props.onValue(value);
        }}
        onBlur={() => {
          typing = false;
          props.act?.end();
          if (wrong() === '') setText(shown());
        }}
      />
      <Show when={props.unit}>
        <span class="unit">{props.unit}</span>
      </Show>
      <Show when={wrong()}>
        {(words) => (
          <span class="plain-number-error" id={id}>
            {sentence(words())}
          </span>
        )}
      </Show>
    </span>
  );
}
