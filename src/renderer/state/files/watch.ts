/** Whether another program has written the file since: looked at on coming back, and every few seconds. */
import { type Accessor, createEffect, createSignal, on, onCleanup, onMount } from 'solid-js';
import type { Bridge } from '../../../shared/contract.ts';
import type { FileOnDisk } from '../../../shared/reports-files.ts';

/** How the file stands now, where that is not as it was opened or saved. */
export type Outside =
  | { readonly kind: 'changed'; readonly stamp: string; readonly at: string }
  | { readonly kind: 'gone'; readonly stamp: null };

export interface Watch {
  readonly outside: Accessor<Outside | null>;
  look(): Promise<void>;
}

/** Milliseconds between two looks, while the page is seen. */
export const EVERY = 5000;

/** @param busy true while the page itself writes the file */
export function createWatch(
  bridge: Bridge,
  file: Accessor<FileOnDisk | null>,
  busy: Accessor<boolean>,
): Watch {
  const [outside, setOutside] = createSignal<Outside | null>(null);
  let looking = false;

  const look = async (): Promise<void> => {
    const here = file();
    if (!here || looking || busy()) return;
    looking = true;
    const reply = await bridge.ask('file.stamp', { path: here.path });
    looking = false;
    // Saved meanwhile, or another one: the answer is of what was.
    if (!reply.ok || file() !== here || busy()) return;
    const { stamp, at } = reply.value;
    if (stamp === outside()?.stamp) return;
    if (stamp === here.stamp) setOutside(null);
    else if (stamp === null) setOutside({ kind: 'gone', stamp });
    else setOutside({ kind: 'changed', stamp, at: at ?? new Date().toISOString() });
  };
  createEffect(on(file, () => setOutside(null)));

  const seen = (): void => {
    if (document.visibilityState !== 'hidden') void look();
  };
  onMount(() => {
    const timer = setInterval(seen, EVERY);
    window.addEventListener('focus', seen);
    document.addEventListener('visibilitychange', seen);
    onCleanup(() => {
      clearInterval(timer);
      window.removeEventListener('focus', seen);
      document.removeEventListener('visibilitychange', seen);
    });
  });
  return { outside, look };
}
