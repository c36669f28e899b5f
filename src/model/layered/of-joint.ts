/** The layered lap of a joint: its walls as shells, its bonds, and how its ends are held and pulled. */
import type { AdhesiveState } from '../joint/adhesive-state.ts';
import type { Assembly, Part } from '../joint/assembly.ts';
import type { Order } from './fields.ts';
import type { LayeredLap, WallEnd } from './lap.ts';
import type { LayerBond } from './section.ts';
import { type BondedFace, plateProperties, type Shell, shellOf } from './shell.ts';

/** Edge moment and shear force of a flat single lap, per unit load. */
export interface EdgeLoads {
  readonly moment: number;
  readonly shear: number;
}

/** Poisson's ratio of the adhesive from its two moduli, kept inside what a solid can have. */
export function adhesivePoisson({ modulus, shearModulus }: AdhesiveState): number {
  return Math.min(LARGEST_POISSON, Math.max(0, modulus / (2 * shearModulus) - 1));
}
/** E′ grows without bound towards 0.5; moduli that ask for more do not fit each other. */
export const LARGEST_POISSON = 0.45;

/** E′ = E(1−ν)/((1+ν)(1−2ν)): modulus of a layer that its neighbours keep from contracting, MPa. */
export function constrainedModulus(adhesive: AdhesiveState): number {
  const nu = adhesivePoisson(adhesive);
  return (adhesive.modulus * (1 - nu)) / ((1 + nu) * (1 - 2 * nu));
}

/**
 * @param deltaT service less stress-free temperature, K
 * @param adhesives state of the adhesive in each bond
 * @param edge loads of a flat single lap; left out for all others
 */
export function layeredLap(
  assembly: Assembly,
  adhesives: readonly AdhesiveState[],
  deltaT: number,
  edge?: EdgeLoads,
): LayeredLap {
  const { flat, overlap, bonds } = assembly;
  const order = inOrder(assembly);
  const layers = bonds.map((bond, j): LayerBond => {
    const adhesive = adhesives[j]!;
    const nu = adhesivePoisson(adhesive);
    return {
      radius: flat ? bond.width : bond.radius,
      gap: bond.gap,
      shearModulus: adhesive.shearModulus,
      constrainedModulus: constrainedModulus(adhesive),
      contraction: nu / (1 - nu),
      planeModulus: adhesive.modulus / (1 - nu * nu),
      poisson: nu,
      freeStrain: adhesive.expansion * deltaT,
      freeOpening: (deltaT * bond.gap * adhesive.expansion * (1 + nu)) / (1 - nu),
      shearYield: adhesive.shearYield,
    };
  });
  const uniform = order.every(({ part }) => part.root.thickness === part.mouth.thickness);
  const shellAt = ({ part, face }: Ordered, t: number): Shell => {
    const { root, mouth } = part;
    const mix = (a: number, b: number): number => a + t * (b - a);
    const size = {
      thickness: mix(root.thickness, mouth.thickness),
      radius: flat ? bonds[0]!.width : mix(root.meanRadius, mouth.meanRadius),
      flat,
    };
    return shellOf(plateProperties(part.material), size, face, deltaT);
  };
  const sectionAt = (x: number) => ({
    shells: order.map((wall) => shellAt(wall, x / overlap)),
    bonds: layers,
    shearFactor: 1,
  });
  const held = uniform ? sectionAt(0) : null;
  return {
    length: overlap,
    uniform,
    sectionAt: (x) => held ?? sectionAt(x),
    ...wallEnds(assembly, order, deltaT, edge),
  };
}

/** The same lap, a flat single one, under the edge loads of a load. */
export const withEdgeLoads = (
  lap: LayeredLap,
  assembly: Assembly,
  edge: EdgeLoads,
): LayeredLap => ({
  ...lap,
  ...wallEnds(assembly, inOrder(assembly), 0, edge),
});

interface Ordered {
  readonly part: Part;
  readonly face: BondedFace;
}

/** Walls from the inside outward, with the face each is bonded on. */
function inOrder({ tube, outers, bonds, flat }: Assembly): Ordered[] {
  const [first, second] = outers;
  if (second) {
    return [
      { part: first!, face: 'outer' },
      { part: tube, face: 'both' },
      { part: second, face: 'inner' },
    ];
  }
  // A plate lies on the strip as a socket on the tube.
  const outside = flat || bonds[0]!.radius > tube.root.meanRadius;
  return outside
    ? [
        { part: tube, face: 'outer' },
        { part: first!, face: 'inner' },
      ]
    : [
        { part: first!, face: 'outer' },
        { part: tube, face: 'inner' },
      ];
}

/** How the layers stand to the tube and the outer adherends of the assembly. */
export function layerOrder(assembly: Assembly): Order {
  const order = inOrder(assembly);
  const tube = order.findIndex(({ part }) => part === assembly.tube);
  return {
    // Slip is outer less inner: against the pull where the tube is the inner of the two.
    signs: assembly.bonds.map((_bond, j) => (tube <= j ? -1 : 1)),
    layers: [assembly.tube, ...assembly.outers].map((part) =>
      order.findIndex((layer) => layer.part === part),
    ),
  };
}

/** From the middle of a flat double lap's strip to the middle of its strap. */
function flatDistance({ tube, outers, bonds }: Assembly, layer: number): number {
  const strap = layer === 0 ? 0 : 1;
  return (tube.root.thickness + outers[strap]!.root.thickness) / 2 + bonds[strap]!.gap;
}

function wallEnds(
  assembly: Assembly,
  order: readonly Ordered[],
  deltaT: number,
  edge: EdgeLoads | undefined,
): Pick<LayeredLap, 'root' | 'mouth'> {
  const { flat, outers, bonds, tube } = assembly;
  // Loads per radian, or on the width of a flat joint.
  const unit = flat ? 1 : 1 / (2 * Math.PI);
  const single = bonds.length === 1;
  const ends = (ofTube: WallEnd, ofOuter: WallEnd | null): WallEnd[] =>
    order.map(({ part }, i) => {
      if (part === tube) return ofTube;
      if (ofOuter) return ofOuter;
      // Behind the root the walls are one piece of metal, which shrinks on cooling as they do.
      const { hoopExpansion } = plateProperties(part.material);
      const out = flat ? (i === 0 ? -1 : 1) * flatDistance(assembly, i) : part.root.meanRadius;
      return { kind: 'clamped', growth: hoopExpansion * deltaT * out };
    });
  if (flat && single && outers.length === 1) {
    const { moment, shear } = edge ?? { moment: 0, shear: 0 };
    return {
      root: ends({ kind: 'free' }, { kind: 'clamped', growth: 0 }),
      mouth: ends({ kind: 'cut', n: 1, q: -shear, m: -moment }, { kind: 'free' }),
    };
  }
  return {
    root: ends({ kind: 'free' }, single ? { kind: 'run-out', pull: 'held' } : null),
    mouth: ends({ kind: 'run-out', pull: unit }, { kind: 'free' }),
  };
}
