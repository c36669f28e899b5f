/** The report of one joint, kept up with the document as fast as answers come. */
import { type Accessor, batch, createEffect, createMemo, createSignal, onCleanup } from 'solid-js';
import type { Bridge, Focus } from '../../shared/contract.ts';
import type { Joint, Project } from '../../shared/project.ts';
import type { JointReport } from '../../shared/reports.ts';
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
}

export function createAnalysis(source: JointSource, focus: Accessor<Focus>): Analysis {
  const { bridge, project, issues, index, active } = source;
  const [report, setReport] = createSignal<JointReport | null>(null);
  const [reported, setReported] = createSignal<Joint | null>(null);
  const [answered, setAnswered] = createSignal(-1);
  const subject = subjectOf(source);

  const latest = makeLatest(
    async (revision: number) => {
      const place = index();
      const joint = askedJoint(source);
      if (!joint) return null;
      // The document goes on changing; the figures are of the joint that was asked about.
      const asked = JSON.parse(JSON.stringify(joint.document.joints[0])) as Joint;
      const reply = await bridge.ask('joint.analyse', { ...joint, focus: focus() });
      return { reply, place, revision, asked };
    },
    (answer) => {
      if (!answer) return;
      const { reply, place, revision, asked } = answer;
      batch(() => {
        setAnswered(revision);
        if (reply.ok) {
          setReport(reply.value);
          setReported(asked);
        }
        issues.setRefusal(
          reply.ok ? null : { ...reply.error, field: inWholeProject(reply.error.field, place) },
        );
      });
    },
  );
  onCleanup(() => latest.drop());

  let asked = '';
  // One effect, not two: what is dropped for a new joint must not be the question about it.
  createEffect(() => {
    const revision = project.revision();
    focus();
    if (subject() !== asked) {
      asked = subject();
      latest.drop();
      batch(() => {
        setReport(null);
        setReported(null);
        issues.setRefusal(null);
      });
    }
    if (active() && index() >= 0) latest.ask(revision);
  });
  const slow = createSlow({ wanted: project.revision, shown: answered, active });
  return { report, reported, slow };
}
