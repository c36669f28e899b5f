/** What is drawn of the layered model: shear and peel along each bond at one clocking and load. */
import { fieldStations, partOf } from '../layered/fields.ts';
import { PEEL_COVER, pullAt } from '../margins/bond-fields.ts';
import type { JointState } from '../margins/state.ts';

export interface LayeredCurve {
  readonly shear: number[];
  readonly peel: number[];
  readonly capped: { readonly shear: number[]; readonly peel: number[] } | null;
  readonly peak: { readonly x: number; readonly value: number };
  readonly strength: number | null;
}

/**
 * @param x stations of the curves
 * @param factor on the loads of the case
 */
export function layeredCurves(
  state: JointState,
  theta: number,
  factor: number,
  x: readonly number[],
): LayeredCurve[] {
  const { layered, assembly, bonds, adhesives } = state;
  const { order } = layered;
  // As the margins have it: the moment's part with its cover.
  const load = factor * pullAt(state, theta, PEEL_COVER);
  const elastic = layered.solution(load);
  const drawn = partOf(elastic, order, x, load, 1);
  // The true peak may lie between the stations of a coarse curve.
  const dense = fieldStations(assembly.overlap);
  const judged = partOf(elastic, order, dense, load, 1);
  const yields = judged.bonds.some(({ shear }, j) =>
    shear.some((value) => Math.abs(value) > bonds[j]!.shearYield),
  );
  const flowing = yields ? layered.capped(load) : null;
  const capped = flowing ? partOf(flowing.solution, order, x, load, 1) : null;
  const counted = flowing ? partOf(flowing.solution, order, dense, load, 1) : judged;
  return bonds.map((_bond, j) => {
    const peels = counted.bonds[j]!.peel;
    let at = 0;
    peels.forEach((value, i) => {
      if (value > peels[at]!) at = i;
    });
    return {
      shear: [...drawn.bonds[j]!.shear],
      peel: [...drawn.bonds[j]!.peel],
      capped: capped
        ? { shear: [...capped.bonds[j]!.shear], peel: [...capped.bonds[j]!.peel] }
        : null,
      peak: { x: dense[at]!, value: peels[at]! },
      strength: adhesives[j]!.peelStrength ?? null,
    };
  });
}
