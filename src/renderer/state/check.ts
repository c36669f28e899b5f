/** The report on the whole project, asked for while somebody looks at it. */
import { type Accessor, batch, createEffect, createSignal, onCleanup } from 'solid-js';
import type { Bridge } from '../../shared/contract.ts';
import type { RequestError } from '../../shared/reply.ts';
import type { CheckReport } from '../../shared/reports.ts';
import { makeLatest } from '../latest.ts';
import type { ProjectState } from './project.ts';
import { createSlow } from './slow.ts';

export interface Check {
  readonly report: Accessor<CheckReport | null>;
  readonly refusal: Accessor<RequestError | null>;
  /** True while the report is of an older document than the one shown. */
  readonly behind: Accessor<boolean>;
  /** The same, once it has been so for a while. */
  readonly slow: Accessor<boolean>;
}

export function createCheck(
  bridge: Bridge,
  project: ProjectState,
  active: Accessor<boolean>,
): Check {
  const [report, setReport] = createSignal<CheckReport | null>(null);
  const [refusal, setRefusal] = createSignal<RequestError | null>(null);
  const [answered, setAnswered] = createSignal(-1);
  const latest = makeLatest(
    (_revision: number) => bridge.ask('project.check', { document: project.plain() }),
    (reply, revision) => {
      batch(() => {
        setAnswered(revision);
        if (reply.ok) setReport(reply.value);
        setRefusal(reply.ok ? null : reply.error);
      });
    },
  );
  onCleanup(() => latest.drop());
  let opened = -1;
  // One effect, not two: what is dropped for a new project must not be the question about it.
  createEffect(() => {
    const revision = project.revision();
    if (project.opening() !== opened) {
      opened = project.opening();
      latest.drop();
      batch(() => {
        setReport(null);
        setRefusal(null);
      });
    }
    if (active() && project.document() !== null && answered() !== revision) latest.ask(revision);
  });
  const behind = (): boolean => answered() !== project.revision();
  return { report, refusal, behind, slow: createSlow(behind, answered) };
}
