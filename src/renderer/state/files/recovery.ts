/**
 * The unsaved document on disk, outside of its file: kept a few seconds after each change, dropped once it is
 * saved or put away. What an earlier page left is offered.
 */
import { type Accessor, createEffect, createSignal, on, onCleanup, onMount } from 'solid-js';
import type { Bridge } from '../../../shared/contract.ts';
import { SILENCE } from '../../../shared/contract-files.ts';
import type { Reply, RequestError } from '../../../shared/reply.ts';
import type {
  FileOnDisk,
  Recovered,
  RecoveryDropped,
  RecoveryKept,
} from '../../../shared/reports-files.ts';
import type { ProjectState } from '../project.ts';
import { makePageIds } from './page-ids.ts';

/** Milliseconds from a change to when it is kept at the latest; the rest of five seconds is for the disk. */
export const KEEP_WITHIN = 4000;
/** Milliseconds between two signs that this page is still there. */
const SIGN = 5000;
/** Milliseconds until it is asked once more what was left: of a page that went right before this one came. */
export const AGAIN = SILENCE + 10_000;

export type KeptDocument = RecoveryKept['kept'][number] & {
  /** This very page had it, before it was loaded anew. */
  readonly ofThisPage?: boolean;
};

/** What the user put away: it lies there until then at least. */
export interface PutAway {
  readonly kept: KeptDocument;
  readonly at: string;
  readonly until: string;
}

export interface Recovery {
  readonly offered: Accessor<readonly KeptDocument[]>;
  /** Why changes could not be kept; null when they were, when there are none, and when nobody answers. */
  readonly trouble: Accessor<string | null>;
  /** When the unsaved changes were last kept; null where none are. */
  readonly keptAt: Accessor<string | null>;
  /** Takes it for opening; it stays kept until `drop`. */
  open(kept: KeptDocument): Promise<Recovered | RequestError>;
  /** Offers it no more. */
  drop(kept: KeptDocument): Promise<void>;
  /** As `drop`, at the user's wish: it can be taken back. */
  putAway(kept: KeptDocument): Promise<void>;
  readonly away: Accessor<readonly PutAway[]>;
  takeBack(away: PutAway): Promise<void>;
  /** The user knows where it lies. */
  closeAway(away: PutAway): void;
  /** Keeps the document as it is now, not in a while. */
  now(): Promise<void>;
}

export interface RecoverySource {
  readonly bridge: Bridge;
  readonly project: ProjectState;
  readonly file: Accessor<FileOnDisk | null>;
  readonly onRefused: (error: RequestError) => void;
}

