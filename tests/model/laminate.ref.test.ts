/** Lamination theory against three-dimensional elasticity (reference/laminates.py). */
import { describe, expect, it } from 'vitest';
import { isCurve } from '../verification/case.ts';
import { laminates } from '../verification/cases/laminates.ts';
import { judge } from '../verification/judge.ts';

describe.each(laminates.cases.filter((one) => !isCurve(one) && one.tag === 'independent'))(
  '$title',
  ({ checks }) => {
    it.each(checks ?? [])('$name', (check) => {
      expect(judge(check).failure).toBeNull();
    });
  },
);
