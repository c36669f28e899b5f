/** The worst of each mode and part over every case and gap state. */
import { type Mode, WALL_MODES } from './asked.ts';
import { overStates, type Question, type StateName, statesOf } from './over-states.ts';
import type { ModeResult } from './result.ts';
import type { JointState } from './state.ts';
import { refineStrength } from './strength-clocking.ts';

export interface GoverningRow {
  readonly result: ModeResult;
  readonly caseIndex: number;
  readonly state: JointState;
}

export interface GoverningOptions {
  /** The modes to compute; all when left out. */
  readonly only?: ReadonlySet<Mode>;
  /** When just the first row matters: searches that cannot change it are left out. */
  readonly onlyLowest?: boolean;
  /** Margins at or above this need not be found: their rows may be missing then. */
  readonly below?: number;
  /** States in the order in which they are solved; all, case by case, when left out. */
  readonly states?: readonly StateName[];
  /** Told the lowest margin so far after each state; true ends it, with the rows found by then. */
  readonly enough?: (lowest: number) => boolean;
  /** Told after each state how many are judged, of how many. */
  readonly judged?: (states: number, of: number) => void;
}

/** Rows of the margin list: one for each mode of the bonds, one for each mode and wall. */
const rowOf = ({ mode, part, x }: ModeResult, overlap: number): string => {
  if (!WALL_MODES.has(mode)) return mode;
  // First ply has a row at each end of the tube.
  const half = mode === 'first-ply' && x < overlap / 2 ? 'root' : '';
  return `${mode} ${part} ${half}`;
};

/**
 * The worst of each mode and part, lowest margin first.
 * @throws ModelError naming the input that does not fit
 */
export function governingRows(question: Question, options: GoverningOptions = {}): GoverningRow[] {
  const { only, onlyLowest = false, below = Number.POSITIVE_INFINITY } = options;
  const rows = new Map<string, GoverningRow>();
  let lowest = Number.POSITIVE_INFINITY;
  const ofInterest = (mode: Mode, known: number): number =>
    Math.min(
      below,
      onlyLowest
        ? Math.min(lowest, known)
        : (rows.get(mode)?.result.margin ?? Number.POSITIVE_INFINITY),
    );
  const states = options.states ?? statesOf(question);
  let judged = 0;
  const each = overStates(question, { ...(only ? { only } : {}), ofInterest }, states);
  for (const { caseIndex, gapState, state, modes } of each) {
    for (const result of modes) {
      lowest = Math.min(lowest, result.margin);
      const row = rowOf(result, question.joint.overlap);
      const worst = rows.get(row);
      // Equal to rounding: the nominal gap is the plainer name for it.
      const slack = gapState === 'nominal' ? 1e-9 : -1e-9;
      if (!worst || result.margin < worst.result.margin + slack) {
        rows.set(row, { result, caseIndex, state });
      }
    }
    judged++;
    options.judged?.(judged, states.length);
    if (options.enough?.(lowest)) return sorted(rows.values());
  }
  const strain = rows.get('adhesive-strain');
  if (strain) {
    const result = refineStrength(strain.state, strain.result);
    rows.set('adhesive-strain', { ...strain, result });
  }
  return sorted(rows.values());
}

const sorted = (rows: Iterable<GoverningRow>): GoverningRow[] =>
  [...rows].sort((a, b) => a.result.margin - b.result.margin);
