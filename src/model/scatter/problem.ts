/** What a scatter run is asked about: inputs that vary, and how strong a thing is at their values. */
import type { Distribution } from './quantiles.ts';
import type { Hinge } from './surface.ts';

export interface ScatterInput {
  /** Number of its stream of random numbers. */
  readonly stream: number;
  readonly distribution: Distribution;
}

/** One of several ways to fail, and strength over what is asked: 1 is margin 0. */
export interface Strength {
  readonly key: string;
  readonly ratio: number;
}

export interface ScatterProblem {
  readonly inputs: readonly ScatterInput[];
  /** Planes in the inputs, Σ weights·z = at, across which the ratios are known to bend. */
  readonly hinges: readonly Hinge[];
  /** The lowest of all at the inputs z, each about its middle in units of its spread. */
  lowest(z: Float64Array): Strength;
  /**
   * Ratios by key: those of the keys wanted, or all within so many times the lowest.
   */
  rows(z: Float64Array, wanted: ReadonlySet<string> | number): ReadonlyMap<string, number>;
}

export type Progress = (done: number, total: number, what?: string) => void;

/** How far the design of a fit reaches, in units of the spread. */
export const REACH: Readonly<Record<Distribution, number>> = {
  normal: 3,
  uniform: 1,
  triangular: 1,
};
