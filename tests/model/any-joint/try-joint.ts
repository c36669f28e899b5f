/** What must hold of any joint, looked at one after the other: says what is wrong, or nothing. */
import { resolveJoint } from '../../../src/main/handlers/resolve.ts';
import { ModelError } from '../../../src/model/errors.ts';
import { hasExactPlastic } from '../../../src/model/joint/lap-state.ts';
import type { LocalProblem } from '../../../src/model/joint/local-problem.ts';
import { type JointState, jointState } from '../../../src/model/margins/state.ts';
import { wallModes } from '../../../src/model/margins/wall-modes.ts';
import type { Project } from '../../../src/shared/project.ts';
import { balance, limits, reversal } from './elastic-checks.ts';
import { growth, halfLoad, onTheWay, strengthOf } from './strength-checks.ts';

export interface Tally {
  answered: number;
  /** By the input that is to be changed. */
  readonly refused: Record<string, number>;
  /** Joints whose strength was found, by how. */
  readonly strength: Record<string, number>;
  /** The most that a number was off, by check. */
  readonly most: Record<string, number>;
}
export const makeTally = (): Tally => ({ answered: 0, refused: {}, strength: {}, most: {} });

/**
 * @param whole the walls and what only the chain answers, too
 * @returns the first thing that is wrong, null when nothing is; counts in `tally`
 */
export function tryJoint(project: Project, tally: Tally, whole: boolean): string | null {
  const theta = 0;
  const note = (what: string, off: number): void => {
    tally.most[what] = Math.max(tally.most[what] ?? 0, off);
  };
  try {
    const { input, adhesive, cases } = resolveJoint(project, 0);
    const { factors, adherendShear = true, edgeMoment } = project.settings;
    const settings = { factors, adherendShear, edgeMoment };
    const state = jointState(input, adhesive, cases[0]!.input, 'nominal', settings);
    const problem = state.at(theta);
    const wrong =
      (whole ? walls(state, factors) : null) ??
      balance(problem, note) ??
      reversal(state, theta) ??
      limits(problem, note) ??
      (whole || hasExactPlastic(problem) ? strengths(state, problem, tally, note) : null);
    if (!wrong) tally.answered += 1;
    return wrong;
  } catch (error) {
    if (!(error instanceof ModelError)) throw error;
    tally.refused[error.input] = (tally.refused[error.input] ?? 0) + 1;
    return error.message.length > 20 && error.input !== '' ? null : 'refused without a reason';
  }
}

export type Note = (what: string, off: number) => void;

function walls(state: JointState, factors: Project['settings']['factors']): string | null {
  for (const { mode, reached, margin } of wallModes(state, factors)) {
    if (!(reached >= 0) || !Number.isFinite(margin)) return `${mode}: ${reached}, ${margin}`;
  }
  return null;
}

function strengths(
  state: JointState,
  problem: LocalProblem,
  tally: Tally,
  note: Note,
): string | null {
  if (problem.channels.every(({ load }) => load === 0)) return null;
  const { kind, factor } = strengthOf(problem);
  tally.strength[kind] = (tally.strength[kind] ?? 0) + 1;
  if (!(factor >= 0) || !Number.isFinite(factor)) return `strength ${factor}`;
  return halfLoad(problem, factor, note) ?? onTheWay(problem, factor, note) ?? growth(state, note);
}
