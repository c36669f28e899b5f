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
import { fieldOf } from '../state/refused.ts';

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
  | {
      readonly ok: false;
      readonly message: string;
      /** What is said of the field on saving; that it holds no number when left out. */
      readonly holds?: string;
    };

export interface EntryOptions<T> {
  readonly path: Path;
  /** What the field is called. */
  readonly name: string;
  stored(): T;
  /** The stored value as it is written. */
  shown(): string;
  /** The same with every digit, for whoever is about to type; left out where that is no other text. */
  whole?(): string;
  /** `22.0 mm`: what stands while something else cannot be taken. */
  stays(): string;
  read(text: string): Reading<T>;
}

export interface TextEntry {
  readonly text: Accessor<string>;
  /** What is wrong with the field; undefined when nothing is. */
  readonly message: Accessor<string | undefined>;
  /** While it is typed, how it is read where that is not plain to see. */
  readonly understood: Accessor<string | undefined>;
  enter(event: { readonly currentTarget: HTMLInputElement }): void;
  typed(text: string): void;
  leave(): void;
  /** Escape takes back what was typed, Enter is done with it. */
  key(event: KeyboardEvent & { readonly currentTarget: HTMLInputElement }): void;
  /** Puts what is stored in the place of text that could not be taken; false where there is none. */
  takeBack(): boolean;
}

export function createEntry<T>(
  { project, issues }: FieldSource,
  { path: place, name, stored, shown, whole = shown, stays, read }: EntryOptions<T>,
): TextEntry {
  const path = pathText(place);
  const field = `${path} ${createUniqueId()}`;
  const [text, setText] = createSignal(shown());
  const [understood, setUnderstood] = createSignal<string>();
  issues.mount(path);
  onCleanup(() => {
    issues.unmount(path, field);
    project.refused.leave(field);
  });

  let typing = false;
  /** The field while it has the focus. */
  let here: HTMLInputElement | null = null;
  /** From the first letter until the field is left: what was there before, and its text. */
  let before: { readonly value: T; readonly text: string; readonly begun: Begun } | null = null;
  const tell = (reading: Reading<T>, written: string): void => {
    issues.setTyped(field, reading.ok ? null : reading.message);
    const says = reading.ok
      ? ''
      : `${fieldOf(project.plain(), place, name)} ${reading.holds ?? 'holds no number'}`;
    project.refused.put(field, reading.ok ? null : { path: place, text: written, says, stays });
  };
  const showStored = (): void => {
    before = null;
    issues.setTyped(field, null);
    project.refused.put(field, null);
    setUnderstood(undefined);
    setText(here ? whole() : shown());
  };
  /** A new text has its mark at the end: whoever types next would add to the figure. */
  const selectNew = (): void => queueMicrotask(() => here?.select());
  // Changed from elsewhere, by the drag for one, or shown in another unit: what was typed no longer says
  // what is stored.
  createEffect(
    on(
      [stored, shown],
      () => {
        if (typing) return;
        showStored();
        selectNew();
      },
      { defer: true },
    ),
  );
  const store = (value: T): void => {
    if (value !== stored()) project.edit(place, value);
  };
  /** Of what cannot be read nothing stays behind, not the first digit of it either; nor of what is no change. */
  const takeBack = (): void => {
    if (before && !project.history.drop(before.begun, place)) store(before.value);
  };
  // What could not be taken when the page was left is there again.
  const kept = project.refused.take(place);
  const reading = kept === null ? null : read(kept);
  if (kept !== null && reading?.ok === false) {
    setText(kept);
    tell(reading, kept);
  }
  return {
    text,
    message: () => issues.at(path, field),
    understood,
    enter({ currentTarget }) {
      if (here) return;
      here = currentTarget;
      if (read(text()).ok) showStored();
    },
    typed(next) {
      before ??= { value: stored(), text: whole(), begun: project.history.begin() };
      const { value, text: from } = before;
      setText(next);
      // The same text is the same value, even where no decimal says it.
      const reading: Reading<T> = next === from ? { ok: true, value } : read(next);
      typing = true;
      // Together: between the two the old value would be asked about once more.
      batch(() => {
        setUnderstood(reading.ok ? reading.understood : undefined);
        if (reading.ok && reading.value !== value) store(reading.value);
        else takeBack();
        tell(reading, next);
      });
      typing = false;
    },
    leave() {
      here = null;
      if (read(text()).ok) showStored();
      else before = null;
    },
    key(event) {
      if (event.key !== 'Escape' && event.key !== 'Enter') return;
      if (event.key === 'Escape') showStored();
      else if (read(text()).ok) showStored();
      event.currentTarget.select();
    },
    takeBack() {
      if (read(text()).ok) return false;
      showStored();
      selectNew();
      return true;
    },
  };
}
