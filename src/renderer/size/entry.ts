/**
 * Text that stands for a value of the document. While it has the focus it shows what is typed,
 * otherwise what is stored. What can be read is stored at once, so that the drawing follows the typing;
 * what cannot stays in the field, with what is wrong with it.
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
  read(text: string): Reading<T>;
}

export interface TextEntry {
  readonly text: Accessor<string>;
  /** What is wrong with the field; undefined when nothing is. */
  readonly message: Accessor<string | undefined>;
  /** While it is typed, how it is read where that is not plain to see. */
  readonly understood: Accessor<string | undefined>;
  typed(text: string): void;
  leave(): void;
  /** Escape takes back what was typed, Enter is done with it. */
  key(event: KeyboardEvent & { readonly currentTarget: HTMLInputElement }): void;
}

export function createEntry<T>(
  { project, issues }: FieldSource,
  { path: place, stored, shown, read }: EntryOptions<T>,
): TextEntry {
  const path = pathText(place);
  const field = `${path} ${createUniqueId()}`;
  const [text, setText] = createSignal(shown());
  const [understood, setUnderstood] = createSignal<string>();
  issues.mount(path);
  onCleanup(() => issues.unmount(path, field));

  let typing = false;
  const showStored = (): void => {
    issues.setTyped(field, null);
    setUnderstood(undefined);
    setText(shown());
  };
  // Changed from elsewhere, by the drag for one: what was typed no longer says what is stored.
  createEffect(
    on(
      stored,
      () => {
        if (!typing) showStored();
      },
      { defer: true },
    ),
  );
  const leave = (): void => {
    if (read(text()).ok) showStored();
  };
  return {
    text,
    message: () => issues.at(path, field),
    understood,
    typed(next) {
      setText(next);
      const reading = read(next);
      // Together: between the two the old value would be asked about once more.
      batch(() => {
        issues.setTyped(field, reading.ok ? null : reading.message);
        setUnderstood(reading.ok ? reading.understood : undefined);
        if (!reading.ok || reading.value === stored()) return;
        typing = true;
        project.edit(place, reading.value);
      });
      typing = false;
    },
    leave,
    key(event) {
      if (event.key !== 'Escape' && event.key !== 'Enter') return;
      if (event.key === 'Escape') showStored();
      else leave();
      event.currentTarget.select();
    },
  };
}
