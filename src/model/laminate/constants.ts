/**
 * Engineering constants of a laminate: the homogeneous wall that answers as the stack does.
 */
import {
  addPlane,
  addTriple,
  dot,
  invertPlane,
  type Plane,
  rowsOf,
  type Triple,
  times,
  turnBy,
  turnStrain,
  zeroPlane,
} from './plane.ts';
import { expansionOf, reducedStiffness, throughCompliance, turnStiffness } from './ply.ts';
import { type LaminateStiffness, type Stack, thicknessOf } from './stack.ts';

export interface PlaneConstants {
  /** Ex */
  readonly axialModulus: number;
  /** Ey */
  readonly hoopModulus: number;
  /** Gxy */
  readonly shearModulus: number;
  /** νxy: hoop contraction per axial strain. */
  readonly poisson: number;
  readonly axialExpansion: number;
  readonly hoopExpansion: number;
}

export interface InPlaneConstants extends PlaneConstants {
  /** γxy per kelvin; zero when balanced. */
  readonly shearExpansion: number;
  /** B ≠ 0: the constants hold only where the wall is kept from bending, as in a closed tube. */
  readonly curvatureHeld: boolean;
  /** A16 or A26 ≠ 0: tension also shears the wall, and the constants leave it free to. */
  readonly shearCoupled: boolean;
}

/** What rounding leaves of a coupling that is zero. */
const NEGLIGIBLE = 1e-9;

const largest = (p: Plane): number => Math.max(p.c11, p.c22, p.c66);
const largestAny = (p: Plane): number => Math.max(...Object.values(p).map(Math.abs));

/** From a flexibility: Ex = 1/(t·a11), Ey = 1/(t·a22), Gxy = 1/(t·a66), νxy = −a12/a11. */
export const elasticConstants = (t: number, flexibility: Plane) => ({
  axialModulus: 1 / (t * flexibility.c11),
  hoopModulus: 1 / (t * flexibility.c22),
  shearModulus: 1 / (t * flexibility.c66),
  poisson: -flexibility.c12 / flexibility.c11,
});

/**
 * From a = A⁻¹: Ex = 1/(t·a11), Ey = 1/(t·a22), Gxy = 1/(t·a66), νxy = −a12/a11, α = a·N_T.
 * A alone: no curvature, which is exact when B = 0.
 */
export function inPlaneConstants(stiffness: LaminateStiffness): InPlaneConstants {
  const { thickness: t, a, b } = stiffness;
  const flexibility = invertPlane(a);
  const [axialExpansion, hoopExpansion, shearExpansion] = times(
    flexibility,
    stiffness.thermalForce,
  );
  const scale = largest(a);
  return {
    ...elasticConstants(t, flexibility),
    axialExpansion,
    hoopExpansion,
    shearExpansion,
    curvatureHeld: largestAny(b) > NEGLIGIBLE * scale * t,
    shearCoupled: Math.max(Math.abs(a.c16), Math.abs(a.c26)) > NEGLIGIBLE * scale,
  };
}

/**
 * D* = D − B·A⁻¹·B: bending stiffness of a wall whose middle surface is free to stretch (N = 0).
 * D itself holds it from stretching; the two agree when B = 0.
 */
export const reducedBending = ({ a, b, d }: LaminateStiffness): Plane => released(d, b, a);

/** P − B·Q⁻¹·B: stiffness P where what couples to it by B is free. */
export function released(p: Plane, b: Plane, q: Plane): Plane {
  const flexibility = invertPlane(q);
  const [b1, b2, b6] = rowsOf(b);
  const less = (row: Triple, column: Triple): number => dot(row, times(flexibility, column));
  return {
    c11: p.c11 - less(b1, b1),
    c12: p.c12 - less(b1, b2),
    c22: p.c22 - less(b2, b2),
    c16: p.c16 - less(b1, b6),
    c26: p.c26 - less(b2, b6),
    c66: p.c66 - less(b6, b6),
  };
}

export interface FlexuralConstants {
  /** D11, N·mm: per unit width, no strain of the middle surface, no other curvature. */
  readonly bendingStiffness: number;
  /** D*11, with the middle surface free to stretch. */
  readonly reducedBendingStiffness: number;
  /** 12/(t³·d11), d = D*⁻¹: modulus of the homogeneous strip that bends alike. */
  readonly axialModulus: number;
  readonly hoopModulus: number;
  readonly shearModulus: number;
}

