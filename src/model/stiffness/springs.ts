/**
 * The joint as springs for a frame model: elastic, small movements, at the nominal gap. Each is the
 * load at the mouth over the movement of the tube there against the metal at the root.
 */
import { adhesiveStateAt } from '../joint/adhesive-state.ts';
import { type Assembly, assemble, type Part } from '../joint/assembly.ts';
import { bondLaws } from '../joint/bond-law.ts';
import { type AdhesiveInput, axialProperties, type JointInput } from '../joint/types.ts';
import type { BondLaw } from '../lap/problem.ts';
import { kindsOf, type SpringKind, springChannel } from './channels.ts';
import { complianceOf } from './compliance.ts';

/** One spring; N/mm for pull, N·mm per radian for bending and torsion. */
export interface Spring {
  readonly kind: SpringKind;
  /** Load at the mouth over movement: the spring in series where the frame's tube ends at the mouth. */
  readonly stiffness: number;
  /** EA, EI or GJ of the bare tube, N or N·mm². */
  readonly tube: number;
  /**
   * Where the frame's tube runs on to the root: the spring in series there. Null where the joint is
   * as stiff as the bare tube of its length or stiffer: no spring can make up for that.
   */
  readonly atRoot: number | null;
  /** Length of bare tube that gives as much as the joint, mm: how far past the mouth it may run to rigid metal. */
  readonly tubeLength: number;
}

export interface Springs {
  readonly springs: readonly Spring[];
  /**
   * Across: Σ κ·G·A over L of the walls side by side, N/mm, κ = 1/2 for a thin tube and 5/6 for a strip in its
   * plane. The bond is taken as rigid across, and the sideways step that bending makes over the overlap is left out.
   */
  readonly shear: number;
}

/** Below this share of the joint's own give, what is left for a spring at the root is rounding. */
const NOTHING = 1e-9;

export function springsOf(assembly: Assembly, bonds: readonly BondLaw[]): Springs {
  const { overlap } = assembly;
  const springs = kindsOf(assembly).map((kind): Spring => {
    const channel = springChannel(assembly, kind);
    const compliance = complianceOf(channel, bonds, overlap);
    const tube = channel.tube.stiffness;
    const left = compliance - overlap / tube;
    return {
      kind,
      stiffness: 1 / compliance,
      tube,
      atRoot: left > NOTHING * compliance ? 1 / left : null,
      tubeLength: compliance * tube,
    };
  });
  return { springs, shear: shearStiffness(assembly) };
}

/** ∫ dx / Σ κGA by Simpson's rule over root, middle and mouth, inverted. */
function shearStiffness({ flat, overlap, tube, outers }: Assembly): number {
  const share = flat ? 5 / 6 : 1 / 2;
  const at = (place: 'root' | 'middle' | 'mouth'): number =>
    [tube, ...outers].reduce(
      (sum, part: Part) => sum + axialProperties(part.material).shearModulus * part[place].area,
      0,
    ) * share;
  return 6 / (overlap * (1 / at('root') + 4 / at('middle') + 1 / at('mouth')));
}

/**
 * Springs at the nominal gap in one state of the adhesive. Knockdowns take from strength, not from stiffness.
 * @throws ModelError naming the input that does not fit
 */
export function jointSprings(
  joint: JointInput,
  adhesive: AdhesiveInput,
  at: { readonly temperature: number; readonly moisture: 'dry' | 'wet' },
  adherendShear: boolean,
): Springs & { readonly outsideTable: boolean } {
  const assembly = assemble(joint, 'nominal');
  const state = adhesiveStateAt(adhesive, at.temperature, at.moisture);
  const bonds = bondLaws(
    assembly,
    assembly.bonds.map(() => state),
    adherendShear,
  );
  return { ...springsOf(assembly, bonds), outsideTable: state.outsideTable };
}
