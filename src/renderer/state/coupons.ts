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
import type { CouponSet, LifeSet, Specimen } from '../../shared/project-coupons.ts';
import type {
  Correlation,
  CouponSetReport,
  GapCurve,
  LifeSetReport,
} from '../../shared/reports-coupons.ts';
import { makeSettle } from '../settle.ts';
import {
  keysOf,
  type SetKeys,
  type SetList,
  setLists,
  setsAtFault,
  withSets,
} from './coupon-sets.ts';
import { createJob, type Job } from './job.ts';
import { createKnownSets, type SetReports } from './known-sets.ts';
import type { ProjectState } from './project.ts';

export type CouponView = 'plan' | 'results' | 'statistics' | 'agreement' | 'lives' | 'ledger';

export interface SetsState<Set, Report> extends SetReports<Report> {
  readonly sets: Accessor<readonly Set[]>;
  /** The set that is looked at; the first one until another is chosen. */
  readonly current: Accessor<Set | null>;
  choose(id: string): void;
}

export interface CouponsState extends SetsState<CouponSet, CouponSetReport> {
  readonly view: Accessor<CouponView>;
  show(view: CouponView): void;
  readonly specimens: Accessor<readonly Specimen[]>;
  /** Sets of coupons under cycles. */
  readonly lives: SetsState<LifeSet, LifeSetReport>;
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

interface Overall {
  readonly key: string;
  readonly correlation: Correlation | null;
  readonly gapCurves: readonly GapCurve[];
}

const reportsOf = <Report>({ report, old, refusal }: SetReports<Report>): SetReports<Report> => ({
  report,
  old,
  refusal,
});

interface Question {
  readonly list: SetList;
  readonly ids: readonly string[];
  /** Of all sets of an adhesive together. */
  readonly adhesive: string | null;
}

const noKeys: Readonly<Record<SetList, SetKeys>> = { sets: new Map(), life: new Map() };

export function createCoupons({ bridge, project, active }: CouponsSource): CouponsState {
  const [view, setView] = createSignal<CouponView>('plan');
  const [chosen, setChosen] = createSignal<string | null>(null);
  const [chosenLife, setChosenLife] = createSignal<string | null>(null);
  const [looked, setLooked] = createSignal<string | null>(null);
  const [stopped, setStopped] = createSignal(false);
  const [overalls, setOveralls] = createSignal<ReadonlyMap<string, Overall>>(new Map());
  const [modelVersion, setModelVersion] = createSignal<string | null>(null);
  const job = createJob(bridge);

  const sets = (): readonly CouponSet[] => project.document()?.coupons?.sets ?? [];
  const lives = (): readonly LifeSet[] => project.document()?.coupons?.life ?? [];
  const specimens = (): readonly Specimen[] => project.document()?.coupons?.specimens ?? [];
  const current = createMemo(() => sets().find(({ id }) => id === chosen()) ?? sets()[0] ?? null);
  const currentLife = createMemo(
    () => lives().find(({ id }) => id === chosenLife()) ?? lives()[0] ?? null,
  );

  const keys = createMemo(() => {
    // Plain data at every change: to read all of it from the store takes ten times as long.
    project.revision();
    const document = project.plain();
    return document && active() ? keysOf(document, project.opening()) : noKeys;
  });
  const known = {
    sets: createKnownSets<CouponSetReport>(sets, () => keys().sets),
    life: createKnownSets<LifeSetReport>(lives, () => keys().life),
  };
  const left = (): number => known.sets.stale().length + known.life.stale().length;
  const ofAdhesive = (adhesive: string): readonly string[] =>
    sets().flatMap((set) => (set.adhesive === adhesive && set.results.length > 0 ? [set.id] : []));
  const overallKey = (adhesive: string): string =>
    ofAdhesive(adhesive)
      .map((id) => keys().sets.get(id))
      .join('');
  const isOverallStale = (): boolean => {
    const adhesive = looked();
    if (adhesive === null || ofAdhesive(adhesive).length === 0) return false;
    return overalls().get(adhesive)?.key !== overallKey(adhesive);
  };

  /** Lists of sets, that of the view first. */
  const inOrder = (): readonly SetList[] =>
    view() === 'lives' ? [...setLists].reverse() : setLists;

  /** What to ask next: the set on the page, then all of an adhesive where that is looked at, then the others. */
  function next(): Question | null {
    const adhesive = looked();
    const shown = { sets: current()?.id, life: currentLife()?.id };
    const [list] = inOrder();
    const first = shown[list!];
    if (first !== undefined && !known[list!].isNew(first)) {
      return { list: list!, ids: [first], adhesive: null };
    }
    if (adhesive !== null && isOverallStale()) {
      return { list: 'sets', ids: ofAdhesive(adhesive), adhesive };
    }
    const other = inOrder().find((one) => known[one].stale().length > 0);
    return other === undefined
      ? null
      : { list: other, ids: known[other].stale().slice(0, TOGETHER), adhesive: null };
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
      const { list, ids, adhesive } = wanted;
      const [about, opening] = [keys(), project.opening()];
      const whatAll = adhesive === null ? '' : overallKey(adhesive);
      const document = withSets(whole, list, ids);
      const reply = await job.run('project.coupons', { document });
      if (opening !== project.opening()) return;
      // Of a question that another took the place of only an answer is of use.
      if (!reply.ok && mine !== turn) return;
      if (!reply.ok && reply.error.code === 'stopped') {
        setStopped(true);
        return;
      }
      batch(() => {
        if (reply.ok) {
          known.sets.answer(about.sets, reply.value.sets);
          known.life.answer(about.life, reply.value.life);
          setModelVersion(reply.value.modelVersion);
        } else {
          // Of several sets only those at fault are refused, where that is told.
          const faulty = setsAtFault(document, list, reply.error.field) ?? ids;
          known[list].refuse(about[list], faulty, reply.error);
        }
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
    on([active, keys, looked, () => current()?.id, () => currentLife()?.id], ([here]) => {
      setStopped(false);
      if (here && (left() > 0 || isOverallStale())) settle.ask();
      else settle.drop();
    }),
  );
  createEffect(
    on(
      project.opening,
      () => {
        batch(() => {
          known.sets.clear();
          known.life.clear();
          setOveralls(new Map());
          setChosen(null);
          setChosenLife(null);
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
    ...reportsOf(known.sets),
    lives: {
      sets: lives,
      current: currentLife,
      choose: setChosenLife,
      ...reportsOf(known.life),
    },
    lookAtAll: setLooked,
    overall: (adhesive) => {
      if (ofAdhesive(adhesive).length === 0) return { correlation: null, gapCurves: [] };
      const found = overalls().get(adhesive);
      return found && found.key === overallKey(adhesive) ? found : null;
    },
    modelVersion,
    job,
    left,
    stopped,
    goOn() {
      setStopped(false);
      settle.ask();
    },
  };
}
