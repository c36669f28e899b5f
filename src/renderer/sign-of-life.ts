/** A page in a browser tells its host now and then that it is there: the host stops when no page is. */
import type { Bridge } from '../shared/contract.ts';

/** Milliseconds. */
export const SIGN_OF_LIFE = 30_000;

/** In Electron windows are seen to close; nothing has to be said. Gives what ends it. */
export function giveSigns({ carrier, ask }: Bridge): () => void {
  if (carrier !== 'loopback') return () => undefined;
  const signs = setInterval(() => void ask('app.about', {}), SIGN_OF_LIFE);
  return () => clearInterval(signs);
}
