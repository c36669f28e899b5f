/**
 * Elastic shear and peel of a flat single lap of two equal homogeneous adherends. M. Goland,
 * E. Reissner (1944), second approximation (compliant adhesive); formulas from memory, held to an
 * independent solution of the two beams (reference/flat_lap.py).
 *
 * Theirs, with X from the middle of the overlap, −c … c:
 *
 *   τ = (P/8c)·[(βc/t)(1 + 3k)·cosh(βX/t)/sinh(βc/t) + 3(1 − k)],   β² = 8·G_a·t/(E·t_a)
 *
 *   σ = (P·t/(c²·R₃))·[ (R₂λ²k/2 + λk′·coshλ·cosλ)·cosh(λX/c)·cos(λX/c)
 *                     + (R₁λ²k/2 + λk′·sinhλ·sinλ)·sinh(λX/c)·sin(λX/c) ]
 *   λ = (c/t)(6·E_a·t/(E·t_a))^¼,   k′ = V·c/(P·t)
 *   R₁ = coshλ·sinλ + sinhλ·cosλ,  R₂ = sinhλ·cosλ − coshλ·sinλ,  R₃ = (sinh2λ + sin2λ)/2
 *
 * Here x = X + c runs from the root, 0 … L = 2c. With η = λ/c, s = ηx, d = η(L − x) and
 * g(p, q) = sinh p·cos q − cosh p·sin q the peel is the same as
 *
 *   σ = [ η²M·(g(s, d) + g(d, s)) + ηV·(cosh s·cos d + cosh d·cos s) ] / 2R₃,   M = kPt/2
 *
 * where every function is divided by exp(2λ), so that only falling exponentials are evaluated.
 * Limits: L → ∞ gives σ = η²M·e^(−d)(cos d − sin d) + ηV·e^(−d)·cos d from each end; ∫τ dx = P and
 * ∫σ dx = V at any length. The adhesive's thickness is neglected in the lever; the stress is uniform
 * through it and does not fall to zero at the ends.
 */
import { ModelError } from '../errors.ts';
import { requireFinite, requirePositive } from './adherend.ts';

export interface EqualLap {
  /** Load per unit width, N/mm, tension positive. */
  readonly load: number;
  /** Length of the overlap, L = 2c, mm. */
  readonly overlap: number;
  /** Thickness of one adherend, mm. */
  readonly thickness: number;
  /** Its modulus, MPa: E, as in the source, or E/(1 − ν²) for plates. */
  readonly modulus: number;
  readonly adhesive: {
    /** Thickness t_a, mm. */
    readonly thickness: number;
    /** G_a, MPa. */
    readonly shearModulus: number;
    /** E_a through the thickness, MPa. */
    readonly modulus: number;
  };
}

export interface LapEnd {
  /** k of the edge moment k·P·t/2. */
  readonly factor: number;
  /** Transverse force V on the adherend at its loaded end, N/mm. */
  readonly transverseForce: number;
}

export interface LapStress {
  /** Shear at x from the root, MPa. */
  shear(x: number): number;
  /** Peel at x from the root, MPa, positive where it opens. */
  peel(x: number): number;
  /** ∫ τ from the root to x, N/mm. */
  shearForce(x: number): number;
  /** ∫ σ from the root to x, N/mm. */
  peelForce(x: number): number;
}

/**
 * k′ of the source: V = M·√(P/D) by the slope of the moment in a long run-out, V·c/(P·t)
 * = k·√(P/D)·c/2, which is (kc/t)√(3(1 − ν²)P/(Et)).
 */
export const transverseFactor = (k: number, xiC: number): number => (k * xiC) / 2;

/** V by that slope, as in the source. */
export const slopeTransverseForce = (
  load: number,
  thickness: number,
  overlap: number,
  kPrime: number,
): number => (2 * kPrime * load * thickness) / overlap;

/** V by the balance of the overlap as a free body, (1 − k)·P·t/2c: the load that a solver takes. */
export const balancedTransverseForce = (
  load: number,
  thickness: number,
  overlap: number,
  k: number,
): number => ((1 - k) * load * thickness) / overlap;

export function golandReissner(lap: EqualLap, end: LapEnd): LapStress {
  const { load, overlap, thickness, modulus, adhesive } = lap;
  requirePositive(overlap, 'overlap');
  requirePositive(thickness, 'thickness');
  requirePositive(modulus, 'modulus');
  requirePositive(adhesive.thickness, 'gap');
  requirePositive(adhesive.shearModulus, 'shearModulus');
  requirePositive(adhesive.modulus, 'adhesiveModulus');
  const within = (x: number): number => {
    if (x >= 0 && x <= overlap) return x;
    throw new ModelError('x', `A station lies in the overlap, 0 to ${overlap} mm; it is ${x}.`);
  };

  const { factor: k, transverseForce } = end;
  requireFinite(load, 'load');
  requireFinite(k, 'factor');
  requireFinite(transverseForce, 'transverseForce');
  const rate = Math.sqrt((8 * adhesive.shearModulus) / (modulus * thickness * adhesive.thickness));
  requirePositive(rate * overlap, 'overlap');
  const fall = -Math.expm1(-rate * overlap);
  const fromMouth = (x: number): number => Math.exp(-rate * (overlap - x)) / fall;
  const fromRoot = (x: number): number => Math.exp(-rate * x) / fall;

  const eta = ((6 * adhesive.modulus) / (modulus * thickness ** 3 * adhesive.thickness)) ** 0.25;
  const moment = (k * load * thickness) / 2;
  const twoLambda = eta * overlap;
  requirePositive(twoLambda, 'overlap');
  const all = Math.exp(-twoLambda);
  // 2R₃/exp(2λ)
  const below = -Math.expm1(-2 * twoLambda) / 2 + all * Math.sin(twoLambda);
  /** What both peel functions are made of at x, each hyperbolic function divided by exp(2λ). */
  const at = (x: number) => {
    const s = eta * x;
    const d = eta * (overlap - x);
    const near = Math.exp(-d);
    const far = Math.exp(-s);
    const sinhS = (near - far * all) / 2;
    const coshS = (near + far * all) / 2;
    const sinhD = (far - near * all) / 2;
    const coshD = (far + near * all) / 2;
    const [sinS, cosS, sinD, cosD] = [Math.sin(s), Math.cos(s), Math.sin(d), Math.cos(d)];
    return {
      gSum: sinhS * cosD - coshS * sinD + (sinhD * cosS - coshD * sinS),
      gDifference: sinhS * cosD - coshS * sinD - (sinhD * cosS - coshD * sinS),
      cosines: coshS * cosD + coshD * cosS,
      sines: sinhD * sinS - sinhS * sinD,
    };
  };

  return {
    shear(x) {
      within(x);
      const peaks = rate * (1 + 3 * k) * (fromMouth(x) + fromRoot(x));
      return (load / 8) * (peaks + (6 * (1 - k)) / overlap);
    },
    peel(x) {
      const { gSum, cosines } = at(within(x));
      return (eta * (eta * moment * gSum + transverseForce * cosines)) / below;
    },
    shearForce(x) {
      within(x);
      const peaks = (1 + 3 * k) * (1 + fromMouth(x) - fromRoot(x));
      return (load / 8) * (peaks + (6 * (1 - k) * x) / overlap);
    },
    peelForce(x) {
      const { gDifference, sines } = at(within(x));
      const part = (eta * moment * sines + (transverseForce * gDifference) / 2) / below;
      return transverseForce / 2 + part;
    },
  };
}
