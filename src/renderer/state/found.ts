/**
 * An answer that takes its time, kept while its page is away: what was asked, of which document, and
 * what came back. Asked for by a button, so it says when the document has moved on.
 */
import { type Accessor, batch, createSignal } from 'solid-js';
import type { Answers, Bridge, LongRequestName } from '../../shared/contract.ts';
import type { RequestError } from '../../shared/reply.ts';
import { createJob, type Job, type LongInput } from './job.ts';
import { type ProjectState, withOneJoint } from './project.ts';

interface Kept<A> {
  readonly subject: string;
  readonly revision: number;
  readonly answer: A | null;
  readonly refusal: RequestError | null;
}

export interface Found<N extends LongRequestName> {
  readonly answer: Accessor<Answers[N] | null>;
  /** Why there is none; a stop of one's own is none. */
  readonly refusal: Accessor<RequestError | null>;
  /** True when the answer is of the document before its last change. */
  readonly old: Accessor<boolean>;
  readonly stopped: Accessor<boolean>;
  readonly job: Job;
  ask(input: Omit<LongInput<N>, 'document' | 'jointId'>): Promise<void>;
}

export interface FoundSource {
  readonly bridge: Bridge;
  readonly project: ProjectState;
  readonly index: Accessor<number>;
}

/** By project, request and joint: a joint's answer is there again when one comes back to it. */
const memory = new WeakMap<ProjectState, Map<string, Kept<unknown>>>();

export function createFound<N extends LongRequestName>(
  name: N,
  { bridge, project, index }: FoundSource,
): Found<N> {
  const kept = memory.get(project) ?? new Map<string, Kept<unknown>>();
  memory.set(project, kept);
  const subject = (): string =>
    `${name} ${project.opening()} ${project.document()?.joints[index()]?.id}`;
  const [told, setTold] = createSignal(0);
  const [stopped, setStopped] = createSignal(false);
  const now = (): Kept<Answers[N]> | null => {
    told();
    return (kept.get(subject()) as Kept<Answers[N]> | undefined) ?? null;
  };
  const job = createJob(bridge);

  return {
    answer: () => now()?.answer ?? null,
    refusal: () => now()?.refusal ?? null,
    old: () => now() !== null && now()?.revision !== project.revision(),
    stopped,
    job,
    async ask(input) {
      const whole = project.plain();
      const document = whole && withOneJoint(whole, index());
      const jointId = document?.joints[0]?.id;
      if (!document || jointId === undefined) return;
      const about = { subject: subject(), revision: project.revision() };
      setStopped(false);
      const reply = await job.run(name, { ...input, document, jointId } as unknown as LongInput<N>);
      batch(() => {
        if (!reply.ok && reply.error.code === 'stopped') {
          setStopped(true);
          return;
        }
        kept.set(about.subject, {
          ...about,
          answer: reply.ok ? reply.value : null,
          refusal: reply.ok ? null : reply.error,
        });
        setTold((n) => n + 1);
      });
    },
  };
}
