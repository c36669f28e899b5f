import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { startRunClock } from '../../../src/main/files/run-clock.ts';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

it('counts the time that it runs, not the clock that is set', () => {
  const clock = startRunClock();
  vi.advanceTimersByTime(60_000);
  expect(clock.ran()).toBe(60_000);
  for (const by of [5, -10]) {
    vi.setSystemTime(Date.now() + by * 60 * 60 * 1000);
    expect(clock.ran()).toBe(60_000);
  }
  clock.close();
  vi.advanceTimersByTime(60_000);
  expect(clock.ran()).toBe(60_000);
});
