/**
 * The page's one way to ask. Inside Electron the preload has put a bridge on the window; in a
 * browser the page makes its own for the loopback host that served it.
 */
import type { Answers, Bridge, RequestInput, RequestName } from '../shared/contract.ts';
import { type Reply, refuse } from '../shared/reply.ts';

declare global {
  interface Window {
    readonly lapwright?: Bridge;
  }
}

const REQUEST_TIMEOUT = 408;
const TOKEN_KEY = 'lapwright-token';

/** The token comes in the fragment, which no server sees, and does not stay in the address bar. */
export function takeToken(page: Window): string | null {
  const inHash = new URLSearchParams(page.location.hash.slice(1)).get('token');
  if (inHash) {
    page.sessionStorage.setItem(TOKEN_KEY, inHash);
    page.history.replaceState(null, '', page.location.pathname + page.location.search);
  }
  return page.sessionStorage.getItem(TOKEN_KEY);
}

const isReply = (value: unknown): value is Reply<never> =>
  typeof value === 'object' && value !== null && 'ok' in value && typeof value.ok === 'boolean';

const stopped = (): Reply<never> => refuse('unreachable', '', 'There is no answer.');

/** Tells this page's long requests from those of another tab. */
const pageName = (): string =>
  Array.from(crypto.getRandomValues(new Uint32Array(4)), (part) => part.toString(36)).join('-');

export function makeLoopbackBridge(token: string | null): Bridge {
  const page = pageName();
  return {
    carrier: 'loopback',
    async ask<N extends RequestName>(name: N, input: RequestInput<N>): Promise<Reply<Answers[N]>> {
      let reply: unknown;
      // As it is now, also when it has to be sent once more.
      const body = JSON.stringify(input);
      const post = (): Promise<Response> =>
        fetch(`/ask/${name}`, {
          method: 'POST',
          headers: {
            'content-type': 'application/json',
            authorization: `Bearer ${token ?? ''}`,
            'x-lapwright-page': page,
          },
          body,
        });
      try {
        let response = await post();
        // A host that was busy for long gave up before it had read the request: nothing was done.
        if (response.status === REQUEST_TIMEOUT) response = await post();
        if (response.status === 401 || response.status === 403) {
          return refuse('unreachable', '', 'This page is not from the Lapwright that runs now.');
        }
        reply = await response.json();
      } catch {
        return stopped();
      }
      return isReply(reply) ? reply : refuse('internal', '', 'The answer could not be read.');
    },
  };
}

/** Electron's bridge rejects when its handler breaks; a page only ever sees replies. */
function unbreakable(bridge: Bridge): Bridge {
  return {
    ...bridge,
    ask: (name, input) =>
      bridge
        .ask(name, input)
        .catch(() => refuse('internal', '', 'The calculation stopped unexpectedly. Try again.')),
  };
}

export const findBridge = (page: Window): Bridge =>
  page.lapwright ? unbreakable(page.lapwright) : makeLoopbackBridge(takeToken(page));
