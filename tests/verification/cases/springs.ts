/** The joint as springs: against scipy's boundary-value solver, and against joints as a continuum. */
import { assemble } from '../../../src/model/joint/assembly.ts';
import { bondLaws } from '../../../src/model/joint/bond-law.ts';
import type { JointInput, Material, WallInput } from '../../../src/model/joint/types.ts';
import type { SpringKind } from '../../../src/model/stiffness/channels.ts';
import { springsOf } from '../../../src/model/stiffness/springs.ts';
import { readFixture } from '../../support/fixtures.ts';
import { type Case, type Comparison, group, lazy, type Topic, value } from '../case.ts';

interface Inputs {
  readonly overlap: number;
  /** Inner radius and wall. */
  readonly tube?: readonly [number, number];
  readonly spigot?: readonly [number, number];
  readonly socket?: readonly [number, number];
  readonly innerGap?: number;
  readonly outerGap?: number;
  readonly width?: number;
  readonly strip?: number;
  readonly straps?: readonly (readonly [number, number])[];
  readonly gaps?: readonly number[];
}
interface Fixture {
  readonly materials: {
    readonly tube: { modulus: number; shearModulus: number; throughShearModulus: number };
    readonly walls: { modulus: number; shearModulus: number };
    readonly adhesiveShearModulus: number;
  };
  readonly cases: readonly {
    readonly name: string;
    readonly inputs: Inputs;
    readonly expected: Readonly<Partial<Record<SpringKind, number>>>;
  }[];
}

const metal = (modulus: number, poisson: number): Material => ({
  kind: 'isotropic',
  modulus,
  poisson,
  expansion: 0,
  yieldStrength: 1,
  ultimateStrength: 1,
});
const carbon = (axial: number, shear: number, through: number): Material => ({
  kind: 'orthotropic',
  axialModulus: axial,
  hoopModulus: axial,
  shearModulus: shear,
  poisson: 0.3,
  axialExpansion: 0,
  hoopExpansion: 0,
  throughShearModulus: through,
  tensileStrength: 1,
  compressiveStrength: 1,
  shearStrength: 1,
});

interface Walls {
  readonly tube: Material;
  readonly sleeve: Material;
}

function jointOf(inputs: Inputs, { tube: tubeMaterial, sleeve }: Walls): JointInput {
  const wall = ([atRoot, atMouth]: readonly [number, number]): WallInput => ({
    material: sleeve,
    atRoot,
    atMouth,
  });
  const fitOf = (gap: number) => ({ gap, tolerance: 0 });
  const { overlap, tube, spigot, socket, innerGap, outerGap } = inputs;
  if (!tube) {
    const [first, second] = inputs.straps!;
    const strip = { material: tubeMaterial, thickness: inputs.strip! };
    const width = inputs.width!;
    const [gap, other] = inputs.gaps!;
    if (!second) {
      const plate = wall(first!);
      return { type: 'flat-single', overlap, width, strip, plate, bond: fitOf(gap!) };
    }
    return {
      type: 'flat-double',
      overlap,
      width,
      strip,
      lowerStrap: wall(first!),
      upperStrap: wall(second),
      lowerBond: fitOf(gap!),
      upperBond: fitOf(other!),
    };
  }
  const common = {
    overlap,
    offset: 0,
    tube: { material: tubeMaterial, outsideDiameter: 2 * (tube[0] + tube[1]), wall: tube[1] },
  };
  if (spigot && socket) {
    return {
      ...common,
      type: 'sleeve-double',
      spigot: wall(spigot),
      socket: wall(socket),
      innerBond: fitOf(innerGap!),
      outerBond: fitOf(outerGap!),
    };
  }
  return {
    ...common,
    type: 'sleeve-single',
    side: socket ? 'socket' : 'spigot',
    sleeve: wall((socket ?? spigot)!),
    bond: fitOf((socket ? outerGap : innerGap)!),
  };
}

function springs(joint: JointInput, shearModulus: number) {
  const assembly = assemble(joint, 'nominal');
  const adhesive = {
    shearModulus,
    modulus: shearModulus * 2.7,
    shearYield: 1,
    plasticStrain: 1,
    peelStrength: undefined,
    expansion: 0,
    outsideTable: false,
  };
  const laws = bondLaws(
    assembly,
    assembly.bonds.map(() => adhesive),
    true,
  );
  return springsOf(assembly, laws);
}

const solved = lazy(() => {
  const { cases, materials } = readFixture('springs.json') as Fixture;
  const { tube, walls, adhesiveShearModulus } = materials;
  const made: Walls = {
    tube: carbon(tube.modulus, tube.shearModulus, tube.throughShearModulus),
    sleeve: metal(walls.modulus, walls.modulus / (2 * walls.shearModulus) - 1),
  };
  return cases.flatMap(({ name, inputs, expected }) =>
    springs(jointOf(inputs, made), adhesiveShearModulus).springs.map(({ kind, stiffness }) => ({
      what: `${name}, ${kind}`,
      kind,
      tapered: name.includes('tapered'),
      expected: expected[kind]!,
      computed: stiffness,
    })),
  );
});
const pick = (which: (one: ReturnType<typeof solved>[number]) => boolean) => (): Comparison[] =>
  solved().filter(which);

