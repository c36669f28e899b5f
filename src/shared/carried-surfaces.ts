/** Measured surfaces against a joint that may have changed, and against a file of others. */
import { measuringPlan } from './measuring-plan.ts';
import type { Joint, MeasuredSurface } from './project.ts';

const isRead = ({ diameters }: MeasuredSurface): boolean =>
  diameters.some((row) => row.some((value) => value !== null));
/** True where a surface of the file is read already: nothing measured is written over. */
export const clash = (
  here: readonly MeasuredSurface[],
  file: readonly MeasuredSurface[],
): boolean =>
  here.some((old) => isRead(old) && file.some(({ surface }) => surface === old.surface));

/** True where the check measures what the joint has, within its overlap. */
export function fitsJoint(surfaces: readonly MeasuredSurface[], joint: Joint): boolean {
  const plan = measuringPlan(joint);
  return (
    plan === null ||
    (surfaces.length === plan.surfaces.length &&
      plan.surfaces.every(({ surface }) => surfaces.some((one) => one.surface === surface)) &&
      surfaces.every(({ stations }) => stations.every((x) => x <= joint.overlap)))
  );
}

/** Readings within the overlap of surfaces that the joint still has; the others empty. */
export const carried = (
  old: readonly MeasuredSurface[],
  { overlap }: Joint,
  empty: readonly MeasuredSurface[],
): MeasuredSurface[] =>
  empty.map((fresh) => {
    const known = old.find(({ surface }) => surface === fresh.surface);
    const kept = known?.stations.flatMap((x, i) => (x <= overlap ? [i] : [])) ?? [];
    if (!known || kept.length === 0) return fresh;
    const { confirmed = [], ...rest } = known;
    return {
      ...rest,
      stations: kept.map((i) => known.stations[i]!),
      diameters: kept.map((i) => [...known.diameters[i]!]),
      confirmed: confirmed.flatMap(([i, j]): [number, number][] =>
        kept.includes(i) ? [[kept.indexOf(i), j]] : [],
      ),
    };
  });
