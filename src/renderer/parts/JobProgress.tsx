/** How far a long calculation is, what it is at, how long it will take, and a way to stop it. */
import { createEffect, type JSX, Show } from 'solid-js';
import { percentDone, timeLeft } from '../../shared/time-left.ts';
import type { Job } from '../state/job.ts';

export interface JobProgressProps {
  readonly job: Pick<Job, 'progress' | 'running' | 'stopping' | 'stop'>;
  /** What is calculated, such as `Scatter`: the name of the bar. */
  readonly label: string;
}

/** Shown only while the job runs. */
export function JobProgress(props: JobProgressProps): JSX.Element {
  return (
    <Show when={props.job.running()}>
      <Bar {...props} />
    </Show>
  );
}

function Bar(props: JobProgressProps): JSX.Element {
  let bar!: HTMLProgressElement;
  const now = () => props.job.progress();
  const percent = (): number | null => percentDone(now()?.done ?? 0, now()?.total ?? 0);

  const what = (): string => {
    if (props.job.stopping()) return 'stopping';
    return now()?.state === 'waiting' ? 'waits for another calculation' : now()?.what || '';
  };
  const left = (): string => {
    const seconds = props.job.stopping() ? null : (now()?.left ?? null);
    return seconds === null ? '' : timeLeft(seconds);
  };
  const share = (): string => (percent() === null ? '' : `${percent()} %`);
  const words = (): string =>
    [share(), what(), left()].filter((part) => part !== '').join(', ') || 'starting';

  createEffect(() => {
    const value = percent();
    // Without a value the bar says that it does not know.
    if (value === null) bar.removeAttribute('value');
    else bar.value = value;
  });

  return (
    <div class="job">
      <progress
        ref={bar}
        class="job-bar"
        max="100"
        aria-label={props.label}
        aria-valuetext={words()}
      />
      <span class="job-share">{share()}</span>
      <span class="job-what" title={what()}>
        {what()}
      </span>
      <span class="job-left">{left()}</span>
      <button
        type="button"
        class="plain"
        disabled={props.job.stopping()}
        aria-label={`Stop: ${props.label}`}
        onClick={() => props.job.stop()}
      >
        Stop
      </button>
    </div>
  );
}
