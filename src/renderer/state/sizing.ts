/** Everything the Size page shows of its joint besides the document itself; outlives the page. */
import { type Accessor, batch, createEffect, createMemo, createSignal, on } from 'solid-js';
import type { Bridge } from '../../shared/contract.ts';
import type { Joint } from '../../shared/project.ts';
import type { CornerMargin, Margin } from '../../shared/reports.ts';
import { surroundingsOf } from '../../shared/surroundings.ts';
import { type Analysis, createAnalysis } from './analysis.ts';
import { type Describe, makeDescribe } from './describe.ts';
import {
  askedFactor,
  type Choice,
  focusOf,
  governing,
  isOfMargin,
  ofCorner,
  ofMargin,
} from './drawn-state.ts';
import { createIssues, type Issues } from './issues.ts';
import type { ProjectState } from './project.ts';
import { createStressMap, type MapState } from './stress-map.ts';
import { createSweep, type Sweep } from './sweep.ts';
import { createWorking, type WorkingState } from './working.ts';

export interface Sizing extends Analysis {
  readonly issues: Issues;
  readonly sweep: Sweep;
  readonly describe: Describe;
  readonly working: WorkingState;
  readonly map: MapState;
  readonly choice: Accessor<Choice>;
  choose(choice: Choice): void;
  /** Draws the state that sets this margin; once more, the governing one again. */
  chooseMargin(margin: Margin): void;
  /** Draws this state of a joint, as soon as that is the one shown. */
  drawCorner(jointId: string, corner: CornerMargin): void;
  /** The same for a load case, in what is worst of it. */
  drawCase(jointId: string, caseId: string): void;
  /** Id of the view under the section; `stress` for the first. */
  readonly view: Accessor<string>;
  setView(id: string): void;
  readonly dragging: Accessor<boolean>;
  setDragging(dragging: boolean): void;
}

export interface SizingSource {
  readonly bridge: Bridge;
  readonly project: ProjectState;
  readonly index: Accessor<number>;
  readonly active: Accessor<boolean>;
}

export function createSizing(source: SizingSource): Sizing {
  const { project, index } = source;
  const issues = createIssues();
  const [choice, setChoice] = createSignal<Choice>(governing);
  const [asked, setAsked] = createSignal<number | null>(null);
  const [dragging, setDragging] = createSignal(false);
  const [view, setView] = createSignal('stress');
  const focus = createMemo(() => focusOf(choice(), asked()));

  const jointSource = { ...source, issues };
  const { report, reported, slow, stressSlow } = createAnalysis(jointSource, focus);
  const sweep = createSweep(jointSource, dragging);
  const working = createWorking(jointSource, report, dragging);
  const map = createStressMap(jointSource, report, dragging);

  const joint = (): Joint | undefined => project.document()?.joints[index()];
  /** The choice that comes with the next joint. */
  let coming: { readonly jointId: string; readonly choice: Choice } | null = null;
  // What is drawn belongs to one joint, and to a case that still acts on it, in its surroundings.
  createEffect(
    on(
      () => joint()?.id,
      (id) => {
        setChoice(coming?.jointId === id && coming ? coming.choice : governing);
        coming = null;
      },
      { defer: true },
    ),
  );
  createEffect(() => {
    const { caseId, conditionId } = choice();
    if (caseId === null) return;
    const document = project.document();
    const acts = joint()?.loads.some((load) => load.case === caseId);
    const loadCase = document?.loadCases.find(({ id }) => id === caseId);
    const isThere =
      acts &&
      document &&
      loadCase &&
      (conditionId === undefined ||
        surroundingsOf(document, loadCase).some((one) => (one?.id ?? null) === conditionId));
    if (!isThere) setChoice(governing);
  });

  const drawNext = (jointId: string, next: Choice): void =>
    batch(() => {
      setView('stress');
      setAsked(null);
      if (joint()?.id === jointId) setChoice(next);
      else coming = { jointId, choice: next };
    });

  return {
    issues,
    report,
    reported,
    slow,
    stressSlow,
    sweep,
    describe: makeDescribe(source.bridge, project),
    working,
    map,
    choice,
    choose(next) {
      const [now, document] = [report(), project.document()];
      batch(() => {
        setAsked(next.factored && now && document ? askedFactor(now, document) : null);
        setChoice(next);
      });
    },
    chooseMargin(margin) {
      const { factored } = choice();
      batch(() => {
        setAsked(factored ? margin.asked : null);
        setChoice(
          isOfMargin(choice(), margin) ? { ...governing, factored } : ofMargin(margin, factored),
        );
      });
    },
    drawCorner: (jointId, corner) => drawNext(jointId, ofCorner(corner)),
    drawCase: (jointId, caseId) => drawNext(jointId, { ...governing, caseId }),
    view,
    setView,
    dragging,
    setDragging,
  };
}
