/** What matters: each input at both ends of its tolerance, all others in their middle. */
import type { Progress, ScatterProblem, Strength } from './problem.ts';
import type { Distribution } from './quantiles.ts';

/** The ends of a bar, in spreads: two standard deviations, or the half-width. */
export const ENDS: Readonly<Record<Distribution, number>> = {
  normal: 2,
  uniform: 1,
  triangular: 1,
};

export interface Bar {
  /** Index of the input. */
  readonly input: number;
  readonly low: Strength;
  readonly high: Strength;
  /** Between the lowest and the highest ratio of both ends and the middle. */
  readonly swing: number;
}

export interface Tornado {
  readonly middle: Strength;
  /** The largest swing first. */
  readonly bars: readonly Bar[];
}

export function tornadoOf(problem: ScatterProblem, progress: Progress = () => undefined): Tornado {
  const { inputs } = problem;
  const total = 2 * inputs.length + 1;
  let done = 0;
  const at = (input: number, z: number): Strength => {
    const place = new Float64Array(inputs.length);
    if (input >= 0) place[input] = z;
    const found = problem.lowest(place);
    progress(++done, total, 'inputs');
    return found;
  };
  const middle = at(-1, 0);
  const bars = inputs.map(({ distribution }, input): Bar => {
    const low = at(input, -ENDS[distribution]);
    const high = at(input, ENDS[distribution]);
    const ratios = [low.ratio, high.ratio, middle.ratio];
    return { input, low, high, swing: Math.max(...ratios) - Math.min(...ratios) };
  });
  return { middle, bars: bars.sort((a, b) => b.swing - a.swing || a.input - b.input) };
}
