/**
 * Surfaces that stand for a problem's rows: which rows can be the lowest, which inputs move them, and
 * a polynomial for each, from the full model at the points of a design.
 */
import type { Uniform } from './philox.ts';
import { type Progress, REACH, type ScatterProblem } from './problem.ts';
import {
  type Basis,
  type Hinge,
  ratioAt,
  type Surface,
  surfaces,
  termCount,
  terms,
} from './surface.ts';

/** Points at which all rows near the lowest are looked at. */
const LOOKED_AT = 32;
/** They reach so far of the design's reach: all inputs at their worst at once is no sample. */
const LOOKED_OVER = 2 / 3;
/** A row that never comes within this of the lowest there is not fitted. */
const NEAR = 1.12;
/** Points of the design for each coefficient. */
const POINTS_PER_TERM = 2.2;
const FEWEST = 60;
/** An input that changes no ratio by more than this, as a share, is left out of the surfaces. */
const STILL = 1e-9;

/** A row whose surface misses points that it does not know by more than this, rms, jumps: not followed. */
const JUMPS = 0.05;

export interface Fitted {
  readonly keys: readonly string[];
  /** Rows that came near the lowest and could not be followed. */
  readonly left: readonly string[];
  readonly surfaces: readonly Surface[];
  /** Indices of the inputs that move a row. */
  readonly active: readonly number[];
  /** Points of the full model behind the surfaces. */
  readonly points: number;
  /** Index into `keys` and ratio of the lowest surface at z. */
  lowest(z: Float64Array): { readonly row: number; readonly ratio: number };
}

/** Points of the full model that `fitted` will ask for at most. */
export const fittedPoints = ({ inputs, hinges }: ScatterProblem): number =>
  LOOKED_AT + 1 + 2 * inputs.length + designPoints({ inputs: inputs.length, hinges });

const designPoints = (basis: Basis): number =>
  Math.max(FEWEST, Math.ceil(POINTS_PER_TERM * termCount(basis)));

/** The hinges that some sample can cross, over the inputs that move a row, in t. */
function hingesOver(
  { inputs, hinges }: ScatterProblem,
  active: readonly number[],
): readonly Hinge[] {
  const found = new Map<string, Hinge>();
  for (const { weights, at } of hinges) {
    const own = active.map((j) => weights[j]! * REACH[inputs[j]!.distribution]);
    const most = own.reduce((sum, weight) => sum + Math.abs(weight), 0);
    if (Math.abs(at) >= most) continue;
    const hinge = { weights: own.map((weight) => weight / most), at: at / most };
    // Without the inputs that move nothing two planes can be one.
    found.set([...hinge.weights, hinge.at].map((number) => number.toFixed(9)).join(), hinge);
  }
  return [...found.values()];
}

/**
 * @throws RangeError when no row has a ratio at every point
 */
export function fitted(problem: ScatterProblem, uniform: Uniform, progress: Progress): Fitted {
  const { inputs } = problem;
  const reach = inputs.map(({ distribution }) => REACH[distribution]);
  const count = inputs.length;
  const most = fittedPoints(problem);
  let done = 0;
  const step = (): void => progress(++done, most, 'looking for what can govern');

  const near = new Set<string>();
  for (let i = 0; i < LOOKED_AT; i++) {
    const z = Float64Array.from(inputs, ({ stream }, j) =>
      i === 0 ? 0 : LOOKED_OVER * reach[j]! * (2 * uniform(i, stream, 'design') - 1),
    );
    for (const key of problem.rows(z, NEAR).keys()) near.add(key);
    step();
  }

  // One input at a time: which of them move anything, and the ends of the design's axes.
  const points: Float64Array[] = [new Float64Array(count)];
  for (let j = 0; j < count; j++) {
    for (const end of [-1, 1]) {
      const z = new Float64Array(count);
      z[j] = end * reach[j]!;
      points.push(z);
    }
  }
  const found = points.map((z) => {
    const ratios = problem.rows(z, near);
    step();
    return ratios;
  });
  const moves = (ratios: ReadonlyMap<string, number>): boolean =>
    [...near].some((key) => {
      const [here, there] = [found[0]!.get(key), ratios.get(key)];
      return here === undefined || there === undefined || Math.abs(there - here) > STILL * here;
    });
  const active = inputs.flatMap((_input, j) =>
    moves(found[1 + 2 * j]!) || moves(found[2 + 2 * j]!) ? [j] : [],
  );

  const basis = { inputs: active.length, hinges: hingesOver(problem, active) };
  const planned = designPoints(basis);
  const columns = active.map((j) => strata(planned, uniform, inputs[j]!.stream));
  for (let i = 0; i < planned; i++) {
    const z = new Float64Array(count);
    active.forEach((j, k) => {
      z[j] = reach[j]! * (2 * columns[k]![i]! - 1);
    });
    points.push(z);
    found.push(problem.rows(z, near));
    progress(++done, LOOKED_AT + 1 + 2 * count + planned, 'fitting');
  }

  const whole = [...near].filter((key) => found.every((ratios) => ratios.has(key)));
  if (whole.length === 0) throw new RangeError('no mode could be followed over the tolerances');
  const scaled = (z: Float64Array): Float64Array =>
    Float64Array.from(active, (j) => z[j]! / reach[j]!);
  // Axes of inputs that move nothing are the middle once more: once is enough.
  const kept = points.flatMap((z, i) =>
    i === 0 || active.some((j) => z[j] !== 0) ? [{ t: scaled(z), ratios: found[i]! }] : [],
  );
  const all = surfaces(
    kept.map(({ t }) => t),
    basis,
    whole.map((key) => Float64Array.from(kept, ({ ratios }) => ratios.get(key)!)),
  );
  const least = Math.min(...all.map(({ leftOut }) => leftOut));
  const good = all.map(({ leftOut }) => leftOut <= Math.max(JUMPS, least));
  const keys = whole.filter((_key, k) => good[k]);
  const made = all.filter((_surface, k) => good[k]);
  const at = new Float64Array(termCount(basis));
  const t = new Float64Array(active.length);
  return {
    keys,
    left: [...near].filter((key) => !keys.includes(key)),
    surfaces: made,
    active,
    points: LOOKED_AT + points.length,
    lowest(z) {
      active.forEach((j, k) => {
        t[k] = z[j]! / reach[j]!;
      });
      terms(t, basis, at);
      let row = 0;
      let ratio = Number.POSITIVE_INFINITY;
      for (let k = 0; k < made.length; k++) {
        const own = ratioAt(made[k]!, at);
        if (own < ratio) {
          ratio = own;
          row = k;
        }
      }
      return { row, ratio };
    },
  };
}

/** One number in each of `count` equal strata of 0 … 1, in random order (Latin hypercube). */
function strata(count: number, uniform: Uniform, stream: number): Float64Array {
  const values = Float64Array.from({ length: count }, (_v, i) => {
    return (i + uniform(LOOKED_AT + i, stream, 'design')) / count;
  });
  for (let i = count - 1; i > 0; i--) {
    const j = Math.floor(uniform(LOOKED_AT + count + i, stream, 'design') * (i + 1));
    [values[i], values[j]] = [values[j]!, values[i]!];
  }
  return values;
}
