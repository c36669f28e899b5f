/** What is drawn of the layered model: shear and peel along each bond at one clocking and load. */
import { type FieldPart, fieldStations, partOf } from '../layered/fields.ts';
import type { LayeredSolution } from '../layered/lap.ts';
import { pullOfPeel } from '../margins/bond-fields.ts';
import type { JointState } from '../margins/state.ts';

export interface LayeredCurve {
  readonly shear: number[];
  readonly peel: number[];
  readonly capped: { readonly shear: number[]; readonly peel: number[] } | null;
  readonly peak: { readonly x: number; readonly value: number };
  readonly strength: number | null;
}

/** The state whose peel counts at one clocking and load. */
export interface CountedPeel {
  /** Dense stations, where the peak is looked for. */
  readonly dense: readonly number[];
  readonly elastic: FieldPart;
  /** With the shear capped at yield; null where nothing yields or no such state exists. */
  readonly capped: { readonly solution: LayeredSolution; readonly load: number } | null;
  /** Place of the largest elastic peel. */
  readonly place: { readonly bond: number; readonly x: number };
  elasticAt(x: readonly number[]): FieldPart;
}

/** @param factor on the loads of the case */
export function countedPeel(state: JointState, theta: number, factor: number): CountedPeel {
  const { layered, assembly, bonds, loadCase } = state;
  const { force, moment } = loadCase.loads;
  const load = factor * force;
  const solution = layered.solution(load);
  const turned = assembly.flat ? 0 : factor * moment * Math.cos(theta);
  const elasticAt = (x: readonly number[]): FieldPart =>
    withMoment(
      partOf(solution, layered.order, x, load, 1, false),
      turned === 0 ? null : layered.bent(x),
      turned,
    );
  const dense = fieldStations(assembly.overlap);
  const elastic = elasticAt(dense);
  const place = peakOf(elastic, dense);
  const yields = elastic.bonds.some(({ shear }, j) =>
    shear.some((value) => Math.abs(value) > bonds[j]!.shearYield),
  );
  // One load for force and moment: the one whose elastic peel at the place is theirs.
  const together = factor * pullOfPeel(state, theta, place.bond, place.x);
  const flowing = yields ? layered.capped(together) : null;
  const capped = flowing && { solution: flowing.solution, load: together };
  return { dense, elastic, capped, place, elasticAt };
}

/** @param x stations of the curves */
export function layeredCurves(
  state: JointState,
  theta: number,
  factor: number,
  x: readonly number[],
): LayeredCurve[] {
  const { layered, bonds, adhesives } = state;
  const { dense, elastic, capped, elasticAt } = countedPeel(state, theta, factor);
  const drawn = elasticAt(x);
  const cappedAt = (at: readonly number[]): FieldPart | null =>
    capped && partOf(capped.solution, layered.order, at, capped.load, 1, false);
  const drawnCapped = cappedAt(x);
  const counted = cappedAt(dense) ?? elastic;
  return bonds.map((_bond, j) => {
    const peels = counted.bonds[j]!.peel;
    let at = 0;
    peels.forEach((value, i) => {
      if (value > peels[at]!) at = i;
    });
    return {
      shear: [...drawn.bonds[j]!.shear],
      peel: [...drawn.bonds[j]!.peel],
      capped: drawnCapped && {
        shear: [...drawnCapped.bonds[j]!.shear],
        peel: [...drawnCapped.bonds[j]!.peel],
      },
      peak: { x: dense[at]!, value: peels[at]! },
      strength: adhesives[j]!.peelStrength ?? null,
    };
  });
}

function withMoment(part: FieldPart, bent: FieldPart | null, turned: number): FieldPart {
  if (!bent) return part;
  const add = (a: Float64Array, b: Float64Array): Float64Array =>
    a.map((value, i) => value + turned * b[i]!);
  return {
    ...part,
    bonds: part.bonds.map(({ shear, peel }, j) => ({
      shear: add(shear, bent.bonds[j]!.shear),
      peel: add(peel, bent.bonds[j]!.peel),
    })),
  };
}

function peakOf(part: FieldPart, x: readonly number[]): { bond: number; x: number } {
  let place = { bond: 0, x: 0, peel: Number.NEGATIVE_INFINITY };
  part.bonds.forEach(({ peel }, bond) => {
    peel.forEach((value, i) => {
      if (value > place.peel) place = { bond, x: x[i]!, peel: value };
    });
  });
  return place;
}
