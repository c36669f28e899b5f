/** Tells when figures lag behind what they should be of, so that they can be dimmed: no others pass for current. */
import { type Accessor, createEffect, createSignal, onCleanup } from 'solid-js';

/** Milliseconds. Below this an answer is on the screen before a dimming would be noticed. */
const PATIENCE = 150;

export interface Lag<State> {
  /** What the figures should be of: the state that is drawn beside them. */
  readonly wanted: Accessor<State>;
  /** What they are of. */
  readonly shown: Accessor<State>;
  /** False while nothing is asked, or what was asked is refused. */
  readonly active: Accessor<boolean>;
}

/**
 * True once what is shown has been of another state for a while. In a long drag it is always a little behind:
 * what counts is how long ago the state went that it is of, not how long the drag has lasted.
 */
export function createSlow<State>({ wanted, shown, active }: Lag<State>): Accessor<boolean> {
  const [slow, setSlow] = createSignal(false);
  /** Each state that was wanted since the one that is shown, and since when; the latest last. */
  let states: { readonly state: State; readonly since: number }[] = [];
  createEffect(() => {
    const [now, here, isActive] = [wanted(), shown(), active()];
    if (states.at(-1)?.state !== now) states.push({ state: now, since: performance.now() });
    if (!isActive || now === here) {
      states = states.slice(-1);
      setSlow(false);
      return;
    }
    const at = states.findIndex(({ state }) => state === here);
    states = states.slice(Math.max(0, at));
    // The one after it took its place; where it was never wanted, the first that was.
    const { since } = (at < 0 ? states[0] : states[1])!;
    const left = since + PATIENCE - performance.now();
    setSlow(left <= 0);
    if (left <= 0) return;
    const timer = setTimeout(() => setSlow(true), left);
    onCleanup(() => clearTimeout(timer));
  });
  return slow;
}
