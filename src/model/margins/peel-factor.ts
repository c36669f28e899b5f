/** Load factors at which peel, alone and with shear, reaches its limit, temperature held fixed. */
import { findRoot } from '../numerics/root.ts';
import type { Sample } from './bond-fields.ts';
import { factorTo } from './shear-factor.ts';

/** σ_held + λ·σ_load = strength; compression is no peel. */
export function peelFactor({ peelHeld, peelLoad }: Sample, strength: number): number {
  if (peelHeld >= strength) return 0;
  return peelLoad <= 0 ? Number.POSITIVE_INFINITY : (strength - peelHeld) / peelLoad;
}

/** (⟨σ⟩/peel)² + (τ/shear)² = 1, ⟨σ⟩ = σ where it opens, else 0; τ the resultant. */
export function peelShearFactor(sample: Sample, peel: number, shear: number): number {
  const { peelHeld: p0, peelLoad: p1, shearHeld: s0, shearLoad: s1, around: n } = sample;
  const sheared = factorTo(shear, s0, s1, n);
  const p = [p0 / peel, p1 / peel] as const;
  const s = [s0 / shear, s1 / shear, n / shear] as const;
  const c = (p0 > 0 ? p[0] * p[0] : 0) + s[0] * s[0] - 1;
  if (c >= 0) return 0;
  if (p0 <= 0 && (p1 <= 0 || p0 + sheared * p1 <= 0)) return sheared;
  const a = p[1] * p[1] + s[1] * s[1] + s[2] * s[2];
  const b = p[0] * p[1] + s[0] * s[1];
  const whole = p[0] * p[0] + s[0] * s[0] - 1;
  const root = Math.sqrt(Math.max(b * b - a * whole, 0));
  // The form without cancellation for each sign of b.
  const both = a === 0 ? Number.POSITIVE_INFINITY : b > 0 ? -whole / (b + root) : (root - b) / a;
  // Opening under temperature may close under load: then shear alone decides.
  return p0 + both * p1 >= 0 ? both : sheared;
}

export interface EndStiffness {
  readonly gap: number;
  /** E′ and G of the adhesive. */
  readonly normal: number;
  readonly shear: number;
}

/** Energy release rates at a free end of the bond: G_I = h·⟨σ⟩²/2E′, G_II = h·τ²/2G, N/mm. */
export function releaseRates(
  sample: Sample,
  factor: number,
  { gap, normal, shear }: EndStiffness,
): { readonly modeI: number; readonly modeII: number } {
  const peel = Math.max(sample.peelHeld + factor * sample.peelLoad, 0);
  const along = sample.shearHeld + factor * sample.shearLoad;
  const around = factor * sample.around;
  return {
    modeI: (gap * peel * peel) / (2 * normal),
    modeII: (gap * (along * along + around * around)) / (2 * shear),
  };
}

const FARTHEST = 1e12;

/** (G_I/G_Ic)^m + (G_II/G_IIc)^m = 1. */
export function fractureFactor(
  sample: Sample,
  stiffness: EndStiffness,
  limit: { readonly modeI: number; readonly modeII: number; readonly exponent: number },
): number {
  const over = (factor: number): number => {
    const { modeI, modeII } = releaseRates(sample, factor, stiffness);
    return (modeI / limit.modeI) ** limit.exponent + (modeII / limit.modeII) ** limit.exponent - 1;
  };
  if (over(0) >= 0) return 0;
  let high = 1;
  while (over(high) < 0) {
    high *= 4;
    if (high > FARTHEST) return Number.POSITIVE_INFINITY;
  }
  return findRoot(over, 0, high, 1e-12 * high);
}
