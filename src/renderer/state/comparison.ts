/** The comparison: which columns stand side by side, and the report on them, kept up with the document. */
import {
  type Accessor,
  batch,
  createEffect,
  createMemo,
  createSignal,
  on,
  onCleanup,
  untrack,
} from 'solid-js';
import type { Bridge } from '../../shared/contract.ts';
import type { RequestError } from '../../shared/reply.ts';
import type { CompareReport } from '../../shared/reports-compare.ts';
import { makeLatest } from '../latest.ts';
import { makeSettle } from '../settle.ts';
import {
  type Column,
  columnKey,
  excerptOf,
  found,
  MOST_COLUMNS,
  reportInWhole,
  sameColumn,
  sharedCases,
  variantsOf,
} from './compared.ts';
import { createIssues, type Issues } from './issues.ts';
import { createJob, type Job } from './job.ts';
import { createMaking, type Making } from './making.ts';
import type { ProjectState } from './project.ts';
import { createSlow } from './slow.ts';

/** Milliseconds of quiet before a change is calculated. */
const QUIET = 300;
/** An answer that took longer than this, milliseconds, is asked for by hand the next time. */
const QUICK = 8000;

export interface Comparison {
  /** The joint chosen first, then what stands beside it; empty when the project has no joint. */
  readonly columns: Accessor<readonly Column[]>;
  add(column: Column): void;
  remove(column: Column): void;
  readonly full: Accessor<boolean>;
  /** The case that was asked for; null leaves it to the core. */
  readonly caseId: Accessor<string | null>;
  setCase(id: string | null): void;
  readonly cases: Accessor<ReturnType<typeof sharedCases>>;
  readonly issues: Issues;
  readonly report: Accessor<CompareReport | null>;
  readonly refusal: Accessor<RequestError | null>;
  /** True while the report is not of what stands there now. */
  readonly behind: Accessor<boolean>;
  /** The same, once it has been so for a while. */
  readonly slow: Accessor<boolean>;
  /** True when nothing is asked by itself after a change: the last answer took too long, or was stopped. */
  readonly byHand: Accessor<boolean>;
  readonly job: Job;
  again(): void;
  readonly making: Making;
}

export interface ComparisonSource {
  readonly bridge: Bridge;
  readonly project: ProjectState;
  /** Id of the first column's joint; null when there is none. */
  readonly first: Accessor<string | null>;
  readonly active: Accessor<boolean>;
}

const sameColumns = (a: readonly Column[], b: readonly Column[]): boolean =>
  a.length === b.length && a.every((column, i) => sameColumn(column, b[i]!));

