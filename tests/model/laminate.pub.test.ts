/** Lamination theory against published examples: the cases of the verification book. */
import { describe, expect, it } from 'vitest';
import { isCurve } from '../verification/case.ts';
import { laminates } from '../verification/cases/laminates.ts';
import { judge } from '../verification/judge.ts';

const cases = laminates.cases.filter((one) => !isCurve(one) && one.tag !== 'independent');

it('has every published example', () => {
  expect(cases.length).toBeGreaterThanOrEqual(9);
});

describe.each(cases)('$title: $source', ({ checks }) => {
  it.each(checks ?? [])('$name', (check) => {
    expect(judge(check).failure).toBeNull();
  });
});
