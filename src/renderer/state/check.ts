/** A report on the whole project, asked for while somebody looks at it. */
import { type Accessor, batch, createEffect, createSignal, onCleanup } from 'solid-js';
import type { Answers, Bridge } from '../../shared/contract.ts';
import type { Reply, RequestError } from '../../shared/reply.ts';
import type { JointSummary } from '../../shared/reports.ts';
import { makeLatest } from '../latest.ts';
import { createJob, type Job } from './job.ts';
import type { ProjectState } from './project.ts';
import { createSlow } from './slow.ts';

type WholeRequest = 'project.check' | 'project.corners';

export interface WholeReport<N extends WholeRequest> {
  readonly report: Accessor<Answers[N] | null>;
  /** What is found so far of the first report on a project; empty once that is here. */
  readonly found: Accessor<readonly JointSummary[]>;
  readonly refusal: Accessor<RequestError | null>;
  /** True while the report is of an older document than the one shown. */
  readonly behind: Accessor<boolean>;
  /** The same, once it has been so for a while. */
  readonly slow: Accessor<boolean>;
  /** The calculation on its way. */
  readonly job: Job;
  /** Asks once more, after it was stopped. */
  again(): void;
}

export type Check = WholeReport<'project.check'>;
/** Every joint under every load case. */
export type Corners = WholeReport<'project.corners'>;

export const createCheck = (
  bridge: Bridge,
  project: ProjectState,
  active: Accessor<boolean>,
): Check => createWholeReport('project.check', bridge, project, active);

/** The report with the joints that were shown already as they were: their rows on the page stay. */
function withFound<R extends { readonly joints: readonly { readonly jointId: string }[] }>(
  report: R,
  found: readonly JointSummary[],
): R {
  const known = new Map(found.map((joint) => [joint.jointId, joint]));
  return { ...report, joints: report.joints.map((joint) => known.get(joint.jointId) ?? joint) };
}

export function createWholeReport<N extends WholeRequest>(
  name: N,
  bridge: Bridge,
  project: ProjectState,
  active: Accessor<boolean>,
): WholeReport<N> {
  const [report, setReport] = createSignal<Answers[N] | null>(null);
  const [found, setFound] = createSignal<readonly JointSummary[]>([]);
  const [refusal, setRefusal] = createSignal<RequestError | null>(null);
  const [answered, setAnswered] = createSignal(-1);
  const job = createJob(bridge);
  /** What was asked about last, until its answer has come. */
  let asked = -1;
  const latest = makeLatest(
    (revision: number): Promise<Reply<Answers[N]>> => {
      const soFar = (joints: readonly JointSummary[]): void => {
        if (report() === null && revision === asked) setFound((list) => [...list, ...joints]);
      };
      return job.run<WholeRequest>(
        name,
        { document: project.plain() },
        name === 'project.check' ? soFar : undefined,
      ) as Promise<Reply<Answers[N]>>;
    },
    (reply, revision) => {
      // Stopped to make way for the question that follows at once.
      if (!reply.ok && reply.error.code === 'stopped' && revision !== asked) return;
      asked = -1;
      batch(() => {
        setAnswered(revision);
        if (reply.ok) setReport(() => withFound(reply.value, found()));
        setRefusal(reply.ok ? null : reply.error);
        // What was found before a stop is worth looking at.
        if (reply.ok || reply.error.code !== 'stopped') setFound([]);
      });
    },
  );
  onCleanup(() => latest.drop());
  const ask = (revision: number): void => {
    if (revision === asked) return;
    // A large project takes minutes: nobody waits for what has changed meanwhile.
    if (latest.busy()) job.stop();
    asked = revision;
    setFound([]);
    // What was stopped goes on now.
    if (refusal()?.code === 'stopped') setRefusal(null);
    latest.ask(revision);
  };
  let opened = -1;
  // One effect, not two: what is dropped for a new project must not be the question about it.
  createEffect(() => {
    const revision = project.revisionOfFigures();
    if (project.opening() !== opened) {
      opened = project.opening();
      latest.drop();
      asked = -1;
      batch(() => {
        setReport(null);
        setFound([]);
        setRefusal(null);
      });
    }
    if (active() && project.document() !== null && answered() !== revision) ask(revision);
  });
  const behind = (): boolean => answered() !== project.revisionOfFigures();
  const again = (): void => {
    setRefusal(null);
    ask(project.revisionOfFigures());
  };
  return {
    report,
    found,
    refusal,
    behind,
    slow: createSlow({ wanted: project.revisionOfFigures, shown: answered, active }),
    job,
    again,
  };
}
