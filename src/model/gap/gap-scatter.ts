/**
 * The uncertainties of measured gaps by Monte Carlo (JCGM 101:2008, propagation of distributions):
 * every reading is drawn anew within what its instrument may be off, and the whole search made again.
 * The shared error of a surface's instrument is uniform, the scatter of each reading normal.
 *
 * The search looks every 5° around and toward 24 sides, not between: in an oval of 0.1 mm that is off
 * by 0.2 µm, far below any caliper.
 */
import { uniforms } from '../scatter/philox.ts';
import { normalQuantile } from '../scatter/quantiles.ts';
import { angleOf, gapOffAxis, offsetToContact } from './circles.ts';
import { approach, halved, sectionsOf } from './sections.ts';
import { makeSurface } from './surface.ts';
import type { MeasuredJoint, MeasuredSurface } from './types.ts';

export interface GapScatterOf {
  readonly low: number;
  readonly high: number;
  readonly deviation: number;
}

/** 95 % intervals of the gap of one bond, mm. */
export interface GapScatterResult {
  readonly centredMin: GapScatterOf;
  readonly min: GapScatterOf;
  readonly mean: GapScatterOf;
  readonly max: GapScatterOf;
}

const AROUND = 72;
const SIDES = 24;
const turn = (n: number): readonly number[] =>
  Array.from({ length: n }, (_, i) => (2 * Math.PI * i) / n);

/** Half of each surface's diameter around every section, from its readings: sections × clockings. */
function radiiOf(measured: MeasuredSurface, nodes: readonly number[], thetas: readonly number[]) {
  const surface = makeSurface(measured, 'surface');
  const around = thetas.map((theta) => surface.around(theta));
  const along = nodes.map((x) => surface.along(x));
  const m = measured.stations.length;
  const n = measured.clockings.length;
  const rings = new Float64Array(m * thetas.length);
  const radii = new Float64Array(nodes.length * thetas.length);
  return (readings: Float64Array): Float64Array => {
    for (let i = 0; i < m; i++) {
      for (let k = 0; k < thetas.length; k++) {
        let sum = 0;
        for (let j = 0; j < n; j++) sum += around[k]![j]! * readings[i * n + j]!;
        rings[i * thetas.length + k] = sum / 2;
      }
    }
    for (let s = 0; s < nodes.length; s++) {
      for (let k = 0; k < thetas.length; k++) {
        let sum = 0;
        for (let i = 0; i < m; i++) sum += along[s]![i]! * rings[i * thetas.length + k]!;
        radii[s * thetas.length + k] = sum;
      }
    }
    return radii;
  };
}

/** What a sorted list leaves 2.5 % of on either side. */
function spreadOf(values: Float64Array): GapScatterOf {
  const sorted = values.slice().sort();
  const at = (share: number): number => sorted[Math.round(share * (sorted.length - 1))]!;
  const mean = sorted.reduce((sum, value) => sum + value, 0) / sorted.length;
  const variance = sorted.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return {
    low: at(0.025),
    high: at(0.975),
    deviation: Math.sqrt(variance / Math.max(1, sorted.length - 1)),
  };
}

/**
 * @param told after every hundredth of the samples, how many are done
 */
export function gapScatter(
  joint: MeasuredJoint,
  { samples, seed }: { readonly samples: number; readonly seed: number },
  told?: (done: number, of: number) => void,
): readonly GapScatterResult[] {
  const { nodes: stations, overlap } = sectionsOf(joint);
  // The contacts of two bonds can change between two stations.
  const nodes = joint.bonds.length > 1 ? halved(stations) : stations;
  const thetas = turn(AROUND);
  const { spacer, offset: jig } = joint.holding;
  const uniform = uniforms(seed);
  let stream = 0;
  const surfaces = joint.bonds
    .flatMap(({ inside, outside }) => [inside, outside])
    .map((one) => {
      const first = stream;
      const readings = one.diameters.flat();
      stream += readings.length + 1;
      const drawn = new Float64Array(readings.length);
      return {
        radii: radiiOf(one, nodes, thetas),
        draw: (sample: number): Float64Array => {
          const shared = one.error * (2 * uniform(sample, first) - 1);
          readings.forEach((value, i) => {
            const own = one.repeatability * normalQuantile(uniform(sample, first + 1 + i));
            drawn[i] = value + shared + own;
          });
          return drawn;
        },
      };
    });
  // Trapezoidal weights of the sections, whose gap is linear between them.
  const lengths = nodes.map(
    (x, i) => ((nodes[i + 1] ?? x) - (nodes[i - 1] ?? x)) / 2 / overlap / AROUND,
  );
  const angles = turn(SIDES).map((phi) =>
    joint.bonds.map(({ tubeInside }) =>
      thetas.map((theta) => angleOf(theta - approach(tubeInside, phi))),
    ),
  );
  const out = joint.bonds.map(() => ({
    centredMin: new Float64Array(samples),
    min: new Float64Array(samples),
    mean: new Float64Array(samples),
    max: new Float64Array(samples),
  }));
  const hundredth = Math.max(1, Math.floor(samples / 100));
  for (let sample = 0; sample < samples; sample++) {
    const radii = surfaces.map(({ radii: of, draw }) => of(draw(sample)));
    out.forEach((of, b) => {
      const [inner, outer] = [radii[2 * b]!, radii[2 * b + 1]!];
      let least = Number.POSITIVE_INFINITY;
      let mean = 0;
      for (let i = 0; i < inner.length; i++) {
        const gap = outer[i]! - inner[i]!;
        least = Math.min(least, gap);
        mean += gap * lengths[Math.floor(i / AROUND)]!;
      }
      of.centredMin[sample] = least;
      of.mean[sample] = mean;
      of.min[sample] = Number.POSITIVE_INFINITY;
      of.max[sample] = Number.NEGATIVE_INFINITY;
    });
    for (let s = 0; s < nodes.length; s++) {
      for (const side of angles) {
        let offset = jig;
        side.forEach((psi, b) => {
          const [inner, outer] = [radii[2 * b]!, radii[2 * b + 1]!];
          for (let k = 0; k < AROUND; k++) {
            // Only the side that comes nearer can touch first.
            if (psi[k]!.cos < 0.3) continue;
            const i = s * AROUND + k;
            const e = offsetToContact(outer[i]!, inner[i]!, spacer, psi[k]!);
            if (e < offset) offset = e;
          }
        });
        side.forEach((psi, b) => {
          const of = out[b]!;
          const [inner, outer] = [radii[2 * b]!, radii[2 * b + 1]!];
          let [least, most] = [of.min[sample]!, of.max[sample]!];
          for (let k = 0; k < AROUND; k++) {
            const i = s * AROUND + k;
            const gap = gapOffAxis(outer[i]!, inner[i]!, offset, psi[k]!);
            if (gap < least) least = gap;
            if (gap > most) most = gap;
          }
          of.min[sample] = least;
          of.max[sample] = most;
        });
      }
    }
    if ((sample + 1) % hundredth === 0) told?.(sample + 1, samples);
  }
  return out.map((of) => ({
    centredMin: spreadOf(of.centredMin),
    min: spreadOf(of.min),
    mean: spreadOf(of.mean),
    max: spreadOf(of.max),
  }));
}
