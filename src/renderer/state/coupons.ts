/**
 * Coupons on the page: which set, which view, and what is known of each set. A set is asked for again
 * only when something that its figures hang on has changed; the one that is looked at comes first.
 */
import {
  type Accessor,
  batch,
  createEffect,
  createMemo,
  createSignal,
  on,
  onCleanup,
} from 'solid-js';
import type { Bridge } from '../../shared/contract.ts';
import type { Project } from '../../shared/project.ts';
import type { CouponSet, Coupons, Specimen } from '../../shared/project-coupons.ts';
import type { RequestError } from '../../shared/reply.ts';
import type { Correlation, CouponSetReport, GapCurve } from '../../shared/reports-coupons.ts';
import { makeSettle } from '../settle.ts';
import { createJob, type Job } from './job.ts';
import type { ProjectState } from './project.ts';

export type CouponView = 'plan' | 'results' | 'statistics' | 'agreement';

export interface CouponsState {
  readonly view: Accessor<CouponView>;
  show(view: CouponView): void;
  readonly sets: Accessor<readonly CouponSet[]>;
  readonly specimens: Accessor<readonly Specimen[]>;
  /** The set that is looked at; the first one until another is chosen. */
  readonly current: Accessor<CouponSet | null>;
  choose(id: string): void;
  /** What is known of a set; also while it is being worked out anew: see `old`. */
  report(id: string): CouponSetReport | null;
  /** True where what is known is of the set before its last change. */
  old(id: string): boolean;
  refusal(id: string): RequestError | null;
  /** Says that all sets of an adhesive together are looked at; null when they are not. */
  lookAtAll(adhesive: string | null): void;
  /** Over all sets of an adhesive; null until it is known. */
  overall(adhesive: string): {
    readonly correlation: Correlation | null;
    readonly gapCurves: readonly GapCurve[];
  } | null;
  /** Of the model that answered last; null before. */
  readonly modelVersion: Accessor<string | null>;
  readonly job: Job;
  /** Sets that are still to be worked out. */
  readonly left: Accessor<number>;
  readonly stopped: Accessor<boolean>;
  /** Goes on after a stop. */
  goOn(): void;
}

export interface CouponsSource {
  readonly bridge: Bridge;
  readonly project: ProjectState;
  readonly active: Accessor<boolean>;
}

/** Milliseconds of quiet before anything is asked for. */
const QUIET = 400;
/** Sets of one question: what a change meanwhile throws away. */
const TOGETHER = 8;

interface Known {
  readonly key: string;
  readonly report: CouponSetReport | null;
  readonly refusal: RequestError | null;
}
interface Overall {
  readonly key: string;
  readonly correlation: Correlation | null;
  readonly gapCurves: readonly GapCurve[];
}

/** The document with these sets alone: no joint is needed, and its mistakes would be in the way. */
function withSets(project: Project, ids: readonly string[]): Project {
  const { variants: _v, gapChecks: _g, coupons, ...rest } = project;
  const sets = coupons!.sets.filter(({ id }) => ids.includes(id));
  const specimens = coupons!.specimens.filter(({ id }) =>
    sets.some(({ specimen }) => specimen === id),
  );
  return { ...rest, joints: [], coupons: { specimens, sets } };
}

/** Sets that an error is about, where its place tells: one of them, or all of a test piece. */
function atFault(field: string, { specimens, sets }: Coupons): readonly string[] | null {
  const [, list, place] = /^coupons\.(sets|specimens)\.(\d+)/.exec(field) ?? [];
  if (list === undefined) return null;
  const at = Number(place);
  const faulty = sets.filter((set, i) =>
    list === 'sets' ? i === at : set.specimen === specimens[at]?.id,
  );
  return faulty.length === 0 ? null : faulty.map(({ id }) => id);
}