export function createRecovery({ bridge, project, file, onRefused }: RecoverySource): Recovery {
  const [offered, setOffered] = createSignal<readonly KeptDocument[]>([]);
  const [away, setAway] = createSignal<readonly PutAway[]>([]);
  const [trouble, setTrouble] = createSignal<string | null>(null);
  const ids = makePageIds();
  const [keptAt, setKeptAt] = createSignal<string | null>(null);
  /** Of this opening; empty until something of it is kept. */
  let own = '';
  let timer: ReturnType<typeof setTimeout> | undefined;
  /** One after the other: what is dropped must not be kept again by what was sent before. */
  let last: Promise<unknown> = Promise.resolve();
  const inTurn = <T>(act: () => Promise<T>): Promise<T> => {
    const done = last.then(act);
    last = done.catch(() => undefined);
    return done;
  };
  const wait = (): void => {
    timer ??= setTimeout(() => void now(), KEEP_WITHIN);
  };
  const stopWaiting = (): void => {
    clearTimeout(timer);
    timer = undefined;
  };

  /** Revision that is kept, or on its way. */
  let keptRevision = -1;
  function now(): Promise<void> {
    stopWaiting();
    const document = project.plain();
    if (!document || !project.unsaved()) return last.then(() => undefined);
    if (own === '') own = ids.make();
    keptRevision = project.revision();
    const input = {
      recovery: own,
      // As it is now: it waits for its turn.
      document: structuredClone(document),
      origin: project.origin().slice(0, 300),
      path: file()?.path ?? null,
      expect: file()?.stamp ?? null,
    };
    return inTurn(async () => {
      if (input.recovery !== own) return;
      const reply = await bridge.ask('recovery.keep', input);
      setTrouble(reply.ok || reply.error.code === 'unreachable' ? null : reply.error.message);
      if (reply.ok && input.recovery === own) setKeptAt(reply.value.at);
      if (reply.ok || input.recovery !== own) return;
      keptRevision = -1;
      wait();
    });
  }
  const dropOwn = (): void => {
    stopWaiting();
    const id = own;
    own = '';
    keptRevision = -1;
    setTrouble(null);
    setKeptAt(null);
    if (id === '') return;
    ids.remove(id);
    void inTurn(() => bridge.ask('recovery.drop', { recovery: id }));
  };

  createEffect(on(project.opening, dropOwn, { defer: true }));
  createEffect(
    on([project.revision, project.unsaved], ([revision, unsaved]) => {
      if (!unsaved) dropOwn();
      else if (revision !== keptRevision) wait();
    }),
  );

  const hidden = (): void => {
    // A page that is not seen may be ended without a word.
    if (document.visibilityState === 'hidden' && timer !== undefined) void now();
  };
  onMount(() => {
    let signing = false;
    const signs = setInterval(async () => {
      // Where answers are slow the first sign is enough.
      if (ids.read().length === 0 || signing) return;
      signing = true;
      await bridge.ask('app.about', {});
      signing = false;
    }, SIGN);
    const again = setTimeout(() => void offerOthers(), AGAIN);
    document.addEventListener('visibilitychange', hidden);
    onCleanup(() => {
      clearInterval(signs);
      document.removeEventListener('visibilitychange', hidden);
      clearTimeout(again);
      stopWaiting();
      ids.close();
    });
    void offer();
  });

  async function offer(): Promise<void> {
    const mine = await ids.claim();
    const others = (await leftByOthers()) ?? [];
    const before = await Promise.all(mine.map(describe));
    setOffered([...before.flatMap((one) => one ?? []), ...others]);
  }
  async function offerOthers(): Promise<void> {
    const others = await leftByOthers();
    if (others === null) return;
    const isIn = (list: readonly KeptDocument[], { recovery }: KeptDocument): boolean =>
      list.some((one) => one.recovery === recovery);
    // Not what is somebody's after all: right after a sleep the host knew no better, or it was opened elsewhere.
    setOffered((list) => [
      ...list.filter((one) => one.ofThisPage || isIn(others, one)),
      ...others.filter((one) => !isIn(list, one)),
    ]);
  }
  /** By silence alone the host cannot tell a page that sleeps from one that is gone. */
  async function leftByOthers(): Promise<readonly KeptDocument[] | null> {
    const own = ids.read();
    const reply = await bridge.ask('recovery.kept', { own: [...own] });
    if (!reply.ok) return null;
    const here = await ids.ofPagesHere();
    return reply.value.kept.filter(
      ({ recovery }) => !here.has(recovery) && !own.includes(recovery),
    );
  }
  /** Of this page before it was loaded anew: nobody else is offered it. */
  async function describe(recovery: string): Promise<KeptDocument | null> {
    const reply = await bridge.ask('recovery.open', { recovery });
    if (!reply.ok) {
      if (reply.error.code === 'not-found') ids.remove(recovery);
      return null;
    }
    const { document: kept, origin, file: stands, expect, at } = reply.value;
    return {
      recovery,
      project: kept.name,
      origin,
      path: stands?.path ?? null,
      at,
      changedSince: stands !== null && stands.stamp !== expect,
      ofThisPage: true,
    };
  }
  const offerNoMore = ({ recovery }: KeptDocument): void => {
    setOffered((list) => list.filter((one) => one.recovery !== recovery));
    ids.remove(recovery);
  };
  const drop = ({ recovery }: KeptDocument): Promise<Reply<RecoveryDropped>> =>
    inTurn(() => bridge.ask('recovery.drop', { recovery }));
  const closeAway = (gone: PutAway): void => {
    setAway((list) => list.filter((one) => one !== gone));
  };

  return {
    offered,
    trouble,
    keptAt,
    now,
    async open({ recovery }) {
      const reply = await bridge.ask('recovery.open', { recovery });
      return reply.ok ? reply.value : reply.error;
    },
    async drop(kept) {
      offerNoMore(kept);
      await drop(kept);
    },
    away,
    closeAway,
    async putAway(kept) {
      const reply = await drop(kept);
      if (!reply.ok) return onRefused(reply.error);
      offerNoMore(kept);
      const { at, until } = reply.value;
      if (at !== null && until !== null) setAway((list) => [...list, { kept, at, until }]);
    },
    async takeBack(gone) {
      const { kept } = gone;
      const reply = await inTurn(() =>
        bridge.ask('recovery.take-back', { recovery: kept.recovery }),
      );
      if (!reply.ok) return onRefused(reply.error);
      closeAway(gone);
      if (!reply.value.back) return;
      if (kept.ofThisPage) ids.add(kept.recovery);
      setOffered((list) => [kept, ...list]);
    },
  };
}
