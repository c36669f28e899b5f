/**
 * e^(Aℓ) of a section that is its own mirror image along x. Some unknowns (w, n, m) are then even about a
 * place and the others (u, φ, q) odd, and the rate of each kind depends on the other kind alone:
 *
 *   A = [0 B; C 0]     e^(Aℓ) = [cosh √P   S·B·ℓ; C·S·ℓ   1 + C·G·B·ℓ²]     P = B·C·ℓ²
 *
 * S = Σ Pᵏ/(2k+1)! and G = Σ Pᵏ/(2k+2)!: a quarter of the work of the whole matrix, and less. Only a wall
 * that tapers has no such image.
 */
import { type Matrix, multiply } from '../numerics/dense.ts';

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
  const size = 2 * half;
  const times = (x: Matrix, y: Matrix): Matrix => multiply(x, y, half, half, half);
  const step = length / 2 ** doublings;
  const p = times(b, c);
  for (let i = 0; i < p.length; i++) p[i]! *= step * step;
  const p2 = times(p, p);
  const powers = [p, p2, times(p2, p)] as const;
  const p4 = times(p2, p2);
  const polynomial = (factors: readonly number[]): Matrix => {
    const cubic = (from: number): Matrix => {
      const out = new Float64Array(half * half);
      for (let i = 0; i < out.length; i++) {
        out[i] =
          factors[from + 1]! * powers[0][i]! +
          factors[from + 2]! * powers[1][i]! +
          factors[from + 3]! * powers[2][i]!;
      }
      for (let i = 0; i < half; i++) out[i * half + i]! += factors[from]!;
      return out;
    };
    const out = times(p4, cubic(4));
    const low = cubic(0);
    for (let i = 0; i < out.length; i++) out[i]! += low[i]!;
    return out;
  };
  let s = polynomial(OF_S);
  let g = polynomial(OF_G);
  // cosh − 1
  let d = times(p, g);
  let square = step * step;
  for (let k = 0; k < doublings; k++) {
    s = plus(s, times(s, d), 1);
    g = plus(g, times(g, d), 1 / 2);
    d = plus(d, times(d, d), 1 / 2);
    for (let i = 0; i < d.length; i++) d[i]! *= 4;
    square *= 4;
  }
  const along = Math.sqrt(square);
  const upper = times(s, b);
  const lower = times(c, s);
  const last = times(times(c, g), b);
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

function plus(a: Matrix, b: Matrix, factor: number): Matrix {
  const out = new Float64Array(a.length);
  for (let i = 0; i < out.length; i++) out[i] = a[i]! + factor * b[i]!;
  return out;
}
