/** The pull of a layer that shrinks more than its walls, and what it lacks at its free ends. */
import type { LayerBond, LayeredSection } from './section.ts';
import type { Shell } from './shell.ts';

/** What a wall carries in n and m for the layers on its faces. */
export interface LayerPull {
  readonly n: number;
  readonly m: number;
}

/**
 * A layer that shrinks more than its walls is stretched by them and pulls on both, half on each face.
 * The pull is constant along the bond; at a free end of the layer it stops, and there it bends the walls:
 * without it thermal peel near the ends is a third too low. Only temperature's part is counted, that
 * of the load is a few per mille of the walls' own force.
 */
export function layerPulls({ shells, bonds }: LayeredSection): LayerPull[] {
  const pulls = shells.map(() => ({ n: 0, m: 0 }));
  bonds.forEach((bond, j) => {
    const inner = shells[j]!;
    const outer = shells[j + 1]!;
    const half = (bond.radius * bond.gap * heldStress(bond, inner, outer)) / 2;
    // u of the face = u of the reference line − (offset + z)·φ
    for (const [i, face] of [
      [j, inner.thickness / 2],
      [j + 1, -outer.thickness / 2],
    ] as const) {
      pulls[i]!.n += half;
      pulls[i]!.m -= half * (shells[i]!.offset + face);
    }
  });
  return pulls;
}

/** Stress along the joint in a layer that its walls keep from shrinking, MPa. */
function heldStress(bond: LayerBond, inner: Shell, outer: Shell): number {
  const along = (inner.freeAxial + outer.freeAxial) / 2 - bond.freeStrain;
  const around = (inner.freeHoop + outer.freeHoop) / 2 - bond.freeStrain;
  return bond.planeModulus * (along + bond.poisson * around);
}

/** Over this many gaps the layer's own stress builds up from a free end (by finite elements). */
const END_LENGTH = 0.5;

/**
 * At a free end of the layer its own stress is gone, and with it the part of peel that it gave, ν/(1−ν)
 * of it: peel is lower by `stress` there, the lack fading as e^(−distance/length).
 */
export interface EndLack {
  readonly stress: number;
  readonly length: number;
  /** Integral over the bond from one end, N/mm. */
  readonly force: number;
}

export function endLack(section: LayeredSection, j: number, overlap: number): EndLack {
  const bond = section.bonds[j]!;
  const stress = bond.contraction * heldStress(bond, section.shells[j]!, section.shells[j + 1]!);
  const length = END_LENGTH * bond.gap;
  return { stress, length, force: stress * length * -Math.expm1(-overlap / length) };
}
