/**
 * Three notes at the first start, one after another, each beside what it speaks of. They ask for nothing,
 * take no focus, and are gone when told so; the program remembers that they were shown.
 */
import { type Accessor, createContext, createEffect, createSignal, useContext } from 'solid-js';
import type { Bridge } from '../../shared/contract.ts';
import { keepFocus } from '../actions/panes.ts';
import type { WorkspaceName } from '../workspaces.ts';

export const tourSteps = ['joint', 'overlap', 'numbers'] as const;
export type TourStep = (typeof tourSteps)[number];

const KEY = 'lapwright-notes';

export interface Tour {
  readonly step: Accessor<TourStep | null>;
  /** What was last said of a note, for those who do not see it come. */
  readonly said: Accessor<string>;
  say(text: string): void;
  /** From the beginning, whatever is remembered. */
  start(): void;
  /** From the beginning, where this user has not seen them. */
  startFirst(): Promise<void>;
  next(): void;
  close(): void;
}

/** Storage can be forbidden; the host remembers too. */
function isRemembered(): boolean {
  try {
    return localStorage.getItem(KEY) !== null;
  } catch {
    return false;
  }
}
function remember(): void {
  try {
    localStorage.setItem(KEY, 'shown');
  } catch {
    // Not remembered here, then.
  }
}

const isInNote = (): boolean => document.activeElement?.closest('.tour-note') != null;

export function createTour(bridge: Bridge, workspace: Accessor<WorkspaceName>): Tour {
  const [step, setStep] = createSignal<TourStep | null>(null);
  const [said, setSaid] = createSignal('');

  // Whoever opened a joint by themselves has done what the first note asks for.
  createEffect(() => {
    if (workspace() === 'size' && step() === 'joint') setStep('overlap');
  });

  /** The focus goes with the note that had it, and stays where it is otherwise. */
  const move = (next: TourStep | null): void => {
    const had = isInNote();
    setStep(next);
    if (next === null) setSaid('');
    if (!had) return;
    requestAnimationFrame(() => {
      const button = document.querySelector<HTMLElement>('.tour-note button');
      if (button) button.focus();
      else keepFocus();
    });
  };
  return {
    step,
    said,
    say: setSaid,
    start: () => setStep(workspace() === 'size' ? 'overlap' : 'joint'),
    async startFirst() {
      // Asked once, before anything is shown: another window of this user may have shown them.
      const reply = await bridge.ask('app.first-start', {});
      const first = !isRemembered() && (!reply.ok || reply.value.first);
      remember();
      if (first) setStep('joint');
    },
    next() {
      const at = step();
      move(at === null ? null : (tourSteps[tourSteps.indexOf(at) + 1] ?? null));
    },
    close: () => move(null),
  };
}

/** None in a part of the page that is shown by itself. */
export const TourContext = createContext<Tour | null>(null);
export const useTour = (): Tour | null => useContext(TourContext);
