/**
 * Root of a continuous function between two points where its sign differs.
 *
 * Source: R. P. Brent, Algorithms for Minimization without Derivatives (1973), chapter 4: inverse
 * quadratic interpolation, guarded by bisection, so that it never leaves the bracket.
 *
 * @param f continuous; f(a) and f(b) must not have the same strict sign
 * @returns x with |x − root| ≤ 4·eps·|x| + tolerance, or the bracket's end where f is already zero
 * @throws RangeError when the bracket does not hold a sign change or f is not finite
 */
export function findRoot(f: (x: number) => number, a: number, b: number, tolerance = 0): number {
  let fa = f(a);
  let fb = f(b);
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (!(fa * fb < 0)) {
    throw new RangeError(`no sign change between ${a} (${fa}) and ${b} (${fb})`);
  }
  let c = a;
  let fc = fa;
  let step = b - a;
  let previous = step;
  for (let i = 0; i < 200; i++) {
    if (fb * fc > 0) {
      c = a;
      fc = fa;
      step = b - a;
      previous = step;
    }
    if (Math.abs(fc) < Math.abs(fb)) {
      a = b;
      b = c;
      c = a;
      fa = fb;
      fb = fc;
      fc = fa;
    }
    const near = 2 * Number.EPSILON * Math.abs(b) + tolerance / 2;
    const half = (c - b) / 2;
    if (Math.abs(half) <= near || fb === 0) return b;
    if (Math.abs(previous) >= near && Math.abs(fa) > Math.abs(fb)) {
      const ratio = fb / fa;
      let p: number;
      let q: number;
      if (a === c) {
        p = 2 * half * ratio;
        q = 1 - ratio;
      } else {
        const r = fa / fc;
        const s = fb / fc;
        p = ratio * (2 * half * r * (r - s) - (b - a) * (s - 1));
        q = (r - 1) * (s - 1) * (ratio - 1);
      }
      if (p > 0) q = -q;
      p = Math.abs(p);
      if (2 * p < Math.min(3 * half * q - Math.abs(near * q), Math.abs(previous * q))) {
        previous = step;
        step = p / q;
      } else {
        step = half;
        previous = half;
      }
    } else {
      step = half;
      previous = half;
    }
    a = b;
    fa = fb;
    b += Math.abs(step) > near ? step : half > 0 ? near : -near;
    fb = f(b);
    if (!Number.isFinite(fb)) throw new RangeError(`the function is not finite at ${b}`);
  }
  return b;
}

/**
 * Point of [a, b] where f is least, to within the tolerance; f is taken to have one minimum there. Golden section
 * and parabolas by turns: R. P. Brent, Algorithms for minimization without derivatives (1973), chapter 5.
 */
export function findMinimum(
  f: (x: number) => number,
  a: number,
  b: number,
  tolerance: number,
): number {
  const golden = (3 - Math.sqrt(5)) / 2;
  const least = tolerance / 2;
  let [left, right] = [a, b];
  /** Best, second and third best places so far. */
  let best = left + golden * (right - left);
  let [second, third] = [best, best];
  let low = f(best);
  let [lowSecond, lowThird] = [low, low];
  let step = 0;
  let before = 0;
  for (;;) {
    const middle = (left + right) / 2;
    if (Math.abs(best - middle) + (right - left) / 2 <= 2 * least) return best;
    // Through the three best a parabola, whose steps must halve every other time.
    const r = (best - second) * (low - lowThird);
    const q = (best - third) * (low - lowSecond);
    const p = (best - third) * q - (best - second) * r;
    const divisor = 2 * (q - r);
    const vertex = -p / divisor;
    const next = best + vertex;
    const isFine =
      Math.abs(before) > least &&
      Math.abs(vertex) < Math.abs(before) / 2 &&
      next > left &&
      next < right;
    before = step;
    if (isFine) {
      step = vertex;
      if (next - left < 2 * least || right - next < 2 * least) {
        step = best < middle ? least : -least;
      }
    } else {
      before = best < middle ? right - best : left - best;
      step = golden * before;
    }
    const x = best + (Math.abs(step) >= least ? step : step > 0 ? least : -least);
    const value = f(x);
    if (value <= low) {
      if (x < best) right = best;
      else left = best;
      [third, lowThird] = [second, lowSecond];
      [second, lowSecond] = [best, low];
      [best, low] = [x, value];
    } else {
      if (x < best) left = x;
      else right = x;
      if (value <= lowSecond || second === best) {
        [third, lowThird] = [second, lowSecond];
        [second, lowSecond] = [x, value];
      } else if (value <= lowThird || third === best || third === second) {
        [third, lowThird] = [x, value];
      }
    }
  }
}
