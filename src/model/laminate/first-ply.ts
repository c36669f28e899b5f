/**
 * First-ply failure: the factor on the load at which the first ply reaches its criterion, the
 * thermal stress held fixed. Strains are those of the whole wall (mid-surface and curvature, with
 * z outward); a ply's stress is Q·(strain of the wall in ply axes − α·ΔT), so that the stress which
 * plies of different directions lock into each other on cooling is in it.
 *
 *   Tsai-Wu: F1·σ1 + F2·σ2 + F11·σ1² + F22·σ2² + F66·τ12² + 2·F12·σ1·σ2 = 1,
 *     F1 = 1/Xt − 1/Xc, F11 = 1/(Xt·Xc), F2 and F22 likewise with Y, F66 = 1/S²,
 *     F12 = −½√(F11·F22) by common practice: it is rarely measured.
 *   Maximum strain: −Xc/E1 ≤ ε1 ≤ Xt/E1, −Yc/E2 ≤ ε2 ≤ Yt/E2, |γ12| ≤ S/G12, on ε − α·ΔT.
 */
import {
  addTriple,
  dot,
  type Plane,
  type Triple,
  times,
  turnBack,
  turnBy,
  turnStrain,
} from './plane.ts';
import { expansionOf, type Ply, reducedStiffness } from './ply.ts';
import { type LaminateStrain, plyHeights, type Stack } from './stack.ts';

export interface FixedStrain extends LaminateStrain {
  /** K above the stress-free temperature of the laminate. */
  readonly deltaT: number;
}

export type Face = 'inner' | 'outer';

export type StrainComponent =
  | 'fibre tension'
  | 'fibre compression'
  | 'transverse tension'
  | 'transverse compression'
  | 'in-plane shear';

export interface PlyPlace {
  /** 0 is the innermost. */
  readonly ply: number;
  readonly angle: number;
  readonly face: Face;
}

export interface StrainPlace extends PlyPlace {
  readonly component: StrainComponent;
}

export interface FirstFailure<Place> {
  /** 0 when temperature alone reaches the criterion, Infinity when no load of this kind does. */
  readonly factor: number;
  /** Null when no load of this kind reaches it. */
  readonly place: Place | null;
}

export interface FirstPly {
  readonly tsaiWu: FirstFailure<PlyPlace>;
  readonly maximumStrain: FirstFailure<StrainPlace>;
}

/** Stress-producing strain and stress in ply axes at one face. */
export interface PlyState extends PlyPlace {
  readonly strain: Triple;
  readonly stress: Triple;
}

interface TsaiWu {
  readonly linear: Triple;
  readonly square: Plane;
}

function tsaiWuOf(ply: Ply): TsaiWu {
  const c11 = 1 / (ply.tensileStrength * ply.compressiveStrength);
  const c22 = 1 / (ply.transverseTensileStrength * ply.transverseCompressiveStrength);
  return {
    linear: [
      1 / ply.tensileStrength - 1 / ply.compressiveStrength,
      1 / ply.transverseTensileStrength - 1 / ply.transverseCompressiveStrength,
      0,
    ],
    square: {
      c11,
      c22,
      c12: -Math.sqrt(c11 * c22) / 2,
      c16: 0,
      c26: 0,
      c66: 1 / ply.shearStrength ** 2,
    },
  };
}

/** Left side of the Tsai-Wu criterion: 1 at failure. */
export function tsaiWuIndex(ply: Ply, stress: Triple): number {
  const { linear, square } = tsaiWuOf(ply);
  return dot(linear, stress) + dot(stress, times(square, stress));
}

/** Factor on `load` at which `fixed` + factor·`load` reaches the criterion. */
function tsaiWuFactor({ linear, square }: TsaiWu, fixed: Triple, load: Triple): number {
  const here = times(square, fixed);
  const room = 1 - dot(linear, fixed) - dot(fixed, here);
  if (room <= 0) return 0;
  const a = dot(load, times(square, load));
  const b = dot(linear, load) + 2 * dot(load, here);
  // a ≥ 0, since the criterion is an ellipsoid: one root is positive. Each form cancels nothing.
  const root = Math.sqrt(b * b + 4 * a * room);
  if (b > 0) return (2 * room) / (b + root);
  return a > 0 ? (root - b) / (2 * a) : Number.POSITIVE_INFINITY;
}

interface Limit {
  readonly component: StrainComponent;
  readonly index: 0 | 1 | 2;
  /** Signed. */
  readonly strain: number;
}

