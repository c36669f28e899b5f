/** reference/layered-shells.json: its joints as the program's own, and what the program finds for them. */
import { assemble } from '../../../src/model/joint/assembly.ts';
import type { JointInput, Material, WallInput } from '../../../src/model/joint/types.ts';
import { type CappedState, cappedState } from '../../../src/model/layered/capped.ts';
import { elasticZones, type LayeredLap, solveLayered } from '../../../src/model/layered/lap.ts';
import { layeredLap, layerOrder } from '../../../src/model/layered/of-joint.ts';
import { readFixture } from '../../support/fixtures.ts';
import { lazy } from '../case.ts';

interface Wall {
  readonly axialModulus: number;
  readonly hoopModulus: number;
  readonly poisson: number;
  readonly throughShearModulus: number;
  readonly axialExpansion: number;
  readonly hoopExpansion: number;
  readonly throughExpansion: number;
  readonly throughModulus: number | null;
  readonly throughPoissonAxial: number;
  readonly atRoot: number;
  readonly atMouth: number;
  /** Mean, at the root; absent when flat. */
  readonly radius?: number;
  readonly tube: boolean;
}
interface Bond {
  readonly thickness: number;
  readonly modulus: number;
  readonly shearModulus: number;
  readonly expansion: number;
  readonly shearYield?: number;
}
export type Lists = readonly (readonly number[])[];
export interface Solved {
  readonly name: string;
  readonly inputs: {
    readonly kind: 'socket' | 'spigot' | 'double' | 'flat-single' | 'flat-double';
    readonly overlap: number;
    readonly load: number;
    readonly temperatureChange: number;
    readonly width?: number;
    readonly edgeMomentPerLoad?: number;
    readonly edgeForcePerLoad?: number;
    readonly walls: readonly Wall[];
    readonly bonds: readonly Bond[];
  };
  readonly expected: {
    readonly stations: readonly number[];
    readonly shear: Lists;
    readonly peel: Lists;
    readonly force: Lists;
    readonly moment: Lists;
    readonly hoop: Lists;
    readonly fronts?: readonly (readonly [x: number, bond: number])[];
  };
}

export const fixture = lazy(
  () => readFixture('layered-shells.json') as { readonly cases: readonly Solved[] },
);

/** The fixture holds strengths of no wall. */
const STRONG = 1e9;

function materialOf(wall: Wall): Material {
  const { axialModulus, hoopModulus, poisson, throughPoissonAxial } = wall;
  // A metal is told by its thinning, which a laminate's is not its own.
  if (axialModulus === hoopModulus && poisson === throughPoissonAxial && poisson !== 0.3) {
    return {
      kind: 'isotropic',
      modulus: axialModulus,
      poisson,
      expansion: wall.axialExpansion,
      yieldStrength: STRONG,
      ultimateStrength: STRONG,
    };
  }
  return {
    kind: 'orthotropic',
    axialModulus,
    hoopModulus,
    shearModulus: wall.throughShearModulus,
    poisson,
    axialExpansion: wall.axialExpansion,
    hoopExpansion: wall.hoopExpansion,
    throughShearModulus: wall.throughShearModulus,
    throughModulus: wall.throughModulus ?? undefined,
    throughExpansion: wall.throughExpansion,
    tensileStrength: STRONG,
    compressiveStrength: STRONG,
    shearStrength: STRONG,
  };
}

