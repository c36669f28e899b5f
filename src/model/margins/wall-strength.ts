/**
 * Load factors at which a wall reaches its strength, temperature held fixed.
 *
 *   metal     √(σx² − σx·σθ + σθ² + 3τ²) = strength (von Mises)
 *   laminate  (σ/X)² + (τ/S)² = 1, X in tension or compression by the sign of σ
 */

import type { OrthotropicMaterial } from '../joint/types.ts';
import { factorTo } from './shear-factor.ts';
import type { FaceBending } from './wall-bending.ts';
import type { WallStress } from './wall-stress.ts';

export function metalFactor(stress: WallStress, strength: number, face: FaceBending): number {
  const along = [stress.thermal + face.axialHeld, stress.axial + face.axialLoad] as const;
  const around = [face.hoopHeld, face.hoopLoad] as const;
  const square = (p: 0 | 1, q: 0 | 1): number =>
    along[p] * along[q] - (along[p] * around[q] + along[q] * around[p]) / 2 + around[p] * around[q];
  const room = strength * strength - square(0, 0);
  if (room <= 0) return 0;
  const a = square(1, 1) + 3 * stress.shear * stress.shear;
  if (a === 0) return Number.POSITIVE_INFINITY;
  const b = square(0, 1);
  const root = Math.sqrt(b * b + a * room);
  // The form without cancellation for each sign of b.
  return b > 0 ? room / (b + root) : (root - b) / a;
}

export function laminateFactor(
  stress: WallStress,
  material: OrthotropicMaterial,
  face: FaceBending,
): number {
  const thermal = stress.thermal + face.axialHeld;
  const axial = stress.axial + face.axialLoad;
  const across = stress.shear / material.shearStrength;
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
