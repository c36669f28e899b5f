/** What must hold between the fields of the bench: places in order, limits that fit the joint, full grids. */
import type { Joint, Project } from './project.ts';
import type { Broken } from './project-rules.ts';

/** Place of the first value that does not rise, or −1. */
const notRising = (list: readonly number[]): number =>
  list.findIndex((value, i) => i > 0 && value <= list[i - 1]!);

const keysOf: Readonly<Record<Joint['type'], readonly string[]>> = {
  'sleeve-single': ['bond'],
  'sleeve-double': ['innerBond', 'outerBond'],
  'flat-single': [],
  'flat-double': [],
};

/** @param where the joint's own place in the document */
export function brokenBench({ bench, overlap, type, name }: Joint, where: string): Broken | null {
  if (!bench) return null;
  const at = `${where}.bench`;
  for (const list of ['stations', 'clockings'] as const) {
    const wrong = notRising(bench[list] ?? []);
    if (wrong >= 0) {
      return { field: `${at}.${list}.${wrong}`, message: `the ${list} must rise` };
    }
  }
  const outside = (bench.stations ?? []).findIndex((x) => x > overlap);
  if (outside >= 0) {
    return {
      field: `${at}.stations.${outside}`,
      message: `the station at ${bench.stations![outside]} mm lies beyond the overlap of ${overlap} mm`,
    };
  }
  for (const [key, range] of Object.entries(bench.limits ?? {})) {
    if (!keysOf[type].includes(key)) {
      const known = keysOf[type].join(' and ');
      return {
        field: `${at}.limits.${key}`,
        message: `"${name}" has no ${key}: ${known === '' ? 'a flat joint is not measured so' : `it has ${known}`}`,
      };
    }
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
