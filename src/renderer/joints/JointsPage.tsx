/** Where a project opens: how it stands, and every joint of it. */

import { createMemo, For, type JSX, Show } from 'solid-js';
import { isFlat } from '../../shared/convert-lap.ts';
import type { CornerMargin } from '../../shared/reports.ts';
import { saidText } from '../../shared/said.ts';
import { sentence, tally } from '../../shared/words.ts';
import { JobProgress } from '../parts/JobProgress.tsx';
import type { JointDeeds } from '../state/joint-deeds.ts';
import { type JointsView, jointsViews } from '../state/joints-view.ts';
import type { ProjectState } from '../state/project.ts';
import { AddJoint } from './AddJoint.tsx';
import { Conditions } from './corners/Conditions.tsx';
import { CornerTable } from './corners/CornerTable.tsx';
import { LoadCases } from './corners/LoadCases.tsx';
import { JointTable } from './JointTable.tsx';
import { ProjectSettings } from './ProjectSettings.tsx';

export interface JointsPageProps {
  readonly joints: JointsView;
  readonly project: ProjectState;
  readonly onOpen: (id: string) => void;
  /** Opens a joint at a state of it. */
  readonly onSheet: () => void;
  readonly onOpenCorner: (id: string, corner: CornerMargin) => void;
  readonly deeds: JointDeeds;
}

export function JointsPage(props: JointsPageProps): JSX.Element {
  const byCase = () => props.joints.view() === 'cases';
  /** The report behind the view that is looked at. */
  const whole = () => (byCase() ? props.joints.corners : props.joints.check);
  const report = () => whole().report();
  /** Of the list: whatever is judged, until all is. */
  const found = () => (byCase() ? [] : props.joints.check.found());
  const stopped = () => whole().refusal()?.code === 'stopped';
  const refusal = () => (stopped() ? null : whole().refusal());
  /** The calculation itself broke off: the same may well succeed now. */
  const broke = () => refusal()?.code === 'internal';

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
        <div class="joints-title">
          <h1>{props.project.document()?.name}</h1>
          <nav data-pane class="view-row" aria-label="Views of the joints">
            <For each={jointsViews}>
              {({ id, title }) => (
                <button
                  type="button"
                  class="link"
                  aria-current={props.joints.view() === id ? 'true' : undefined}
                  onClick={() => props.joints.setView(id)}
                >
                  {title}
                </button>
              )}
            </For>
          </nav>
          <button type="button" class="link" onClick={() => props.onSheet()}>
            Sheet …
          </button>
        </div>
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
              <Show when={whole().slow()}>
                {' '}
                <span class="behind-word">Recalculating …</span>
              </Show>
            </p>
          )}
        </Show>
        <Show when={report() === null && found().length > 0}>
          <p class="tally">
            {found().length} of {props.project.document()?.joints.length} joints checked so far.
          </p>
        </Show>
        <ProjectSettings project={props.project} issues={props.joints.issues} />
        <Show when={whole().slow() || report() === null}>
          <JobProgress
            job={whole().job}
            label={byCase() ? 'Corners of every joint' : 'Check of every joint'}
          />
        </Show>
      </header>
      <Show when={stopped()}>
        <div class="stopped" role="status">
          <p>The check was stopped before it was done.</p>
          <button type="button" class="plain" onClick={() => whole().again()}>
            Check every joint
          </button>
        </div>
      </Show>
      <Show when={refusal()}>
        {(error) => (
          <div class="refused" role="alert">
            <p>
              {broke() ? 'The project is not checked.' : 'The project cannot be checked.'}{' '}
              <Show when={blamed()}>{(joint) => `${joint().name}: `}</Show>
              {sentence(saidText(error()))}
            </p>
            <Show when={blamed()}>
              {(joint) => (
                <button type="button" class="plain" onClick={() => props.onOpen(joint().id)}>
                  Open {joint().name}
                </button>
              )}
            </Show>
            <Show when={broke()}>
              <button type="button" class="plain" onClick={() => whole().again()}>
                Check every joint
              </button>
            </Show>
          </div>
        )}
      </Show>
      <Show
        when={report() !== null || found().length > 0}
        fallback={
          <Show when={whole().refusal() === null}>
            <p class="figure-empty">Calculating every joint …</p>
          </Show>
        }
      >
        <section
          data-pane
          aria-label="Table of joints"
          classList={{ 'is-stale': report() !== null && whole().refusal() !== null }}
        >
          <Show
            when={report()?.joints.length !== 0}
            fallback={
              <div class="empty">
                <p>There is nothing to size yet: this project holds no joint.</p>
                <p class="units">
                  A new one begins with sizes that fit together, of the materials of this project;
                  its loads are yours to put in.
                </p>
                <div class="start-buttons">
                  <AddJoint deeds={props.deeds} class="plain is-first" />
                </div>
              </div>
            }
          >
            <Show
              when={byCase()}
              fallback={
                <JointTable
                  project={props.project.document()?.name ?? ''}
                  joints={props.joints.check.report()?.joints ?? found()}
                  report={props.joints.check.report()}
                  flat={flat()}
                  onOpen={props.onOpen}
                  deeds={props.deeds}
                />
              }
            >
              <Show when={props.joints.corners.report()}>
                {(table) => (
                  <CornerTable
                    report={table()}
                    order={props.joints.order()}
                    onOrder={props.joints.setOrder}
                    onOpen={props.onOpenCorner}
                  />
                )}
              </Show>
            </Show>
            <AddJoint deeds={props.deeds} />
          </Show>
        </section>
      </Show>
      <Show when={byCase() && props.project.document()}>
        <LoadCases project={props.project} issues={props.joints.issues} />
        <Conditions project={props.project} issues={props.joints.issues} />
      </Show>
    </div>
  );
}