function limitsOf(ply: Ply): readonly Limit[] {
  const shear = ply.shearStrength / ply.shearModulus;
  return [
    { component: 'fibre tension', index: 0, strain: ply.tensileStrength / ply.axialModulus },
    {
      component: 'fibre compression',
      index: 0,
      strain: -ply.compressiveStrength / ply.axialModulus,
    },
    {
      component: 'transverse tension',
      index: 1,
      strain: ply.transverseTensileStrength / ply.transverseModulus,
    },
    {
      component: 'transverse compression',
      index: 1,
      strain: -ply.transverseCompressiveStrength / ply.transverseModulus,
    },
    { component: 'in-plane shear', index: 2, strain: shear },
    { component: 'in-plane shear', index: 2, strain: -shear },
  ];
}

/** Largest share of an allowable strain that is used: 1 at failure. */
export const maximumStrainIndex = (ply: Ply, strain: Triple): number =>
  Math.max(...limitsOf(ply).map(({ index, strain: limit }) => strain[index] / limit));

function limitFactor({ index, strain }: Limit, fixed: Triple, load: Triple): number {
  const used = fixed[index] / strain;
  if (used >= 1) return 0;
  const rate = load[index] / strain;
  return rate > 0 ? (1 - used) / rate : Number.POSITIVE_INFINITY;
}

/**
 * The place that fails first. Among places that temperature alone breaks, the one furthest beyond;
 * among equal ones (both faces of a wall that does not bend) the innermost.
 */
class Earliest<Place> {
  #factor = Number.POSITIVE_INFINITY;
  #beyond = 0;
  #place: Place | null = null;

  offer(factor: number, beyond: () => number, place: () => Place): void {
    // Infinity is never below the start, and leaves no place.
    if (factor > 0) {
      if (!(factor < this.#factor * (1 - 1e-12))) return;
    } else {
      const by = beyond();
      if (this.#factor === 0 && !(by > this.#beyond * (1 + 1e-12))) return;
      this.#beyond = by;
    }
    this.#factor = factor;
    this.#place = place();
  }

  get result(): FirstFailure<Place> {
    return { factor: this.#factor, place: this.#place };
  }
}

interface PlyFace extends PlyPlace {
  readonly material: Ply;
  readonly q: Plane;
  /** Strain in ply axes at this face, less what ΔT gives for nothing. */
  strainOf(wall: LaminateStrain, deltaT: number): Triple;
}

function facesOf(stack: Stack): readonly PlyFace[] {
  const heights = plyHeights(stack);
  return stack.plies.flatMap(({ ply: material, angle, thickness }, ply) => {
    const back = turnBack(turnBy(angle));
    const q = reducedStiffness(material);
    const free = expansionOf(material);
    return (['inner', 'outer'] as const).map((face): PlyFace => {
      const z = heights[ply]! + (face === 'outer' ? thickness / 2 : -thickness / 2);
      return {
        ply,
        angle,
        face,
        material,
        q,
        strainOf: ({ strain, curvature }, deltaT) =>
          addTriple(turnStrain(addTriple(strain, curvature, z), back), free, -deltaT),
      };
    });
  });
}

/** Strain and stress in ply axes at the inner and outer face of every ply, inside to outside. */
export function plyStates(stack: Stack, wall: FixedStrain): readonly PlyState[] {
  return facesOf(stack).map(({ ply, angle, face, q, strainOf }) => {
    const strain = strainOf(wall, wall.deltaT);
    return { ply, angle, face, strain, stress: times(q, strain) };
  });
}

export type FirstPlyOf = (fixed: FixedStrain, perFactor: LaminateStrain) => FirstPly;

/** Prepares a stack once for many strains. */
export function makeFirstPly(stack: Stack): FirstPlyOf {
  const faces = facesOf(stack).map((face) => ({
    ...face,
    criterion: tsaiWuOf(face.material),
    limits: limitsOf(face.material),
  }));
  return (fixed, perFactor) => {
    const tsaiWu = new Earliest<PlyPlace>();
    const maximumStrain = new Earliest<StrainPlace>();
    for (const { ply, angle, face, material, q, criterion, limits, strainOf } of faces) {
      const held = strainOf(fixed, fixed.deltaT);
      const load = strainOf(perFactor, 0);
      const heldStress = times(q, held);
      tsaiWu.offer(
        tsaiWuFactor(criterion, heldStress, times(q, load)),
        () => tsaiWuIndex(material, heldStress),
        () => ({ ply, angle, face }),
      );
      for (const limit of limits) {
        maximumStrain.offer(
          limitFactor(limit, held, load),
          () => held[limit.index] / limit.strain,
          () => ({ ply, angle, face, component: limit.component }),
        );
      }
    }
    return { tsaiWu: tsaiWu.result, maximumStrain: maximumStrain.result };
  };
}

/**
 * @param fixed strain of the wall by temperature (and anything else that does not grow with the load)
 * @param perFactor strain of the wall per unit of the load factor
 */
export const firstPly = (stack: Stack, fixed: FixedStrain, perFactor: LaminateStrain): FirstPly =>
  makeFirstPly(stack)(fixed, perFactor);
