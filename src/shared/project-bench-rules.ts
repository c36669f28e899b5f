/** What must hold between the fields of the bench: places in order, limits that rise, full grids. */
import type { Joint, Project } from './project.ts';
import type { Broken } from './project-rules.ts';

/** Place of the first value that does not rise, or −1. */
const notRising = (list: readonly number[]): number =>
  list.findIndex((value, i) => i > 0 && value <= list[i - 1]!);

/**
 * Stations beyond the overlap and limits of a bond that the lap does not have stay in the file: sizing
 * and changing the lap pass by them. They are not used, and the Gap check says so.
 * @param where the joint's own place in the document
 */
export function brokenBench({ bench }: Joint, where: string): Broken | null {
  if (!bench) return null;
  const at = `${where}.bench`;
  for (const list of ['stations', 'clockings'] as const) {
    const wrong = notRising(bench[list] ?? []);
    if (wrong >= 0) {
      return { field: `${at}.${list}.${wrong}`, message: `the ${list} must rise` };
    }
  }
  for (const [key, range] of Object.entries(bench.limits ?? {})) {
    if (range && range.from >= range.to) {
      return {
        field: `${at}.limits.${key}.from`,
        message: `the limits of the gap, ${range.from} to ${range.to} mm, must rise`,
      };
    }
  }
  return null;
}

/** Readings may be wrong, for they are what was read; their grid may not. */
export function brokenChecks({ gapChecks = [] }: Project): Broken | null {
  for (const [i, { surfaces }] of gapChecks.entries()) {
    for (const [k, { surface, stations, clockings, diameters }] of surfaces.entries()) {
      const at = `gapChecks.${i}.surfaces.${k}`;
      if (surfaces.findIndex((one) => one.surface === surface) < k) {
        return { field: `${at}.surface`, message: `"${surface}" stands twice in this check` };
      }
      const full =
        diameters.length === stations.length &&
        diameters.every(({ length }) => length === clockings.length);
      if (!full) {
        return {
          field: `${at}.diameters`,
          message: `${stations.length} stations and ${clockings.length} clockings need as many rows and columns of diameters, null where not read`,
        };
      }
    }
  }
  return null;
}
