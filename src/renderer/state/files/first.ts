/**
 * What a window begins with: the file that it had before it was loaded anew, else what the start names. Where
 * that is no file, the one that was open last is named, until another is opened or the user closes the line.
 */
import { type Accessor, createSignal } from 'solid-js';
import type { Bridge } from '../../../shared/contract.ts';
import type { RequestError } from '../../../shared/reply.ts';
import type { Opened } from '../../../shared/reports.ts';
import type { FilePlaces, RecentFile } from '../../../shared/reports-files.ts';
import { lastPart } from '../../project-file/file-words.ts';
import { lastClosed, windowFile } from './window-file.ts';

export interface First {
  /** True when a project is there. */
  start(): Promise<boolean>;
  /** The file that was open last, while it is worth a line. */
  readonly lastWorked: Accessor<RecentFile | null>;
  /** Another project has come, or the user wants no word of it. */
  hideLast(): void;
  closeLast(): void;
}

export interface FirstSource {
  readonly bridge: Bridge;
  readonly places: () => Promise<FilePlaces>;
  readonly show: (opened: Opened) => void;
  /** Nothing could be opened to begin with. */
  readonly onRefused: (error: RequestError) => void;
  readonly couldNot: (name: string, error: RequestError) => void;
}

export function createFirst(source: FirstSource): First {
  const { bridge, places, show, onRefused, couldNot } = source;
  const [lastWorked, setLastWorked] = createSignal<RecentFile | null>(null);
  /** A project was shown since the window began: the line would come too late. */
  let shown = 0;

  async function begin(): Promise<boolean> {
    const reply = await bridge.ask('project.initial', {});
    if (!reply.ok) {
      onRefused(reply.error);
      return false;
    }
    show(reply.value);
    if (reply.value.file || lastClosed.read()) return true;
    const mine = shown;
    const [last = null] = (await places()).recent;
    if (mine === shown) setLastWorked(last);
    return true;
  }

  return {
    lastWorked,
    hideLast() {
      shown += 1;
      setLastWorked(null);
    },
    closeLast() {
      lastClosed.write();
      setLastWorked(null);
    },
    async start() {
      const path = windowFile.read();
      if (path === null) return begin();
      const reply = await bridge.ask('file.open', { path });
      if (reply.ok) show(reply.value);
      else if (reply.error.code === 'unreachable') {
        onRefused(reply.error);
        return false;
      } else {
        if (!(await begin())) return false;
        couldNot(lastPart(path), reply.error);
      }
      return true;
    },
  };
}
