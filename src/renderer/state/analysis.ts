/** The report of one joint, kept up with the document as fast as answers come. */
import {
  type Accessor,
  batch,
  createEffect,
  createMemo,
  createSignal,
  onCleanup,
  untrack,
} from 'solid-js';
import type { Bridge, Focus } from '../../shared/contract.ts';
import type { Joint, Project } from '../../shared/project.ts';
import type { JointReport, StressReport } from '../../shared/reports.ts';
import { makeLatest } from '../latest.ts';
import type { Issues } from './issues.ts';
import { inWholeProject, type ProjectState, withOneJoint } from './project.ts';
import { createSlow } from './slow.ts';

export interface JointSource {
  readonly bridge: Bridge;
  readonly project: ProjectState;
  readonly issues: Issues;
  /** Place of the joint in the project; −1 when there is none. */
  readonly index: Accessor<number>;
  /** False while nobody looks: nothing is asked then. */
  readonly active: Accessor<boolean>;
}

/** Tells one joint from the next, also across projects with the same ids. */
export const subjectOf = ({ project, index }: JointSource): Accessor<string> =>
  createMemo(() => `${project.opening()} ${project.document()?.joints[index()]?.id}`);

/** The joint by itself, as a question is asked about it; null when there is none. */
export function askedJoint({ project, index }: JointSource): {
  readonly document: Project;
  readonly jointId: string;
} | null {
  const whole = project.plain();
  const document = whole && withOneJoint(whole, index());
  const jointId = document?.joints[0]?.id;
  return document && jointId !== undefined ? { document, jointId } : null;
}

export interface Analysis {
  /** Null until the first answer about a joint has come. */
  readonly report: Accessor<JointReport | null>;
  /** The joint that the report is of, as it was then. */
  readonly reported: Accessor<Joint | null>;
  /** True when the report is of an older document than the one shown, and the new one long in coming. */
  readonly slow: Accessor<boolean>;
  /** The same of the stresses in the report, which are asked for alone too: they come before the margins. */
  readonly stressSlow: Accessor<boolean>;
}

/** The state that was drawn last, for the stresses of a joint that has changed a little: no margin is needed to find it. */
const stateOf = (stress: StressReport): Focus => ({
  caseId: stress.caseId,
  conditionId: stress.conditionId,
  gapState: stress.gapState,
  theta: stress.theta,
});

interface Ahead {
  readonly stress: StressReport;
  readonly revision: number;
}

export function createAnalysis(source: JointSource, focus: Accessor<Focus>): Analysis {
  const { bridge, project, issues, index, active } = source;
  const [whole, setWhole] = createSignal<JointReport | null>(null);
  /** Stresses of a newer document than the margins; null where there are none. */
  const [ahead, setAhead] = createSignal<Ahead | null>(null);
  const [reported, setReported] = createSignal<Joint | null>(null);
  const [answered, setAnswered] = createSignal(-1);
  /** What `whole` was asked to draw. */
  let wholeFocus: Focus | null = null;
  const subject = subjectOf(source);

  const latest = makeLatest(
    async (revision: number) => {
      const place = index();
      const joint = askedJoint(source);
      if (!joint) return null;
      // The document goes on changing; the figures are of the joint that was asked about.
      const asked = JSON.parse(JSON.stringify(joint.document.joints[0])) as Joint;
      const drawn = focus();
      const reply = await bridge.ask('joint.analyse', { ...joint, focus: drawn });
      return { reply, place, revision, asked, drawn };
    },
    (answer) => {
      if (!answer) return;
      const { reply, place, revision, asked, drawn } = answer;
      batch(() => {
        setAnswered(revision);
        if (reply.ok) {
          setWhole(reply.value);
          setReported(asked);
          wholeFocus = drawn;
        }
        const isOlder = (ahead()?.revision ?? -1) <= revision;
        if (isOlder || !reply.ok) setAhead(null);
        issues.setRefusal(
          reply.ok ? null : { ...reply.error, field: inWholeProject(reply.error.field, place) },
        );
      });
    },
  );
  const first = makeLatest(
    async (revision: number) => {
      const joint = askedJoint(source);
      const drawn = whole()?.stress;
      // Which state is the worst of another choice, only the margins tell.
      if (!joint || !drawn || wholeFocus !== focus()) return null;
      const asked = { ...joint, focus: { ...stateOf(drawn), ...focus() } };
      return { reply: await bridge.ask('joint.stress', asked), revision };
    },
    (answer) => {
      // What is wrong with the joint, the whole answer says.
      if (!answer?.reply.ok || answer.revision <= answered()) return;
      setAhead({ stress: answer.reply.value, revision: answer.revision });
    },
  );
  onCleanup(() => {
    latest.drop();
    first.drop();
  });
  const report = createMemo((): JointReport | null => {
    const [known, newer] = [whole(), ahead()];
    return known && newer ? { ...known, stress: newer.stress } : known;
  });

  let asked = '';
  // One effect, not two: what is dropped for a new joint must not be the question about it.
  createEffect(() => {
    const revision = project.revision();
    focus();
    if (subject() !== asked) {
      asked = subject();
      latest.drop();
      first.drop();
      batch(() => {
        setWhole(null);
        setAhead(null);
        setReported(null);
        issues.setRefusal(null);
      });
    }
    if (!active() || index() < 0) return;
    // The picture follows the hand; the margins follow as soon as all of them are known.
    untrack(() => {
      if (whole()?.stress && revision > answered()) first.ask(revision);
    });
    latest.ask(revision);
  });
  const slow = createSlow({ wanted: project.revision, shown: answered, active });
  const pictured = (): number => Math.max(answered(), ahead()?.revision ?? -1);
  const stressSlow = createSlow({ wanted: project.revision, shown: pictured, active });
  return { report, reported, slow, stressSlow };
}
