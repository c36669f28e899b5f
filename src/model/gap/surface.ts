/**
 * A measured surface between its readings. Every diameter is a weighted sum of the readings, so that
 * their uncertainties can be carried through it:
 *
 *   D(x, θ) = Σi ui(x) · Σj vj(θ) · Dij          Σ ui = Σ vj = 1
 *
 * Along: linear between stations, and straight on beyond the two end ones. Around: the oval
 * D0 + a·cos 2θ + b·sin 2θ of least squares, plus what it leaves of each reading, linear between
 * them: every reading is met, and a true oval is found between them. A diameter is the same half a
 * turn on, so lobes of odd number are not seen.
 */
import { ModelError } from '../errors.ts';
import type { MeasuredSurface } from './types.ts';

/** Widest hole between neighbouring clockings through which an oval is still seen, radians. */
const WIDEST = (75 / 180) * Math.PI;

/** True where the clockings find the oval of a tube, however it lies. */
export function ovalIsSeen(clockings: readonly number[]): boolean {
  if (clockings.length < 3) return false;
  return clockings.every((here, j) => {
    const next = clockings[j + 1] ?? clockings[0]! + Math.PI;
    return next - here <= WIDEST + 1e-9;
  });
}

/** Weights of the stations at a distance from the mouth. */
export function alongWeights(stations: readonly number[], x: number): readonly number[] {
  const weights = stations.map(() => 0);
  if (stations.length === 1) return [1];
  let i = 0;
  while (i < stations.length - 2 && x > stations[i + 1]!) i++;
  const share = (x - stations[i]!) / (stations[i + 1]! - stations[i]!);
  weights[i] = 1 - share;
  weights[i + 1] = share;
  return weights;
}

/** Linear between the readings around half a turn. */
function linearWeights(clockings: readonly number[], theta: number): number[] {
  const n = clockings.length;
  const weights = clockings.map(() => 0);
  if (n === 1) return [1];
  const first = clockings[0]!;
  const turned = first + ((((theta - first) % Math.PI) + Math.PI) % Math.PI);
  let j = n - 1;
  while (j > 0 && clockings[j]! > turned) j--;
  const next = j + 1 < n ? clockings[j + 1]! : first + Math.PI;
  const share = (turned - clockings[j]!) / (next - clockings[j]!);
  weights[j]! += 1 - share;
  weights[(j + 1) % n]! += share;
  return weights;
}

type Three = readonly [number, number, number];
const basisAt = (theta: number): Three => [1, Math.cos(2 * theta), Math.sin(2 * theta)];
const dot = (a: Three, b: Three): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Three, b: Three): Three => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

/** Weights of the readings of one station at any clocking. */
export type AroundWeights = (theta: number) => readonly number[];

/** Weights with which the readings of one station make up D0, a and b of their oval, row by row. */
function ovalWeights(clockings: readonly number[]): readonly (readonly number[])[] | null {
  if (!ovalIsSeen(clockings)) return null;
  const rows = clockings.map(basisAt);
  // Normal equations of three unknowns, inverted by cofactors.
  const [a, b, c] = [0, 1, 2].map((i): Three => {
    const sum = (k: 0 | 1 | 2): number =>
      rows.reduce((total, row) => total + row[i as 0 | 1 | 2] * row[k], 0);
    return [sum(0), sum(1), sum(2)];
  }) as [Three, Three, Three];
  const cofactors = [cross(b, c), cross(c, a), cross(a, b)] as const;
  const determinant = dot(a, cofactors[0]);
  return cofactors.map((cofactor) => rows.map((row) => dot(cofactor, row) / determinant));
}

