/**
 * What is wrong with what was typed. Two kinds: text that is no number never reaches the document
 * and is kept here by its field; a value that the model refuses is in the document and comes back
 * as a refusal naming its place.
 */

import { type Accessor, createMemo, createSignal } from 'solid-js';
import { createStore, produce } from 'solid-js/store';
import type { RequestError } from '../../shared/reply.ts';
import { saidText } from '../../shared/said.ts';

export interface Issues {
  /** A field announces itself, so that a refusal about a place nearby is shown at it. */
  mount(path: string): void;
  /** @param field what it calls itself in `setTyped`, where that is not its place */
  unmount(path: string, field?: string): void;
  /** Two fields may show one place, such as a material of two parts: each has its own text. */
  setTyped(field: string, message: string | null): void;
  setRefusal(error: RequestError | null): void;
  /** What to show at this field, if anything. */
  at(path: string, field?: string): string | undefined;
  /** What the core refuses, wherever it is shown. */
  readonly refused: Accessor<RequestError | null>;
  /** The refusal when no mounted field can show it. */
  readonly elsewhere: Accessor<RequestError | null>;
  /** True while the core refuses the document: the figures on the screen are those of one before it. */
  readonly stale: Accessor<boolean>;
}

/** The field to blame: the very one, else the first inside the named part, else the closest that holds it. */
export function fieldFor(place: string, mounted: readonly string[]): string | undefined {
  if (place === '') return undefined;
  return (
    mounted.find((path) => path === place) ??
    mounted.find((path) => path.startsWith(`${place}.`)) ??
    mounted
      .filter((path) => place.startsWith(`${path}.`))
      .toSorted((a, b) => b.length - a.length)[0]
  );
}

const textOf = (error: RequestError | null): string | undefined =>
  error ? saidText(error) : undefined;

export function createIssues(): Issues {
  const [typed, setTyped] = createStore<Record<string, string>>({});
  const [mounted, setMounted] = createSignal<readonly string[]>([]);
  const [refusal, setRefusal] = createSignal<RequestError | null>(null);
  const blamed = createMemo(() => {
    const error = refusal();
    return error ? fieldFor(error.field, mounted()) : undefined;
  });
  const clear = (field: string): void => {
    if (field in typed) setTyped(produce((all) => delete all[field]));
  };

  return {
    mount: (path) => setMounted((paths) => [...paths, path]),
    unmount(path, field = path) {
      // One of them: another field may show the same place.
      setMounted((paths) => {
        const at = paths.indexOf(path);
        return paths.filter((_path, i) => i !== at);
      });
      clear(field);
    },
    setTyped(field, message) {
      if (message === null) clear(field);
      else setTyped(field, message);
    },
    setRefusal: (error) => setRefusal(error),
    at: (path, field = path) => typed[field] ?? (blamed() === path ? textOf(refusal()) : undefined),
    refused: refusal,
    elsewhere: () => (blamed() === undefined ? refusal() : null),
    // Text that is no value never reached the document: the figures are those of what stands there.
    stale: () => refusal() !== null,
  };
}