export function createCoupons({ bridge, project, active }: CouponsSource): CouponsState {
  const [view, setView] = createSignal<CouponView>('plan');
  const [chosen, setChosen] = createSignal<string | null>(null);
  const [looked, setLooked] = createSignal<string | null>(null);
  const [stopped, setStopped] = createSignal(false);
  const [known, setKnown] = createSignal<ReadonlyMap<string, Known>>(new Map());
  const [overalls, setOveralls] = createSignal<ReadonlyMap<string, Overall>>(new Map());
  const [modelVersion, setModelVersion] = createSignal<string | null>(null);
  const job = createJob(bridge);

  const sets = (): readonly CouponSet[] => project.document()?.coupons?.sets ?? [];
  const specimens = (): readonly Specimen[] => project.document()?.coupons?.specimens ?? [];
  const current = createMemo(() => sets().find(({ id }) => id === chosen()) ?? sets()[0] ?? null);

  /** All that the figures of a set hang on, by set. */
  const keys = createMemo((): ReadonlyMap<string, string> => {
    // Plain data at every change: to read all of it from the store takes ten times as long.
    project.revision();
    const document = project.plain();
    if (!document || !active()) return new Map();
    const { adhesives, adherends, plies, settings } = document;
    const around = JSON.stringify([project.opening(), adhesives, adherends, plies, settings]);
    const { specimens: pieces = [], sets: all = [] } = document.coupons ?? {};
    const shapes = new Map(pieces.map((one) => [one.id, JSON.stringify(one)]));
    return new Map(
      all.map(({ note: _note, tested: _tested, ...set }) => [
        set.id,
        `${JSON.stringify(set)}${shapes.get(set.specimen)}${around}`,
      ]),
    );
  });
  const isNew = (id: string): boolean => known().get(id)?.key === keys().get(id);
  const stale = createMemo(() => sets().flatMap(({ id }) => (isNew(id) ? [] : [id])));
  const ofAdhesive = (adhesive: string): readonly string[] =>
    sets().flatMap((set) => (set.adhesive === adhesive && set.results.length > 0 ? [set.id] : []));
  const overallKey = (adhesive: string): string =>
    ofAdhesive(adhesive)
      .map((id) => keys().get(id))
      .join('');
  const isOverallStale = (): boolean => {
    const adhesive = looked();
    if (adhesive === null || ofAdhesive(adhesive).length === 0) return false;
    return overalls().get(adhesive)?.key !== overallKey(adhesive);
  };

  /** What to ask next: the set on the page, then all of an adhesive where that is looked at, then the others. */
  function next(): { readonly ids: readonly string[]; readonly adhesive: string | null } | null {
    const first = current()?.id;
    const adhesive = looked();
    if (first !== undefined && !isNew(first)) return { ids: [first], adhesive: null };
    if (adhesive !== null && isOverallStale()) return { ids: ofAdhesive(adhesive), adhesive };
    const ids = stale().slice(0, TOGETHER);
    return ids.length === 0 ? null : { ids, adhesive: null };
  }

  const settle = makeSettle(() => void work(), QUIET);
  /** Tells a question from the one that took its place. */
  let turn = 0;
  async function work(): Promise<void> {
    turn += 1;
    const mine = turn;
    while (mine === turn && active() && !stopped()) {
      const whole = project.plain();
      const wanted = next();
      if (!whole?.coupons || wanted === null) return;
      const { ids, adhesive } = wanted;
      const [about, opening] = [keys(), project.opening()];
      const whatAll = adhesive === null ? '' : overallKey(adhesive);
      const document = withSets(whole, ids);
      const reply = await job.run('project.coupons', { document });
      if (opening !== project.opening()) return;
      // Of a question that another took the place of only an answer is of use.
      if (!reply.ok && mine !== turn) return;
      if (!reply.ok && reply.error.code === 'stopped') {
        setStopped(true);
        return;
      }
      const put = new Map(known());
      if (reply.ok) {
        for (const report of reply.value.sets) {
          put.set(report.setId, { key: about.get(report.setId)!, report, refusal: null });
        }
      } else {
        // Of several sets only those at fault are refused, where that is told.
        for (const id of atFault(reply.error.field, document.coupons!) ?? ids) {
          const report = put.get(id)?.report ?? null;
          put.set(id, { key: about.get(id)!, report, refusal: reply.error });
        }
      }
      batch(() => {
        setKnown(put);
        if (reply.ok) setModelVersion(reply.value.modelVersion);
        if (adhesive === null) return;
        const correlation = reply.ok
          ? (reply.value.adhesives.find(({ id }) => id === adhesive)?.correlation ?? null)
          : null;
        const gapCurves = reply.ok ? reply.value.gapCurves : [];
        setOveralls((all) => new Map(all).set(adhesive, { key: whatAll, correlation, gapCurves }));
      });
    }
  }

  createEffect(
    on([active, keys, looked, () => current()?.id], ([here]) => {
      setStopped(false);
      if (here && (stale().length > 0 || isOverallStale())) settle.ask();
      else settle.drop();
    }),
  );
  createEffect(
    on(
      project.opening,
      () => {
        batch(() => {
          setKnown(new Map());
          setOveralls(new Map());
          setChosen(null);
          setLooked(null);
          setView('plan');
        });
      },
      { defer: true },
    ),
  );
  onCleanup(() => {
    turn += 1;
    settle.drop();
  });

  return {
    view,
    show: setView,
    sets,
    specimens,
    current,
    choose: setChosen,
    report: (id) => known().get(id)?.report ?? null,
    old: (id) => known().has(id) && !isNew(id),
    refusal: (id) => (isNew(id) ? (known().get(id)?.refusal ?? null) : null),
    lookAtAll: setLooked,
    overall: (adhesive) => {
      if (ofAdhesive(adhesive).length === 0) return { correlation: null, gapCurves: [] };
      const found = overalls().get(adhesive);
      return found && found.key === overallKey(adhesive) ? found : null;
    },
    modelVersion,
    job,
    left: () => stale().length,
    stopped,
    goOn() {
      setStopped(false);
      settle.ask();
    },
  };
}
