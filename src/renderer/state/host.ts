/** Whether somebody still answers the page: told by the very requests that it sends. */
import { type Accessor, createSignal } from 'solid-js';
import type { Bridge } from '../../shared/contract.ts';

export interface Host {
  /** All requests go through it. */
  readonly bridge: Bridge;
  /** True from one that nobody answered until one that somebody does. */
  readonly gone: Accessor<boolean>;
}

export function watchHost(bridge: Bridge): Host {
  const [gone, setGone] = createSignal(false);
  const ask: Bridge['ask'] = async (name, input) => {
    const reply = await bridge.ask(name, input);
    setGone(!reply.ok && reply.error.code === 'unreachable');
    return reply;
  };
  return { bridge: { ...bridge, ask }, gone };
}
