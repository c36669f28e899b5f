/**
 * The stack as text. Like a number it is stored as soon as it can be read, so that the plies follow
 * the typing; what cannot be read stays here, with what is wrong and where.
 */
import {
  batch,
  createEffect,
  createSignal,
  createUniqueId,
  type JSX,
  on,
  onCleanup,
  Show,
} from 'solid-js';
import { readStack } from '../../../shared/stack-notation.ts';
import { sentence } from '../../../shared/words.ts';
import { type Path, pathText, valueAt } from '../../state/project.ts';
import type { FieldSource } from '../NumberField.tsx';

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
  const path = pathText(props.path);
  const stored = (): string => String(valueAt(props.project.document(), props.path) ?? '');
  const [text, setText] = createSignal(stored());
  const message = (): string | undefined => props.issues.at(path);
  const fault = (): Marked | null => {
    const reading = readStack(text());
    return reading.ok ? null : marked(text(), reading.at);
  };
  /** The shortest usual form, where what is written is longer. */
  const shorter = (): string | null => {
    const reading = readStack(stored());
    return reading.ok && reading.canonical !== stored().trim() ? reading.canonical : null;
  };

  props.issues.mount(path);
  onCleanup(() => props.issues.unmount(path));

  let field!: HTMLInputElement;
  let typing = false;
  const showStored = (): void => {
    props.issues.setTyped(path, null);
    setText(stored());
  };
  createEffect(
    on(
      stored,
      () => {
        if (!typing) showStored();
      },
      { defer: true },
    ),
  );
  const read = (typed: string): void => {
    setText(typed);
    const reading = readStack(typed);
    batch(() => {
      props.issues.setTyped(path, reading.ok ? null : reading.message);
      if (!reading.ok || typed.trim() === stored()) return;
      typing = true;
      props.project.edit(props.path, typed.trim());
    });
    typing = false;
  };
  const leave = (): void => {
    if (readStack(text()).ok) showStored();
  };
  const key = (event: KeyboardEvent): void => {
    if (event.key !== 'Escape' && event.key !== 'Enter') return;
    if (event.key === 'Escape') showStored();
    else leave();
    field.select();
  };

  return (
    <div class="row is-choice is-stack">
      <label for={id}>Stack</label>
      <input
        ref={field}
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
        onInput={(event) => read(event.currentTarget.value)}
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
