/** How a question that takes its time stands: under way, stopped, or refused. */

import { type JSX, Show } from 'solid-js';
import type { LongRequestName } from '../../shared/contract.ts';
import { saidText } from '../../shared/said.ts';
import { sentence } from '../../shared/words.ts';
import { JobProgress } from '../parts/JobProgress.tsx';
import type { Found } from '../state/found.ts';

export interface FoundStatusProps {
  readonly found: Pick<Found<LongRequestName>, 'job' | 'stopped' | 'refusal'>;
  /** What the bar is called. */
  readonly label: string;
  /** What is said after a stop. */
  readonly stopped: string;
}

export function FoundStatus(props: FoundStatusProps): JSX.Element {
  return (
    <>
      <JobProgress job={props.found.job} label={props.label} />
      <Show when={props.found.stopped() && !props.found.job.running()}>
        <p class="asked-note">{props.stopped}</p>
      </Show>
      <Show when={props.found.refusal()}>
        {(error) => <p class="refused">{sentence(saidText(error()))}</p>}
      </Show>
    </>
  );
}
