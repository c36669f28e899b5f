/** The ledger of allowables, kept up with the document; the last one stays meanwhile. */
import { type Accessor, batch, createEffect, createSignal, on, onCleanup } from 'solid-js';
import type { Bridge } from '../../shared/contract.ts';
import type { RequestError } from '../../shared/reply.ts';
import type { LedgerReport } from '../../shared/reports-ledger.ts';
import { makeSettle } from '../settle.ts';
import { createJob, type Job } from './job.ts';
import type { ProjectState } from './project.ts';

export interface LedgerState {
  /** Null until the first answer has come. */
  readonly report: Accessor<LedgerReport | null>;
  /** True where it is of the document before its last change. */
  readonly old: Accessor<boolean>;
  /** Why there is no newer one; null when there is. */
  readonly refusal: Accessor<RequestError | null>;
  readonly stopped: Accessor<boolean>;
  again(): void;
  readonly job: Job;
}

/** Milliseconds of quiet after a change. */
const QUIET = 400;

export function createLedger(bridge: Bridge, project: ProjectState): LedgerState {
  const job = createJob(bridge);
  const [report, setReport] = createSignal<LedgerReport | null>(null);
  const [shown, setShown] = createSignal(-1);
  const [refusal, setRefusal] = createSignal<RequestError | null>(null);
  const [stopped, setStopped] = createSignal(false);

  let turn = 0;
  async function work(): Promise<void> {
    turn += 1;
    const mine = turn;
    const [whole, revision] = [project.plain(), project.revision()];
    if (!whole) return;
    setStopped(false);
    const { variants: _variants, gapChecks: _checks, ...document } = whole;
    const reply = await job.run('project.ledger', { document });
    if (mine !== turn) return;
    batch(() => {
      setStopped(!reply.ok && reply.error.code === 'stopped');
      setRefusal(reply.ok || reply.error.code === 'stopped' ? null : reply.error);
      if (!reply.ok) return;
      setReport(reply.value);
      setShown(revision);
    });
  }
  const settle = makeSettle(() => void work(), QUIET);

  void work();
  createEffect(on(project.revision, () => settle.ask(), { defer: true }));
  onCleanup(() => {
    turn += 1;
    settle.drop();
  });
  return {
    report,
    old: () => report() !== null && shown() !== project.revision(),
    refusal,
    stopped,
    again: () => void work(),
    job,
  };
}
