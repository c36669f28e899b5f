/**
 * The generalised shear lag of a joint: pull, bending and torsion have the same equations with other
 * stiffnesses of the walls and another coupling by the bond.
 *
 *   pull      movement u, force F     K = E·A                 a²·c = 2πρ (flat: b)
 *   bending   rotation φ, moment M    K = E·I                 a²·c = πρ³ (flat, in its plane: b³/12)
 *   torsion   twist φ, torque T       K = G·J                 a²·c = 2πρ³
 *
 * A bond at radius ρ slips by ρ·Δφ·cosθ when one wall turns by Δφ more than the other, and its shear
 * k·ρ·Δφ·cosθ has the moment πρ³·k·Δφ per length: sections stay plane. The walls' shear in their own
 * plane, which resists it too when they turn apart, is left out: one to eight per cent of the bond's coupling
 * in the demonstration's joints, most in the thinnest tube, and the spring is too soft by less than that.
 */
import type { Assembly, Part } from '../joint/assembly.ts';
import type { Section } from '../joint/section.ts';
import { type AxialProperties, axialProperties } from '../joint/types.ts';
import type { Channel, Member } from '../lap/problem.ts';

export type SpringKind = 'axial' | 'bending' | 'torsion';

/** Springs that a joint has: a flat one bends in its own plane and has no torsion. */
export const kindsOf = ({ flat }: Assembly): readonly SpringKind[] =>
  flat ? ['axial', 'bending'] : ['axial', 'bending', 'torsion'];

type StiffnessOf = (properties: AxialProperties, section: Section) => number;

function memberOf(part: Part, stiffnessOf: StiffnessOf): Member {
  const properties = axialProperties(part.material);
  const at = (section: Section): number => stiffnessOf(properties, section);
  const stiffness = at(part.root);
  if (part.root.thickness === part.mouth.thickness) return { stiffness, thermalStrain: 0 };
  return { stiffness, thermalStrain: 0, taper: { middle: at(part.middle), mouth: at(part.mouth) } };
}

/** The channel of one spring under a unit load: 1 N or 1 N·mm. */
export function springChannel(assembly: Assembly, kind: SpringKind): Channel {
  const stiffnessOf = stiffnessFor(assembly, kind);
  return {
    load: 1,
    tube: memberOf(assembly.tube, stiffnessOf),
    outers: assembly.outers.map((part) => memberOf(part, stiffnessOf)),
    levers: assembly.bonds.map(({ radius, width }) => {
      if (kind === 'axial') return 1;
      if (kind === 'torsion') return radius;
      return assembly.flat ? width / Math.sqrt(12) : radius / Math.SQRT2;
    }),
  };
}

function stiffnessFor({ flat, bonds }: Assembly, kind: SpringKind): StiffnessOf {
  switch (kind) {
    case 'axial':
      return ({ modulus }, { area }) => modulus * area;
    case 'bending': {
      const width = bonds[0]!.width;
      return flat
        ? ({ modulus }, { area }) => (modulus * area * width * width) / 12
        : ({ modulus }, { secondMoment }) => modulus * secondMoment;
    }
    case 'torsion':
      return ({ shearModulus }, { polarMoment }) => shearModulus * polarMoment;
  }
}
