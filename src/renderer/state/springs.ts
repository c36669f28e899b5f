/** The springs of the joint on the page, kept up with the document; the last good ones stay meanwhile. */
import { type Accessor, createEffect, createSignal, onCleanup } from 'solid-js';
import type { Bridge } from '../../shared/contract.ts';
import type { RequestError } from '../../shared/reply.ts';
import type { SpringsReport } from '../../shared/reports-springs.ts';
import { makeLatest } from '../latest.ts';
import { type ProjectState, withOneJoint } from './project.ts';

export interface SpringsState {
  /** Null until the first answer about this joint has come. */
  readonly report: Accessor<SpringsReport | null>;
  /** Why there is no newer answer; null when there is. */
  readonly refused: Accessor<RequestError | null>;
}

export function createSprings(
  bridge: Bridge,
  project: ProjectState,
  index: Accessor<number>,
): SpringsState {
  const [report, setReport] = createSignal<SpringsReport | null>(null);
  const [refused, setRefused] = createSignal<RequestError | null>(null);
  const latest = makeLatest(
    async (_revision: number) => {
      const whole = project.plain();
      const document = whole && withOneJoint(whole, index());
      const jointId = document?.joints[0]?.id;
      if (jointId === undefined) return null;
      return bridge.ask('joint.springs', { document, jointId });
    },
    (reply) => {
      if (!reply) return;
      setRefused(reply.ok ? null : reply.error);
      if (reply.ok) setReport(reply.value);
    },
  );
  onCleanup(() => latest.drop());
  createEffect((asked: string | undefined) => {
    const subject = `${project.opening()} ${project.document()?.joints[index()]?.id}`;
    if (asked !== undefined && asked !== subject) {
      latest.drop();
      setReport(null);
    }
    latest.ask(project.revision());
    return subject;
  });
  return { report, refused };
}
