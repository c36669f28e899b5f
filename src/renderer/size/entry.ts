/**
 * Text that stands for a value of the document. While it has the focus it shows what is typed,
 * otherwise what is stored. What can be read is stored at once, so that the drawing follows the typing;
 * what cannot stays in the field, with what is wrong with it, and the document keeps what it had before.
 */
import {
  type Accessor,
  batch,
  createEffect,
  createSignal,
  createUniqueId,
  on,
  onCleanup,
} from 'solid-js';
import type { Begun } from '../state/history.ts';
import type { Issues } from '../state/issues.ts';
import { type Path, type ProjectState, pathText } from '../state/project.ts';

export interface FieldSource {
  readonly project: ProjectState;
  readonly issues: Issues;
}

export type Reading<T> =
  | {
      readonly ok: true;
      readonly value: T;
      /** How it was read, where the text does not show it by itself. */
      readonly understood?: string;
    }
  | { readonly ok: false; readonly message: string };

export interface EntryOptions<T> {
  readonly path: Path;
  stored(): T;
  /** The stored value as it is written. */
  shown(): string;
  /** The same with every digit, for whoever is about to type; left out where that is no other text. */
  whole?(): string;
  read(text: string): Reading<T>;
}

export interface TextEntry {
  readonly text: Accessor<string>;
  /** What is wrong with the field; undefined when nothing is. */
  readonly message: Accessor<string | undefined>;
  /** While it is typed, how it is read where that is not plain to see. */
  readonly understood: Accessor<string | undefined>;
  enter(): void;
  typed(text: string): void;
  leave(): void;
  /** Escape takes back what was typed, Enter is done with it. */
  key(event: KeyboardEvent & { readonly currentTarget: HTMLInputElement }): void;
}

export function createEntry<T>(
  { project, issues }: FieldSource,
  { path: place, stored, shown, whole = shown, read }: EntryOptions<T>,
): TextEntry {
  const path = pathText(place);
  const field = `${path} ${createUniqueId()}`;
  const [text, setText] = createSignal(shown());
  const [understood, setUnderstood] = createSignal<string>();
  issues.mount(path);
  onCleanup(() => issues.unmount(path, field));

  let typing = false;
  let entered = false;
  /** From the first letter until the field is left: what was there before, and its text. */
  let before: { readonly value: T; readonly text: string; readonly begun: Begun } | null = null;
  const showStored = (): void => {
    before = null;
    issues.setTyped(field, null);
    setUnderstood(undefined);
    setText(entered ? whole() : shown());
  };
  // Changed from elsewhere, by the drag for one, or shown in another unit: what was typed no longer says
  // what is stored.
  createEffect(
    on(
      [stored, shown],
      () => {
        if (!typing) showStored();
      },
      { defer: true },
    ),
  );
  const store = (value: T): void => {
    if (value !== stored()) project.edit(place, value);
  };
  /** Of what cannot be read nothing stays behind: not the first digit of it either. */
  const takeBack = (): void => {
    if (before && !project.history.drop(before.begun, place)) store(before.value);
  };
  const leave = (): void => {
    entered = false;
    if (read(text()).ok) showStored();
    else before = null;
  };
  return {
    text,
    message: () => issues.at(path, field),
    understood,
    enter() {
      if (entered) return;
      entered = true;
      if (read(text()).ok) showStored();
    },
    typed(next) {
      before ??= { value: stored(), text: whole(), begun: project.history.begin() };
      setText(next);
      // The same text is the same value, even where no decimal says it.
      const reading: Reading<T> =
        next === before.text ? { ok: true, value: before.value } : read(next);
      typing = true;
      // Together: between the two the old value would be asked about once more.
      batch(() => {
        issues.setTyped(field, reading.ok ? null : reading.message);
        setUnderstood(reading.ok ? reading.understood : undefined);
        if (reading.ok) store(reading.value);
        else takeBack();
      });
      typing = false;
    },
    leave,
    key(event) {
      if (event.key !== 'Escape' && event.key !== 'Enter') return;
      if (event.key === 'Escape') showStored();
      else if (read(text()).ok) showStored();
      event.currentTarget.select();
    },
  };
}
