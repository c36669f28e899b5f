/** Which state of the joint is drawn: what was chosen, and what was left to the model. */
import type { Focus } from '../../shared/contract.ts';
import type { Project } from '../../shared/project.ts';
import type { CornerMargin, JointReport, Margin, StressReport } from '../../shared/reports.ts';

export interface Choice {
  readonly caseId: string | null;
  /** Condition that the case is judged in; null for its own surroundings, undefined when not chosen. */
  readonly conditionId: string | null | undefined;
  readonly gapState: Margin['gapState'] | null;
  readonly theta: number | null;
  /** The margin that was taken to come here; null when the state was put together by hand. */
  readonly row: string | null;
  /** False draws the loads as applied, true with the factors that are asked for. */
  readonly factored: boolean;
}

export const governing: Choice = {
  caseId: null,
  conditionId: undefined,
  gapState: null,
  theta: null,
  row: null,
  factored: false,
};

const rowOf = (margin: Margin): string => `${margin.mode} ${margin.part}`;

export const ofMargin = (margin: Margin, factored: boolean): Choice => ({
  caseId: margin.caseId,
  conditionId: margin.conditionId,
  gapState: margin.gapState,
  theta: margin.theta,
  row: rowOf(margin),
  factored,
});

/** The very state of a corner, loads as applied. */
export const ofCorner = ({ caseId, conditionId, gapState, theta }: CornerMargin): Choice => ({
  ...governing,
  caseId,
  conditionId,
  gapState,
  theta,
});

export const isOfMargin = (choice: Choice, margin: Margin): boolean => choice.row === rowOf(margin);

/**
 * The factor asked of the case that is drawn: that of its lowest adhesive margin, as the report has
 * it. A case that sets no margin has none in the report; what is asked of failure stands in, for
 * the drawing only.
 */
export function askedFactor(report: JointReport, project: Project): number {
  const drawn = report.stress?.caseId;
  const ofCase = report.margins.filter((margin) => margin.caseId === drawn);
  const margin = ofCase.find(({ mode }) => mode.startsWith('adhesive')) ?? ofCase[0];
  if (margin) return margin.asked;
  const { factors } = project.settings;
  const kind = project.loadCases.find(({ id }) => id === drawn)?.kind;
  return kind === 'ultimate' ? factors.fitting : factors.ultimate * factors.fitting;
}

export const focusOf = (choice: Choice, asked: number | null): Focus => ({
  ...(choice.caseId === null ? {} : { caseId: choice.caseId }),
  ...(choice.conditionId === undefined ? {} : { conditionId: choice.conditionId }),
  ...(choice.gapState === null ? {} : { gapState: choice.gapState }),
  ...(choice.theta === null ? {} : { theta: choice.theta }),
  ...(choice.factored && asked !== null ? { loadFactor: asked } : {}),
  stations: 241,
});

/** The very state that sets a margin. */
export const focusOfMargin = ({ caseId, conditionId, gapState, theta }: Margin): Focus => ({
  caseId,
  conditionId,
  gapState,
  theta,
});

/** The very state that a stress report is of. */
export const focusOfStress = ({
  caseId,
  conditionId,
  gapState,
  theta,
  loadFactor,
}: StressReport): Focus => ({
  caseId,
  conditionId,
  gapState,
  theta,
  loadFactor,
});
