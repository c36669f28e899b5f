/** The worst of each mode and part over every case and gap state. */
import { type Mode, WALL_MODES } from './asked.ts';
import { damageRow } from './cyclic-damage.ts';
import { overStates, type Question, type StateName, statesOf } from './over-states.ts';
import { byMargin, type ModeResult } from './result.ts';
import { severestFirst } from './severest-first.ts';
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
  /** States in the order in which they are solved; all, the severest first, when left out. */
  readonly states?: readonly StateName[];
  /** Told the lowest margin so far after each state; true ends it, with the rows found by then. */
  readonly enough?: (lowest: number) => boolean;
}

/** Rows of the margin list: one for each mode of the bonds, one for each mode and wall. */
const rowOf = ({ mode, part, x }: ModeResult, overlap: number): string => {
  if (!WALL_MODES.has(mode)) return mode;
  // First ply has a row at each end of the tube.
  const half = mode === 'first-ply' && x < overlap / 2 ? 'root' : '';
  return `${mode} ${part} ${half}`;
};

/** Margins nearer to each other than this are equal to rounding. */
const EQUAL = 1e-9;

/** Of margins that are equal to rounding the nominal gap has the plainer name, then the earlier case. */
function isWorse(a: GoverningRow, b: GoverningRow): boolean {
  const difference = a.result.margin - b.result.margin;
  if (Math.abs(difference) > EQUAL) return difference < 0;
  const isNominal = ({ result }: GoverningRow): boolean => result.gapState === 'nominal';
  if (isNominal(a) !== isNominal(b)) return isNominal(a);
  return a.caseIndex < b.caseIndex;
}

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
  const states =
    options.states ??
    severestFirst(question, statesOf(question), onlyLowest ? 'lowest' : 'failure');
  const each = overStates(
    question,
    { ...(only ? { only } : {}), ofInterest, spareStrength: true },
    states,
  );
  for (const { caseIndex, state, modes } of each) {
    for (const result of modes) {
      lowest = Math.min(lowest, result.margin);
      const row = rowOf(result, question.joint.overlap);
      const worst = rows.get(row);
      const found = { result, caseIndex, state };
      if (!worst || isWorse(found, worst)) rows.set(row, found);
    }
    if (options.enough?.(lowest)) return sorted(rows.values());
  }
  // Over several states at once: it is known where all of them are looked at.
  const isWhole = !options.states || options.states.length === statesOf(question).length;
  if (isWhole && (!only || only.has('cyclic-damage'))) {
    const damage = damageRow(question);
    if (damage) rows.set('cyclic-damage', damage);
  }
  const strain = rows.get('adhesive-strain');
  if (strain) {
    const result = refineStrength(strain.state, strain.result);
    rows.set('adhesive-strain', { ...strain, result });
  }
  return sorted(rows.values());
}

const sorted = (rows: Iterable<GoverningRow>): GoverningRow[] =>
  [...rows].sort((a, b) => byMargin(a.result, b.result));
