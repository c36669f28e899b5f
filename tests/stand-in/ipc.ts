/** Stands for the main process's end of IPC. */
import type { StandInContents, StandInFrame } from './web-contents.ts';

export interface InvokeEvent {
  readonly sender: StandInContents;
  readonly senderFrame: StandInFrame | null;
}

type Handler = (event: InvokeEvent, ...args: unknown[]) => unknown;

const handlers = new Map<string, Handler>();

export const ipcMain = {
  handle(channel: string, handler: Handler): void {
    if (handlers.has(channel)) throw new Error(`There is a handler for ${channel} already.`);
    handlers.set(channel, handler);
  },
  /** What arrives from a page. */
  deliver(
    sender: StandInContents,
    senderFrame: StandInFrame | null,
    channel: string,
    args: readonly unknown[],
  ): unknown {
    const handler = handlers.get(channel);
    if (!handler) throw new Error(`There is no handler for ${channel}.`);
    return handler({ sender, senderFrame }, ...args);
  },
};
