/** What the dialog of folders shows: one folder, its folders first, then its projects, one of them chosen. */
import { type Accessor, batch, createMemo, createSignal } from 'solid-js';
import type { Bridge } from '../../shared/contract.ts';
import type { Reply } from '../../shared/reply.ts';
import type { FolderView } from '../../shared/reports-files.ts';
import { inFolder } from './file-words.ts';

export type FolderEntry =
  | { readonly kind: 'folder'; readonly path: string; readonly name: string }
  | { readonly kind: 'project'; readonly path: string; readonly name: string; readonly at: string };

export interface FolderState {
  readonly view: Accessor<FolderView | null>;
  readonly entries: Accessor<readonly FolderEntry[]>;
  /** Place of the one that the keys are at; −1 where there is none. */
  readonly at: Accessor<number>;
  setAt(at: number): void;
  readonly current: Accessor<FolderEntry | undefined>;
  readonly trouble: Accessor<string | null>;
  go(folder: string | undefined): Promise<void>;
  /** To the folder above, with the keys at the one that was left. */
  up(): Promise<void>;
  /** The folder that is seen may be used from now on. */
  choose(): Promise<void>;
  /** Makes a folder in it and goes there. True when it is there. */
  make(name: string): Promise<boolean>;
  /** A folder was asked for and has not come. */
  isGoing(): boolean;
  /** Comes when the folder that was asked for last is seen, or was refused. */
  settled(): Promise<void>;
}

/** @param onChosen told when a folder was chosen */
export function createFolderState(bridge: Bridge, onChosen: () => void): FolderState {
  const [view, setView] = createSignal<FolderView | null>(null);
  const [at, setAt] = createSignal(-1);
  const [trouble, setTrouble] = createSignal<string | null>(null);
  const entries = createMemo((): readonly FolderEntry[] => {
    const { folders = [], projects = [] } = view() ?? {};
    return [
      ...folders.map((one) => ({ kind: 'folder' as const, ...one })),
      ...projects.map((one) => ({ kind: 'project' as const, ...one })),
    ];
  });
  /** Counts the wishes: only the last one is shown. */
  let turn = 0;
  let seen = 0;
  let under: Promise<boolean> = Promise.resolve(true);
  const show = (
    ask: () => Promise<Reply<FolderView>>,
    from: string | null = null,
  ): Promise<boolean> => {
    under = look(ask, from);
    return under;
  };
  async function look(
    ask: () => Promise<Reply<FolderView>>,
    from: string | null,
  ): Promise<boolean> {
    turn += 1;
    const mine = turn;
    const reply = await ask();
    if (mine !== turn) return false;
    seen = turn;
    batch(() => {
      setTrouble(reply.ok ? null : reply.error.message);
      if (!reply.ok) return;
      setView(reply.value);
      const found = entries().findIndex(({ path }) => path === from);
      // Projects are what is looked for.
      const project = entries().findIndex(({ kind }) => kind === 'project');
      setAt(found >= 0 ? found : project >= 0 ? project : entries().length > 0 ? 0 : -1);
    });
    return reply.ok;
  }
  const go = async (folder: string | undefined): Promise<void> => {
    await show(() => bridge.ask('folder.look', folder === undefined ? {} : { folder }));
  };
  return {
    view,
    entries,
    at,
    setAt,
    current: () => entries()[at()],
    trouble,
    go,
    async up() {
      const here = view();
      if (!here || here.above === null) return;
      const { above: folder, path } = here;
      await show(() => bridge.ask('folder.look', { folder }), path);
    },
    async choose() {
      const here = view();
      if (!here) return;
      const chosen = await show(() => bridge.ask('folder.choose', { folder: here.path }));
      if (chosen) onChosen();
    },
    async make(name) {
      const here = view();
      if (!here) return false;
      const folder = inFolder(here.path, name);
      const made = await show(() => bridge.ask('folder.choose', { folder, make: true }));
      if (made) onChosen();
      return made;
    },
    isGoing: () => turn !== seen,
    async settled() {
      while (turn !== seen) await under;
    },
  };
}
