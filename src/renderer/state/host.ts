/** Whether somebody still answers the page: told by the very requests that it sends. */
import { type Accessor, batch, createSignal, onCleanup } from 'solid-js';
import type { Bridge } from '../../shared/contract.ts';

export interface Host {
  /** All requests go through it. */
  readonly bridge: Bridge;
  /** True from one that nobody answered until one that somebody does. */
  readonly gone: Accessor<boolean>;
  /** True from a sign of life that has waited too long until anything is answered: it may be stopped, or hang. */
  readonly silent: Accessor<boolean>;
}

/** Milliseconds. */
const TICK = 1000;
/** Ticks that a sign of life may wait; not by the clock, for a machine that sleeps ticks no more than once. */
export const PATIENCE = 15;
/** A browser has so many requests on their way at once. Where long ones take them all, a sign waits for its turn. */
const AT_ONCE = 6;
const PATIENCE_IN_TURN = 4 * PATIENCE;

export function watchHost(bridge: Bridge): Host {
  const [gone, setGone] = createSignal(false);
  const [silent, setSilent] = createSignal(false);
  let signs = 0;
  let waiting = 0;
  let ticks = 0;
  let ticking: ReturnType<typeof setInterval> | undefined;
  const tick = (): void => {
    ticks += 1;
    if (ticks >= (waiting > AT_ONCE ? PATIENCE_IN_TURN : PATIENCE)) setSilent(true);
  };
  const stop = (): void => {
    clearInterval(ticking);
    ticking = undefined;
  };
  onCleanup(stop);

  const ask: Bridge['ask'] = async (name, input) => {
    // Others may take as long as they compute.
    const isSign = name === 'app.about';
    waiting += 1;
    if (isSign) {
      if (signs === 0) ticks = 0;
      signs += 1;
      ticking ??= setInterval(tick, TICK);
    }
    try {
      const reply = await bridge.ask(name, input);
      batch(() => {
        setGone(!reply.ok && reply.error.code === 'unreachable');
        setSilent(false);
      });
      return reply;
    } finally {
      ticks = 0;
      waiting -= 1;
      if (isSign) signs -= 1;
      if (signs === 0) stop();
    }
  };
  return { bridge: { ...bridge, ask }, gone, silent };
}
