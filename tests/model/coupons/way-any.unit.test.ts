/** What must hold of basis values for any results. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BASIS_METHODS } from '../../../src/model/coupons/basis.ts';
import { type CouponStatistics, couponStatistics } from '../../../src/model/coupons/path.ts';
import { BASIS_KINDS } from '../../../src/model/coupons/tolerance-factor.ts';
import { expectClose } from '../../support/close.ts';
import { expectFinite, tests, valueOfMethod } from '../../support/coupon-way.ts';

const result = fc.double({ min: 1, max: 1000, noNaN: true });
const someBatches = fc.array(fc.array(result, { minLength: 1, maxLength: 12 }), {
  minLength: 1,
  maxLength: 5,
});
/** Any results, many of them equal. */
const roughBatches = fc.array(
  fc.array(fc.integer({ min: -3, max: 12 }), { minLength: 1, maxLength: 9 }),
  { minLength: 1, maxLength: 5 },
);

describe('for any results', () => {
  it('nothing that is not a finite number comes out', () => {
    fc.assert(
      fc.property(fc.oneof(someBatches, roughBatches), (batches) => {
        expectFinite(couponStatistics(batches));
      }),
      { numRuns: 300 },
    );
  });

  it('A is not above B, of any method', () => {
    fc.assert(
      fc.property(someBatches, (batches) => {
        const found = couponStatistics(batches);
        const { A, B } = found.chosen;
        if (A && B) expect(A.value!).toBeLessThanOrEqual(B.value! * (1 + 1e-12));
        for (const method of BASIS_METHODS) {
          const [a, b] = BASIS_KINDS.map((kind) => valueOfMethod(found, method, kind).value);
          if (a !== null && b !== null) expect(a!, method).toBeLessThanOrEqual(b! * (1 + 1e-12));
        }
      }),
    );
  });

  const same = (one: CouponStatistics, other: CouponStatistics, scale: number): void => {
    expect(tests(other)).toEqual(tests(one));
    expect(other.decisions.map(({ outcome }) => outcome)).toEqual(
      one.decisions.map(({ outcome }) => outcome),
    );
    one.basis.forEach(({ method, kind, value }, i) => {
      const theirs = other.basis[i]!.value;
      if (value === null || theirs === null) expect(theirs).toBe(value);
      else {
        // A Weibull shape is found to its last digits only where the results differ by more than theirs.
        const absolute = 1e-7 * scale * one.all.highest;
        expectClose(theirs, scale * value, { absolute }, `${method} ${kind}`, one);
      }
    });
  };

  it('another unit changes the values alone', () => {
    fc.assert(
      fc.property(someBatches, fc.constantFrom(1 / 1024, 8, 65536), (batches, scale) => {
        const scaled = batches.map((batch) => batch.map((x) => x * scale));
        same(couponStatistics(batches), couponStatistics(scaled), scale);
      }),
    );
  });

  it('the order of results and of batches changes nothing', () => {
    fc.assert(
      fc.property(someBatches, (batches) => {
        const turned = batches.map((batch) => [...batch].reverse());
        same(couponStatistics(batches), couponStatistics(turned), 1);
        const other = couponStatistics([...turned].reverse());
        const one = couponStatistics(batches);
        expect(other.chosen.B?.method).toBe(one.chosen.B?.method);
        one.basis.forEach(({ value, method }, i) => {
          if (value === null) expect(other.basis[i]!.value).toBeNull();
          else {
            const absolute = 1e-7 * one.all.highest;
            expectClose(other.basis[i]!.value!, value, { absolute }, method, batches);
          }
        });
      }),
    );
  });

  it('all results moved by the same amount move a normal value and that of the batches by it', () => {
    fc.assert(
      fc.property(someBatches, fc.integer({ min: 1, max: 500 }), (batches, by) => {
        const one = couponStatistics(batches);
        const other = couponStatistics(batches.map((batch) => batch.map((x) => x + by)));
        for (const method of ['normal', 'anova'] as const) {
          for (const kind of BASIS_KINDS) {
            const [a, b] = [valueOfMethod(one, method, kind), valueOfMethod(other, method, kind)];
            if (a.value === null || b.value === null) continue;
            expectClose(b.value, a.value + by, { absolute: 1e-7 * (by + one.all.highest) }, method);
          }
        }
      }),
    );
  });
});
