/**
 * A joint at one gap state as walls and bonds of known size. The tube keeps its size; the sleeve's
 * bonded surface stands off by the gap, and its wall grows away from the bond.
 */
import { ModelError } from '../errors.ts';
import { millimetres, say, smallMillimetres } from '../said.ts';
import { annulus, type Section, strip } from './section.ts';
import type { BondInput, GapState, JointInput, Material, WallInput } from './types.ts';

export interface Part {
  /** `tube`, `sleeve`, `spigot`, `socket`, `strip`, `plate`, `lower strap`, `upper strap`. */
  readonly name: string;
  readonly material: Material;
  readonly root: Section;
  readonly middle: Section;
  readonly mouth: Section;
}

export interface BondGeometry {
  /** `bond`, or `inner bond` and `outer bond`, `lower bond` and `upper bond`. */
  readonly name: string;
  readonly gap: number;
  /** Radius of mid-bond; 0 for a flat joint. */
  readonly radius: number;
  /** 2πρ, or the width of a flat joint. */
  readonly width: number;
}

export interface Assembly {
  readonly flat: boolean;
  readonly overlap: number;
  readonly tube: Part;
  readonly outers: readonly Part[];
  readonly bonds: readonly BondGeometry[];
  /** Radius at which moment and torque are turned into line loads: r̂ of docs/method.md. */
  readonly referenceRadius: number;
}

/**
 * What a gap state adds to the nominal gap of a bond, mm: tolerance and offset together all the way
 * round, or the offset alone on one side.
 * @param inner a bond inside the tube: where the tube comes near the socket it leaves the spigot
 */
function gapChange(tolerance: number, offset: number, state: GapState, inner: boolean): number {
  switch (state) {
    case 'nominal':
      return 0;
    case 'min':
      return -(tolerance + offset);
    case 'max':
      return tolerance + offset;
    case 'thin-side':
      return inner ? offset : -offset;
    case 'thick-side':
      return inner ? -offset : offset;
  }
}

/**
 * Thickness of a bond in a gap state.
 * @param inner the inner bond of a double lap
 * @throws ModelError when the gap closes
 */
export function gapAt(
  bond: BondInput,
  offset: number,
  state: GapState,
  input = 'bond',
  inner = false,
): number {
  const change = gapChange(bond.tolerance, offset, state, inner);
  const gap = bond.gap + change;
  if (gap > 0) return gap;
  throw new ModelError(
    `${input}.tolerance`,
    say`The gap of ${smallMillimetres(bond.gap)} closes: tolerance and offset together take ${smallMillimetres(-change, 6)}. Widen the gap or tighten the fit.`,
  );
}

/**
 * Gap states that differ for this joint, those that are usually worst first; just nominal where
 * nothing varies. With no tolerance min and max are the sides of a single lap. In a double lap they
 * never are: off-centre, one bond is thin where the other is thick.
 */
export function gapStates(joint: JointInput): readonly GapState[] {
  const offset = 'offset' in joint ? joint.offset : 0;
  const bonds =
    joint.type === 'sleeve-double'
      ? [joint.innerBond, joint.outerBond]
      : joint.type === 'flat-double'
        ? [joint.lowerBond, joint.upperBond]
        : [joint.bond];
  const hasTolerance = bonds.some((bond) => bond.tolerance > 0);
  if (offset === 0) return hasTolerance ? ['min', 'max', 'nominal'] : ['nominal'];
  const isDouble = joint.type === 'sleeve-double';
  return hasTolerance || isDouble
    ? ['min', 'max', 'nominal', 'thin-side', 'thick-side']
    : ['min', 'max', 'nominal'];
}

type SectionOf = (thickness: number) => Section;

function wallPart(name: string, wall: WallInput, sectionOf: SectionOf): Part {
  return {
    name,
    material: wall.material,
    root: sectionOf(wall.atRoot),
    middle: sectionOf((wall.atRoot + wall.atMouth) / 2),
    mouth: sectionOf(wall.atMouth),
  };
}

