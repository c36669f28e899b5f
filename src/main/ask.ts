/**
 * The one door to the model. Whatever carries a request (Electron IPC, the loopback route, the
 * command line), it ends here: name and input are checked, the handler runs, the reply is data.
 */
import { isRequestName, requests } from '../shared/contract.ts';
import { type Reply, refuse } from '../shared/reply.ts';
import type { About, Opened } from '../shared/reports.ts';

export interface AskOptions {
  readonly carrier: About['carrier'];
  /** What the app opens with; the demonstration project when left out. */
  readonly initial?: () => Reply<Opened>;
}

export type Ask = (name: unknown, input: unknown) => Promise<Reply<unknown>>;

export function createAsk(_options: AskOptions): Ask {
  return async (name, input) => {
    if (!isRequestName(name)) return refuse('bad-request', '', 'There is no such request.');
    const parsed = requests[name].safeParse(input);
    if (!parsed.success) return refuse('bad-request', '', `${name}: the request is malformed.`);
    return refuse('internal', '', 'Not connected yet.');
  };
}
