import { describe, expect, it } from 'vitest';
import { percentDone, secondsLeft, timeLeft } from '../../src/shared/time-left.ts';

describe('seconds left', () => {
  it('are as the rest would take at the rate so far', () => {
    expect(secondsLeft(25, 100, 10)).toBe(30);
    expect(secondsLeft(25, 100, 10, 4)).toBe(26);
    expect(secondsLeft(100, 100, 10)).toBe(0);
  });

  it('are told of a few steps once these took long', () => {
    expect(secondsLeft(4, 1000, 10)).toBe(2490);
  });

  it('never fall below none', () => {
    expect(secondsLeft(9, 10, 9, 60)).toBe(0);
  });

  it.each([
    ['nothing is done', 0, 100, 10],
    ['it has hardly begun', 5, 100, 0.1],
    ['the first of many steps are done', 4, 1000, 9],
    ['the number of steps is not known', 5, 0, 10],
    ['a step is no number', Number.NaN, 100, 10],
  ])('are not told while %s', (_why, done, total, elapsed) => {
    expect(secondsLeft(done, total, elapsed)).toBeNull();
  });
});

describe('the words for them', () => {
  it.each([
    [0, 'a few seconds left'],
    [2.9, 'a few seconds left'],
    [3, 'about 3 s left'],
    [19.2, 'about 20 s left'],
    [22, 'about 20 s left'],
    [57, 'about 55 s left'],
    [58, 'about 1 min left'],
    [89, 'about 1 min left'],
    [91, 'about 2 min left'],
    [5300, 'about 88 min left'],
    [7200, 'about 2 h left'],
  ])('for %d s', (seconds, words) => {
    expect(timeLeft(seconds)).toBe(words);
  });
});

describe('per cent done', () => {
  it('are whole, and a hundred only at the end', () => {
    expect([0, 1, 500, 999, 1000].map((done) => percentDone(done, 1000))).toEqual([
      0, 0, 50, 99, 100,
    ]);
    expect(percentDone(0, 0)).toBeNull();
  });
});