export function createComparison({ bridge, project, first, active }: ComparisonSource): Comparison {
  const issues = createIssues();
  /** What stands beside each joint that something was chosen for. */
  const [beside, setBeside] = createSignal<ReadonlyMap<string, readonly Column[]>>(new Map());
  const [wishedCase, setCase] = createSignal<string | null>(null);
  const [report, setReport] = createSignal<CompareReport | null>(null);
  const [refusal, setRefusal] = createSignal<RequestError | null>(null);
  /** What the report is of, and what was answered last, by a refusal perhaps. */
  const [shown, setShown] = createSignal('');
  const [answered, setAnswered] = createSignal('');
  const [took, setTook] = createSignal(0);
  const job = createJob(bridge);

  const columns = createMemo<readonly Column[]>(
    () => {
      const [document, id] = [project.document(), first()];
      if (!document || id === null) return [];
      const head: Column = { kind: 'joint', id };
      const others = (beside().get(id) ?? variantsOf(document, id)).filter(
        (column) => found(document, column) !== null && !sameColumn(column, head),
      );
      return [head, ...others].slice(0, MOST_COLUMNS);
    },
    [],
    { equals: sameColumns },
  );
  const cases = createMemo(() => {
    const document = project.document();
    return document ? sharedCases(document, columns()) : [];
  });
  const caseId = createMemo(() =>
    cases().some(({ id }) => id === wishedCase()) ? wishedCase() : null,
  );

  /** What is set side by side, whatever its figures. */
  const wish = createMemo(() =>
    [project.opening(), caseId() ?? '', ...columns().map(columnKey)].join('\n'),
  );
  const now = createMemo(() => `${project.revision()}\n${wish()}`);
  const enough = (): boolean => columns().length > 1;

  /** What was asked last, until its answer has come. */
  let asked = '';
  const latest = makeLatest(
    async (about: string) => {
      const [document, list] = [project.plain(), untrack(columns)];
      if (!document || list.length < 2) return null;
      const excerpt = excerptOf(document, list);
      const id = untrack(caseId);
      const from = performance.now();
      const reply = await job.run('project.compare', {
        document: excerpt.document,
        columns: list.map((one) =>
          one.kind === 'joint' ? { joint: one.id } : { variant: one.id },
        ),
        ...(id === null ? {} : { caseId: id }),
      });
      return { reply, about, inWhole: excerpt.inWhole, time: performance.now() - from };
    },
    (answer) => {
      if (!answer) return;
      const { reply, about, inWhole, time } = answer;
      // Stopped to make way for the question that follows at once.
      if (!reply.ok && reply.error.code === 'stopped' && about !== asked) return;
      asked = '';
      batch(() => {
        setAnswered(about);
        if (!reply.ok) {
          const error = { ...reply.error, field: inWhole(reply.error.field) };
          setRefusal(error);
          issues.setRefusal(error.code === 'stopped' ? null : error);
          return;
        }
        const whole = reportInWhole(reply.value, inWhole);
        setShown(about);
        setTook(time);
        setReport(whole);
        setRefusal(null);
        issues.setRefusal(whole.columns.find(({ refused }) => refused !== null)?.refused ?? null);
      });
    },
  );
  const ask = (): void => {
    const about = untrack(now);
    if (!untrack(active) || !untrack(enough)) return;
    if (about === asked) return;
    if (latest.busy()) job.stop();
    asked = about;
    latest.ask(about);
  };
  const settle = makeSettle(ask, QUIET);
  const soon = makeSettle(ask, 0);
  onCleanup(() => {
    settle.drop();
    soon.drop();
    latest.drop();
  });

  const byHand = (): boolean => took() > QUICK || refusal()?.code === 'stopped';
  let asideOf = '';
  createEffect(
    on([now, active], () => {
      if (!active() || !enough() || answered() === now()) return;
      // Another column is a question of its own; another figure waits until the typing is done.
      if (wish() !== asideOf) {
        asideOf = wish();
        settle.drop();
        soon.ask();
      } else if (!byHand()) settle.ask();
    }),
  );
  createEffect(
    on(
      project.opening,
      () => {
        latest.drop();
        asked = '';
        batch(() => {
          setBeside(new Map());
          setCase(null);
          setReport(null);
          setRefusal(null);
          setTook(0);
          issues.setRefusal(null);
        });
      },
      { defer: true },
    ),
  );

  const change = (next: (others: readonly Column[]) => readonly Column[]): void => {
    const [head, ...others] = untrack(columns);
    if (!head) return;
    setBeside((all) => new Map(all).set(head.id, next(others)));
  };
  const full = (): boolean => columns().length >= MOST_COLUMNS;
  const add = (column: Column): void => {
    if (untrack(full) || untrack(columns).some((one) => sameColumn(one, column))) return;
    change((others) => [...others, column]);
  };
  const behind = (): boolean => enough() && shown() !== now();

  return {
    columns,
    add,
    remove: (column) => change((others) => others.filter((one) => !sameColumn(one, column))),
    full,
    caseId,
    setCase,
    cases,
    issues,
    report,
    refusal,
    behind,
    slow: createSlow({ wanted: now, shown, active: () => enough() && refusal() === null }),
    byHand,
    job,
    again() {
      setRefusal(null);
      ask();
    },
    making: createMaking({ bridge, project, first, add, full }),
  };
}
