/** Flat single laps against boundary-value problems in scipy (reference/flat_lap.py). */
import { describe, expect, it } from 'vitest';
import { independentFlatLaps } from '../verification/cases/flat-laps.ts';
import { judge } from '../verification/judge.ts';

describe.each(independentFlatLaps)('$title', ({ checks }) => {
  it.each(checks)('$name', (check) => {
    expect(judge(check).failure).toBeNull();
  });
});