function jointOf({ inputs }: Solved): JointInput {
  const { kind, overlap, walls, bonds, width = 0 } = inputs;
  const wall = (i: number): WallInput => ({
    material: materialOf(walls[i]!),
    atRoot: walls[i]!.atRoot,
    atMouth: walls[i]!.atMouth,
  });
  const bond = (j: number) => ({ gap: bonds[j]!.thickness, tolerance: 0 });
  const at = walls.findIndex(({ tube }) => tube);
  const tubeWall = walls[at]!;
  const strip = { material: materialOf(tubeWall), thickness: tubeWall.atRoot };
  if (kind === 'flat-single') {
    return { type: kind, overlap, width, strip, plate: wall(1), bond: bond(0) };
  }
  if (kind === 'flat-double') {
    return {
      type: kind,
      overlap,
      width,
      strip,
      lowerStrap: wall(0),
      upperStrap: wall(2),
      lowerBond: bond(0),
      upperBond: bond(1),
    };
  }
  const tube = {
    material: strip.material,
    outsideDiameter: 2 * tubeWall.radius! + tubeWall.atRoot,
    wall: tubeWall.atRoot,
  };
  if (kind === 'double') {
    return {
      type: 'sleeve-double',
      overlap,
      tube,
      spigot: wall(0),
      socket: wall(2),
      innerBond: bond(0),
      outerBond: bond(1),
      offset: 0,
    };
  }
  const sleeve = wall(at === 0 ? 1 : 0);
  return { type: 'sleeve-single', side: kind, overlap, tube, sleeve, bond: bond(0), offset: 0 };
}

interface Computed {
  readonly lap: LayeredLap;
  readonly capped: CappedState | null;
  /** By bonds or walls, then stations, as in the fixture. */
  readonly fields: Readonly<Record<Field, Lists>>;
}
export type Field = 'shear' | 'peel' | 'force' | 'moment' | 'hoop';

function compute(one: Solved): Computed {
  const { walls, bonds, load, temperatureChange } = one.inputs;
  const { stations } = one.expected;
  const assembly = assemble(jointOf(one), 'nominal');
  const adhesives = bonds.map(({ modulus, shearModulus, expansion, shearYield = STRONG }) => ({
    modulus,
    shearModulus,
    shearYield,
    plasticStrain: 1,
    peelStrength: undefined,
    expansion,
    outsideTable: false,
  }));
  const { edgeMomentPerLoad: moment, edgeForcePerLoad: shear } = one.inputs;
  const edge = moment === undefined || shear === undefined ? undefined : { moment, shear };
  const made = layeredLap(assembly, adhesives, temperatureChange, edge);
  // A metal without a modulus through its thickness is no metal of the program: its part is taken out.
  const soft = (x: number) => {
    const section = made.sectionAt(x);
    return {
      ...section,
      shells: section.shells.map((shell, i) =>
        walls[i]!.throughModulus === null ? { ...shell, throughFlexibility: 0 } : shell,
      ),
    };
  };
  const held = made.uniform ? soft(0) : null;
  const lap: LayeredLap = { ...made, sectionAt: (x) => held ?? soft(x) };
  const capped = bonds[0]!.shearYield === undefined ? null : cappedState(lap, load);
  const solution = capped ? capped.solution : solveLayered(lap, elasticZones(lap));
  const points = solution.along(stations, load, 1);
  const { signs } = layerOrder(assembly);
  const around = assembly.flat ? 1 : 2 * Math.PI;
  const byBond = (of: (point: (typeof points)[number], j: number) => number): Lists =>
    bonds.map((_bond, j) => points.map((point) => of(point, j)));
  const byWall = (of: (point: (typeof points)[number], i: number, x: number) => number): Lists =>
    walls.map((_wall, i) => points.map((point, k) => of(point, i, stations[k]!)));
  return {
    lap,
    capped,
    fields: {
      shear: byBond(({ stresses }, j) => signs[j]! * stresses.shear[j]!),
      peel: byBond(({ stresses }, j) => stresses.peel[j]!),
      force: byWall(
        ({ forces }, i, x) => around * lap.sectionAt(x).shells[i]!.radius * forces[i]!.axial,
      ),
      moment: byWall(({ forces }, i) => forces[i]!.moment),
      hoop: byWall(({ forces }, i) => forces[i]!.hoop),
    },
  };
}

const known = new Map<string, Computed>();
export function computed(one: Solved): Computed {
  let found = known.get(one.name);
  if (!found) {
    found = compute(one);
    known.set(one.name, found);
  }
  return found;
}
