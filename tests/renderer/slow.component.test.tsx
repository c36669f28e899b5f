import { createRoot, createSignal } from 'solid-js';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { createSlow } from '../../src/renderer/state/slow.ts';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

const setUp = () =>
  createRoot(() => {
    const [asked, setAsked] = createSignal(0);
    const [answered, setAnswered] = createSignal(0);
    const slow = createSlow(() => asked() !== answered(), answered);
    return { slow, setAsked, setAnswered };
  });

it('takes a while to call an answer slow', () => {
  const { slow, setAsked, setAnswered } = setUp();
  setAsked(1);
  vi.advanceTimersByTime(500);
  expect(slow()).toBe(false);
  vi.advanceTimersByTime(200);
  expect(slow()).toBe(true);
  setAnswered(1);
  expect(slow()).toBe(false);
  vi.advanceTimersByTime(5000);
  expect(slow()).toBe(false);
});

it('is not put off by more questions, but by every answer', () => {
  const { slow, setAsked, setAnswered } = setUp();
  for (let i = 1; i <= 10; i += 1) {
    setAsked(i);
    vi.advanceTimersByTime(100);
  }
  expect(slow()).toBe(true);
  for (let i = 1; i < 10; i += 1) {
    setAnswered(i);
    vi.advanceTimersByTime(500);
    expect(slow()).toBe(false);
  }
});
