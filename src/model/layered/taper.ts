/**
 * A tapered overlap as short stretches, each exact to fourth order in its length: Magnus' exponent
 * from the system at the two Gauss points, Ω = (A1 + A2)·h/2 + √3/12·h²·[A2, A1].
 */
import { type Matrix, multiply } from '../numerics/dense.ts';
import { advance, type Balanced, balance, LONGEST_STEP } from './exponential.ts';
import type { LayeredLap } from './lap.ts';
import { type Asked, type OfSection, read } from './readings.ts';
import type { LayeredSection } from './section.ts';
import { type Stretch, stateAtStart, uniformStretch } from './stretch.ts';

/**
 * Stretches: short at the ends, where stresses turn within the length of a wall on its bond, longer by a
 * tenth each inwards. Peel is then within 5e-5 of its largest in usual tapers, 5e-3 in extreme ones.
 */
const FIRST = 0.25;
const GROWTH = 1.1;
const FEWEST = 60;
const MOST = 400;
/** Turning lengths up to which the fourth-order exponent is used. */
const LONGEST_TURNS = 1.5;

/** Coefficients of a section, and a name for them: with the place it tells one stretch from another. */
export interface Coefficients {
  readonly name: string;
  of(section: LayeredSection): Affine;
  readings(section: LayeredSection): OfSection;
}

export function taperedStretches(
  lap: LayeredLap,
  coefficients: Coefficients,
  from: number,
  to: number,
): Stretch<Asked>[] {
  const kept = storeOf(lap);
  const marks = [from, ...kept.marks.filter((x) => x > from && x < to), to];
  return marks.slice(1).map((end, i) => {
    const key = `${marks[i]} ${end} ${coefficients.name}`;
    let stretch = kept.stretches.get(key);
    if (!stretch) {
      stretch = taperedStretch(lap, coefficients, marks[i]!, end);
      kept.stretches.set(key, stretch);
    }
    return stretch;
  });
}

/** What all states of one lap share, and laps that differ in their ends alone: only the stretches at fronts differ. */
interface Store {
  readonly length: number;
  readonly marks: readonly number[];
  readonly stretches: Map<string, Stretch<Asked>>;
}

const stores = new WeakMap<LayeredLap['sectionAt'], Store>();

function storeOf(lap: LayeredLap): Store {
  let store = stores.get(lap.sectionAt);
  if (store?.length !== lap.length) {
    store = { length: lap.length, marks: marksOf(lap), stretches: new Map() };
    stores.set(lap.sectionAt, store);
  }
  return store;
}

/** Marks over the whole overlap, the same from both ends. */
function marksOf(lap: LayeredLap): number[] {
  const { length } = lap;
  const first =
    FIRST * Math.min(turningLength(lap.sectionAt(0)), turningLength(lap.sectionAt(length)));
  const longest = Math.min(length / FEWEST, Math.max(3 * (first / FIRST), length / MOST));
  const half: number[] = [];
  let step = Math.min(first, longest);
  for (let x = step; x < length / 2 - step / 2; x += step) {
    half.push(x);
    step = Math.min(step * GROWTH, longest);
  }
  return [...half, length / 2, ...half.map((x) => length - x).reverse()];
}

/** Shortest length within which a wall bends on its bond: (4D/k)^¼, k its bond's stiffness across. */
function turningLength({ shells, bonds }: LayeredSection): number {
  const lengths = bonds.flatMap((bond, j) =>
    [shells[j]!, shells[j + 1]!].map(
      ({ bending }) => ((4 * bending * bond.gap) / bond.constrainedModulus) ** 0.25,
    ),
  );
  return Math.min(...lengths);
}

function taperedStretch(
  lap: LayeredLap,
  coefficients: Coefficients,
  from: number,
  to: number,
): Stretch<Asked> {
  const mean = exponent(lap, coefficients, from, to);
  const stretch = uniformStretch(mean.a, mean.g, to - from);
  const upTo = (along: number): Balanced => {
    const { a, g } = exponent(lap, coefficients, from, from + along);
    return balance(a, g);
  };
  const places = new Map<number, Place>();
  const placeAt = (along: number): Place => {
    let place = places.get(along);
    if (!place) {
      place = {
        before: along === 0 ? null : upTo(along),
        readings: coefficients.readings(lap.sectionAt(from + along)),
      };
      places.set(along, place);
    }
    return place;
  };
  return {
    ...stretch,
    sample: ({ x, from: first, to: last, start }, acting, see, asked) => {
      const y = stateAtStart(stretch.ends, acting);
      // The exponent of the whole stretch holds at its end only: inside, that of the part walked.
      for (let i = first; i < last; i++) {
        const along = Math.min(Math.max(x[i]! - start, 0), to - from);
        const { before, readings } = placeAt(along);
        const state = before ? walk(before, y, acting.share, along) : y;
        if (asked === undefined) see(i, state);
        else see(i, read(readings(asked), state, acting.share));
      }
    },
  };
}

/** A place within a stretch: what lies before it there, and what can be read at it. */
interface Place {
  readonly before: Balanced | null;
  readonly readings: OfSection;
}

/** y along a length on which the exponent is taken as constant. */
function walk(balanced: Balanced, y: Matrix, share: number, length: number): Matrix {
  const steps = Math.max(1, Math.ceil((balanced.rate * length) / LONGEST_STEP));
  let state = y;
  for (let i = 0; i < steps; i++) state = advance(balanced, state, share, length / steps);
  return state;
}

export interface Affine {
  readonly a: Matrix;
  readonly g: Matrix;
}

/**
 * Magnus' exponent over its length; where that is many turning lengths, away from the ends, its series
 * does not converge, and the middle's system stands for the whole: nothing turns there.
 */
function exponent(lap: LayeredLap, { of }: Coefficients, from: number, to: number): Affine {
  const h = to - from;
  const middle = (from + to) / 2;
  if (h > LONGEST_TURNS * turningLength(lap.sectionAt(middle))) {
    return of(lap.sectionAt(middle));
  }
  const gauss = (Math.sqrt(3) / 6) * h;
  const first = of(lap.sectionAt(middle - gauss));
  const second = of(lap.sectionAt(middle + gauss));
  const size = first.g.length;
  const bracket = commutator(second, first, size);
  const c = (Math.sqrt(3) / 12) * h;
  return {
    a: magnus(first.a, second.a, bracket.a, c),
    g: magnus(first.g, second.g, bracket.g, c),
  };
}

/** (P + Q)/2 + c·bracket. In loops, here and below: a call for each number took as long as the products. */
function magnus(p: Matrix, q: Matrix, bracket: Matrix, c: number): Matrix {
  const out = new Float64Array(p.length);
  for (let k = 0; k < out.length; k++) out[k] = (p[k]! + q[k]!) / 2 + c * bracket[k]!;
  return out;
}

/** [P, Q] of affine systems y′ = A·y + g: the last column goes along as that of a constant. */
function commutator(p: Affine, q: Affine, size: number): Affine {
  const a = multiply(p.a, q.a, size, size, size);
  const qp = multiply(q.a, p.a, size, size, size);
  const g = multiply(p.a, q.g, size, size, 1);
  const qg = multiply(q.a, p.g, size, size, 1);
  for (let k = 0; k < a.length; k++) a[k]! -= qp[k]!;
  for (let k = 0; k < g.length; k++) g[k]! -= qg[k]!;
  return { a, g };
}
