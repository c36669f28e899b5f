/**
 * The one-dimensional lap at one clocking: loads, levers and stiffnesses of docs/method.md section 4.
 *
 *   axial           P = F + 2M·cosθ/r̂    a_j = w_F + w_M·ρ_j/r̂    1/K = w_F/(EA) + w_M·r̂²/(2EI)
 *   circumferential P = T/r̂ + 2V·sinθ    a_j = ρ_j/r̂              K = GJ/r̂²
 *
 * With force alone this is the axial problem; with moment alone the first-harmonic beam problem,
 * whose end strains M·ρ/(E·I) and moment transfer π·ρ²·τ are exact.
 */
import type { BondLaw, Channel, LapProblem, Member } from '../lap/problem.ts';
import type { Assembly, Part } from './assembly.ts';
import type { Section } from './section.ts';
import { axialProperties, type Loads } from './types.ts';

export interface LocalProblem extends LapProblem {
  /** Index of the channel, or −1 when it is at rest. */
  readonly axial: number;
  readonly hoop: number;
}

function member(part: Part, stiffnessOf: (section: Section) => number, strain: number): Member {
  const stiffness = stiffnessOf(part.root);
  if (part.root.thickness === part.mouth.thickness) return { stiffness, thermalStrain: strain };
  return {
    stiffness,
    thermalStrain: strain,
    taper: { middle: stiffnessOf(part.middle), mouth: stiffnessOf(part.mouth) },
  };
}

/** How much of the local line load comes from the force, and how much from the moment. */
export interface Weights {
  readonly force: number;
  readonly moment: number;
}

export function loadWeights(assembly: Assembly, loads: Loads, theta: number): Weights {
  if (assembly.flat) return { force: 1, moment: 0 };
  const force = Math.abs(loads.force);
  const moment = Math.abs((2 * loads.moment * Math.cos(theta)) / assembly.referenceRadius);
  // A moment far below the force (cos 90° is not quite zero in floating point) is none.
  if (moment <= 1e-12 * force || moment === 0) return { force: 1, moment: 0 };
  // In steps: cosines of mirrored clockings differ in their last digits, their laps are the same.
  const share = Math.round((WEIGHT_STEPS * force) / (force + moment)) / WEIGHT_STEPS;
  return { force: share, moment: 1 - share };
}
const WEIGHT_STEPS = 2 ** 44;

/** Channels of an assembly for a unit load: every load and clocking shares what they have in common. */
const known = new WeakMap<Assembly, Map<string, Channel>>();

function kept(assembly: Assembly, key: string, make: () => Channel): Channel {
  let channels = known.get(assembly);
  if (!channels) {
    channels = new Map();
    known.set(assembly, channels);
  }
  let channel = channels.get(key);
  if (!channel) {
    channel = make();
    channels.set(key, channel);
  }
  return channel;
}

export function axialChannel(
  assembly: Assembly,
  load: number,
  weights: Weights,
  deltaT: number,
): Channel {
  const key = `${weights.force} ${weights.moment} ${deltaT}`;
  return { ...kept(assembly, key, () => unitAxial(assembly, weights, deltaT)), load };
}

function unitAxial(assembly: Assembly, weights: Weights, deltaT: number): Channel {
  const radius = assembly.referenceRadius;
  const asMember = (part: Part): Member => {
    const { modulus, expansion } = axialProperties(part.material);
    const stiffnessOf = ({ area, secondMoment }: Section): number =>
      weights.moment === 0
        ? modulus * area
        : modulus /
          (weights.force / area + (weights.moment * radius * radius) / (2 * secondMoment));
    return member(part, stiffnessOf, expansion * deltaT);
  };
  return {
    load: 1,
    tube: asMember(assembly.tube),
    outers: assembly.outers.map(asMember),
    levers: assembly.bonds.map((bond) =>
      assembly.flat ? 1 : weights.force + (weights.moment * bond.radius) / radius,
    ),
  };
}

export function hoopChannel(assembly: Assembly, load: number): Channel {
  return { ...kept(assembly, 'hoop', () => unitHoop(assembly)), load };
}

function unitHoop(assembly: Assembly): Channel {
  const radius = assembly.referenceRadius;
  const asMember = (part: Part): Member => {
    const { shearModulus } = axialProperties(part.material);
    return member(part, ({ polarMoment }) => (shearModulus * polarMoment) / radius ** 2, 0);
  };
  return {
    load: 1,
    tube: asMember(assembly.tube),
    outers: assembly.outers.map(asMember),
    levers: assembly.bonds.map((bond) => bond.radius / radius),
  };
}

/**
 * A circumferential load this far below the axial one changes the resultant by less than 1e-8: the
 * channel is left at rest, and the exact one-channel solution holds.
 */
const AT_REST = 1e-4;

/** Loads this far below what the bond carries at most are none: no factor on them means anything. */
const NO_LOAD = 1e-10;

/** @param theta clocking from the plane of bending, radians */
export function localProblem(
  assembly: Assembly,
  bonds: readonly BondLaw[],
  loads: Loads,
  theta: number,
  deltaT: number,
): LocalProblem {
  const radius = assembly.referenceRadius;
  const channels: Channel[] = [];
  const along = assembly.flat
    ? loads.force
    : loads.force + (2 * loads.moment * Math.cos(theta)) / radius;
  const around = assembly.flat ? 0 : loads.torque / radius + 2 * loads.shear * Math.sin(theta);
  const flow = bonds.reduce(
    (sum, bond) => sum + bond.width * bond.shearYield * assembly.overlap,
    0,
  );
  const axialLoad = Math.abs(along) <= NO_LOAD * flow ? 0 : along;
  const hoopLoad =
    Math.abs(around) <= Math.max(AT_REST * Math.abs(axialLoad), NO_LOAD * flow) ? 0 : around;
  const weights = loadWeights(assembly, loads, theta);
  const axial = axialChannel(assembly, axialLoad, weights, deltaT);
  const moved =
    axialLoad !== 0 ||
    axial.outers.some((outer) => outer.thermalStrain !== axial.tube.thermalStrain);
  if (moved || hoopLoad === 0) channels.push(axial);
  if (hoopLoad !== 0) channels.push(hoopChannel(assembly, hoopLoad));
  return {
    length: assembly.overlap,
    bonds,
    channels,
    axial: moved || hoopLoad === 0 ? 0 : -1,
    hoop: hoopLoad !== 0 ? channels.length - 1 : -1,
  };
}
