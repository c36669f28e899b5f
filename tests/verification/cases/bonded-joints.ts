/** The joints that finite elements have solved (reference/finite-elements), as the program's own. */
import { assemble } from '../../../src/model/joint/assembly.ts';
import { bondLaws } from '../../../src/model/joint/bond-law.ts';
import { localProblem } from '../../../src/model/joint/local-problem.ts';
import type { JointInput, Material, WallInput } from '../../../src/model/joint/types.ts';
import { bentPart } from '../../../src/model/layered/fields.ts';
import { solveHarmonic } from '../../../src/model/layered/harmonic.ts';
import { elasticZones, solveLayered } from '../../../src/model/layered/lap.ts';
import { layeredLap, layerOrder } from '../../../src/model/layered/of-joint.ts';
import { combine } from '../../../src/model/shear-lag/elastic.ts';
import { solveElastic } from '../../../src/model/shear-lag/solve-elastic.ts';
import { readFixture } from '../../support/fixtures.ts';
import { lazy } from '../case.ts';

interface Layer {
  readonly name: string;
  readonly kind: 'wall' | 'bond';
  readonly material: string;
  readonly inside: number;
  /** At the root and at the mouth. */
  readonly thickness: readonly [number, number];
}
export interface SolvedBond {
  readonly name: string;
  readonly carried?: number;
  readonly shear: readonly number[];
  readonly peel: readonly number[];
}
export interface BondedJoint {
  readonly name: string;
  readonly inputs: {
    readonly formulation: 'axisymmetric' | 'plane strain';
    readonly overlap: number;
    readonly tube: string;
    readonly layers: readonly Layer[];
    readonly load: number;
    readonly moment?: number;
    readonly temperatureChange: number;
  };
  readonly expected: {
    readonly stations: readonly number[];
    readonly bonds: readonly SolvedBond[];
  };
}
type Constants = Readonly<Record<string, number>>;
interface Fixture {
  readonly materials: Readonly<Record<string, Constants>>;
  readonly cases: readonly BondedJoint[];
}

const fixture = lazy(() => readFixture('finite-elements/bonded-joints.json') as Fixture);

export function bondedJoint(name: string): BondedJoint {
  const found = fixture().cases.find((one) => one.name === name);
  if (!found) throw new Error(`No joint ${name} among the finite-element ones.`);
  return found;
}

/** No strength matters where only stresses are compared. */
const STRONG = 1e9;

function toMaterial(name: string): Material {
  const m = fixture().materials[name]!;
  if (m.modulus !== undefined) {
    return {
      kind: 'isotropic',
      modulus: m.modulus,
      poisson: m.poisson!,
      expansion: m.expansion!,
      yieldStrength: STRONG,
      ultimateStrength: STRONG,
    };
  }
  return {
    kind: 'orthotropic',
    axialModulus: m.axialModulus!,
    hoopModulus: m.hoopModulus!,
    shearModulus: m.shearAxialHoop!,
    poisson: m.poissonAxialHoop!,
    axialExpansion: m.axialExpansion!,
    hoopExpansion: m.hoopExpansion!,
    throughShearModulus: m.shearAxialRadial!,
    throughModulus: m.radialModulus!,
    throughExpansion: m.radialExpansion!,
    tensileStrength: STRONG,
    compressiveStrength: STRONG,
    shearStrength: STRONG,
  };
}

const toWall = ({ material, thickness: [atRoot, atMouth] }: Layer): WallInput => ({
  material: toMaterial(material),
  atRoot,
  atMouth,
});
const toBond = ({ thickness }: Layer) => ({ gap: thickness[0], tolerance: 0 });

export function jointInputOf({ inputs }: BondedJoint): JointInput {
  const { layers, overlap } = inputs;
  const at = layers.findIndex(({ name }) => name === inputs.tube);
  const [middle, inner, outer] = [layers[at]!, layers[at - 1], layers[at + 1]];
  const wall = middle.thickness[0];
  const material = toMaterial(middle.material);
  if (inputs.formulation === 'plane strain') {
    return {
      type: 'flat-double',
      overlap,
      width: 1,
      strip: { material, thickness: wall },
      lowerStrap: toWall(layers[at - 2]!),
      upperStrap: toWall(layers[at + 2]!),
      lowerBond: toBond(inner!),
      upperBond: toBond(outer!),
    };
  }
  const tube = { material, outsideDiameter: 2 * (middle.inside + wall), wall };
  if (inner && outer) {
    return {
      type: 'sleeve-double',
      overlap,
      tube,
      spigot: toWall(layers[at - 2]!),
      socket: toWall(layers[at + 2]!),
      innerBond: toBond(inner),
      outerBond: toBond(outer),
      offset: 0,
    };
  }
  const bond = (outer ?? inner)!;
  const sleeve = toWall(layers[outer ? at + 2 : at - 2]!);
  const side = outer ? 'socket' : 'spigot';
  return { type: 'sleeve-single', side, overlap, tube, sleeve, bond: toBond(bond), offset: 0 };
}

export interface Computed {
  /** Bond j at x, MPa. */
  layeredShear(j: number, x: number): number;
  layeredPeel(j: number, x: number): number;
  shearLag(j: number, x: number): number;
}

/** The layered model and the shear lag of one joint, at its loads. */
export function solveBondedJoint(joint: BondedJoint): Computed {
  const { load, moment = 0, temperatureChange } = joint.inputs;
  const assembly = assemble(jointInputOf(joint), 'nominal');
  const { modulus, poisson, expansion } = fixture().materials.adhesive!;
  const adhesive = {
    modulus: modulus!,
    shearModulus: modulus! / (2 * (1 + poisson!)),
    shearYield: STRONG,
    plasticStrain: 1,
    peelStrength: undefined,
    expansion: expansion!,
    outsideTable: false,
  };
  const adhesives = assembly.bonds.map(() => adhesive);
  const order = layerOrder(assembly);
  const lap = layeredLap(assembly, adhesives, temperatureChange);
  const layered = solveLayered(lap, elasticZones(lap));
  // A moment enters by the first harmonic: amplitudes at cos θ, here on the tension side.
  const harmonic = assembly.flat ? null : solveHarmonic(lap);
  const bent = (x: number) => bentPart(harmonic!, order, [x]).bonds;
  const laws = bondLaws(assembly, adhesives, true);
  const loads = { force: load, moment, torque: 0, shear: 0 };
  const problem = localProblem(assembly, laws, loads, 0, temperatureChange);
  const lag = combine(solveElastic(problem.channels[0]!, problem.bonds, problem.length), 1);
  return {
    layeredShear: (j, x) =>
      order.signs[j]! * layered.at(x, load, 1).stresses.shear[j]! +
      (moment === 0 ? 0 : moment * bent(x)[j]!.shear[0]!),
    layeredPeel: (j, x) =>
      layered.at(x, load, 1).stresses.peel[j]! + (moment === 0 ? 0 : moment * bent(x)[j]!.peel[0]!),
    shearLag: (j, x) => lag.shear(j, x),
  };
}
