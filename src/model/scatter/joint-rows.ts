/**
 * Strength over the load asked for, of a joint whose sizes and properties are known: the lowest over
 * cases, gap states and modes, or each by itself. The durability trough is left out, as in the sweep:
 * it is a rule of length.
 */
import type { GapState, JointInput, ModelSettings } from '../joint/types.ts';
import { allModes } from '../margins/all-modes.ts';
import { type Mode, PEEL_MODES, WALL_MODES } from '../margins/asked.ts';
import type { ModeResult } from '../margins/result.ts';
import { jointState } from '../margins/state.ts';
import { refineStrength } from '../margins/strength-clocking.ts';
import { type Half, halved, halvesOf } from './halves.ts';
import type { Study } from './varied.ts';

/** A mode of a case in a gap state; of a wall by its name, first ply by the end of the tube. */
export interface Row {
  readonly caseIndex: number;
  readonly gapState: GapState;
  readonly mode: Mode;
  /** Empty for modes of the bonds: the worst bond counts. */
  readonly wall: string;
  /** True for the first ply near the tube's end. */
  readonly atRoot: boolean;
  /** Where the halves around the tube are told apart; else empty, the worst clocking counts. */
  readonly half: Half;
}

export interface RowValue {
  readonly row: Row;
  /** reached/asked: 1 is margin 0. */
  readonly ratio: number;
}

const judged: ReadonlySet<Mode> = new Set<Mode>([
  'adhesive-yield',
  'adhesive-strain',
  'cyclic-shear',
  ...PEEL_MODES,
  ...WALL_MODES,
]);
/** Their search wants to know where shear ends the joint. */
const searched: ReadonlySet<Mode> = new Set<Mode>(['adhesive-peel', 'interlaminar']);

const ratioOf = ({ reached, asked }: ModeResult): number => reached / asked;

/** The rows of one state's results. First ply comes twice for a wall: at the mouth, then at the root. */
function rowsOf(results: readonly ModeResult[], caseIndex: number): Row[] {
  const plies = new Set<string>();
  return results.map(({ mode, part, gapState }) => {
    const atRoot = mode === 'first-ply' && plies.has(part);
    if (mode === 'first-ply') plies.add(part);
    return { caseIndex, gapState, mode, wall: WALL_MODES.has(mode) ? part : '', atRoot, half: '' };
  });
}

export const rowKey = ({ caseIndex, gapState, mode, wall, atRoot, half }: Row): string =>
  `${caseIndex} ${gapState} ${mode} ${wall} ${atRoot} ${half}`;

/** A strength within this of the lowest ratio is followed to its own worst clocking. */
const NEAR = 1.1;

/**
 * Gap states of a sample: its gap is known, so that an off-centre tube alone makes a thin and a thick
 * side; in a double lap one bond is thin there where the other is thick.
 */
export const sampledStates = (joint: JointInput): readonly GapState[] =>
  'offset' in joint && joint.offset > 0 ? sides : ['nominal'];
const sides: readonly GapState[] = ['thin-side', 'thick-side', 'nominal'];

/**
 * The lowest row, exactly; null when no case loads the joint.
 * @param states those that the joint can be in
 * @throws ModelError when the joint cannot be put together
 */
export function lowestRow(
  study: Study,
  settings: ModelSettings,
  states: readonly GapState[],
): RowValue | null {
  let lowest: RowValue | null = null;
  let strain: { value: RowValue; refine: () => number } | null = null;
  const low = (): number => lowest?.ratio ?? Number.POSITIVE_INFINITY;
  const take = (value: RowValue): void => {
    if (value.ratio < low()) lowest = value;
  };
  study.cases.forEach((loadCase, caseIndex) => {
    for (const gapState of states) {
      const state = jointState(study.joint, study.adhesive, loadCase, gapState, settings);
      const results = allModes(state, study.adhesive, settings.factors, {
        only: judged,
        ofInterest: (_mode, known) => Math.min(low() - 1, known),
      });
      const rows = rowsOf(results, caseIndex);
      results.forEach((result, i) => {
        const value = { row: rows[i]!, ratio: ratioOf(result) };
        take(value);
        if (result.mode !== 'adhesive-strain') return;
        if (!strain || value.ratio < strain.value.ratio) {
          strain = { value, refine: () => ratioOf(refineStrength(state, result)) };
        }
      });
    }
  });
  const found = strain as { value: RowValue; refine: () => number } | null;
  if (found && found.value.ratio < NEAR * low()) {
    take({ row: found.value.row, ratio: found.refine() });
  }
  return lowest;
}

/** Keys of the rows wanted, or how far above the lowest ratio a row may lie to be told. */
export type Wanted = ReadonlySet<string> | number;

/**
 * Rows of a sample by their keys, each at its own worst; where its offset happens to be 0 the sides are
 * still there, and the same. Rows that the joint does not have at these sizes are
 * missing.
 */
export function rowsAt(
  study: Study,
  settings: ModelSettings,
  wanted: Wanted,
): ReadonlyMap<string, RowValue> {
  const rows = new Map<string, RowValue>();
  const keys = typeof wanted === 'number' ? null : wanted;
  const slack = typeof wanted === 'number' ? wanted : 1;
  let low = Number.POSITIVE_INFINITY;
  const take = (value: RowValue): void => {
    const key = rowKey(value.row);
    if (!keys || keys.has(key)) rows.set(key, value);
  };
  study.cases.forEach((loadCase, caseIndex) => {
    for (const gapState of keys ? sides : sampledStates(study.joint)) {
      const only = keys ? modesOf(keys, caseIndex, gapState) : judged;
      if (only.size === 0) continue;
      const state = jointState(study.joint, study.adhesive, loadCase, gapState, settings);
      const results = allModes(state, study.adhesive, settings.factors, {
        only: keys ? without(only, halved) : only,
        ...(keys ? {} : { ofInterest: (_mode, known) => slack * (1 + Math.min(low, known)) - 1 }),
      });
      const named = rowsOf(results, caseIndex);
      results.forEach((result, i) => {
        low = Math.min(low, result.margin);
        if (halved.has(result.mode)) return;
        const own = keys ? refineStrength(state, result) : result;
        take({ row: named[i]!, ratio: ratioOf(own) });
      });
      for (const mode of halved) {
        if (keys ? !only.has(mode) : !results.some((result) => result.mode === mode)) continue;
        for (const { half, ratio } of halvesOf(state, study.adhesive, settings.factors, mode)) {
          take({ row: { caseIndex, gapState, mode, wall: '', atRoot: false, half }, ratio });
        }
      }
    }
  });
  if (keys) return rows;
  return new Map([...rows].filter(([, { ratio }]) => ratio <= slack * (1 + low)));
}

const without = (modes: ReadonlySet<Mode>, left: ReadonlySet<Mode>): ReadonlySet<Mode> =>
  new Set([...modes].filter((mode) => !left.has(mode)));

/** Modes to compute for the rows wanted of a case in a gap state. */
function modesOf(keys: ReadonlySet<string>, caseIndex: number, gapState: GapState): Set<Mode> {
  const modes = new Set<Mode>();
  for (const key of keys) {
    const [ofCase, ofGap, mode] = key.split(' ') as [string, GapState, Mode];
    if (Number(ofCase) === caseIndex && ofGap === gapState) modes.add(mode);
  }
  if ([...searched].some((mode) => modes.has(mode))) modes.add('adhesive-strain');
  return modes;
}
