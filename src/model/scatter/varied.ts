/** A joint as it is, and the same with its inputs moved: what one sample, one bar of a tornado, is of. */
import type {
  AdhesiveInput,
  BondInput,
  CaseInput,
  JointInput,
  Material,
  WallInput,
} from '../joint/types.ts';
import { laminateMaterial } from '../laminate/material.ts';
import type { Ply } from '../laminate/ply.ts';
import type { VariedInput } from './inputs.ts';

export interface Study {
  readonly joint: JointInput;
  readonly adhesive: AdhesiveInput;
  readonly cases: readonly CaseInput[];
}

/** What is added to each input: mm, °C, or a share of the value; 0 where left out. */
export type Changes = Partial<Record<VariedInput, number>>;

/** Gaps and walls are not let below these, mm, and factors of properties not below this. */
export const LEAST = { gap: 0.01, wall: 0.05, overlap: 0.5, factor: 0.05 } as const;

const times = (value: number, change = 0): number => value * Math.max(1 + change, LEAST.factor);

/** Every modulus of a material by one factor, strengths by others; a stack by those of its ply. */
function materialOf(
  material: Material,
  modulus: number,
  { laminate, metal, interlaminar }: { laminate: number; metal: number; interlaminar: number },
  wall: number,
): Material {
  if (material.kind === 'isotropic') {
    return {
      ...material,
      modulus: times(material.modulus, modulus),
      yieldStrength: times(material.yieldStrength, metal),
      ultimateStrength: times(material.ultimateStrength, metal),
    };
  }
  const scaled = (value: number | undefined, change: number): number | undefined =>
    value === undefined ? undefined : times(value, change);
  if (material.kind === 'orthotropic') {
    return {
      ...material,
      axialModulus: times(material.axialModulus, modulus),
      hoopModulus: times(material.hoopModulus, modulus),
      shearModulus: times(material.shearModulus, modulus),
      throughShearModulus: times(material.throughShearModulus, modulus),
      throughModulus: scaled(material.throughModulus, modulus),
      interlaminarTension: scaled(material.interlaminarTension, interlaminar),
      interlaminarShear: scaled(material.interlaminarShear, interlaminar),
      tensileStrength: times(material.tensileStrength, laminate),
      compressiveStrength: times(material.compressiveStrength, laminate),
      shearStrength: times(material.shearStrength, laminate),
    };
  }
  const { plies } = material.stack;
  const ply = plies[0]!.ply;
  const changed: Ply = {
    ...ply,
    axialModulus: times(ply.axialModulus, modulus),
    transverseModulus: times(ply.transverseModulus, modulus),
    shearModulus: times(ply.shearModulus, modulus),
    transverseShearModulus: times(ply.transverseShearModulus, modulus),
    tensileStrength: times(ply.tensileStrength, laminate),
    compressiveStrength: times(ply.compressiveStrength, laminate),
    transverseTensileStrength: times(ply.transverseTensileStrength, laminate),
    transverseCompressiveStrength: times(ply.transverseCompressiveStrength, laminate),
    shearStrength: times(ply.shearStrength, laminate),
    interlaminarTension: times(ply.interlaminarTension, interlaminar),
    interlaminarShear: times(ply.interlaminarShear, interlaminar),
  };
  const angles = plies.map(({ angle }) => angle);
  return { kind: 'laminate', ...laminateMaterial(changed, angles, wall) };
}

/**
 * The study with its inputs changed. Gaps have no tolerance of their own any more: what they can be
 * is sampled. One change moves every wall, bond and case alike (docs/method.md, Scatter).
 * @param bondGap change of a bond's gap, mm, where it is not the same for all: from its own tolerance
 * @throws ModelError when the changed joint cannot be put together
 */
export function changed(
  study: Study,
  changes: Changes,
  bondGap: (bond: BondInput) => number = () => changes.gap ?? 0,
): Study {
  return {
    joint: changedJoint(study.joint, changes, bondGap),
    adhesive: changedAdhesive(study.adhesive, changes),
    cases: study.cases.map((loadCase) => changedCase(loadCase, changes)),
  };
}

