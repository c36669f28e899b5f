/** Cycles that are not all alike: mean stress after Goodman, damage added up after Palmgren and Miner. */
import { ModelError } from '../errors.ts';

/** A cycle from `ratio`·`peak` to `peak`. */
export interface Cycle {
  readonly peak: number;
  /** Lowest over highest stress, −1 (fully reversed) to below 1. */
  readonly ratio: number;
}

function amplitudeAndMean({ peak, ratio }: Cycle): readonly [number, number] {
  if (!(peak > 0 && Number.isFinite(peak))) {
    throw new ModelError('stress', `The highest stress must be above 0; it is ${peak}.`);
  }
  if (!(ratio >= -1 && ratio < 1)) {
    throw new ModelError('ratio', `The stress ratio is from −1 to below 1; it is ${ratio}.`);
  }
  return [(peak * (1 - ratio)) / 2, (peak * (1 + ratio)) / 2];
}

/**
 * The highest stress of a cycle of the ratio `to` that does the same damage, by the straight line from the
 * amplitude at no mean stress to the static strength (J. Goodman, Mechanics Applied to Engineering, 1899):
 * Sa/(1 − Sm/Su) is kept. An approximation made for metals: bonds are seen to lie on either side of it, and
 * nothing replaces tests at the ratio of service.
 * @throws ModelError where the highest stress is not below the static strength
 */
export function goodmanPeak(cycle: Cycle, to: number, ultimate: number): number {
  const [amplitude, mean] = amplitudeAndMean(cycle);
  const [unit, unitMean] = amplitudeAndMean({ peak: 1, ratio: to });
  if (!(ultimate > cycle.peak && Number.isFinite(ultimate))) {
    throw new ModelError(
      'ultimate',
      `The static strength must be above the highest stress ${cycle.peak}; it is ${ultimate}.`,
    );
  }
  const reversed = amplitude / (1 - mean / ultimate);
  // unit·p/(1 − unitMean·p/ultimate) = reversed, solved for the peak p.
  return reversed / (unit + (reversed * unitMean) / ultimate);
}

export interface Block {
  /** Cycles applied. */
  readonly cycles: number;
  /** Cycles to failure at this block's stress. */
  readonly life: number;
}

export interface Damage {
  /** Σ n/N: 1 is failure by the rule. */
  readonly sum: number;
  /** n/N of each block. */
  readonly shares: readonly number[];
  /** How often all the blocks together can be repeated; null where there is no damage. */
  readonly repeats: number | null;
}

/**
 * Σ n/N (A. Palmgren 1924; M. A. Miner, Journal of Applied Mechanics 12 (1945) A159). The order of the blocks does
 * not count: tests of bonds have failed well below 1, so a sum near 1 is no margin.
 * @throws ModelError for cycles below 0 or a life not above 0
 */
export function minerSum(blocks: readonly Block[]): Damage {
  const shares = blocks.map(({ cycles, life }, i) => {
    if (!(cycles >= 0 && Number.isFinite(cycles))) {
      throw new ModelError('cycles', `Block ${i + 1} needs cycles of 0 or more; it has ${cycles}.`);
    }
    if (!(life > 0 && Number.isFinite(life))) {
      throw new ModelError('life', `Block ${i + 1} needs a life above 0; it is ${life}.`);
    }
    return cycles / life;
  });
  const sum = shares.reduce((all, share) => all + share, 0);
  if (!Number.isFinite(sum)) {
    throw new ModelError(
      'cycles',
      'The damage is beyond all numbers: fewer cycles or a longer life.',
    );
  }
  return { sum, shares, repeats: sum > 0 && Number.isFinite(1 / sum) ? 1 / sum : null };
}
