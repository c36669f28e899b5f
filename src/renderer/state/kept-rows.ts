/**
 * Rows of coupon results on disk, while no project file has them: kept as they are typed, offered again
 * after the window has died. What an earlier window left stays on disk until it is taken in or put away.
 */
import { type Accessor, batch, createEffect, createMemo, createSignal, on } from 'solid-js';
import type { Bridge } from '../../shared/contract.ts';
import { couponSheet } from '../../shared/coupon-text.ts';
import type { KeptRow, KeptSet } from '../../shared/kept-rows.ts';
import type { CouponRows } from '../coupons/result-columns.ts';
import { type Latest, makeLatest } from '../latest.ts';
import type { CouponsState } from './coupons.ts';
import type { ProjectState } from './project.ts';
import {
  type CouponGridRow,
  countKept,
  type KeptCount,
  notHere,
  resultText,
  toKeep,
  withKept,
} from './unfinished.ts';

export interface KeptRows {
  /** Of sets of this project, what is not in it. */
  readonly offered: Accessor<readonly KeptSet[]>;
  count(kept: KeptSet): KeptCount;
  takeIn(kept: KeptSet): void;
  putAway(kept: KeptSet): void;
  /** When rows were last kept; null before, and where there is none to keep. */
  readonly keptAt: Accessor<string | null>;
  readonly trouble: Accessor<string | null>;
}

export interface KeptRowsSource {
  readonly bridge: Bridge;
  readonly project: ProjectState;
  readonly coupons: CouponsState;
  readonly rows: CouponRows;
  readonly active: Accessor<boolean>;
}

interface Keeping {
  readonly project: string;
  readonly setId: string;
  readonly rows: readonly KeptRow[];
}

const none: ReadonlySet<string> = new Set();

export function createKeptRows(source: KeptRowsSource): KeptRows {
  const { bridge, project, coupons, rows, active } = source;
  /** As they were found on disk when the project was opened, and are not dealt with yet. */
  const [found, setFound] = createSignal<readonly KeptSet[]>([]);
  /** Of which opening it is known what is on disk: before, nothing may be written over. */
  const [ready, setReady] = createSignal(-1);
  const [keptAt, setKeptAt] = createSignal<string | null>(null);
  const [trouble, setTrouble] = createSignal<string | null>(null);

  /** What was last sent to be kept of a set, or stands on disk of it. */
  const written = new Map<string, string>();

  let asked = -1;
  createEffect(
    on([active, project.opening], async ([looked, opening]) => {
      const name = project.plain()?.name;
      if (!looked || name === undefined || asked === opening) return;
      asked = opening;
      written.clear();
      batch(() => {
        setFound([]);
        setKeptAt(null);
        setTrouble(null);
      });
      const reply = await bridge.ask('rows.kept', { project: name });
      if (asked !== opening || project.opening() !== opening) return;
      const sets = reply.ok ? reply.value.sets : [];
      for (const { setId, rows: list } of sets) written.set(setId, JSON.stringify(list));
      batch(() => {
        if (!reply.ok) setTrouble(reply.error.message);
        setFound(sets);
        setReady(opening);
      });
    }),
  );

  /** Results as the file has them: that of the last opening or saving. */
  const saved = createMemo<ReadonlyMap<string, ReadonlySet<string>>>((before) => {
    project.opening();
    if (project.unsaved()) return before;
    const sets = project.plain()?.coupons?.sets ?? [];
    return new Map(sets.map(({ id, results }) => [id, new Set(results.map(resultText))]));
  }, new Map());

  const here = (id: string): readonly CouponGridRow[] =>
    rows.grids().get(id) ??
    (coupons.sets().find((set) => set.id === id)?.results ?? []).map((stored) => ({
      text: couponSheet.rowOf(stored),
      stored,
    }));
  const offered = createMemo((): readonly KeptSet[] => {
    if (ready() !== project.opening()) return [];
    const ids = new Set(coupons.sets().map(({ id }) => id));
    return found().flatMap((kept) => {
      const list = ids.has(kept.setId) ? notHere(kept.rows, here(kept.setId)) : [];
      return list.length === 0 ? [] : [{ ...kept, rows: list }];
    });
  });

  const keepers = new Map<string, Latest<Keeping>>();
  const keeperOf = (id: string): Latest<Keeping> => {
    const known = keepers.get(id);
    if (known) return known;
    // One for each set: a set never takes the place of another that waits.
    const keeper = makeLatest(
      (keeping: Keeping) => bridge.ask('rows.keep', { ...keeping, rows: [...keeping.rows] }),
      (reply) =>
        batch(() => {
          setTrouble(reply.ok ? null : reply.error.message);
          if (reply.ok) setKeptAt(reply.value.at);
        }),
    );
    keepers.set(id, keeper);
    return keeper;
  };
  createEffect(
    on([ready, rows.grids, offered, saved], ([opening, grids, pending, inFile]) => {
      const name = project.plain()?.name;
      if (opening !== project.opening() || name === undefined) return;
      const sets = new Set(coupons.sets().map(({ id }) => id));
      for (const [id, list] of grids) {
        // Of a set that was removed on purpose nothing is told any more, and nothing taken from the disk.
        if (!sets.has(id)) continue;
        const earlier = pending.find(({ setId }) => setId === id)?.rows ?? [];
        const now = [...earlier, ...toKeep(list, inFile.get(id) ?? none)];
        const text = JSON.stringify(now);
        if (text === (written.get(id) ?? '[]')) continue;
        written.set(id, text);
        keeperOf(id).ask({ project: name, setId: id, rows: now });
      }
    }),
  );

  const dealtWith = (id: string): void => {
    setFound((list) => list.filter(({ setId }) => setId !== id));
  };
  return {
    offered,
    count: ({ setId, rows: list }) => countKept(list, here(setId)),
    takeIn(kept) {
      coupons.choose(kept.setId);
      coupons.show('results');
      batch(() => {
        rows.renew(withKept(rows.rows(), kept.rows));
        dealtWith(kept.setId);
      });
    },
    async putAway(kept) {
      const reply = await bridge.ask('rows.drop', { project: kept.project, setId: kept.setId });
      batch(() => {
        if (!reply.ok) setTrouble(reply.error.message);
        dealtWith(kept.setId);
      });
    },
    keptAt,
    trouble,
  };
}
