/** Tells when an answer is long in coming, so that figures which no longer hold can be dimmed. */
import { type Accessor, createEffect, createMemo, createSignal, onCleanup } from 'solid-js';

/** Below this an answer is on the screen before a dimming would be noticed. */
const PATIENCE = 600;

/**
 * @param behind true while what is shown is older than what was asked about
 * @param answered changes with every answer: in a long drag, each gives new patience
 */
export function createSlow(
  behind: Accessor<boolean>,
  answered: Accessor<unknown>,
): Accessor<boolean> {
  const [slow, setSlow] = createSignal(false);
  const isBehind = createMemo(behind);
  createEffect(() => {
    answered();
    setSlow(false);
    if (!isBehind()) return;
    const timer = setTimeout(() => setSlow(true), PATIENCE);
    onCleanup(() => clearTimeout(timer));
  });
  return slow;
}
