/** What the core says of one laminate, kept up with its stack, its ply and the wall. */
import { type Accessor, createEffect, createSignal, onCleanup, untrack } from 'solid-js';
import type { Reply } from '../../../shared/reply.ts';
import type { LaminateReport } from '../../../shared/reports.ts';
import { makeLatest } from '../../latest.ts';
import type { Answers } from '../answers.ts';

interface Wanted {
  readonly adherendId: string;
  readonly wall: number | undefined;
  readonly flat: boolean;
}

/**
 * @param inputs text of everything that the answer hangs on; '' when there is nothing to ask
 * @returns the last good report: while a stack is being retyped the old drawing stays
 */
export function createLaminateReport(
  answers: Answers,
  wanted: Accessor<Wanted>,
  inputs: Accessor<string>,
): Accessor<LaminateReport | null> {
  const [report, setReport] = createSignal<LaminateReport | null>(null);
  const latest = makeLatest(
    ({ adherendId, wall, flat }: Wanted): Promise<Reply<LaminateReport>> =>
      answers.describe(adherendId, wall, flat),
    (reply) => {
      // Why it was refused is told at the field, by the analysis.
      if (reply.ok) setReport(reply.value);
    },
  );
  onCleanup(() => latest.drop());
  createEffect(() => {
    if (inputs() === '') {
      latest.drop();
      setReport(null);
    } else latest.ask(untrack(wanted));
  });
  return report;
}
