/**
 * The most likely straight line through points of which some are only known to lie above: y = level + slope·x
 * + σ·z, z normal. In 1/σ, level/σ, slope/σ the logarithm of the likelihood is concave (R. J. Olsen,
 * Econometrica 46 (1978) 1211), so Newton's method with shortened steps finds its one top from anywhere.
 */
import { ModelError } from '../errors.ts';
import { solveSmall } from '../numerics/small-solve.ts';
import { logNormalTail, normalHazard } from './normal-tail.ts';
import { extent } from './sample.ts';

export interface LinePoint {
  readonly x: number;
  readonly y: number;
  /** Only known: more than y. */
  readonly above: boolean;
}

export interface CensoredLine {
  readonly level: number;
  readonly slope: number;
  /** Of the likelihood: not corrected for the two fitted constants. */
  readonly sigma: number;
  /** Variance of level and slope, and what they share, over σ²: from the second derivatives. */
  readonly variances: readonly [level: number, shared: number, slope: number];
}

type Triple = readonly [number, number, number];

/** Residuals of the failures below this share of their range are rounding. */
const ON_LINE = 1e-9;
const MOST_STEPS = 200;

/** Least squares of the points that are known: level, slope, root of the mean square of what is left. */
function plainLine(points: readonly LinePoint[]): Triple {
  const known = points.filter(({ above }) => !above);
  const n = known.length;
  const [mx, my] = [
    known.reduce((sum, { x }) => sum + x, 0) / n,
    known.reduce((sum, { y }) => sum + y, 0) / n,
  ];
  const xx = known.reduce((sum, { x }) => sum + (x - mx) ** 2, 0);
  const xy = known.reduce((sum, { x, y }) => sum + (x - mx) * (y - my), 0);
  const slope = xy / xx;
  const level = my - slope * mx;
  const squares = known.reduce((sum, { x, y }) => sum + (y - level - slope * x) ** 2, 0);
  return [level, slope, Math.sqrt(squares / n)];
}

/** ln of the likelihood, less constants; −∞ where 1/σ is not above 0. */
function height(points: readonly LinePoint[], [inverse, a, b]: Triple): number {
  if (!(inverse > 0)) return Number.NEGATIVE_INFINITY;
  return points.reduce((sum, { x, y, above }) => {
    const z = inverse * y - a - b * x;
    return sum + (above ? logNormalTail(z) : Math.log(inverse) - 0.5 * z * z);
  }, 0);
}

/** First derivatives, and the negative of the second (3 × 3). */
function derivatives(points: readonly LinePoint[], [inverse, a, b]: Triple) {
  const first = new Float64Array(3);
  const second = new Float64Array(9);
  for (const { x, y, above } of points) {
    const z = inverse * y - a - b * x;
    const pull = above ? normalHazard(z) : z;
    const weight = above ? pull * (pull - z) : 1;
    const by = [y, -1, -x];
    for (let i = 0; i < 3; i++) {
      first[i]! -= pull * by[i]!;
      for (let j = 0; j < 3; j++) second[3 * i + j]! += weight * by[i]! * by[j]!;
    }
    if (!above) {
      first[0]! += 1 / inverse;
      second[0]! += 1 / (inverse * inverse);
    }
  }
  return { first, second };
}

/** Variance of level + slope·x over σ² as three numbers, by the derivatives of level and slope. */
function variancesAt(points: readonly LinePoint[], [inverse, a, b]: Triple): Triple {
  const { second } = derivatives(points, [inverse, a, b]);
  // level = a/inverse, slope = b/inverse; times 1/σ = inverse.
  const gradients = [-a / inverse, -b / inverse, 1, 0, 0, 1];
  const solved = Float64Array.from(gradients);
  if (!solveSmall(second, solved, 3, 2)) throw new RangeError('the line has no curvature');
  const dot = (i: number, j: number): number =>
    [0, 1, 2].reduce((sum, row) => sum + gradients[2 * row + i]! * solved[2 * row + j]!, 0);
  return [dot(0, 0), dot(0, 1), dot(1, 1)];
}

function climb(points: readonly LinePoint[], start: Triple): Triple {
  let at = start;
  let best = height(points, at);
  for (let round = 0; round < MOST_STEPS; round++) {
    const { first, second } = derivatives(points, at);
    const step = first.slice();
    if (!solveSmall(second, step, 3, 1)) break;
    // Twice what the step would gain were the top a parabola.
    const gain = first.reduce((sum, value, i) => sum + value * step[i]!, 0);
    let share = 1;
    let next = at;
    let found = Number.NEGATIVE_INFINITY;
    for (let half = 0; half < 60 && !(found >= best); half++, share /= 2) {
      next = [at[0] + share * step[0]!, at[1] + share * step[1]!, at[2] + share * step[2]!];
      found = height(points, next);
    }
    if (!(found >= best)) break;
    [at, best] = [next, found];
    if (gain < 1e-22) break;
  }
  return at;
}

/**
 * @param points three or more known ones, at two x or more
 * @throws ModelError where the known points lie on a line: they show no scatter
 */
export function censoredLine(points: readonly LinePoint[]): CensoredLine {
  const known = points.filter(({ above }) => !above);
  const [level, slope, sigma] = plainLine(points);
  const [low, high] = extent(known.map(({ y }) => y));
  const reach = Math.max(high - low, 1e-3);
  if (!(sigma > ON_LINE * reach)) {
    throw new ModelError('results', 'The lives lie on a line and show no scatter: test more.');
  }
  // About the plain line and in its deviations: the numbers are near 1 whatever the unit.
  const scaled = points.map(({ x, y, above }) => ({
    x,
    y: (y - level - slope * x) / sigma,
    above,
  }));
  const top = climb(scaled, [1, 0, 0]);
  const [inverse, a, b] = top;
  return {
    level: level + (sigma * a) / inverse,
    slope: slope + (sigma * b) / inverse,
    sigma: sigma / inverse,
    variances: variancesAt(scaled, top),
  };
}