function changedJoint(
  joint: JointInput,
  changes: Changes,
  bondGap: (bond: BondInput) => number,
): JointInput {
  const strengths = {
    laminate: changes['laminate-strength'] ?? 0,
    metal: changes['metal-strength'] ?? 0,
    interlaminar: changes['interlaminar-strength'] ?? 0,
  };
  const overlap = Math.max(joint.overlap + (changes.overlap ?? 0), LEAST.overlap);
  const thick = (value: number, change = 0): number => Math.max(value + change, LEAST.wall);
  const wall = (input: WallInput): WallInput => {
    const atRoot = thick(input.atRoot, changes['sleeve-wall']);
    const atMouth = thick(input.atMouth, changes['sleeve-wall']);
    const mean = (atRoot + atMouth) / 2;
    const modulus = changes['sleeve-modulus'] ?? 0;
    return { atRoot, atMouth, material: materialOf(input.material, modulus, strengths, mean) };
  };
  const tubeMaterial = (material: Material, thickness: number): Material =>
    materialOf(material, changes['tube-modulus'] ?? 0, strengths, thickness);
  // An off-centre tube must leave a gap all round.
  const offset = 'offset' in joint ? Math.max(joint.offset + (changes.offset ?? 0), 0) : 0;
  const bond = (input: BondInput): BondInput => ({
    gap: Math.max(input.gap + bondGap(input), offset + LEAST.gap),
    tolerance: 0,
  });
  if (joint.type === 'sleeve-single' || joint.type === 'sleeve-double') {
    const thickness = thick(joint.tube.wall, changes['tube-wall']);
    const tube = {
      outsideDiameter: joint.tube.outsideDiameter + (changes['tube-diameter'] ?? 0),
      wall: thickness,
      material: tubeMaterial(joint.tube.material, thickness),
    };
    return joint.type === 'sleeve-single'
      ? { ...joint, overlap, tube, sleeve: wall(joint.sleeve), bond: bond(joint.bond), offset }
      : {
          ...joint,
          overlap,
          tube,
          spigot: wall(joint.spigot),
          socket: wall(joint.socket),
          innerBond: bond(joint.innerBond),
          outerBond: bond(joint.outerBond),
          offset,
        };
  }
  const thickness = thick(joint.strip.thickness, changes['tube-wall']);
  const strip = { thickness, material: tubeMaterial(joint.strip.material, thickness) };
  return joint.type === 'flat-single'
    ? { ...joint, overlap, strip, plate: wall(joint.plate), bond: bond(joint.bond) }
    : {
        ...joint,
        overlap,
        strip,
        lowerStrap: wall(joint.lowerStrap),
        upperStrap: wall(joint.upperStrap),
        lowerBond: bond(joint.lowerBond),
        upperBond: bond(joint.upperBond),
      };
}

const changedAdhesive = (adhesive: AdhesiveInput, changes: Changes): AdhesiveInput => ({
  ...adhesive,
  stressFreeTemperature: adhesive.stressFreeTemperature + (changes['stress-free-temperature'] ?? 0),
  states: adhesive.states.map((row) => ({
    ...row,
    modulus: times(row.modulus, changes['adhesive-modulus']),
    shearModulus: times(row.shearModulus, changes['adhesive-modulus']),
    shearYield: times(row.shearYield, changes['shear-yield']),
    plasticStrain: times(row.plasticStrain, changes['plastic-strain']),
    peelStrength:
      row.peelStrength === undefined
        ? undefined
        : times(row.peelStrength, changes['peel-strength']),
  })),
});

function changedCase(loadCase: CaseInput, changes: Changes): CaseInput {
  const { force, moment, torque, shear } = loadCase.loads;
  const by = times(1, changes.load);
  return {
    ...loadCase,
    temperature: loadCase.temperature + (changes['service-temperature'] ?? 0),
    loads: { force: force * by, moment: moment * by, torque: torque * by, shear: shear * by },
  };
}
