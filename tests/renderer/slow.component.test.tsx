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
    const [wanted, setWanted] = createSignal(0);
    const [shown, setShown] = createSignal(0);
    const [active, setActive] = createSignal(true);
    return { slow: createSlow({ wanted, shown, active }), setWanted, setShown, setActive };
  });
const wait = (ms: number): void => void vi.advanceTimersByTime(ms);

it('marks what is of another state as soon as an eye could take it for current', () => {
  const { slow, setWanted, setShown } = setUp();
  setWanted(1);
  wait(140);
  expect(slow()).toBe(false);
  wait(20);
  expect(slow()).toBe(true);
  setShown(1);
  expect(slow()).toBe(false);
  wait(5000);
  expect(slow()).toBe(false);
});

it('is not put off by more questions', () => {
  const { slow, setWanted } = setUp();
  for (let i = 1; i <= 10; i += 1) {
    setWanted(i);
    wait(50);
  }
  expect(slow()).toBe(true);
});

it('leaves a drag alone whose answers are a little behind, however long it lasts', () => {
  const { slow, setWanted, setShown } = setUp();
  setWanted(1);
  for (let i = 2; i <= 100; i += 1) {
    wait(60);
    setWanted(i);
    setShown(i - 1);
    expect(slow()).toBe(false);
  }
});

it('marks a drag whose answers are of a state that is long gone', () => {
  const { slow, setWanted, setShown } = setUp();
  for (let i = 1; i <= 40; i += 1) {
    setWanted(i);
    wait(50);
    // Each answer is eight states behind.
    setShown(Math.max(0, i - 8));
    expect(slow()).toBe(i >= 3);
  }
  setShown(40);
  expect(slow()).toBe(false);
});

it('marks nothing while nothing is asked', () => {
  const { slow, setWanted, setActive } = setUp();
  setActive(false);
  setWanted(1);
  wait(1000);
  expect(slow()).toBe(false);
  setActive(true);
  expect(slow()).toBe(true);
});
