/** Carries requests from a page to the core, after looking at who sends them. */
import type { IpcMain, IpcMainInvokeEvent } from 'electron';
import { ASK_CHANNEL } from '../../shared/channel.ts';
import { type Reply, refuse } from '../../shared/reply.ts';
import type { AskFor } from '../jobs/ask-with-jobs.ts';
import { isPageAddress } from './page-protocol.ts';

/** The core of each open window, by the number of its web contents. */
export type WindowAsks = ReadonlyMap<number, AskFor>;

/** Only the top frame of a window of ours, showing our page, may ask. */
export function askOfSender(event: IpcMainInvokeEvent, windows: WindowAsks): AskFor | null {
  const { sender, senderFrame } = event;
  if (senderFrame === null || senderFrame !== sender.mainFrame) return null;
  if (!isPageAddress(senderFrame.url)) return null;
  return windows.get(sender.id) ?? null;
}

export function answerAsks(ipc: IpcMain, windows: WindowAsks): void {
  ipc.handle(
    ASK_CHANNEL,
    (event, name: unknown, input: unknown): Promise<Reply<unknown>> | Reply<unknown> => {
      const ask = askOfSender(event, windows);
      if (!ask) return refuse('bad-request', '', 'Only the page of this program may ask.');
      return ask(name, input, { client: String(event.sender.id) });
    },
  );
}
