/** All cyclic cases together: life of each, their parts, the sum. */
import { type Criterion, type Step, step } from '../card.ts';
import type { SnLine } from '../joint/types.ts';
import { onLine, ratiosOf } from '../margins/cyclic.ts';
import {
  backAmplitude,
  backHigher,
  backLower,
  damageSum,
  lifeOf,
  shareOf,
} from '../margins/cyclic-damage.card.ts';
import type { DamageShare } from '../margins/result.ts';
import { type GivenMode, marginSteps } from './context.ts';

/** The search for the factor ends so near to the sum of 1. */
const WHOLE: Criterion = { target: 1, tolerance: 1e-6, why: 'the factor at which the sum is 1' };

function carried(line: SnLine, { peak, ratio }: DamageShare, q: number): Step[] {
  const [from, to] = ratiosOf(line, { ratio }) ?? [0, 0];
  if (from === to || (to > from && peak >= 1)) return [];
  if (to < from) return [step(backLower, { s: peak, R: to, R_L: from }, q)];
  const a = (peak * (1 - to)) / (2 - peak * (1 + to));
  return [step(backAmplitude, { s: peak, R: to }, a), step(backHigher, { a, R_L: from }, q)];
}

function stepsOf(line: SnLine, share: DamageShare): Step[] {
  const { occasion, cycles, ratio, peak, life } = share;
  // So far below the line that its life is beyond all numbers: it takes no part.
  if (!Number.isFinite(life)) return [];
  const q = onLine(line, { ratio }, peak);
  return [
    ...carried(line, share, q),
    step(lifeOf(occasion), { C: line.coefficient, q_L: q, b: line.exponent }, life),
    step(shareOf(occasion), { n: cycles, N: life }, cycles / life),
  ];
}

export function damageWorking(given: GivenMode): Step[] {
  const { adhesive, result } = given;
  const shares = result.damage!;
  const parts = shares.map(({ cycles, life }) => cycles / life);
  const values = Object.fromEntries(parts.map((part, i) => [`d_${i + 1}`, part]));
  const sum = parts.reduce((all, part) => all + part, 0);
  // Where one of the cases reaches yield first, or the line has no slope, the sum stays below 1.
  const isWhole = Math.abs(sum - 1) <= WHOLE.tolerance;
  return [
    ...shares.flatMap((share) => stepsOf(adhesive.fatigue!, share)),
    step(
      damageSum(shares.map(({ occasion }) => occasion)),
      values,
      sum,
      isWhole ? WHOLE : undefined,
    ),
    ...marginSteps(given),
  ];
}
