/** Stations or clockings as one line of numbers: "4, 18, 31". */
import { createSignal, createUniqueId, type JSX, Show } from 'solid-js';
import { helpOfChoice } from '../../shared/field-help.ts';
import { readNumber } from '../../shared/number-entry.ts';
import { tellHelp } from '../help/known-fields.ts';

export interface PlaceListProps {
  readonly label: string;
  readonly list: readonly number[];
  /** Largest place that there is. */
  readonly most: number;
  /** Undefined for the usual ones. */
  readonly onList: (list: readonly number[] | undefined) => void;
}

type Read = { readonly list: readonly number[] | undefined } | { readonly wrong: string };

function readList(text: string, most: number): Read {
  if (text.trim() === '') return { list: undefined };
  const list: number[] = [];
  for (const part of text.trim().split(/[;,]?\s+|[;,]/)) {
    const entry = readNumber(part);
    if (!entry.ok) return { wrong: entry.message };
    if (entry.value < 0 || entry.value > most)
      return { wrong: `${part} is not from 0 to ${most}.` };
    const last = list.at(-1);
    if (last !== undefined && entry.value <= last) {
      return { wrong: `They must rise: ${last} stands before ${entry.value}.` };
    }
    list.push(entry.value);
  }
  return list.length > 20 ? { wrong: 'At most 20.' } : { list };
}

export function PlaceList(props: PlaceListProps): JSX.Element {
  const id = createUniqueId();
  const [typed, setTyped] = createSignal<string | null>(null);
  const wrong = (): string | null => {
    const text = typed();
    const read = text === null ? null : readList(text, props.most);
    return read && 'wrong' in read ? read.wrong : null;
  };
  return (
    <span class="loose">
      <label for={id}>{props.label}</label>
      <input
        ref={(field) => tellHelp(field, () => helpOfChoice('placeList'))}
        id={id}
        class="words"
        type="text"
        autocomplete="off"
        value={typed() ?? props.list.join(', ')}
        aria-invalid={wrong() === null ? undefined : 'true'}
        aria-describedby={wrong() === null ? undefined : `${id}-error`}
        onInput={(event) => {
          setTyped(event.currentTarget.value);
          const read = readList(event.currentTarget.value, props.most);
          if ('list' in read) props.onList(read.list);
        }}
        onBlur={() => {
          if (wrong() === null) setTyped(null);
        }}
      />
      <Show when={wrong()}>
        {(message) => (
          <span class="loose-error" id={`${id}-error`}>
            {message()}
          </span>
        )}
      </Show>
    </span>
  );
}
