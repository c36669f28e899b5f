/**
 * What was changed in the document, step by step, so that it can be taken back. A step is what one act of a
 * person changed: all edits of one event together, and a drag or a word typed as one.
 */
import { type Accessor, batch, createSignal, untrack } from 'solid-js';
import { changeWords } from '../../shared/change-words.ts';
import type { Project } from '../../shared/project.ts';
import { isPlain, type Path, pathText, valueAt } from './path.ts';

/** The document itself, plain, and how a value gets into it. */
export interface Written {
  plain(): Project | null;
  put(path: Path, value: unknown): void;
}

export interface History {
  /** To be told before a value changes. */
  before(path: Path): void;
  /** To be told once it has: a figure that has come back to what it was is no step. */
  after(path: Path): void;
  clear(): void;
  /** What would be taken back, in words; null when there is nothing. */
  readonly undoes: Accessor<string | null>;
  readonly redoes: Accessor<string | null>;
  /** The step that was taken back, in words, and the first place that it changed; null when there is none. */
  undo(): Moved | null;
  redo(): Moved | null;
  /** Begins an act whose end is not known yet: it is a step of its own, or is dropped. */
  begin(): Begun;
  /**
   * The document as it was at the beginning, as if nothing had been done since; false where that is out of
   * reach, or where more than this place was changed.
   */
  drop(begun: Begun, path: Path): boolean;
  /** Tells one state of the document from another: the same again when it is the same step. */
  readonly state: Accessor<number>;
  /** How many steps lie between a state and this one; null where it cannot be reached by taking back. */
  since(state: number): number | null;
  /** The state of now, to which taking back will lead: the next edit begins a step of its own. */
  seal(): number;
}

export interface Moved {
  readonly words: string;
  readonly path: Path;
}

export interface Begun {
  readonly state: number;
  /** What could be done again then. */
  readonly future: readonly unknown[];
}

interface Change {
  readonly path: Path;
  readonly value: unknown;
}

interface Step {
  readonly changes: Change[];
  /** When it was last added to, ms. */
  at: number;
  /** Of the state of the document before it. */
  readonly from: number;
  /** What could be done again before it. */
  readonly future: readonly Step[];
}

const DEEP = 200;
/** Edits of one place with no longer pause than this are one act, as a drag or a word typed. */
const PAUSE = 1000;

/** A verdict stands: neither it nor what it was given on is taken back by a key. */
const isRecord = (path: Path): boolean =>
  path[0] === 'gapChecks' && (path.at(-1) === 'recorded' || path.at(-1) === 'result');

const clone = <T>(value: T): T => (value === undefined ? value : structuredClone(value));

