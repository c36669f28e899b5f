/** Where a project opens: how it stands, and every joint of it. */
import { createMemo, type JSX, Show } from 'solid-js';
import { isFlat } from '../../shared/convert-lap.ts';
import { sentence, tally } from '../../shared/words.ts';
import { JobProgress } from '../parts/JobProgress.tsx';
import type { Check } from '../state/check.ts';
import type { ProjectState } from '../state/project.ts';
import { JointTable } from './JointTable.tsx';

export interface JointsPageProps {
  readonly check: Check;
  readonly project: ProjectState;
  readonly onOpen: (id: string) => void;
}

export function JointsPage(props: JointsPageProps): JSX.Element {
  const report = () => props.check.report();
  const stopped = () => props.check.refusal()?.code === 'stopped';
  const refusal = () => (stopped() ? null : props.check.refusal());

  /** The joint that a refusal names, to be opened and mended. */
  const blamed = () => {
    const index = /^joints\.(\d+)/.exec(refusal()?.field ?? '')?.[1];
    return index === undefined ? undefined : props.project.document()?.joints[Number(index)];
  };

  const flat = createMemo(
    () =>
      new Set(
        props.project
          .document()
          ?.joints.filter(isFlat)
          .map(({ id }) => id),
      ),
  );

  return (
    <div class="joints-page">
      <header class="joints-head">
        <h1>{props.project.document()?.name}</h1>
        <Show when={props.project.document()?.note}>{(note) => <p class="note">{note()}</p>}</Show>
        <Show when={report()}>
          {(now) => (
            <p class="tally">
              {tally(
                now().counts,
                now().joints.length,
                now().joints.filter((joint) => joint.refused !== null).length,
              )}{' '}
              <Show when={now().joints.length > 0}>
                <span class="units">
                  Low is below the project's target of {now().targetMargin.toFixed(2)}.
                </span>
              </Show>
              <Show when={props.check.slow()}>
                {' '}
                <span class="behind-word">Recalculating …</span>
              </Show>
            </p>
          )}
        </Show>
        <Show when={props.check.slow() || report() === null}>
          <JobProgress job={props.check.job} label="Check of every joint" />
        </Show>
      </header>
      <Show when={stopped()}>
        <div class="stopped" role="status">
          <p>The check was stopped before it was done.</p>
          <button type="button" class="plain" onClick={() => props.check.again()}>
            Check every joint
          </button>
        </div>
      </Show>
      <Show when={refusal()}>
        {(error) => (
          <div class="refused" role="alert">
            <p>
              The project cannot be checked.{' '}
              <Show when={blamed()}>{(joint) => `${joint().name}: `}</Show>
              {sentence(error().message)}
            </p>
            <Show when={blamed()}>
              {(joint) => (
                <button type="button" class="plain" onClick={() => props.onOpen(joint().id)}>
                  Open {joint().name}
                </button>
              )}
            </Show>
          </div>
        )}
      </Show>
      <Show
        when={report()}
        fallback={
          <Show when={props.check.refusal() === null}>
            <p class="figure-empty">Calculating every joint …</p>
          </Show>
        }
      >
        {(now) => (
          <div classList={{ 'is-stale': props.check.refusal() !== null }}>
            <Show
              when={now().joints.length > 0}
              fallback={
                <div class="empty">
                  <p>There is nothing to size yet: this project holds no joint.</p>
                  <p class="units">
                    Joints are listed in the project file under “joints”. Open another project, or
                    look at the demonstration to see how one is put in.
                  </p>
                </div>
              }
            >
              <JointTable report={now()} flat={flat()} onOpen={props.onOpen} />
            </Show>
          </div>
        )}
      </Show>
    </div>
  );
}
