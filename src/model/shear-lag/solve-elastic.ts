/** The elastic solution of one channel, whichever form it takes. */
import type { ElasticPart } from '../chain/elastic-parts.ts';
import { interpolator } from '../chain/interpolate.ts';
import { elasticPartsOf, fastestDecay } from '../chain/solve.ts';
import {
  type BondLaw,
  type Channel,
  isTapered,
  type LapProblem,
  type Member,
  stiffnessAt,
} from '../lap/problem.ts';
import type { ElasticSolution, Part } from './elastic.ts';
import { solveOneBond } from './one-bond.ts';
import { solveTwoBonds } from './two-bond.ts';

interface Known {
  readonly channel: Channel;
  readonly bonds: readonly BondLaw[];
  readonly length: number;
  /** Under a unit load. */
  readonly unit: ElasticSolution;
}

/** By the tube of a channel, which its other loads share. */
const solved = new WeakMap<Member, Known>();

export function solveElastic(
  channel: Channel,
  bonds: readonly BondLaw[],
  length: number,
): ElasticSolution {
  let known = solved.get(channel.tube);
  const isSame =
    known !== undefined &&
    known.channel.outers === channel.outers &&
    known.channel.levers === channel.levers &&
    known.bonds === bonds &&
    known.length === length;
  if (!known || !isSame) {
    known = { channel, bonds, length, unit: solveUnit({ ...channel, load: 1 }, bonds, length) };
    solved.set(channel.tube, known);
  }
  return { ...known.unit, mechanical: times(channel.load, known.unit.mechanical) };
}

const times = (load: number, part: Part): Part => ({
  shear: (j, x) => load * part.shear(j, x),
  outerForce: (j, x) => load * part.outerForce(j, x),
  outerStretch: (j) => load * part.outerStretch(j),
});

function solveUnit(channel: Channel, bonds: readonly BondLaw[], length: number): ElasticSolution {
  if (isTapered(channel)) return solveTapered(channel, bonds, length);
  return bonds.length === 1
    ? solveOneBond(channel, bonds[0]!, length)
    : solveTwoBonds(channel, bonds, length);
}

/** Gauss's two points of a cell: exact for the cubic that the chain is between its nodes. */
const GAUSS = [0.5 - Math.sqrt(3) / 6, 0.5 + Math.sqrt(3) / 6];

/** A taper leaves no closed form: the chain. */
function solveTapered(
  channel: Channel,
  bonds: readonly BondLaw[],
  length: number,
): ElasticSolution {
  const problem: LapProblem = { length, bonds, channels: [channel] };
  const { byLoad, byTemperature } = elasticPartsOf(problem);
  const part = ({ problem: own, chain }: ElasticPart): Part => {
    const at = interpolator(own, chain);
    const out = new Float64Array(2 * bonds.length + 1);
    return {
      shear: (j, x) => {
        at(x, out);
        return bonds[j]!.stiffness * out[2 * j]!;
      },
      outerForce: (j, x) => {
        at(x, out);
        return out[2 * j + 1]!;
      },
      outerStretch: (j) => {
        const outer = channel.outers[j]!;
        let stretch = 0;
        for (let i = 1; i < chain.nodes.length; i++) {
          const from = chain.nodes[i - 1]!;
          const cell = chain.nodes[i]! - from;
          for (const share of GAUSS) {
            const x = from + share * cell;
            at(x, out);
            stretch += ((cell / 2) * out[2 * j + 1]!) / stiffnessAt(outer, x, length);
          }
        }
        return stretch;
      },
    };
  };
  const omega = fastestDecay(problem);
  return {
    mechanical: part(byLoad),
    thermal: part(byTemperature),
    omegaMax: omega,
    omegaMin: omega,
  };
}
