/**
 * Monte Carlo over tolerances: the same problem at many random values of its inputs. Every sample by
 * the full model, or most of them by surfaces fitted to it and those that decide by the model.
 */
import { CONFIDENCE, type Interval, shareInterval } from './binomial.ts';
import { type Fitted, fitted, fittedPoints } from './fitted.ts';
import { type Uniform, uniforms } from './philox.ts';
import type { Progress, ScatterProblem } from './problem.ts';
import { quantileOf } from './quantiles.ts';

export type Method = 'fitted' | 'each';

export interface ScatterOptions {
  readonly samples: number;
  /** Whole, 0 … 2³² − 1. */
  readonly seed: number;
  readonly method: Method;
  readonly progress?: Progress;
}

/** Samples that are computed by the full model to see how far off the surfaces are. */
const CHECKED = 200;
/** Of the weakest samples too: there a surface is farthest from the points that it knows. */
const WEAKEST = 100;
/** Samples within so many root mean square differences of zero are computed by the full model. */
const BAND = 3;
/** At most so many of them. */
const MOST_IN_BAND = 600;
/** Samples through the surfaces between two signs of progress. */
const CHUNK = 5000;

/** The surfaces against the full model; differences in margin, fitted less exact. */
export interface FitCheck {
  readonly points: number;
  readonly checked: number;
  readonly largest: number;
  readonly rms: number;
  readonly mean: number;
  /** The same over the weakest samples. */
  readonly weakest: { readonly checked: number; readonly largest: number; readonly rms: number };
  /** Margins within ± band of zero were computed by the full model: `recomputed` of `inBand`. */
  readonly band: number;
  readonly inBand: number;
  readonly recomputed: number;
  /** Rows that came near and could not be followed. */
  readonly left: readonly string[];
}

export interface ScatterOutcome {
  /** reached/asked of every sample, in the order drawn. */
  readonly ratios: Float64Array;
  /** Index into `keys` of what is lowest in each. */
  readonly rows: Uint16Array;
  readonly keys: readonly string[];
  /** Samples whose ratio is below 1; with `inBand` above `recomputed` the best estimate. */
  readonly below: number;
  /** Confidence limits of the share below 1. */
  readonly share: Interval;
  /** Samples computed by the full model. */
  readonly exact: number;
  /** Null when every sample is. */
  readonly check: FitCheck | null;
}

/** The inputs of sample `index`, each about its middle in units of its spread. */
export const sampleAt = (
  { inputs }: ScatterProblem,
  uniform: Uniform,
  index: number,
): Float64Array =>
  Float64Array.from(inputs, ({ stream, distribution }) =>
    quantileOf[distribution](uniform(index, stream)),
  );

interface Run {
  readonly problem: ScatterProblem;
  readonly uniform: Uniform;
  readonly ratios: Float64Array;
  readonly rows: Uint16Array;
  readonly keys: string[];
  rowOf(key: string): number;
}

function startRun(problem: ScatterProblem, { samples, seed }: ScatterOptions): Run {
  const keys: string[] = [];
  const places = new Map<string, number>();
  return {
    problem,
    uniform: uniforms(seed),
    ratios: new Float64Array(samples),
    rows: new Uint16Array(samples),
    keys,
    rowOf(key) {
      let place = places.get(key);
      if (place === undefined) {
        place = keys.push(key) - 1;
        places.set(key, place);
      }
      return place;
    },
  };
}

/** Puts the full model's answer for a sample in its place; returns what stood there less the answer. */
function compute({ problem, uniform, ratios, rows, rowOf }: Run, index: number): number {
  const { key, ratio } = problem.lowest(sampleAt(problem, uniform, index));
  const off = ratios[index]! - ratio;
  ratios[index] = ratio;
  rows[index] = rowOf(key);
  return off;
}

const countBelow = (ratios: Float64Array): number =>
  ratios.reduce((count, ratio) => (ratio < 1 ? count + 1 : count), 0);

/**
 * @throws RangeError when no mode could be followed over the tolerances (method `fitted`), and
 *   whatever the problem throws
 */
export function scatterOf(problem: ScatterProblem, options: ScatterOptions): ScatterOutcome {
  const { samples, method, progress = () => undefined } = options;
  const run = startRun(problem, options);
  const { ratios, rows, keys } = run;
  // Few samples cost less than the surfaces would.
  if (method === 'each' || samples <= fittedPoints(problem)) {
    for (let i = 0; i < samples; i++) {
      compute(run, i);
      progress(i + 1, samples, 'samples');
    }
    const below = countBelow(ratios);
    const share = shareInterval(below, samples);
    return { ratios, rows, keys, below, share, exact: samples, check: null };
  }
  return throughSurfaces(run, samples, progress);
}

