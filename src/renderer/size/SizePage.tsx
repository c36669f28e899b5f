/** One joint: its inputs, its section and curves, its margins. */

import { createMemo, type JSX, Show } from 'solid-js';
import { Dynamic } from 'solid-js/web';
import type { Bridge } from '../../shared/contract.ts';
import type { Joint } from '../../shared/project.ts';
import { quantities } from '../../shared/quantities.ts';
import type { JointReport } from '../../shared/reports.ts';
import { readInk } from '../charts/ink.ts';
import { createFontsReady } from '../fonts.ts';
import { TourNote } from '../help/TourNote.tsx';
import { numbersNote, overlapNote } from '../help/tour-words.ts';
import { TakeOut } from '../parts/TakeOut.tsx';
import { marginsSheet } from '../sheets/margin-sheets.ts';
import { createSize } from '../size-of.ts';
import { isOfMargin } from '../state/drawn-state.ts';
import type { ProjectState } from '../state/project.ts';
import type { Sizing } from '../state/sizing.ts';
import type { Subject } from '../state/working.ts';
import type { Theme } from '../theme.ts';
import { Inputs } from './Inputs.tsx';
import { Margins } from './Margins.tsx';
import { Spoken } from './Spoken.tsx';
import { StressFigure } from './StressFigure.tsx';
import { SweepFigure } from './SweepFigure.tsx';
import { roomForLayers } from './section/layout.ts';
import { Section } from './section/Section.tsx';
import { fitView, scaleNote, type View } from './section/scale.ts';
import { stackOf } from './section/stack.ts';
import { ViewRow } from './ViewRow.tsx';
import { viewBodies } from './view-bodies.ts';
import { views } from './views.ts';
import { WorkingSheet } from './working/WorkingSheet.tsx';

export interface SizePageProps {
  readonly bridge: Bridge;
  readonly project: ProjectState;
  readonly sizing: Sizing;
  readonly theme: Theme;
  readonly index: number;
  readonly joint: Joint;
  readonly onJoint: (id: string) => void;
  readonly onSheet: () => void;
}

const marginsOf = (report: JointReport | null) => report && marginsSheet(report);

