/** The verdict, large, with its one reason first; as computed now, or as it was recorded. */
import { For, type JSX, Show } from 'solid-js';
import { verdictWords } from '../../shared/bench-words.ts';
import type { CheckResult, VerdictState } from '../../shared/project.ts';
import type { MarginState } from '../../shared/reports.ts';
import type { GapReport, GapVerdict } from '../../shared/reports-gap.ts';
import { count, signed } from '../../shared/words.ts';
import { JobProgress } from '../parts/JobProgress.tsx';
import { Mark } from '../parts/Mark.tsx';
import type { Job } from '../state/job.ts';

export interface VerdictViewProps {
  readonly result: CheckResult | undefined;
  readonly verdict: GapVerdict | null;
  readonly report: GapReport | null;
  readonly job: Job;
  /** That the joint was changed since the verdict was recorded. */
  readonly changed: string | null;
}

export const verdictMarks: Readonly<Record<VerdictState, MarginState>> = {
  accept: 'holds',
  hold: 'low',
  reject: 'fails',
};

/** What there is to do before there is a verdict. */
function waitingFor(report: GapReport | null): string {
  if (!report) return '';
  const left = report.missing.reduce((sum, one) => sum + one.count, 0);
  if (left > 0)
    return `${count(left)} ${left === 1 ? 'reading is' : 'readings are'} still to be taken.`;
  if (report.bonds.length === 0) return 'Mend what is marked among the readings.';
  return 'The strength at this gap is being worked out.';
}

export function VerdictView(props: VerdictViewProps): JSX.Element {
  const state = (): VerdictState | 'unknown' =>
    props.result?.verdict ?? props.verdict?.state ?? 'unknown';
  const reasons = (): readonly string[] => {
    if (props.result) return [props.result.reason];
    const said = props.verdict?.reasons.map(({ message }) => message);
    if (said) return said;
    const waiting = waitingFor(props.report);
    return waiting === '' ? [] : [waiting.charAt(0).toUpperCase() + waiting.slice(1)];
  };
  const marginText = (): string | null => {
    const [margin, target] = props.result
      ? [props.result.margin, props.result.targetMargin]
      : [props.verdict?.measured?.margin ?? null, props.verdict?.targetMargin ?? 0];
    return margin === null
      ? null
      : `Lowest margin at this gap: ${signed(margin)}; asked for: ${signed(target)}.`;
  };
  const mark = (): MarginState | null => {
    const now = state();
    return now === 'unknown' ? null : verdictMarks[now];
  };
  return (
    <section class="gap-verdict" aria-label="Verdict">
      <p class={`gap-word is-${mark() ?? 'unknown'}`} role="status">
        <Show when={mark()}>{(shape) => <Mark state={shape()} />}</Show>
        {verdictWords[state()]}
      </p>
      <For each={reasons()}>
        {(text, i) => <p class={i() === 0 ? 'gap-reason' : 'gap-also'}>{text}</p>}
      </For>
      <Show when={marginText()}>{(text) => <p class="gap-also">{text()}</p>}</Show>
      <Show when={props.changed}>{(text) => <p class="gap-reason">{text()}</p>}</Show>
      <Show when={!props.result}>
        <JobProgress job={props.job} label="Verdict" />
      </Show>
    </section>
  );
}
