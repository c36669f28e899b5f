/**
 * Life against stress: the straight line of logarithms (O. H. Basquin, Proc. ASTM 10 (1910) 625),
 * log N = a + b·log S with a scatter of log N that is normal and the same at every stress.
 */
import { ModelError } from '../errors.ts';
import { censoredLine } from './censored-line.ts';
import { extent } from './sample.ts';
import { type BasisKind, lineFactor, SHARE_BELOW } from './tolerance-factor.ts';

export interface LifeResult {
  /** Largest stress of the cycle, or amplitude: the same for all. */
  readonly stress: number;
  readonly cycles: number;
  /** Taken off unbroken: the life is more than `cycles`. */
  readonly runOut: boolean;
}

export interface LifeLine {
  readonly results: number;
  readonly failures: number;
  readonly method: 'least-squares' | 'censored-likelihood';
  /** Mean of log₁₀ S of all results: log₁₀ N = level + slope·(log₁₀ S − centre). */
  readonly centre: number;
  readonly level: number;
  readonly slope: number;
  /** Standard deviation of log₁₀ N, failures − 2 degrees of freedom. */
  readonly deviation: number;
  /** Variance of level and slope, and what they share, over that of one result. */
  readonly variances: readonly [level: number, shared: number, slope: number];
  /** S = coefficient·N^−exponent, the stress at one cycle by extrapolation; null where lives do not fall as stress rises. */
  readonly basquin: { readonly coefficient: number; readonly exponent: number } | null;
  readonly stresses: readonly [lowest: number, highest: number];
  readonly longest: number;
}

export interface LifeAt {
  readonly stress: number;
  /** Half of all last longer. */
  readonly median: number;
  /** The share wanted (90 % for B) lasts longer, with 95 % confidence. */
  readonly bound: number;
  readonly factor: number;
  /** Outside the stresses tested. */
  readonly outside: boolean;
}

/** Two for the line and one to show scatter. */
export const LEAST_FAILURES = 3;

function check(results: readonly LifeResult[]): void {
  results.forEach(({ stress, cycles }, i) => {
    const good = (x: number): boolean => Number.isFinite(x) && x >= 1e-100 && x <= 1e100;
    if (!good(stress)) {
      throw new ModelError('results', `Life ${i + 1} needs a stress above 0; it is ${stress}.`);
    }
    if (!good(cycles)) {
      throw new ModelError('results', `Life ${i + 1} needs cycles above 0; they are ${cycles}.`);
    }
  });
  const failed = results.filter(({ runOut }) => !runOut);
  if (failed.length < LEAST_FAILURES) {
    throw new ModelError(
      'results',
      `A life line takes ${LEAST_FAILURES} failures or more; there are ${failed.length}. Run-outs do not count.`,
    );
  }
  const logs = failed.map(({ stress }) => Math.log10(stress));
  const [low, high] = extent(logs);
  if (high - low < 1e-6) {
    throw new ModelError(
      'results',
      'A life line takes failures at 2 stresses or more; they are all at one.',
    );
  }
}

function basquinOf(centre: number, level: number, slope: number): LifeLine['basquin'] {
  if (!(slope < 0)) return null;
  const coefficient = 10 ** (centre - level / slope);
  return Number.isFinite(coefficient) ? { coefficient, exponent: -1 / slope } : null;
}

/**
 * Least squares where all have failed; with run-outs the most likely line, each run-out taken as a life
 * longer than where it stopped. The deviation is then that of the likelihood times √(r/(r − 2)), r failures, which
 * gives least squares back where there is no run-out.
 * @throws ModelError for too few failures, one stress only, or lives that lie on a line without scatter
 */
export function fitLifeLine(results: readonly LifeResult[]): LifeLine {
  check(results);
  const logs = results.map(({ stress }) => Math.log10(stress));
  const centre = logs.reduce((sum, x) => sum + x, 0) / logs.length;
  const found = censoredLine(
    results.map(({ cycles, runOut }, i) => ({
      x: logs[i]! - centre,
      y: Math.log10(cycles),
      above: runOut,
    })),
  );
  const failures = results.filter(({ runOut }) => !runOut).length;
  const stresses = results.map(({ stress }) => stress);
  return {
    results: results.length,
    failures,
    method: failures === results.length ? 'least-squares' : 'censored-likelihood',
    centre,
    level: found.level,
    slope: found.slope,
    deviation: found.sigma * Math.sqrt(failures / (failures - 2)),
    variances: found.variances,
    basquin: basquinOf(centre, found.level, found.slope),
    stresses: extent(stresses),
    longest: extent(results.map(({ cycles }) => cycles))[1],
  };
}

/**
 * Median life and its lower tolerance bound at a stress: log N − k·s with the factor of a line (Owen), exact
 * without run-outs. With run-outs an approximation: freedom and variances are those of the likelihood.
 * @throws ModelError for a stress that is not above 0, or a life beyond all numbers
 */
export function lifeAt(line: LifeLine, stress: number, kind: BasisKind = 'B'): LifeAt {
  if (!(stress > 0 && Number.isFinite(stress))) {
    throw new ModelError('stress', `A life is for a stress above 0; it is ${stress}.`);
  }
  const x = Math.log10(stress) - line.centre;
  const [level, shared, slope] = line.variances;
  const h = level + 2 * shared * x + slope * x * x;
  const factor = lineFactor(h, line.failures - 2, SHARE_BELOW[kind]);
  const log = line.level + line.slope * x;
  const bound = 10 ** (log - factor * line.deviation);
  const median = 10 ** log;
  if (!(Number.isFinite(median) && bound > 0)) {
    throw new ModelError('stress', `At ${stress} the line gives no life in numbers: stay near it.`);
  }
  const [lowest, highest] = line.stresses;
  return { stress, median, bound, factor, outside: stress < lowest || stress > highest };
}

/**
 * The stress at which half last as long as asked.
 * @throws ModelError where lives do not fall with stress
 */
export function stressAtLife(line: LifeLine, cycles: number): number {
  if (!(cycles > 0 && Number.isFinite(cycles))) {
    throw new ModelError('cycles', `A life must be above 0 cycles; it is ${cycles}.`);
  }
  if (!(line.slope < 0)) {
    throw new ModelError('results', 'The lives do not fall as stress rises: look at the results.');
  }
  const stress = 10 ** (line.centre + (Math.log10(cycles) - line.level) / line.slope);
  if (!(Number.isFinite(stress) && stress > 0)) {
    throw new ModelError('cycles', `At ${cycles} cycles the line gives no stress in numbers.`);
  }
  return stress;
}
