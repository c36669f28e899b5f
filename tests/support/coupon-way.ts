/** Asking an answer of `couponStatistics`, and samples that fit a distribution as well as any can. */
import { expect } from 'vitest';
import type { BasisMethod, BasisValue } from '../../src/model/coupons/basis.ts';
import type { Decision, DecisionTest } from '../../src/model/coupons/decisions.ts';
import type { CouponStatistics } from '../../src/model/coupons/path.ts';
import type { BasisKind } from '../../src/model/coupons/tolerance-factor.ts';
import { normalQuantile } from '../../src/model/scatter/quantiles.ts';

export const asked = (found: CouponStatistics, test: DecisionTest): Decision => {
  const decision = found.decisions.find((one) => one.test === test);
  if (!decision) throw new Error(`${test} was not asked`);
  return decision;
};
export const valueOfMethod = (
  found: CouponStatistics,
  method: BasisMethod,
  kind: BasisKind,
): BasisValue => found.basis.find((one) => one.method === method && one.kind === kind)!;
export const tests = (found: CouponStatistics): string[] => found.decisions.map(({ test }) => test);

/** n values at the even quantiles of a normal distribution: it fits as well as any can. */
export const even = (n: number, mean: number, deviation: number): number[] =>
  Array.from({ length: n }, (_, i) => mean + deviation * normalQuantile((i + 0.5) / n));
/** The same of a Weibull distribution. */
export const evenWeibull = (n: number, scale: number, shape: number): number[] =>
  Array.from({ length: n }, (_, i) => scale * (-Math.log1p(-(i + 0.5) / n)) ** (1 / shape));

/** No number anywhere in the answer that is not finite. */
export function expectFinite(value: unknown, path = 'answer'): void {
  if (typeof value === 'number') expect(Number.isFinite(value), `${path} ${value}`).toBe(true);
  else if (value !== null && typeof value === 'object') {
    for (const [key, inner] of Object.entries(value)) expectFinite(inner, `${path}.${key}`);
  }
}
