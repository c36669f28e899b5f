import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { IDLE, watchPages } from '../../src/main/loopback/watch-pages.ts';
import { giveSigns, SIGN_OF_LIFE } from '../../src/renderer/sign-of-life.ts';
import type { Bridge } from '../../src/shared/contract.ts';
import { ok } from '../../src/shared/reply.ts';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

it('is gone once no page has asked for long, and said once', () => {
  const gone = vi.fn();
  const pages = watchPages(IDLE, gone);
  pages.asked()();
  vi.advanceTimersByTime(0.9 * IDLE);
  expect(gone).not.toHaveBeenCalled();
  pages.asked()();
  vi.advanceTimersByTime(0.9 * IDLE);
  expect(gone).not.toHaveBeenCalled();
  vi.advanceTimersByTime(10 * IDLE);
  expect(gone).toHaveBeenCalledTimes(1);
});

it('waits for the first page, and for every answer, as long as they take', () => {
  const gone = vi.fn();
  const pages = watchPages(IDLE, gone);
  vi.advanceTimersByTime(100 * IDLE);
  const answered = pages.asked();
  vi.advanceTimersByTime(100 * IDLE);
  expect(gone).not.toHaveBeenCalled();
  answered();
  vi.advanceTimersByTime(IDLE);
  expect(gone).toHaveBeenCalledTimes(1);
});

it('counts no time in which nothing ran', () => {
  const gone = vi.fn();
  const pages = watchPages(IDLE, gone);
  pages.asked()();
  vi.setSystemTime(Date.now() + 100 * IDLE);
  vi.advanceTimersByTime(IDLE / 2);
  expect(gone).not.toHaveBeenCalled();
});

it('ends when told to', () => {
  const gone = vi.fn();
  const pages = watchPages(IDLE, gone);
  pages.asked()();
  pages.end();
  vi.advanceTimersByTime(10 * IDLE);
  expect(gone).not.toHaveBeenCalled();
});

it('hears of a page in a browser often enough, also of one whose timers run once a minute', () => {
  const ask = vi.fn(async () => ok({}));
  giveSigns({ carrier: 'electron', ask } as unknown as Bridge);
  vi.advanceTimersByTime(IDLE);
  expect(ask).not.toHaveBeenCalled();
  giveSigns({ carrier: 'loopback', ask } as unknown as Bridge);
  vi.advanceTimersByTime(IDLE);
  expect(ask.mock.calls.length).toBeGreaterThanOrEqual(5);
  expect(ask).toHaveBeenCalledWith('app.about', {});
  expect(Math.max(SIGN_OF_LIFE, 60_000)).toBeLessThan(IDLE / 5);
});
