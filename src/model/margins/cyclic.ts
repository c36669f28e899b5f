/** Cycles of one load case against the adhesive's S-N line: peak shear allowed, life, both ends of a cycle. */
import { goodmanPeak } from '../coupons/blocks.ts';
import type { LocalProblem } from '../joint/local-problem.ts';
import type { CaseInput, SnLine } from '../joint/types.ts';
import { solveElastic } from '../shear-lag/solve-elastic.ts';
import { type ShearReached, shearFactor, stationsOf } from './shear-factor.ts';

type Cycles = Pick<CaseInput, 'cycles' | 'ratio'>;

/** Share of yield allowed to the peak shear after n cycles of the line's own ratio: min(1, C·n^−b). */
export const cyclicShare = (coefficient: number, exponent: number, cycles: number): number =>
  Math.min(1, coefficient * cycles ** -exponent);

/**
 * A peak share at one ratio of the load as the peak that does the same damage at another. Toward a lower
 * ratio the amplitude is kept, which gives no credit for the lower mean; toward a higher one Goodman's
 * line is taken with yield as the static strength. The static strength as an elastic peak is not known, but it
 * lies above yield: of all values that it can have these two give the lowest peak. An approximation.
 */
export function carriedOver(share: number, from: number, to: number): number {
  if (to === from || share === 0) return share;
  if (to < from) return (share * (1 - from)) / (1 - to);
  return share < 1 ? goodmanPeak({ peak: share, ratio: from }, to, 1) : 1;
}

/** The same backward: the share at `from` that is carried over to this one at `to`. */
function carriedBack(share: number, from: number, to: number): number {
  if (to === from || share === 0) return share;
  if (to < from) return (share * (1 - to)) / (1 - from);
  return share < 1 ? goodmanPeak({ peak: share, ratio: to }, from, 1) : share;
}

/** Ratios of the line and of the case; null where one is not known and nothing is carried over. */
export const ratiosOf = (
  line: SnLine,
  { ratio }: Pick<CaseInput, 'ratio'>,
): readonly [line: number, cycle: number] | null =>
  line.ratio === undefined || ratio === undefined || ratio === line.ratio
    ? null
    : [line.ratio, ratio];

/** Share of yield allowed to the peak shear of a cyclic case, at the case's own ratio. */
export function allowedShare(line: SnLine, cycle: Cycles): number {
  const { coefficient, exponent } = line;
  const ratios = ratiosOf(line, cycle);
  if (!ratios) return cyclicShare(coefficient, exponent, cycle.cycles!);
  return Math.min(1, carriedOver(coefficient * cycle.cycles! ** -exponent, ...ratios));
}

/** A peak share of a cycle as the share at the line's own ratio that does the same damage. */
export function onLine(line: SnLine, cycle: Pick<CaseInput, 'ratio'>, share: number): number {
  const ratios = ratiosOf(line, cycle);
  return ratios ? carriedBack(share, ...ratios) : share;
}

/**
 * Natural logarithm of the cycles to failure at a peak share, at the case's own ratio: −∞ above yield,
 * +∞ where the line promises an endless life.
 */
export function logLife(line: SnLine, cycle: Pick<CaseInput, 'ratio'>, share: number): number {
  if (share > 1) return Number.NEGATIVE_INFINITY;
  const there = onLine(line, cycle, share);
  if (there === 0) return Number.POSITIVE_INFINITY;
  const over = Math.log(line.coefficient / there);
  if (line.exponent > 0) return over / line.exponent;
  return over >= 0 ? Number.POSITIVE_INFINITY : Number.NEGATIVE_INFINITY;
}

/** Ends of the cycle at which a peak can stand, as factors on the case's loads. */
export const endsOf = ({ ratio = 0 }: Pick<CaseInput, 'ratio'>): readonly number[] =>
  ratio < 0 ? [1, ratio] : [1];

export interface CycleReached extends ShearReached {
  /** The end of the cycle, as a factor on the loads: 1, or the ratio where the reversed end is worse. */
  readonly end: number;
}

/** The factor on both ends of the cycle at which the elastic shear first reaches a limit. */
export function cycleFactor(
  problem: LocalProblem,
  limits: readonly number[],
  cycle: Pick<CaseInput, 'ratio'>,
): CycleReached {
  let worst: CycleReached | null = null;
  for (const end of endsOf(cycle)) {
    const reached = shearFactor(problem, limits, end);
    if (!worst || reached.factor < worst.factor) worst = { ...reached, end };
  }
  return worst!;
}

export interface PeakShare {
  readonly share: number;
  readonly bond: number;
  readonly x: number;
}

/** Largest elastic shear over its limit, at both ends of the cycle under loads times a factor. */
export function peakShare(
  { length, bonds, channels, axial, hoop }: LocalProblem,
  limits: readonly number[],
  cycle: Pick<CaseInput, 'ratio'>,
  factor: number,
): PeakShare {
  const solutions = channels.map((channel) => solveElastic(channel, bonds, length));
  let most: PeakShare = { share: 0, bond: 0, x: length };
  for (let j = 0; j < bonds.length; j++) {
    for (const x of stationsOf(bonds.length, length)) {
      const t = axial >= 0 ? solutions[axial]!.thermal.shear(j, x) : 0;
      const m = axial >= 0 ? solutions[axial]!.mechanical.shear(j, x) : 0;
      const n = hoop >= 0 ? solutions[hoop]!.mechanical.shear(j, x) : 0;
      for (const end of endsOf(cycle)) {
        const scale = factor * end;
        const share = Math.hypot(t + scale * m, scale * n) / limits[j]!;
        if (share > most.share) most = { share, bond: j, x };
      }
    }
  }
  return most;
}