export function flexuralConstants(stiffness: LaminateStiffness): FlexuralConstants {
  const reduced = reducedBending(stiffness);
  const flexibility = invertPlane(reduced);
  const factor = 12 / stiffness.thickness ** 3;
  return {
    bendingStiffness: stiffness.d.c11,
    reducedBendingStiffness: reduced.c11,
    axialModulus: factor / flexibility.c11,
    hoopModulus: factor / flexibility.c22,
    shearModulus: factor / flexibility.c66,
  };
}

export interface ThroughConstants {
  /** E3 */
  readonly modulus: number;
  /** α3 */
  readonly expansion: number;
  /** Gxz */
  readonly axialShearModulus: number;
  /** Gyz */
  readonly hoopShearModulus: number;
  readonly interlaminarTension: number;
  readonly interlaminarShear: number;
}

/**
 * Through the thickness, far from edges: σ3 and the transverse shears are the same in every ply,
 * in-plane strain is the same in every ply (no curvature), and the wall carries no in-plane force.
 *
 * A ply under σ3 and ΔT takes σ = Q̄·(ε − β·σ3 − α·ΔT) in its plane and
 * ε3 = βᵀ·σ + σ3/E2 + α2·ΔT, β its in-plane strain per unit σ3, turned. With ⟨·⟩ the mean
 * over the thickness and no force, ε = ⟨Q̄⟩⁻¹(⟨Q̄β⟩σ3 + ⟨Q̄α⟩ΔT), so
 *
 *   1/E3 = 1/E2 − ⟨βᵀQ̄β⟩ + ⟨Q̄β⟩ᵀ⟨Q̄⟩⁻¹⟨Q̄β⟩
 *   α3   = α2 − ⟨βᵀQ̄α⟩ + ⟨Q̄β⟩ᵀ⟨Q̄⟩⁻¹⟨Q̄α⟩
 *
 * Exact for the transversely isotropic ply. One angle alone gives E2 and α2; crossed plies hold each
 * other in the plane, so α3 exceeds α2: what the plane keeps back goes through the thickness.
 *
 * Shear: uniform τxz gives 1/Gxz = ⟨cos²/G12 + sin²/G23⟩ (and Gyz with the two exchanged), τyz = 0:
 * the shear the other way is left free. An interlaminar failure takes the weakest ply; the ply's S13
 * serves for shear in either direction, as S23 is rarely measured.
 */
export function throughConstants(stack: Stack): ThroughConstants {
  const total = thicknessOf(stack);
  let stiffness = zeroPlane;
  let pressed: Triple = [0, 0, 0];
  let heated: Triple = [0, 0, 0];
  let compliance = 0;
  let expansion = 0;
  let axialShear = 0;
  let hoopShear = 0;
  for (const { ply, angle, thickness } of stack.plies) {
    const share = thickness / total;
    const turn = turnBy(angle);
    const q = turnStiffness(reducedStiffness(ply), turn);
    const beta = turnStrain(throughCompliance(ply), turn);
    const alpha = turnStrain(expansionOf(ply), turn);
    const qBeta = times(q, beta);
    stiffness = addPlane(stiffness, q, share);
    pressed = addTriple(pressed, qBeta, share);
    heated = addTriple(heated, times(q, alpha), share);
    compliance += share * (1 / ply.transverseModulus - dot(beta, qBeta));
    expansion += share * (ply.transverseExpansion - dot(alpha, qBeta));
    const cc = turn.cos ** 2;
    const ss = turn.sin ** 2;
    axialShear += share * (cc / ply.shearModulus + ss / ply.transverseShearModulus);
    hoopShear += share * (ss / ply.shearModulus + cc / ply.transverseShearModulus);
  }
  const relaxed = times(invertPlane(stiffness), pressed);
  return {
    modulus: 1 / (compliance + dot(relaxed, pressed)),
    expansion: expansion + dot(relaxed, heated),
    axialShearModulus: 1 / axialShear,
    hoopShearModulus: 1 / hoopShear,
    interlaminarTension: Math.min(...stack.plies.map(({ ply }) => ply.interlaminarTension)),
    interlaminarShear: Math.min(...stack.plies.map(({ ply }) => ply.interlaminarShear)),
  };
}