export function aroundWeights(clockings: readonly number[]): AroundWeights {
  const oval = ovalWeights(clockings);
  if (!oval) return (theta) => linearWeights(clockings, theta);
  /** Weights of the fitted oval at a clocking. */
  const fitted = (theta: number): number[] => {
    const at = basisAt(theta);
    return clockings.map((_, j) => dot([oval[0]![j]!, oval[1]![j]!, oval[2]![j]!], at));
  };
  const fittedAtNodes = clockings.map(fitted);
  return (theta) => {
    const linear = linearWeights(clockings, theta);
    return fitted(theta).map(
      (weight, j) =>
        weight +
        linear[j]! -
        linear.reduce((sum, share, k) => sum + share * fittedAtNodes[k]![j]!, 0),
    );
  };
}

/** The same for one ring of diameters, without weights: asked hundreds of thousands of times. */
export function ringOf(
  clockings: readonly number[],
): (diameters: readonly number[]) => (theta: number) => number {
  const oval = ovalWeights(clockings);
  const n = clockings.length;
  const first = clockings[0]!;
  const between = (values: readonly number[], theta: number): number => {
    if (n === 1) return values[0]!;
    const turned = first + ((((theta - first) % Math.PI) + Math.PI) % Math.PI);
    let j = n - 1;
    while (j > 0 && clockings[j]! > turned) j--;
    const next = j + 1 < n ? clockings[j + 1]! : first + Math.PI;
    const share = (turned - clockings[j]!) / (next - clockings[j]!);
    return values[j]! + share * (values[(j + 1) % n]! - values[j]!);
  };
  if (!oval) return (diameters) => (theta) => between(diameters, theta);
  return (diameters) => {
    const [mean, a, b] = oval.map((row) =>
      row.reduce((sum, weight, j) => sum + weight * diameters[j]!, 0),
    ) as [number, number, number];
    const fitted = (theta: number): number =>
      mean + a * Math.cos(2 * theta) + b * Math.sin(2 * theta);
    const left = diameters.map((diameter, j) => diameter - fitted(clockings[j]!));
    return (theta) => fitted(theta) + between(left, theta);
  };
}

/**
 * @throws ModelError when there is no full grid of readings in rising order
 */
export function checkSurface(surface: MeasuredSurface, input: string): void {
  const { stations, clockings, diameters } = surface;
  const rises = (list: readonly number[]): boolean =>
    list.length > 0 && list.every((value, i) => i === 0 || value > list[i - 1]!);
  if (!rises(stations)) throw new ModelError(`${input}.stations`, 'The stations must rise.');
  if (!rises(clockings) || clockings[0]! < 0 || clockings.at(-1)! >= Math.PI) {
    throw new ModelError(`${input}.clockings`, 'The clockings must rise, from 0 to below 180°.');
  }
  const full =
    diameters.length === stations.length &&
    diameters.every(
      (row) =>
        row.length === clockings.length &&
        row.every((value) => Number.isFinite(value) && value > 0),
    );
  if (!full) {
    throw new ModelError(`${input}.diameters`, 'Every station needs a diameter at every clocking.');
  }
}

/** What stations leave bare at the mouth and at the root, mm. */
export const bareEnds = (
  stations: readonly number[],
  overlap: number,
): { readonly mouth: number; readonly root: number } => ({
  mouth: Math.max(0, stations[0]!),
  root: Math.max(0, overlap - stations.at(-1)!),
});

export interface Surface {
  readonly measured: MeasuredSurface;
  readonly around: AroundWeights;
  readonly ring: ReturnType<typeof ringOf>;
  along(x: number): readonly number[];
  /** mm. */
  diameter(x: number, theta: number): number;
}

export function makeSurface(measured: MeasuredSurface, input: string): Surface {
  checkSurface(measured, input);
  const around = aroundWeights(measured.clockings);
  const along = (x: number): readonly number[] => alongWeights(measured.stations, x);
  return {
    measured,
    around,
    ring: ringOf(measured.clockings),
    along,
    diameter(x, theta) {
      const v = around(theta);
      return along(x).reduce(
        (sum, u, i) =>
          u === 0
            ? sum
            : sum + u * measured.diameters[i]!.reduce((ring, d, j) => ring + v[j]! * d, 0),
        0,
      );
    },
  };
}