const uniformPart = (name: string, material: Material, section: Section): Part => ({
  name,
  material,
  root: section,
  middle: section,
  mouth: section,
});

const tubularBond = (name: string, gap: number, radius: number): BondGeometry => ({
  name,
  gap,
  radius,
  width: 2 * Math.PI * radius,
});

function spigotWall(name: string, wall: WallInput, outer: number): Part {
  const thickest = Math.max(wall.atRoot, wall.atMouth);
  if (outer - thickest <= 0) {
    throw new ModelError(
      `${name}.${wall.atRoot >= wall.atMouth ? 'atRoot' : 'atMouth'}`,
      say`A ${name} wall of ${millimetres(thickest)} does not fit inside the tube: its outside radius is ${millimetres(outer, 4)}. Thin the wall or widen the tube.`,
    );
  }
  return wallPart(name, wall, (t) => annulus(outer - t, outer));
}

/**
 * @throws ModelError naming the dimension that does not fit
 */
export function assemble(joint: JointInput, state: GapState): Assembly {
  if (joint.type === 'flat-single' || joint.type === 'flat-double') return flat(joint, state);
  const outer = joint.tube.outsideDiameter / 2;
  const inner = outer - joint.tube.wall;
  if (inner <= 0) {
    throw new ModelError(
      'tube.wall',
      say`A wall of ${millimetres(joint.tube.wall)} leaves no bore in a tube of ${millimetres(joint.tube.outsideDiameter)}: thin the wall or widen the tube.`,
    );
  }
  const tube = uniformPart('tube', joint.tube.material, annulus(inner, outer));
  const { overlap } = joint;
  if (joint.type === 'sleeve-single') {
    const gap = gapAt(joint.bond, joint.offset, state);
    const socket = joint.side === 'socket';
    const radius = socket ? outer + gap / 2 : inner - gap / 2;
    const part = socket
      ? wallPart('sleeve', joint.sleeve, (t) => annulus(outer + gap, outer + gap + t))
      : spigotWall('sleeve', joint.sleeve, inner - gap);
    const bonds = [tubularBond('bond', gap, radius)];
    return { flat: false, overlap, tube, outers: [part], bonds, referenceRadius: radius };
  }
  const innerGap = gapAt(joint.innerBond, joint.offset, state, 'innerBond', true);
  const outerGap = gapAt(joint.outerBond, joint.offset, state, 'outerBond');
  return {
    flat: false,
    overlap,
    tube,
    outers: [
      spigotWall('spigot', joint.spigot, inner - innerGap),
      wallPart('socket', joint.socket, (t) => annulus(outer + outerGap, outer + outerGap + t)),
    ],
    bonds: [
      tubularBond('inner bond', innerGap, inner - innerGap / 2),
      tubularBond('outer bond', outerGap, outer + outerGap / 2),
    ],
    referenceRadius: tube.root.meanRadius,
  };
}

function flat(
  joint: Extract<JointInput, { type: 'flat-single' | 'flat-double' }>,
  state: GapState,
): Assembly {
  const { width, overlap } = joint;
  const sectionOf: SectionOf = (t) => strip(width, t);
  const tube = uniformPart('strip', joint.strip.material, sectionOf(joint.strip.thickness));
  const bond = (name: string, input: BondInput, key: string): BondGeometry => ({
    name,
    gap: gapAt(input, 0, state, key),
    radius: 0,
    width,
  });
  const single = joint.type === 'flat-single';
  return {
    flat: true,
    overlap,
    tube,
    outers: single
      ? [wallPart('plate', joint.plate, sectionOf)]
      : [
          wallPart('lower strap', joint.lowerStrap, sectionOf),
          wallPart('upper strap', joint.upperStrap, sectionOf),
        ],
    bonds: single
      ? [bond('bond', joint.bond, 'bond')]
      : [
          bond('lower bond', joint.lowerBond, 'lowerBond'),
          bond('upper bond', joint.upperBond, 'upperBond'),
        ],
    referenceRadius: 0,
  };
}