const reference: Case = {
  id: 'springs',
  title: 'Springs of sleeves and flat joints',
  source:
    "reference/springs.py: the walls' movements as a boundary-value problem by scipy's collocation; stiffnesses and couplings by quadrature over the rings",
  tag: 'independent',
  inputs: [
    'socket, spigot and double-lap sleeve, 6 to 120 mm; unequal gaps and walls; tapers; flat single and double laps',
    'carbon tube Ex = 70, G = 15, G13 = 4 GPa; titanium E = 114 GPa; adhesive G = 876 MPa',
  ],
  checks: [
    group({
      name: 'pull, bending, torsion; uniform walls',
      compare: pick(({ tapered }) => !tapered),
      tolerance: 1e-9,
      scale: 'of the value',
      why: 'both exact: ten digits are printed',
    }),
    group({
      name: 'pull, tapered walls',
      compare: pick(({ tapered, kind }) => tapered && kind === 'axial'),
      tolerance: 1e-6,
      scale: 'of the value',
      why: 'the chain of cells is of fourth order',
    }),
    group({
      name: 'bending and torsion, tapered walls',
      compare: pick(({ tapered, kind }) => tapered && kind !== 'axial'),
      tolerance: 1e-4,
      scale: 'of the value',
      why: 'I and J of a tapered ring are of fourth degree in x and taken as a parabola through root, middle and mouth',
    }),
  ],
};

/** Walls of the finite elements in plane strain are stiffer by 1/(1 − ν²). */
const plane = (modulus: number, poisson: number): number => modulus / (1 - poisson ** 2);

interface Solid {
  readonly name: string;
  readonly inputs: Inputs;
  /** Bare tube (strip) past the mouth and sleeve behind the root, mm. */
  readonly ahead: number;
  readonly behind: number;
  readonly load: number;
}
const solids: readonly Solid[] = [
  {
    name: 'socket',
    inputs: { tube: [14.4, 1.6], socket: [1.2, 1.2], outerGap: 0.2, overlap: 30 },
    ahead: 60,
    behind: 60,
    load: 1e4,
  },
  {
    name: 'spigot',
    inputs: { tube: [14.4, 1.6], spigot: [1.2, 1.2], innerGap: 0.2, overlap: 30 },
    ahead: 60,
    behind: 60,
    load: 1e4,
  },
  {
    name: 'socket-tapered',
    inputs: { tube: [14.4, 1.6], socket: [1.6, 0.5], outerGap: 0.2, overlap: 30 },
    ahead: 60,
    behind: 60,
    load: 1e4,
  },
  {
    name: 'socket-long',
    inputs: { tube: [14.4, 1.6], socket: [0.8, 0.8], outerGap: 0.2, overlap: 60 },
    ahead: 60,
    behind: 60,
    load: 1e4,
  },
  {
    name: 'double-lap-sleeve',
    inputs: {
      tube: [13.2, 2],
      spigot: [1, 1],
      socket: [1.3, 1.3],
      innerGap: 0.2,
      outerGap: 0.25,
      overlap: 25,
    },
    ahead: 60,
    behind: 0,
    load: 2e4,
  },
  {
    name: 'flat-double-lap',
    inputs: {
      width: 1,
      strip: 3,
      straps: [
        [1.2, 1.2],
        [1.2, 1.2],
      ],
      gaps: [0.2, 0.2],
      overlap: 25,
    },
    ahead: 60,
    behind: 0,
    load: 800,
  },
];

/** What is left of the finite elements' movement without the bare walls, and ours, mm. */
function movements({ name, inputs, ahead, behind, load }: Solid) {
  const { cases } = readFixture('finite-elements/bonded-joints.json') as {
    readonly cases: readonly {
      readonly name: string;
      readonly expected: { readonly endDisplacement: number };
    }[];
  };
  const whole = cases.find((one) => one.name === name)!.expected.endDisplacement;
  const flat = inputs.straps !== undefined;
  // Plane strain: ν of the strip along the width 0.3, Ex = Ey.
  const walls: Walls = {
    tube: carbon(flat ? plane(50_000, 0.3) : 70_000, 20_000, 4000),
    sleeve: flat ? metal(plane(114_000, 0.34), 0.34) : metal(114_000, 0.34),
  };
  const joint = jointOf(inputs, walls);
  const [axial] = springs(joint, 2400 / (2 * 1.37)).springs;
  const sleeve = assemble(joint, 'nominal').outers[0]!;
  const metalStretch = behind === 0 ? 0 : (load * behind) / (114_000 * sleeve.root.area);
  const bare = (load * ahead) / axial!.tube + metalStretch;
  // Five digits of the movement are known.
  return { expected: Number((whole - bare).toPrecision(4)), computed: load / axial!.stiffness };
}

const continuum: Case = {
  id: 'springs-fe',
  title: 'Pull of joints as a continuum',
  source:
    "the project's own finite elements (reference/finite-elements/bonded-joints.json): movement of the tube's end, less the stretch of the bare walls ahead of the mouth and behind the root",
  tag: 'finite elements',
  inputs: [
    'the joints of the finite-element chapter: socket, spigot, tapered and long socket, double-lap sleeve, flat double lap',
  ],
  checks: solids.map((solid) =>
    value({
      name: `movement over the overlap, ${solid.name}`,
      unit: 'mm',
      expected: movements(solid).expected,
      computed: () => movements(solid).computed,
      tolerance: { relative: 0.03 },
      why: 'walls as bars: their bending, their squeezing by the other wall and what turns about at the edges are left out',
    }),
  ),
};

export const springsTopic: Topic = {
  title: 'The joint as springs',
  intro:
    'The section on stiffness of the method. The one-dimensional figures must agree to rounding; the continuum shows what the one-dimensional joint leaves out.',
  cases: [reference, continuum],
};