function throughSurfaces(run: Run, samples: number, progress: Progress): ScatterOutcome {
  const { problem, uniform, ratios, rows, keys } = run;
  const later = CHECKED + WEAKEST + MOST_IN_BAND;
  let before = 0;
  const fit = fitted(problem, uniform, (done, total, what) => {
    before = total;
    progress(done, total + later, what);
  });
  passAll(run, fit, samples, () => progress(before, before + later, 'samples'));

  const exact = new Set<number>();
  let done = before;
  let total = before + later;
  const known = (indices: readonly number[], what: string): number[] =>
    indices.map((index) => {
      const off = exact.has(index) ? 0 : compute(run, index);
      exact.add(index);
      progress(++done, total, what);
      return off;
    });
  const checked = known(first(CHECKED, samples), 'checking');
  const weakest = known(weakestOf(ratios, exact, WEAKEST), 'checking the weakest');
  const rms = rmsOf(checked);
  const band = BAND * Math.max(rms, rmsOf(weakest));
  const near = first(samples, samples).filter(
    (i) => !exact.has(i) && Math.abs(ratios[i]! - 1) < band,
  );
  const chosen = chooseFrom(near, uniform, MOST_IN_BAND);
  total = done + chosen.length;
  // Counted apart: what the surfaces say of them no longer stands once they are computed.
  const aside = new Set(near);
  const belowOutside = ratios.reduce((n, ratio, i) => (ratio < 1 && !aside.has(i) ? n + 1 : n), 0);
  known(chosen, 'near zero');
  progress(total, total);
  const belowChosen = chosen.filter((i) => ratios[i]! < 1).length;
  const { below, share } = shareBelow(
    belowOutside,
    near.length,
    belowChosen,
    chosen.length,
    samples,
  );
  return {
    ratios,
    rows,
    keys,
    below,
    share,
    exact: exact.size,
    check: {
      points: fit.points,
      checked: checked.length,
      largest: largestOf(checked),
      rms,
      mean: checked.reduce((sum, off) => sum + off, 0) / checked.length,
      weakest: { checked: weakest.length, largest: largestOf(weakest), rms: rmsOf(weakest) },
      band,
      inBand: near.length,
      recomputed: chosen.length,
      left: fit.left,
    },
  };
}

/** Every sample through the surfaces. */
function passAll(run: Run, surface: Fitted, samples: number, sign: () => void): void {
  const places = surface.keys.map(run.rowOf);
  for (let i = 0; i < samples; i++) {
    if (i % CHUNK === 0) sign();
    const { row, ratio } = surface.lowest(sampleAt(run.problem, run.uniform, i));
    run.ratios[i] = ratio;
    run.rows[i] = places[row]!;
  }
}

/**
 * The share below zero when of `near` samples only `chosen` at random were computed: the best estimate,
 * and limits that hold for both chances together, each taken at half of what is left of confidence.
 */
function shareBelow(
  outside: number,
  near: number,
  belowChosen: number,
  chosen: number,
  samples: number,
): { readonly below: number; readonly share: Interval } {
  if (chosen === near) {
    const below = outside + belowChosen;
    return { below, share: shareInterval(below, samples) };
  }
  const each = 1 - (1 - CONFIDENCE) / 2;
  const ofNear = shareInterval(belowChosen, chosen, each);
  const least = outside + Math.floor(near * ofNear.low);
  const most = outside + Math.ceil(near * ofNear.high);
  return {
    below: outside + Math.round((near * belowChosen) / chosen),
    share: {
      low: shareInterval(least, samples, each).low,
      high: shareInterval(most, samples, each).high,
    },
  };
}

const first = (count: number, of: number): number[] =>
  Array.from({ length: Math.min(count, of) }, (_v, i) => i);

const rmsOf = (values: readonly number[]): number =>
  Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / Math.max(values.length, 1));

const largestOf = (values: readonly number[]): number =>
  values.reduce((most, value) => Math.max(most, Math.abs(value)), 0);

function weakestOf(ratios: Float64Array, known: ReadonlySet<number>, count: number): number[] {
  const order = first(ratios.length, ratios.length).filter((i) => !known.has(i));
  return order.sort((a, b) => ratios[a]! - ratios[b]! || a - b).slice(0, count);
}

/** So many of them at random, in an order that the seed fixes. */
function chooseFrom(indices: readonly number[], uniform: Uniform, most: number): number[] {
  if (indices.length <= most) return [...indices];
  return indices
    .map((index) => ({ index, at: uniform(index, 0, 'choice') }))
    .sort((a, b) => a.at - b.at)
    .slice(0, most)
    .map(({ index }) => index);
}
