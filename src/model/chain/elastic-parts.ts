/**
 * The elastic chain on given nodes in its two parts, by a unit load factor and by temperature: linear, so one
 * factorisation serves both.
 */
import { ModelError } from '../errors.ts';
import type { LapProblem } from '../lap/problem.ts';
import type { BandedMatrix } from '../numerics/banded.ts';
import { layoutOf } from './equations.ts';
import type { Regime } from './law.ts';
import { type Chain, chainSystem } from './system.ts';

export interface ElasticPart {
  /** The problem that it solves: without temperature, or without load. */
  readonly problem: LapProblem;
  readonly chain: Chain;
}

export interface ElasticParts {
  /** Under a load factor of one. */
  readonly byLoad: ElasticPart;
  readonly byTemperature: ElasticPart;
}

/** @throws ModelError when the equations have no single solution */
export function elasticParts(problem: LapProblem, nodes: Float64Array): ElasticParts {
  const { bonds, unknowns } = layoutOf(problem);
  const elastic = new Array<Regime>(bonds).fill('elastic');
  const regimes = new Array<readonly Regime[]>(nodes.length - 1).fill(elastic);
  let factors: BandedMatrix | null = null;
  const solve = (part: LapProblem, factor: number): ElasticPart => {
    const values = new Float64Array(nodes.length * unknowns);
    // A load factor of one gives it its scale.
    values[unknowns - 1] = 1;
    const control = { kind: 'load', factor } as const;
    const system = chainSystem(part, control, { nodes, values, regimes }, 1);
    values[unknowns - 1] = 0;
    const { scale, matrix, residual, assemble } = system;
    assemble(factors === null);
    if (!factors) {
      if (!matrix.factorize()) {
        throw new ModelError('joint', 'The elastic equations have no solution.');
      }
      factors = matrix;
    }
    const step = (): void => {
      factors!.solveFactored(residual);
      for (let i = 0; i < values.length; i++) values[i]! -= residual[i]! * scale[i % unknowns]!;
    };
    step();
    // Once more on what rounding has left.
    assemble(false);
    step();
    return { problem: part, chain: { nodes, values, regimes } };
  };
  return { byLoad: solve(withoutTemperature(problem), 1), byTemperature: solve(problem, 0) };
}

/** The same stiffnesses, with nothing that shrinks or grows. */
const withoutTemperature = (problem: LapProblem): LapProblem => ({
  ...problem,
  channels: problem.channels.map((channel) => ({
    ...channel,
    tube: { ...channel.tube, thermalStrain: 0 },
    outers: channel.outers.map((outer) => ({ ...outer, thermalStrain: 0 })),
  })),
});
