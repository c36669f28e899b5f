/** A measured surface in three figures: its mean diameter, its ovality, its taper. */
import { standardUncertainty } from './spread.ts';
import { checkSurface } from './surface.ts';
import type { MeasuredSurface, SurfaceSummary } from './types.ts';

const meanOf = (list: readonly number[]): number =>
  list.reduce((sum, value) => sum + value, 0) / list.length;

/** Slope of the straight line of least squares; 0 for one point. */
function slopeOf(at: readonly number[], values: readonly number[]): number {
  const [x, y] = [meanOf(at), meanOf(values)];
  const spread = at.reduce((sum, a) => sum + (a - x) ** 2, 0);
  return spread === 0 ? 0 : at.reduce((sum, a, i) => sum + (a - x) * (values[i]! - y), 0) / spread;
}

export function summarise(surface: MeasuredSurface, overlap: number): SurfaceSummary {
  checkSurface(surface, 'surface');
  const { stations, clockings, diameters } = surface;
  const means = diameters.map(meanOf);
  return {
    mean: {
      value: meanOf(means),
      standard: standardUncertainty([
        {
          surface,
          along: stations.map(() => 1 / stations.length),
          around: clockings.map(() => 1 / clockings.length),
        },
      ]),
    },
    ovality: Math.max(...diameters.map((row) => Math.max(...row) - Math.min(...row))),
    taper: -slopeOf(stations, means) * overlap,
  };
}
