/**
 * What a hand on a handle asks for, asked a while before in its stead: the engine compiles what runs often, and the
 * first moves would otherwise wait for that. Of each kind of joint once, while nobody asks for anything.
 */
import type { Project } from '../../shared/project.ts';
import type { Reply } from '../../shared/reply.ts';
import type { JointReport } from '../../shared/reports.ts';
import type { Ask } from '../ask.ts';

/** Questions after which no more is compiled: seen in drags of sleeves in a double lap. */
const TIMES = 80;
/** Milliseconds between two of them: whoever asks meanwhile waits for one at most. */
const APART = 10;
/** Milliseconds that all of one kind may take, and one answer: what is slower than a hand gains nothing from it. */
const BUDGET = 1500;
const SLOW = 150;
/** The first, before anything is compiled. */
const SLOW_AT_FIRST = 300;
/** Milliseconds without a question after which nobody is thought to wait. */
const QUIET = 400;

export interface Rehearsal {
  /** To be told of every question of a page, by its name. */
  asked(name: unknown): void;
  /** To be told of the answer about all margins of a joint: its stresses are what a hand will ask for. */
  analysed(input: unknown, reply: Reply<unknown>): void;
  close(): void;
}

interface OneJoint {
  readonly document: Project;
  readonly jointId: string;
}

export function makeRehearsal(ask: Ask): Rehearsal {
  const begun = new Set<string>();
  const parts: { readonly input: OneJoint; readonly focus: object; left: number; spent: number }[] =
    [];
  let last = Number.NEGATIVE_INFINITY;
  let timer: NodeJS.Timeout | undefined;
  let closed = false;

  const later = (delay: number): void => {
    if (closed || parts.length === 0) return;
    timer = setTimeout(() => void step(), delay);
    timer.unref();
  };
  async function step(): Promise<void> {
    const part = parts[0]!;
    if (performance.now() - last < QUIET) return later(QUIET);
    part.left -= 1;
    const { document, jointId } = part.input;
    // No two alike, as under a hand.
    const joints = document.joints.map((joint) => ({
      ...joint,
      overlap: joint.overlap * (1 + part.left / 10_000),
    }));
    const start = performance.now();
    await ask('joint.stress', { document: { ...document, joints }, jointId, focus: part.focus });
    const slow = part.left === TIMES - 1 ? SLOW_AT_FIRST : SLOW;
    const took = performance.now() - start;
    part.spent += took;
    if (part.left === 0 || part.spent > BUDGET || took > slow) parts.shift();
    later(APART);
  }

  return {
    asked(name) {
      // How far a job is, a page asks all the time.
      if (name !== 'job.progress' && name !== 'job.found') last = performance.now();
    },
    analysed(input, reply) {
      const { stress } = reply.ok ? (reply.value as JointReport) : { stress: null };
      // What was answered is a question of the contract.
      const one = input as OneJoint;
      const type = stress && one.document.joints.find(({ id }) => id === one.jointId)?.type;
      if (!type || begun.has(type)) return;
      begun.add(type);
      const { caseId, conditionId, gapState, theta } = stress;
      const focus = { caseId, conditionId, gapState, theta };
      parts.push({ input: one, focus, left: TIMES, spent: 0 });
      if (parts.length === 1) later(QUIET);
    },
    close() {
      closed = true;
      clearTimeout(timer);
    },
  };
}