export function SizePage(props: SizePageProps): JSX.Element {
  const document = () => props.project.document();
  const report = () => props.sizing.report();
  const issues = () => props.sizing.issues;

  let marginsColumn!: HTMLElement;
  let sectionBody!: HTMLDivElement;
  const size = createSize(() => sectionBody);
  /**
   * The joint as it stands in the document. What the core refuses cannot be, and is not drawn: the joint that
   * the figures are of stays on the paper.
   */
  const drawn = createMemo<Joint>(() => {
    const { min, max } = quantities.overlap;
    const { id, overlap } = props.joint;
    const good = overlap >= min && overlap <= max && !issues().stale();
    const reported = good ? null : props.sizing.reported();
    return reported?.id === id ? reported : (JSON.parse(JSON.stringify(props.joint)) as Joint);
  });
  const stack = createMemo(() => stackOf(drawn(), document()?.adherends ?? []));
  // A scale that changed under the hand would move the thing that is being held.
  const view = createMemo<View | null>((held) => {
    const box = size();
    if (!box) return null;
    if (props.sizing.dragging() && held) return held;
    return fitView(stack(), drawn().overlap, box.width, roomForLayers(stack(), box.height));
  }, null);

  /** At the overlap that is drawn; null while the margins are of another, whose strength it is not. */
  const strength = (): number | null => {
    if (props.sizing.reported()?.overlap !== drawn().overlap) return null;
    const rows = report()?.margins.filter(({ mode }) => mode !== 'durability-trough') ?? [];
    return rows.length === 0 ? null : 1 + Math.min(...rows.map(({ margin }) => margin));
  };

  const fonts = createFontsReady();
  const ink = createMemo(() => {
    props.theme.version();
    fonts();
    return size() ? readInk(sectionBody) : null;
  });

  const working = () => props.sizing.working;
  let opener: HTMLElement | null = null;
  const openWorking = (subject: Subject, from: HTMLElement): void => {
    opener = from;
    working().open(subject);
  };
  const closeWorking = (): void => {
    const held = window.document.activeElement;
    const isAway = held !== null && held !== window.document.body && !held.closest('.working');
    working().close();
    if (isAway) return;
    const back = opener?.isConnected ? opener : marginsColumn.querySelector<HTMLElement>('button');
    back?.focus();
  };

  /** The view that stands in the place of the stress; undefined for the stress itself. */
  const other = createMemo(() => views.find(({ id }) => id === props.sizing.view()));

  const setOverlap = (overlap: number): void =>
    props.project.edit(['joints', props.index, 'overlap'], overlap);

  return (
    <div
      class="size-page"
      classList={{
        'is-stale': issues().stale(),
        'is-slow': props.sizing.slow(),
        'is-stress-slow': props.sizing.stressSlow(),
        'has-working': working().subject() !== null,
        'has-view': other() !== undefined,
      }}
    >
      <section data-pane aria-label="Inputs and materials" class="column inputs-column">
        <h1 class="hidden">Size {props.joint.name}</h1>
        <Inputs
          project={props.project}
          issues={issues()}
          joint={props.joint}
          index={props.index}
          onJoint={props.onJoint}
          answers={{
            describe: props.sizing.describe,
            stress: () => report()?.stress ?? null,
            stale: () => issues().stale(),
          }}
        />
      </section>

      <section data-pane aria-label="Drawing" class="column figures-column">
        <section class="figure-block is-section" aria-labelledby="section-title">
          <header>
            <h2 id="section-title">Section</h2>
            <span class="units">
              {/* What is not to scale must be said: where the line is cut, it is the description that goes. */}
              {[view() && scaleNote(view()!), report()?.description].filter(Boolean).join(' · ')}
            </span>
            <ViewRow chosen={props.sizing.view()} onChoose={props.sizing.setView} />
            <button type="button" class="link sheet-link" onClick={() => props.onSheet()}>
              Sheet …
            </button>
          </header>
          <div class="figure-body" ref={sectionBody}>
            <Show when={size()}>
              {(box) => (
                <Show when={view()}>
                  {(fitted) => (
                    <Section
                      joint={drawn()}
                      stack={stack()}
                      description={report()?.description ?? props.joint.name}
                      view={fitted()}
                      width={box().width}
                      height={box().height}
                      onOverlap={setOverlap}
                      onDragging={(dragging) => props.sizing.setDragging(dragging)}
                    />
                  )}
                </Show>
              )}
            </Show>
          </div>
        </section>
        <TourNote step="overlap" text={overlapNote(props.joint)} />
        <Show
          when={other()}
          fallback={
            <>
              <Show when={document()}>
                {(project) => (
                  <StressFigure
                    report={report()}
                    project={project()}
                    joint={props.joint}
                    view={view()}
                    ink={ink}
                    choice={props.sizing.choice()}
                    onChoice={(choice) => props.sizing.choose(choice)}
                    map={props.sizing.map}
                    explained={working().subject()}
                    onWorking={openWorking}
                  />
                )}
              </Show>
              <SweepFigure
                sweep={props.sizing.sweep.report()}
                slow={props.sizing.sweep.slow()}
                overlap={drawn().overlap}
                strength={strength()}
                target={document()?.settings.targetMargin ?? 0}
                ink={ink}
                hasLoads={props.joint.loads.length > 0}
                explained={working().subject()}
                onWorking={openWorking}
              />
            </>
          }
        >
          {(chosen) => (
            <section class="figure-block is-view" aria-label={chosen().title}>
              <Dynamic
                component={viewBodies[chosen().id]}
                bridge={props.bridge}
                project={props.project}
                sizing={props.sizing}
                joint={props.joint}
                index={props.index}
                ink={ink}
              />
            </section>
          )}
        </Show>
      </section>

      {/* Under the sheet nothing can be seen, so nothing there may take the focus either. */}
      <section
        class="column margins-column"
        data-pane
        ref={marginsColumn}
        aria-labelledby="margins-title"
        inert={working().subject() !== null}
      >
        <header>
          <h2 id="margins-title">Margins</h2>
          <Show
            when={issues().stale()}
            fallback={
              <Show
                when={report() !== null && props.sizing.slow()}
                fallback={
                  <span class="units">
                    target {(document()?.settings.targetMargin ?? 0).toFixed(2)}
                  </span>
                }
              >
                <span class="behind-word">recalculating …</span>
              </Show>
            }
          >
            <span class="stale-word">not recalculated</span>
          </Show>
          <Show when={report()?.margins.length}>
            <TakeOut what="Margins" sheet={() => marginsOf(report())} />
          </Show>
          <Show when={report()?.flags.length}>
            {(count) => (
              <button
                type="button"
                class="link notes-jump"
                onClick={() => marginsColumn.querySelector('.notes')?.scrollIntoView()}
              >
                {count()} {count() === 1 ? 'note' : 'notes'}
              </button>
            )}
          </Show>
        </header>
        <TourNote step="numbers" text={numbersNote(report()?.margins[0])} />
        <Show when={report()} fallback={<p class="figure-empty">Calculating …</p>}>
          {(now) => (
            <Margins
              report={now()}
              flat={stack().diameter === null}
              chosen={(margin) => isOfMargin(props.sizing.choice(), margin)}
              onChoose={(margin) => props.sizing.chooseMargin(margin)}
              explained={working().subject()}
              onWorking={openWorking}
            />
          )}
        </Show>
      </section>
      <Show when={working().subject()}>
        <WorkingSheet state={working()} stale={issues().stale()} onClose={closeWorking} />
      </Show>
      <Spoken report={report()} stale={issues().stale()} />
    </div>
  );
}