export function createHistory(
  { plain, put }: Written,
  now: () => number = () => performance.now(),
): History {
  const [past, setPast] = createSignal<readonly Step[]>([]);
  const [future, setFuture] = createSignal<readonly Step[]>([]);
  const [state, setState] = createSignal(0);
  let states = 0;
  /** The step of the event that is going on. */
  let open: Step | null = null;
  /** False once something was taken back: the next edit starts a step of its own. */
  let joins = true;

  const valueNow = (path: Path): unknown => clone(valueAt(plain(), path));

  const newState = (): void => {
    states += 1;
    setState(states);
  };

  const before = (path: Path): void => untrack(() => note(path));

  function note(path: Path): void {
    if (plain() === null) return;
    if (isRecord(path)) {
      const others = past().filter(({ changes }) =>
        changes.every(({ path: [root] }) => root !== 'gapChecks'),
      );
      setPast(others);
      setFuture([]);
      newState();
      return;
    }
    const key = pathText(path);
    const last = past().at(-1);
    const isSame = (step: Step): boolean =>
      step.changes.length === 1 && pathText(step.changes[0]!.path) === key;
    if (open && open === last) {
      if (!open.changes.some((change) => pathText(change.path) === key)) {
        open.changes.push({ path: [...path], value: valueNow(path) });
      }
      open.at = now();
    } else if (joins && last && isSame(last) && now() - last.at < PAUSE) {
      last.at = now();
    } else {
      const step = {
        changes: [{ path: [...path], value: valueNow(path) }],
        at: now(),
        from: state(),
        future: future(),
      };
      open = step;
      queueMicrotask(() => {
        open = null;
      });
      setPast((steps) => [...steps, step].slice(-DEEP));
    }
    joins = true;
    setFuture([]);
    newState();
  }

  function settle(path: Path): void {
    const last = past().at(-1);
    const [change, ...others] = last?.changes ?? [];
    if (!last || !change || others.length > 0) return;
    const here = valueAt(plain(), path);
    const isSame = isPlain(here) && here === change.value;
    if (!isSame || pathText(change.path) !== pathText(path)) return;
    setPast((steps) => steps.slice(0, -1));
    setFuture(last.future);
    setState(last.from);
    joins = false;
    open = null;
  }

  /** Takes the last step of one list back, and puts how it was on the other. */
  function move(
    from: Accessor<readonly Step[]>,
    setFrom: (steps: readonly Step[]) => void,
    to: (step: Step) => void,
    words: string | null,
  ): Moved | null {
    const step = from().at(-1);
    if (!step || words === null) return null;
    const there = state();
    // Backward, as they were made: what one edit made another may have filled.
    const changes = step.changes.toReversed();
    const back = changes.map(({ path, value }) => {
      const change = { path, value: valueNow(path) };
      put(path, clone(value));
      return change;
    });
    joins = false;
    open = null;
    setFrom(from().slice(0, -1));
    to({ changes: back, at: 0, from: there, future: [] });
    setState(step.from);
    return { words, path: step.changes[0]!.path };
  }

  function drop(begun: Begun, path: Path): boolean {
    if (state() === begun.state) return true;
    const at = past().findIndex(({ from }) => from === begun.state);
    if (at < 0) return false;
    const dropped = past().slice(at);
    const place = pathText(path);
    const isOwn = (change: Change): boolean => `${pathText(change.path)}.`.startsWith(`${place}.`);
    if (!dropped.every(({ changes }) => changes.every(isOwn))) return false;
    batch(() => {
      for (const { changes } of dropped.toReversed()) {
        for (const { path, value } of changes.toReversed()) put(path, clone(value));
      }
      setPast(past().slice(0, at));
      setFuture(begun.future as readonly Step[]);
      setState(begun.state);
    });
    joins = false;
    open = null;
    return true;
  }

  const wordsOf = (step: Step | undefined, isBack: boolean): string | null => {
    const document = plain();
    if (!step || !document) return null;
    const [{ path, value }] = step.changes as [Change];
    const here = valueAt(document, path);
    return isBack
      ? changeWords(document, path, value, here)
      : changeWords(document, path, here, value);
  };
  const undoes = (): string | null => {
    state();
    return wordsOf(past().at(-1), true);
  };
  const redoes = (): string | null => {
    state();
    return wordsOf(future().at(-1), false);
  };

  return {
    before,
    after: (path) => untrack(() => settle(path)),
    begin() {
      joins = false;
      open = null;
      return { state: untrack(state), future: untrack(future) };
    },
    drop: (begun, path) => untrack(() => drop(begun, path)),
    clear() {
      open = null;
      setPast([]);
      setFuture([]);
      newState();
    },
    undoes,
    redoes,
    undo: () => move(past, setPast, (step) => setFuture((steps) => [...steps, step]), undoes()),
    redo: () => move(future, setFuture, (step) => setPast((steps) => [...steps, step]), redoes()),
    state,
    seal() {
      joins = false;
      open = null;
      return untrack(state);
    },
    since(there) {
      if (state() === there) return 0;
      const at = past().findIndex(({ from }) => from === there);
      return at < 0 ? null : past().length - at;
    },
  };
}
