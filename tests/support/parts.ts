/** Measured surfaces as a technician has them: by the drawing, but for what a test makes of them. */
import { emptySurfaces } from '../../src/shared/measured-text.ts';
import { measuringPlan } from '../../src/shared/measuring-plan.ts';
import type { Joint, MeasuredSurface, SurfaceName } from '../../src/shared/project.ts';

export type Made = (surface: SurfaceName, drawn: number, x: number, degrees: number) => number;

/** Four decimals, as an instrument shows them. */
const shown = (value: number): number => Math.round(value * 1e4) / 1e4;

export function partsOf(
  joint: Joint,
  made: Made = (_, drawn) => drawn,
  instrument = { name: 'Micrometer', error: 0.004, repeatability: 0.003 },
): MeasuredSurface[] {
  const { surfaces } = measuringPlan(joint)!;
  return emptySurfaces(joint, []).map((empty) => {
    const { drawn } = surfaces.find(({ surface }) => surface === empty.surface)!;
    const { stations, clockings } = empty;
    return {
      ...empty,
      instrument,
      diameters: stations.map((x) =>
        clockings.map((at) => shown(made(empty.surface, drawn, x, at))),
      ),
    };
  });
}

/** One reading put in place of another. */
export function withReading(
  measured: readonly MeasuredSurface[],
  surface: SurfaceName,
  [i, j]: readonly [number, number],
  value: number | null,
): MeasuredSurface[] {
  return measured.map((one) =>
    one.surface === surface
      ? {
          ...one,
          diameters: one.diameters.map((row, k) =>
            k === i ? row.map((old, at) => (at === j ? value : old)) : row,
          ),
        }
      : one,
  );
}
