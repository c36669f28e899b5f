import { describe, expect, it } from 'vitest';
import { makeTeller, type Tick } from '../../src/main/jobs/progress.ts';

function open() {
  const sent: Tick[] = [];
  let time = 0;
  const teller = makeTeller(
    (tick) => sent.push(tick),
    () => time,
  );
  return {
    ...teller,
    sent,
    at(later: number) {
      time = later;
    },
  };
}

describe('what is told while a handler works', () => {
  it('goes out at once, then at most ten times a second', () => {
    const { tell, sent, at } = open();
    for (let step = 0; step <= 1000; step++) {
      at(step);
      tell(step, 1000, 'scatter');
    }
    expect(sent.map(({ done }) => done)).toEqual([
      0, 100, 200, 300, 400, 500, 600, 700, 800, 900, 1000,
    ]);
    expect(sent[0]).toEqual({ done: 0, total: 1000, what: 'scatter' });
  });

  it('ends with the last step, told once', () => {
    const { tell, flush, sent } = open();
    tell(1, 3);
    tell(2, 3);
    tell(3, 3);
    flush();
    flush();
    expect(sent).toEqual([
      { done: 1, total: 3, what: '' },
      { done: 3, total: 3, what: '' },
    ]);
  });
});
