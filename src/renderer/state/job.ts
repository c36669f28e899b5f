/** A long request of the page: asked, followed while it runs, and stopped. */
import { type Accessor, batch, createSignal, onCleanup } from 'solid-js';
import type { Answers, Bridge, LongRequestName, RequestInput } from '../../shared/contract.ts';
import type { Reply } from '../../shared/reply.ts';
import type { JobProgress, JointSummary } from '../../shared/reports.ts';

/** Milliseconds between two looks at how far it is. */
const PACE = 250;
/** The same while nothing is found yet: whoever opens a project waits for its first margin. */
const EAGER = 50;

export type LongInput<N extends LongRequestName> = Omit<RequestInput<N>, 'job'>;

export interface Job {
  /**
   * Asks; what this job still runs is stopped first. The reply to what was stopped is a refusal of
   * code `stopped`.
   * @param found told what there is of the answer before all of it, where the request has parts
   */
  run<N extends LongRequestName>(
    name: N,
    input: LongInput<N>,
    found?: (joints: readonly JointSummary[]) => void,
  ): Promise<Reply<Answers[N]>>;
  /** How far it is; null until that is known, and when nothing runs. */
  readonly progress: Accessor<JobProgress | null>;
  stop(): void;
  readonly running: Accessor<boolean>;
  /** True from a stop until the reply has come. */
  readonly stopping: Accessor<boolean>;
}

/** One question on its way. */
interface Run {
  readonly id: string;
  stopped: boolean;
  timer?: ReturnType<typeof setTimeout>;
}

/** Unlike any other id of this page; what other pages call theirs does not matter. */
let given = 0;

/** Stops what runs when its owner is gone. */
export function createJob(bridge: Bridge): Job {
  const [progress, setProgress] = createSignal<JobProgress | null>(null);
  const [running, setRunning] = createSignal(false);
  const [stopping, setStopping] = createSignal(false);
  let current: Run | null = null;
  /** Every question whose reply has not come. */
  const open = new Set<Run>();

  const look = async (run: Run): Promise<void> => {
    // A stop may overtake the request itself on its way: it is said again until the reply has come.
    if (run.stopped) await bridge.ask('job.stop', { job: run.id });
    else {
      const reply = await bridge.ask('job.progress', { job: run.id });
      if (reply.ok && reply.value.state !== 'unknown' && run === current) setProgress(reply.value);
    }
    lookLater(run);
  };
  function lookLater(run: Run): void {
    clearTimeout(run.timer);
    if (open.has(run)) run.timer = setTimeout(() => void look(run), PACE);
  }

  const gather = async (run: Run, found: (joints: readonly JointSummary[]) => void) => {
    for (let from = 0; open.has(run) && !run.stopped; ) {
      const reply = await bridge.ask('job.found', { job: run.id, from });
      if (reply.ok && reply.value.joints.length > 0 && open.has(run) && !run.stopped) {
        from += reply.value.joints.length;
        found(reply.value.joints);
      }
      await new Promise((later) => setTimeout(later, from === 0 ? EAGER : PACE));
    }
  };

  const end = (run: Run): void => {
    if (run.stopped || !open.has(run)) return;
    run.stopped = true;
    clearTimeout(run.timer);
    void look(run);
  };

  const show = (run: Run | null): void => {
    current = run;
    batch(() => {
      setProgress(null);
      setStopping(false);
      setRunning(run !== null);
    });
  };

  onCleanup(() => {
    if (current) end(current);
  });

  return {
    async run(name, input, found) {
      if (current) end(current);
      given += 1;
      const run: Run = { id: `job-${given}`, stopped: false };
      open.add(run);
      show(run);
      lookLater(run);
      const asked = { ...input, job: run.id } as RequestInput<typeof name>;
      const answer = bridge.ask(name, asked);
      if (found) void gather(run, found);
      const reply = await answer;
      open.delete(run);
      clearTimeout(run.timer);
      if (run === current) show(null);
      return reply;
    },
    progress,
    stop() {
      if (!current) return;
      setStopping(true);
      end(current);
    },
    running,
    stopping,
  };
}
