/**
 * Whether a joint reaches its target margin at a multiple of a step, and by how much: every mode (the
 * durability trough among them), every case, every gap state. What is found is kept.
 */
import { ModelError } from '../errors.ts';
import type { Mode } from '../margins/asked.ts';
import { type GoverningOptions, type GoverningRow, governingRows } from '../margins/governing.ts';
import type { Question, StateName } from '../margins/over-states.ts';
import { statesOf } from '../margins/over-states.ts';
import { severestFirst } from '../margins/severest-first.ts';

/** Exactly on the target counts as reached: this share of the factor is rounding. */
export const ON_TARGET = 1e-9;

/**
 * Searches for a factor end within this share of it, and where they begin depends on what is of
 * interest: figures nearer to the target than this are left to the full analysis.
 */
const NEAR = 1e-4;

export const reachesTarget = (margin: number, target: number): boolean =>
  1 + margin >= (1 + target) * (1 - ON_TARGET);

export interface JudgeQuestion {
  /**
   * The joint at a value, all else as it is.
   * @throws ModelError where the value does not fit
   */
  readonly at: (value: number) => Question;
  readonly target: number;
  readonly step: number;
  /** Told after each analysis, however short. */
  readonly onAnalysis?: () => void;
}

export interface Judge {
  readonly target: number;
  /** The value of a multiple, free of rounding: 3 steps of 0.1 are 0.3. */
  value(multiple: number): number;
  /** The row of the lowest margin; null where the joint does not fit together. */
  lowest(multiple: number): GoverningRow | null;
  /** False where the joint does not fit together. As fast as it can be known. */
  reaches(multiple: number): boolean;
  /** The same by the full analysis, which the others follow once it is made. */
  verified(multiple: number): boolean;
  /** Rows of the full analysis, lowest margin first; null where the joint does not fit together. */
  rows(multiple: number): readonly GoverningRow[] | null;
  /** Why the joint did not fit together, the first time that it did not. */
  readonly misfit: () => unknown;
}

interface Quick extends Omit<GoverningOptions, 'states'> {
  /** Only the state that decided last. */
  readonly alone?: boolean;
}

/** Modes that are followed into yielding need to know where the bond itself fails. */
const modesWith = (mode: Mode): ReadonlySet<Mode> =>
  new Set(mode === 'adhesive-peel' || mode === 'interlaminar' ? [mode, 'adhesive-strain'] : [mode]);

export function makeJudge({ at, target, step, onAnalysis }: JudgeQuestion): Judge {
  const full = new Map<number, readonly GoverningRow[] | null>();
  const lows = new Map<number, GoverningRow | null>();
  const verdicts = new Map<number, boolean>();
  /** The states that decided last come first: whoever failed once fails again. */
  let order: StateName[] = [];
  /** The mode that decided last, in the first of these states. */
  let suspect: Mode | null = null;
  let misfit: unknown = null;

  const value = (multiple: number): number => Number((multiple * step).toPrecision(12));

  const analyse = (multiple: number, options: Quick | null = null): GoverningRow[] | null => {
    try {
      const question = at(value(multiple));
      if (!options) return governingRows(question);
      if (order.length !== statesOf(question).length) order = severestFirst(question);
      const { alone = false, ...rest } = options;
      return governingRows(question, { ...rest, states: alone ? order.slice(0, 1) : order });
    } catch (error) {
      // A solver that finds no state says so by a RangeError: no figure, no claim.
      if (!(error instanceof ModelError || error instanceof RangeError)) throw error;
      misfit ??= error;
      return null;
    } finally {
      onAnalysis?.();
    }
  };

  const decidedBy = (row: GoverningRow | undefined): void => {
    if (!row) return;
    const { caseIndex, state, result } = row;
    suspect = result.mode;
    const isIt = (name: StateName): boolean =>
      name.caseIndex === caseIndex && name.gapState === state.gapState;
    order = [...order.filter(isIt), ...order.filter((name) => !isIt(name))];
  };

  const rows = (multiple: number): readonly GoverningRow[] | null => {
    if (!full.has(multiple)) full.set(multiple, analyse(multiple));
    return full.get(multiple) ?? null;
  };

  const lowest = (multiple: number): GoverningRow | null => {
    const known = full.get(multiple);
    if (known) return known[0] ?? null;
    if (!lows.has(multiple)) {
      const found = analyse(multiple, { onlyLowest: true });
      decidedBy(found?.[0]);
      lows.set(multiple, found?.[0] ?? null);
    }
    return lows.get(multiple) ?? null;
  };

  const verified = (multiple: number): boolean => {
    const found = rows(multiple);
    return found !== null && reachesTarget(found[0]?.result.margin ?? Infinity, target);
  };

  const band = NEAR * (1 + target);
  /** @returns null when the full analysis must decide */
  const verdictOf = (row: GoverningRow | null | undefined): boolean | null => {
    if (row === null) return false;
    const margin = row?.result.margin ?? Number.POSITIVE_INFINITY;
    return Math.abs(margin - target) <= band ? null : margin > target;
  };

  return {
    target,
    value,
    lowest,
    rows,
    verified,
    misfit: () => misfit,
    reaches(multiple) {
      if (full.has(multiple)) return verified(multiple);
      const known = verdicts.get(multiple);
      if (known !== undefined) return known;
      let row: GoverningRow | null | undefined = lows.get(multiple);
      if (row === undefined) {
        const quick = {
          onlyLowest: true,
          below: target + 2 * band,
          enough: (margin: number) => margin < target - band,
        };
        const alone =
          suspect && analyse(multiple, { ...quick, only: modesWith(suspect), alone: true });
        const found =
          alone?.[0] && alone[0].result.margin < target - band ? alone : analyse(multiple, quick);
        row = found === null ? null : found[0];
        if (row && row.result.margin < target) decidedBy(row);
      }
      const verdict = verdictOf(row) ?? verified(multiple);
      verdicts.set(multiple, verdict);
      return verdict;
    },
  };
}
