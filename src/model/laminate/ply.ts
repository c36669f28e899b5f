/**
 * The unidirectional ply: 1 along the fibres, 2 across them in the plane, 3 through the thickness.
 * Transversely isotropic: E3 = E2, G13 = G12, ν13 = ν12, α3 = α2, ν23 = E2/(2·G23) − 1.
 * MPa, mm, 1/K; strengths are positive numbers, compressive ones too.
 */
import { ModelError } from '../errors.ts';
import type { Plane, Triple, Turn } from './plane.ts';

export interface Ply {
  /** E1 */
  readonly axialModulus: number;
  /** E2 */
  readonly transverseModulus: number;
  /** G12 */
  readonly shearModulus: number;
  /** ν12 */
  readonly poisson: number;
  /** G23 */
  readonly transverseShearModulus: number;
  /** α1 */
  readonly axialExpansion: number;
  /** α2 */
  readonly transverseExpansion: number;
  readonly thickness: number;
  /** Xt */
  readonly tensileStrength: number;
  /** Xc */
  readonly compressiveStrength: number;
  /** Yt */
  readonly transverseTensileStrength: number;
  /** Yc */
  readonly transverseCompressiveStrength: number;
  /** S */
  readonly shearStrength: number;
  /** Zt */
  readonly interlaminarTension: number;
  /** S13 */
  readonly interlaminarShear: number;
}

/** ν21, by the symmetry of the compliance: ν21/E2 = ν12/E1. */
export const minorPoisson = (ply: Ply): number =>
  (ply.poisson * ply.transverseModulus) / ply.axialModulus;

/** ν23 of a transversely isotropic ply. */
export const transversePoisson = (ply: Ply): number =>
  ply.transverseModulus / (2 * ply.transverseShearModulus) - 1;

/**
 * Plane-stress stiffness Q in ply axes:
 * Q11 = E1/(1 − ν12·ν21), Q22 = E2/(1 − ν12·ν21), Q12 = ν12·Q22, Q66 = G12.
 * @param minor ν21; given only to follow a source that rounds it
 */
export function reducedStiffness(ply: Ply, minor: number = minorPoisson(ply)): Plane {
  const restraint = 1 - ply.poisson * minor;
  const c22 = ply.transverseModulus / restraint;
  return {
    c11: ply.axialModulus / restraint,
    c12: ply.poisson * c22,
    c22,
    c16: 0,
    c26: 0,
    c66: ply.shearModulus,
  };
}

/** Q̄: the stiffness Q of an orthotropic ply seen in laminate axes. */
export function turnStiffness(q: Plane, { cos, sin }: Turn): Plane {
  const cc = cos * cos;
  const ss = sin * sin;
  const cs = cos * sin;
  const mixed = q.c12 + 2 * q.c66;
  const along = q.c11 - mixed;
  const across = mixed - q.c22;
  return {
    c11: q.c11 * cc * cc + 2 * mixed * cc * ss + q.c22 * ss * ss,
    c22: q.c11 * ss * ss + 2 * mixed * cc * ss + q.c22 * cc * cc,
    c12: (q.c11 + q.c22 - 4 * q.c66) * cc * ss + q.c12 * (cc * cc + ss * ss),
    c66: (q.c11 + q.c22 - 2 * q.c12 - 2 * q.c66) * cc * ss + q.c66 * (cc * cc + ss * ss),
    c16: cs * (along * cc + across * ss),
    c26: cs * (along * ss + across * cc),
  };
}

/** Free expansion in ply axes, 1/K. */
export const expansionOf = (ply: Ply): Triple => [ply.axialExpansion, ply.transverseExpansion, 0];

/**
 * In-plane strain in ply axes per unit stress σ3: (−ν13/E1, −ν23/E2, 0). By symmetry also the
 * through-thickness strain per unit σ1, σ2, τ12.
 */
export const throughCompliance = (ply: Ply): Triple => [
  -ply.poisson / ply.axialModulus,
  -transversePoisson(ply) / ply.transverseModulus,
  0,
];

const positive = [
  'axialModulus',
  'transverseModulus',
  'shearModulus',
  'transverseShearModulus',
  'thickness',
  'tensileStrength',
  'compressiveStrength',
  'transverseTensileStrength',
  'transverseCompressiveStrength',
  'shearStrength',
  'interlaminarTension',
  'interlaminarShear',
] as const satisfies readonly (keyof Ply)[];

/**
 * Refuses a ply that could not exist: its strain energy must be positive for any strain, which asks
 * ν12² < E1/E2 and, transversely isotropic, −1 < ν23 < 1 − 2·ν12·ν21.
 * @throws ModelError naming the field
 */
export function checkPly(ply: Ply): void {
  for (const field of positive) {
    if (!(ply[field] > 0 && Number.isFinite(ply[field]))) {
      throw new ModelError(field, `The ply's ${field} must be above zero.`);
    }
  }
  for (const field of ['poisson', 'axialExpansion', 'transverseExpansion'] as const) {
    if (!Number.isFinite(ply[field])) throw new ModelError(field, `The ply's ${field} is missing.`);
  }
  const coupling = ply.poisson * minorPoisson(ply);
  if (coupling >= 1) {
    const most = Math.sqrt(ply.axialModulus / ply.transverseModulus);
    throw new ModelError(
      'poisson',
      `No material has this ν12 with these moduli: it stays below √(E1/E2) = ${most.toPrecision(3)}.`,
    );
  }
  const most = 1 - 2 * coupling;
  if (transversePoisson(ply) >= most) {
    const least = ply.transverseModulus / (2 * (1 + most));
    throw new ModelError(
      'transverseShearModulus',
      most > -1
        ? `G23 is too low for this E2: transverse isotropy asks for more than ${least.toPrecision(3)} MPa.`
        : 'These moduli and this ν12 belong to no material, whatever G23 is.',
    );
  }
}
