/**
 * Load factors at which a wall reaches its strength, temperature held fixed.
 *
 *   metal     √(σ² + 3τ²) = strength (von Mises)
 *   laminate  (σ/X)² + (τ/S)² = 1, X in tension or compression by the sign of σ
 */

import type { OrthotropicMaterial } from '../joint/types.ts';
import { factorTo } from './shear-factor.ts';
import type { WallStress } from './wall-stress.ts';

export function metalFactor(stress: WallStress, strength: number): number {
  return factorTo(strength, stress.thermal, stress.axial, Math.sqrt(3) * stress.shear);
}

export function laminateFactor(stress: WallStress, material: OrthotropicMaterial): number {
  const { thermal, axial, shear } = stress;
  const across = shear / material.shearStrength;
  let best = Number.POSITIVE_INFINITY;
  for (const [sign, strength] of [
    [1, material.tensileStrength],
    [-1, material.compressiveStrength],
  ] as const) {
    const factor = factorTo(1, thermal / strength, axial / strength, across);
    // Each strength holds on its own side of zero stress.
    if (!Number.isFinite(factor)) continue;
    if ((thermal + factor * axial) * sign >= 0 && factor < best) best = factor;
  }
  return best;
}
