import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { makeFrame } from '../../src/renderer/frame.ts';
import { makeSettle } from '../../src/renderer/settle.ts';

const frames: (() => void)[] = [];
beforeEach(() => {
  frames.length = 0;
  vi.stubGlobal('requestAnimationFrame', (run: () => void) => frames.push(run));
  vi.stubGlobal('cancelAnimationFrame', (handle: number) => {
    frames[handle - 1] = () => {};
  });
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
});
afterEach(() => {
  vi.unstubAllGlobals();
  vi.useRealTimers();
});

it('paints once a frame, however often it is asked', () => {
  const paint = vi.fn();
  const frame = makeFrame(paint);
  frame.ask();
  frame.ask();
  expect(paint).not.toHaveBeenCalled();
  frames[0]?.();
  expect(paint).toHaveBeenCalledTimes(1);
  frame.ask();
  expect(frames).toHaveLength(2);
});

it('paints at once when flushed, not again in the frame, and only what was asked', () => {
  const paint = vi.fn();
  const frame = makeFrame(paint);
  frame.flush();
  expect(paint).not.toHaveBeenCalled();
  frame.ask();
  frame.flush();
  for (const run of frames) run();
  expect(paint).toHaveBeenCalledTimes(1);
});

it('does not paint what was dropped', () => {
  const paint = vi.fn();
  const frame = makeFrame(paint);
  frame.ask();
  frame.drop();
  for (const run of frames) run();
  expect(paint).not.toHaveBeenCalled();
});

it('runs once things have been quiet', () => {
  const run = vi.fn();
  const settle = makeSettle(run, 250);
  settle.ask();
  vi.advanceTimersByTime(200);
  settle.ask();
  vi.advanceTimersByTime(249);
  expect(run).not.toHaveBeenCalled();
  vi.advanceTimersByTime(1);
  expect(run).toHaveBeenCalledTimes(1);
  settle.ask();
  settle.drop();
  vi.advanceTimersByTime(1000);
  expect(run).toHaveBeenCalledTimes(1);
});
