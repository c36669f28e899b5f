/** One closeness check for all figures; its message carries the whole case. */
import { expect } from 'vitest';

export interface Tolerance {
  /** Relative to the expected value. */
  readonly relative?: number;
  /** In the value's own unit. */
  readonly absolute?: number;
}

export function expectClose(
  actual: number,
  expected: number,
  { relative = 0, absolute = 0 }: Tolerance,
  what: string,
  inputs?: unknown,
): void {
  const allowed = Math.max(absolute, relative * Math.abs(expected));
  const miss = Math.abs(actual - expected);
  if (miss <= allowed) return;
  const given = inputs === undefined ? '' : `\n  inputs ${JSON.stringify(inputs)}`;
  expect.fail(
    `${what}: computed ${actual}, expected ${expected}, off by ${miss} (${((miss / Math.abs(expected)) * 100).toPrecision(3)} %), allowed ${allowed}${given}`,
  );
}
