/** Where margins lie on the axis that all bars share. */
import type { MattersReport } from '../../../shared/reports-scatter.ts';

export interface BarScale {
  /** From 0 to 100, of a margin. */
  at(margin: number): number;
  /** Zero lies on the axis. */
  readonly zero: boolean;
}

/** Room beside the farthest ends, as a share of what they span. */
const ROOM = 0.04;

export function barScale({ bars, middle }: Pick<MattersReport, 'bars' | 'middle'>): BarScale {
  const margins = [middle.margin, ...bars.flatMap(({ low, high }) => [low.margin, high.margin])];
  let [least, most] = [Math.min(...margins), Math.max(...margins)];
  const span = most - least || 0.1;
  // Zero is shown when it is no farther off than the bars are long.
  if (least > 0 && least < span) least = 0;
  if (most < 0 && -most < span) most = 0;
  const [from, to] = [least - ROOM * span, most + ROOM * span];
  return {
    at: (margin) => (100 * (margin - from)) / (to - from),
    zero: from <= 0 && to >= 0,
  };
}
