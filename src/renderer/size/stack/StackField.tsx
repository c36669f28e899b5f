/** The stack as text; what cannot be read is shown with the place of the fault. */
import { createUniqueId, type JSX, Show } from 'solid-js';
import { helpOfChoice } from '../../../shared/field-help.ts';
import { readStack } from '../../../shared/stack-notation.ts';
import { sentence } from '../../../shared/words.ts';
import { tellHelp } from '../../help/known-fields.ts';
import { watchField } from '../../parts/own-typing.ts';
import { type Path, valueAt } from '../../state/project.ts';
import { createEntry, type FieldSource } from '../entry.ts';

export interface StackFieldProps extends FieldSource {
  readonly path: Path;
  readonly name: string;
  /** Where the first ply lies: `inside`, or `lower` for a strip. */
  readonly innermost: string;
}

/** The text with the place of the fault marked, as `[0/±45/` and `x` and `]s`. */
interface Marked {
  readonly before: string;
  readonly at: string;
  readonly after: string;
}

function marked(text: string, at: number): Marked {
  const [character = ''] = text.slice(at);
  return { before: text.slice(0, at), at: character, after: text.slice(at + character.length) };
}

export function StackField(props: StackFieldProps): JSX.Element {
  const id = createUniqueId();
  const stored = (): string => String(valueAt(props.project.document(), props.path) ?? '');
  const { text, message, enter, typed, leave, key, takeBack } = createEntry(props, {
    path: props.path,
    name: props.name,
    stored,
    shown: stored,
    stays: stored,
    read: (written) => {
      const reading = readStack(written);
      return reading.ok
        ? { ok: true, value: written.trim() }
        : { ...reading, holds: 'holds no stack' };
    },
  });
  const fault = (): Marked | null => {
    const reading = readStack(text());
    return reading.ok ? null : marked(text(), reading.at);
  };
  /** The shortest usual form, where what is written is longer. */
  const shorter = (): string | null => {
    const reading = readStack(stored());
    return reading.ok && reading.canonical !== stored().trim() ? reading.canonical : null;
  };

  return (
    <div class="row is-choice is-stack">
      <label for={id}>Stack</label>
      <input
        ref={(field) => {
          tellHelp(field, () => helpOfChoice('stack'));
          watchField(field, { takeBack });
        }}
        id={id}
        class="words"
        type="text"
        autocomplete="off"
        spellcheck={false}
        title={`Ply angles in degrees from the axis, the ${props.innermost} first, such as [0/±45/90]s. +-45 is read as ±45.`}
        aria-label={props.name}
        aria-invalid={message() === undefined ? undefined : 'true'}
        aria-describedby={message() === undefined ? `${id}-help` : `${id}-error ${id}-help`}
        value={text()}
        onFocus={enter}
        onInput={(event) => typed(event.currentTarget.value)}
        onBlur={leave}
        onKeyDown={key}
      />
      <p class="about is-below" id={`${id}-help`}>
        degrees from the axis, {props.innermost} first; ± may be typed +-
        <Show when={shorter()}>
          {(form) => (
            <>
              {' · '}
              <button
                type="button"
                class="link"
                aria-label={`Write the stack as ${form()}`}
                onClick={() => props.project.edit(props.path, form())}
              >
                {form()}
              </button>
            </>
          )}
        </Show>
      </p>
      <Show when={message()}>
        {(words) => (
          <p class="callout" id={`${id}-error`}>
            {sentence(words())}
            <Show when={fault()}>
              {(place) => (
                <span class="fault-place">
                  {place().before}
                  <mark>{place().at === '' ? ' ' : place().at}</mark>
                  {place().after}
                </span>
              )}
            </Show>
          </p>
        )}
      </Show>
    </div>
  );
}
