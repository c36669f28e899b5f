/** The one-dimensional lap at a clocking: loads, walls, and elastic shear at a place. */
import { type Step, step } from '../card.ts';
import type { Part } from '../joint/assembly.ts';
import {
  axialLoad,
  bentWall,
  equilibrium,
  flatLoad,
  hoopLoad,
  pulledWall,
  twistedWall,
} from '../joint/local-problem.card.ts';
import { type LocalProblem, loadWeights } from '../joint/local-problem.ts';
import { axialProperties } from '../joint/types.ts';
import { type Channel, isTapered, thermalMismatch } from '../lap/problem.ts';
import { decay, loadShear, mismatch, thermalShear, type Way } from '../shear-lag/one-bond.card.ts';
import { decayRate } from '../shear-lag/one-bond.ts';
import { solveElastic } from '../shear-lag/solve-elastic.ts';
import type { Given } from './context.ts';

export const wayOf = (problem: LocalProblem, q: number): Way =>
  q === problem.axial ? 'along' : 'around';

/** The load of each channel that has one. */
export function loadSteps({ state }: Given, problem: LocalProblem, theta: number): Step[] {
  const { assembly, loadCase } = state;
  const { force, moment, torque, shear } = loadCase.loads;
  const r = assembly.referenceRadius;
  return problem.channels.flatMap(({ load }, q): Step[] => {
    if (load === 0) return [];
    if (wayOf(problem, q) === 'around') {
      return [step(hoopLoad, { T: torque, r, V: shear, theta }, load)];
    }
    if (assembly.flat) return [step(flatLoad, { F: force }, load)];
    return [step(axialLoad, { F: force, M: moment, theta, r }, load)];
  });
}

/** True where a closed form of one bond between uniform walls stands behind a channel. */
export const isClosed = (problem: LocalProblem, channel: Channel): boolean =>
  problem.bonds.length === 1 && !isTapered(channel);

/** Stiffness of the two walls of a channel of one bond, and the decay rate that they make. */
export function wallSteps(
  { state }: Given,
  problem: LocalProblem,
  q: number,
  theta: number,
): Step[] {
  const { assembly, loadCase } = state;
  const channel = problem.channels[q]!;
  const bond = problem.bonds[0]!;
  const way = wayOf(problem, q);
  const r = assembly.referenceRadius;
  const weights = loadWeights(assembly, loadCase.loads, theta);
  const stiffness = (letter: string, part: Part, own: number): Step => {
    const { modulus, shearModulus } = axialProperties(part.material);
    const { area, secondMoment, polarMoment } = part.root;
    if (way === 'around') {
      return step(twistedWall(letter, part.name), { G: shearModulus, J: polarMoment, r }, own);
    }
    if (weights.moment === 0)
      return step(pulledWall(letter, part.name), { E: modulus, A: area }, own);
    return step(
      bentWall(letter, part.name),
      {
        E: modulus,
        w_F: weights.force,
        w_M: weights.moment,
        A: area,
        I: secondMoment,
        r,
      },
      own,
    );
  };
  const { tube, outers, levers } = channel;
  const K_t = tube.stiffness;
  const K_s = outers[0]!.stiffness;
  return [
    stiffness('t', assembly.tube, K_t),
    stiffness('s', assembly.outers[0]!, K_s),
    step(
      decay(way),
      { a: levers[0]!, c: bond.width, k: bond.stiffness, K_t, K_s },
      decayRate(channel, bond),
    ),
  ];
}

export function mismatchStep({ state }: Given, channel: Channel): Step {
  const { assembly, deltaT } = state;
  const of = (part: Part): number => axialProperties(part.material).expansion;
  return step(
    mismatch,
    { alpha_t: of(assembly.tube), alpha_s: of(assembly.outers[0]!), DeltaT: deltaT },
    thermalMismatch(channel, 0),
  );
}

export interface ElasticShear {
  readonly thermal: number;
  /** Per load factor. */
  readonly along: number;
  readonly around: number;
}

/** Elastic shear at an end or between, by temperature and per load factor, and how it came about. */
export function elasticSteps(
  given: Given,
  problem: LocalProblem,
  j: number,
  x: number,
  theta: number,
): { readonly steps: Step[]; readonly shear: ElasticShear } {
  const { length, bonds, channels } = problem;
  const steps: Step[] = loadSteps(given, problem, theta);
  const shear = { thermal: 0, along: 0, around: 0 };
  channels.forEach((channel, q) => {
    const solution = solveElastic(channel, bonds, length);
    const way = wayOf(problem, q);
    shear[way] = solution.mechanical.shear(j, x);
    if (way === 'along') shear.thermal = solution.thermal.shear(j, x);
    const end = x === 0 ? 'root' : x === length ? 'mouth' : null;
    if (!isClosed(problem, channel) || !end) {
      const force = (i: number): number =>
        i < bonds.length ? solution.mechanical.outerForce(i, 0) : 0;
      if (channel.load !== 0) {
        steps.push(step(equilibrium, { N_1: force(0), N_2: force(1) }, channel.load));
      }
      return;
    }
    const bond = bonds[0]!;
    const omega = decayRate(channel, bond);
    steps.push(...wallSteps(given, problem, q, theta));
    const { tube, outers, levers } = channel;
    if (channel.load !== 0) {
      const values = {
        P: channel.load,
        omega,
        a: levers[0]!,
        c: bond.width,
        L: length,
        k: bond.stiffness,
        K_t: tube.stiffness,
        K_s: outers[0]!.stiffness,
      };
      steps.push(step(loadShear(way, end), values, shear[way]));
    }
    const epsilon = thermalMismatch(channel, 0);
    if (way === 'along' && epsilon !== 0) {
      steps.push(mismatchStep(given, channel));
      const values = { k: bond.stiffness, epsilon_T: epsilon, omega, L: length };
      steps.push(step(thermalShear(end), values, shear.thermal));
    }
  });
  return { steps, shear };
}
