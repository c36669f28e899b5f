/**
 * e^(Aℓ) of a section that is its own mirror image along x. Some unknowns (w, n, m) are then even about a
 * place and the others (u, φ, q) odd, and the rate of each kind depends on the other kind alone:
 *
 *   A = [0 B; C 0]     e^(Aℓ) = [cosh √P   S·B·ℓ; C·S·ℓ   1 + C·G·B·ℓ²]     P = B·C·ℓ²
 *
 * S = Σ Pᵏ/(2k+1)! and G = Σ Pᵏ/(2k+2)!: a quarter of the work of the whole matrix, and less. Only a wall
 * that tapers has no such image.
 */
import { type Matrix, multiplyInto } from '../numerics/dense.ts';

export interface Mirrored {
  /** Places of the even unknowns and of the odd ones in y. */
  readonly even: Int32Array;
  readonly odd: Int32Array;
  /** Rate of the even unknowns by the odd ones, and the other way. */
  readonly b: Matrix;
  readonly c: Matrix;
}

/** Both kinds of unknowns by what depends on what; null where they do not part into equally many. */
export function mirroredOf(a: Matrix, size: number): Mirrored | null {
  const kind = new Int8Array(size);
  const isTied = (i: number, j: number): boolean => a[i * size + j] !== 0 || a[j * size + i] !== 0;
  for (let first = 0; first < size; first++) {
    if (kind[first] !== 0) continue;
    // Parts that do not touch each other may be called either way round.
    kind[first] = -1;
    for (const open = [first]; open.length > 0; ) {
      const i = open.pop()!;
      for (let j = 0; j < size; j++) {
        if (!isTied(i, j)) continue;
        if (kind[j] === kind[i]) return null;
        if (kind[j] !== 0) continue;
        kind[j] = -kind[i]!;
        open.push(j);
      }
    }
  }
  const placesOf = (sign: number): Int32Array =>
    Int32Array.from(kind.keys()).filter((i) => kind[i] === sign);
  const [even, odd] = [placesOf(1), placesOf(-1)];
  const half = size / 2;
  if (even.length !== half) return null;
  const b = new Float64Array(half * half);
  const c = new Float64Array(half * half);
  for (let i = 0; i < half; i++) {
    for (let j = 0; j < half; j++) {
      b[i * half + j] = a[even[i]! * size + odd[j]!]!;
      c[i * half + j] = a[odd[i]! * size + even[j]!]!;
    }
  }
  return { even, odd, b, c };
}

/** Powers of P up to the seventh: at rate·length ≤ ½ the next is below rounding. */
const POWERS = 8;
const OF_S: number[] = [1];
const OF_G: number[] = [1 / 2];
for (let k = 1; k < POWERS; k++) {
  OF_S.push(OF_S[k - 1]! / (2 * k * (2 * k + 1)));
  OF_G.push(OF_G[k - 1]! / ((2 * k + 1) * (2 * k + 2)));
}

/** Room for the matrices below, kept from call to call: a call never nests, and nothing in them outlives it. */
let room: Readonly<Record<Name, Matrix>> | null = null;
const NAMES = ['p', 'p2', 'p3', 'p4', 's', 'g', 'd', 'by', 'upper', 'lower', 'last'] as const;
type Name = (typeof NAMES)[number];
function roomFor(half: number): Readonly<Record<Name, Matrix>> {
  if (room?.p.length !== half * half) {
    const made = NAMES.map((name) => [name, new Float64Array(half * half)] as const);
    room = Object.fromEntries(made) as Record<Name, Matrix>;
  }
  return room;
}

/**
 * e^(Aℓ) by series over ℓ/2^doublings, then doubled by cosh 2z − 1 = 2(cosh²z − 1) and sinh 2z = 2 sinh z·cosh z
 * in forms that lose no digits of what is small.
 * @param length with rate·length ≤ ½·2^doublings
 */
export function mirroredExponential(
  { even, odd, b, c }: Mirrored,
  length: number,
  doublings: number,
): Matrix {
  const half = even.length;
  const count = half * half;
  const { p, p2, p3, p4, s, g, d, by, upper, lower, last } = roomFor(half);
  const times = (out: Matrix, x: Matrix, y: Matrix): void =>
    multiplyInto(out, x, y, half, half, half);
  const step = length / 2 ** doublings;
  times(p, b, c);
  for (let i = 0; i < count; i++) p[i]! *= step * step;
  times(p2, p, p);
  times(p3, p2, p);
  times(p4, p2, p2);
  const cubic = (out: Matrix, factors: readonly number[], from: number): void => {
    const [one, two, three] = [factors[from + 1]!, factors[from + 2]!, factors[from + 3]!];
    for (let i = 0; i < count; i++) out[i] = one * p[i]! + two * p2[i]! + three * p3[i]!;
    for (let i = 0; i < count; i += half + 1) out[i]! += factors[from]!;
  };
  const polynomial = (out: Matrix, factors: readonly number[]): void => {
    cubic(by, factors, 4);
    times(out, p4, by);
    cubic(by, factors, 0);
    for (let i = 0; i < count; i++) out[i]! += by[i]!;
  };
  polynomial(s, OF_S);
  polynomial(g, OF_G);
  // cosh − 1
  times(d, p, g);
  let square = step * step;
  for (let k = 0; k < doublings; k++) {
    times(by, s, d);
    for (let i = 0; i < count; i++) s[i]! += by[i]!;
    times(by, g, d);
    for (let i = 0; i < count; i++) g[i]! += by[i]! / 2;
    times(by, d, d);
    for (let i = 0; i < count; i++) d[i] = 4 * d[i]! + 2 * by[i]!;
    square *= 4;
  }
  const along = Math.sqrt(square);
  times(upper, s, b);
  times(lower, c, s);
  times(by, c, g);
  times(last, by, b);
  const size = 2 * half;
  const out = new Float64Array(size * size);
  for (let i = 0; i < half; i++) {
    const [e, o] = [even[i]! * size, odd[i]! * size];
    for (let j = 0; j < half; j++) {
      const at = i * half + j;
      const one = i === j ? 1 : 0;
      out[e + even[j]!] = one + d[at]!;
      out[e + odd[j]!] = along * upper[at]!;
      out[o + even[j]!] = along * lower[at]!;
      out[o + odd[j]!] = one + square * last[at]!;
    }
  }
  return out;
}
