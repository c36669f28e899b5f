/**
 * Text in fields of the document that could not be taken: the value before it stands. Whoever saves or prints
 * is told so; and while its page is away the text is kept, so that nothing that was typed is lost unsaid.
 */
import { type Accessor, createSignal } from 'solid-js';
import type { Project } from '../../shared/project.ts';
import { type Path, pathText, valueAt } from './path.ts';

export interface RefusedText {
  readonly path: Path;
  readonly text: string;
  /** `Overlap holds no number`: as it begins a sentence. */
  readonly says: string;
  /** `22.0 mm`: what stands instead, in the units on the screen. */
  stays(): string;
}

export interface Refused {
  /** Those in fields that are shown, and those of pages that are away, in the order they came. */
  readonly all: Accessor<readonly RefusedText[]>;
  /** @param field tells one field from another that shows the same place; null takes its text away */
  put(field: string, refused: RefusedText | null): void;
  /** The field goes away with its page: its text waits for the next that shows this place. */
  leave(field: string): void;
  /** The text that waits for a field of this place, and is from now on that field's. */
  take(path: Path): string | null;
  clear(): void;
}

/** A place by the ids of what stands in lists: joints may be moved, or be others, meanwhile. */
type Place = readonly (string | number | { readonly id: string })[];

/** A load has no id but that of its case. */
const idOf = (one: unknown): unknown =>
  typeof one === 'object' && one !== null
    ? ((one as { id?: unknown }).id ?? (one as { case?: unknown }).case)
    : undefined;

function placeOf(document: Project, path: Path): Place {
  return path.map((key, i) => {
    const id = typeof key === 'number' ? idOf(valueAt(document, path.slice(0, i + 1))) : undefined;
    return typeof id === 'string' ? { id } : key;
  });
}

function pathOf(document: Project, place: Place): Path | null {
  const path: (string | number)[] = [];
  for (const key of place) {
    if (typeof key !== 'object') path.push(key);
    else {
      const list = valueAt(document, path);
      const at = Array.isArray(list) ? list.findIndex((one) => idOf(one) === key.id) : -1;
      if (at < 0) return null;
      path.push(at);
    }
  }
  return path;
}

interface Entry {
  readonly refused: RefusedText;
  readonly place: Place;
  /** What is stored there. */
  readonly value: unknown;
  readonly away: boolean;
}

/** `Overlap of Landing leg`: the name of a field with that of the joint or material that it is of. */
export function fieldOf(document: Project | null, path: Path, name: string): string {
  const owner = valueAt(document, path.slice(0, 2)) as
    | { readonly name?: unknown; readonly joint?: { readonly name?: unknown } }
    | undefined;
  const of = owner?.joint?.name ?? owner?.name;
  // Some are called by it already.
  return typeof of === 'string' && of !== '' && !name.includes(of) ? `${name} of ${of}` : name;
}

/** @param what `is saved`: what becomes of the value that stands */
export const refusedSentence = (all: readonly RefusedText[], what: string): string =>
  all.map((one) => `${one.says}: ${one.stays()} ${what}.`).join(' ');

/** @param document read reactively */
export function createRefused(document: Accessor<Project | null>): Refused {
  const [entries, setEntries] = createSignal<ReadonlyMap<string, Entry>>(new Map());
  let count = 0;
  const change = (work: (map: Map<string, Entry>) => void): void => {
    setEntries((before) => {
      const next = new Map(before);
      work(next);
      return next;
    });
  };
  /** Where its place is now; null where that is gone, or holds another value than it did. */
  const pathNow = (whole: Project, { place, value }: Entry): Path | null => {
    const path = pathOf(whole, place);
    return path && valueAt(whole, path) === value ? path : null;
  };
  return {
    all() {
      const whole = document();
      if (!whole) return [];
      return [...entries().values()].flatMap((entry) => {
        const path = entry.away ? pathNow(whole, entry) : entry.refused.path;
        return path ? [{ ...entry.refused, path }] : [];
      });
    },
    put(field, refused) {
      const whole = document();
      if (refused === null || !whole) {
        if (entries().has(field)) change((map) => void map.delete(field));
        return;
      }
      const { path } = refused;
      const entry = { refused, place: placeOf(whole, path), value: valueAt(whole, path) };
      change((map) => void map.set(field, { ...entry, away: false }));
    },
    leave(field) {
      const entry = entries().get(field);
      if (!entry) return;
      count += 1;
      change((map) => {
        map.delete(field);
        map.set(`away ${count}`, { ...entry, away: true });
      });
    },
    take(path) {
      const whole = document();
      if (!whole) return null;
      const wanted = pathText(path);
      for (const [key, entry] of entries()) {
        const now = entry.away ? pathNow(whole, entry) : null;
        if (now === null || pathText(now) !== wanted) continue;
        change((map) => void map.delete(key));
        return entry.refused.text;
      }
      return null;
    },
    clear: () => void setEntries(new Map()),
  };
}
