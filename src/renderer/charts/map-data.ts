/** From the stresses over the bond and around it to what is drawn and said of them. */

import { figureOf, figureText } from '../../shared/measures.ts';
import type { StressMap, StressReport } from '../../shared/reports.ts';
import { clocking, lengthText } from '../../shared/words.ts';
import { placeAlong, tableStations } from './bond-picture.ts';

export type Quantity = 'shear' | 'peel';

/** One bond unrolled: from −180° to 180°, the last row being the first again. */
export interface Field {
  readonly x: readonly number[];
  readonly theta: readonly number[];
  /** One row for each clocking. */
  readonly values: readonly (readonly number[])[];
  /** Stress that the bond may reach; null when not known. */
  readonly allowable: number | null;
}

export interface Spot {
  /** Places in `x` and `theta`. */
  readonly i: number;
  readonly j: number;
}

const wrapped = (theta: number): number => ((((theta + 180) % 360) + 360) % 360) - 180;

export function fieldOf(stress: StressReport, part: string, quantity: Quantity): Field | null {
  const map: StressMap | null = stress.map;
  const bond = map?.bonds.find((one) => one.part === part);
  const limits = stress.bonds.find((one) => one.part === part);
  if (!map || !bond || !limits) return null;
  const rows = map.theta
    .map((theta, j) => ({ theta: wrapped(theta), values: bond[quantity][j] ?? [] }))
    .sort((a, b) => a.theta - b.theta);
  const [first] = rows;
  if (!first) return null;
  const closed = [...rows, { theta: first.theta + 360, values: first.values }];
  return {
    x: map.x,
    theta: closed.map(({ theta }) => theta),
    values: closed.map(({ values }) => values),
    allowable: quantity === 'shear' ? limits.shearYield : limits.layered.strength,
  };
}

export const valueAt = ({ values }: Field, { i, j }: Spot): number => values[j]?.[i] ?? 0;

/** Shear is as bad either way; of peel only what opens counts. */
const badness = (value: number, quantity: Quantity): number =>
  quantity === 'shear' ? Math.abs(value) : value;

export function worstSpot(field: Field, quantity: Quantity): Spot {
  let worst: Spot = { i: 0, j: 0 };
  field.values.forEach((row, j) => {
    row.forEach((value, i) => {
      if (badness(value, quantity) > badness(valueAt(field, worst), quantity)) worst = { i, j };
    });
  });
  return worst;
}

export function fieldRange({ values }: Field): { low: number; high: number } {
  const all = values.flat();
  return { low: Math.min(0, ...all), high: Math.max(0, ...all) };
}

export interface Segment {
  readonly from: { readonly x: number; readonly theta: number };
  readonly to: { readonly x: number; readonly theta: number };
}

/** The line along which the field has this value: marching squares, straight across each cell. */
export function contour(field: Field, level: number): Segment[] {
  const segments: Segment[] = [];
  const at = (i: number, j: number) => ({
    x: field.x[i] ?? 0,
    theta: field.theta[j] ?? 0,
    over: valueAt(field, { i, j }) - level,
  });
  for (let j = 0; j + 1 < field.theta.length; j += 1) {
    for (let i = 0; i + 1 < field.x.length; i += 1) {
      const corners = [at(i, j), at(i + 1, j), at(i + 1, j + 1), at(i, j + 1)];
      const crossings = corners.flatMap((a, k) => {
        const b = corners[(k + 1) % 4]!;
        if (a.over >= 0 === b.over >= 0) return [];
        const share = a.over / (a.over - b.over);
        return [{ x: a.x + share * (b.x - a.x), theta: a.theta + share * (b.theta - a.theta) }];
      });
      for (let k = 0; k + 1 < crossings.length; k += 2) {
        segments.push({ from: crossings[k]!, to: crossings[k + 1]! });
      }
    }
  }
  return segments;
}

/** Value between stations and clockings, for painting. */
export function between(field: Field, x: number, theta: number): number {
  const place = (list: readonly number[], value: number): { k: number; share: number } => {
    const after = list.findIndex((one) => one >= value);
    const k = Math.max(0, (after < 0 ? list.length : after) - 1);
    const [a, b] = [list[k] ?? 0, list[k + 1] ?? list[k] ?? 0];
    return { k, share: b > a ? Math.min(1, Math.max(0, (value - a) / (b - a))) : 0 };
  };
  const [along, around] = [place(field.x, x), place(field.theta, theta)];
  const row = (j: number): number => {
    const [a, b] = [valueAt(field, { i: along.k, j }), valueAt(field, { i: along.k + 1, j })];
    return along.share === 0 ? a : a + along.share * (b - a);
  };
  const [near, far] = [row(around.k), around.share === 0 ? 0 : row(around.k + 1)];
  return around.share === 0 ? near : near + around.share * (far - near);
}

/** Both ends of the unrolled bond are the same place: 180°. */
export const around = (theta: number): string => clocking(theta <= -180 ? 180 : theta);

export const spotText = (field: Field, spot: Spot): string =>
  `${figureText('stress', valueAt(field, spot))} at ${lengthText(field.x[spot.i] ?? 0)}, ${around(field.theta[spot.j] ?? 0)}`;

const names = { shear: 'shear', peel: 'opening peel' } as const;
const limits = { shear: 'yield', peel: 'peel strength' } as const;

export function mapSentence(field: Field, part: string, quantity: Quantity): string {
  const spot = worstSpot(field, quantity);
  const x = field.x[spot.i] ?? 0;
  const where = placeAlong(x, field.x.at(-1) ?? 0, `${lengthText(x)} from the root`);
  const { allowable } = field;
  const reached =
    allowable === null
      ? 'No peel strength is given.'
      : badness(valueAt(field, spot), quantity) >= allowable
        ? `It passes the ${limits[quantity]} of ${figureText('stress', allowable)} inside the marked line.`
        : `Nowhere does it reach the ${limits[quantity]} of ${figureText('stress', allowable)}.`;
  return (
    `Elastic ${quantity} around the bond, ${part}: the largest ${names[quantity]} is ${figureText('stress', valueAt(field, spot))}, ` +
    `${where} and ${around(field.theta[spot.j] ?? 0)} from the plane of bending. ${reached}`
  );
}

/** Every thirty degrees or so, at a handful of stations. */
export function mapTable(field: Field): { head: string[]; rows: string[][] } {
  const stations = tableStations(field.x, 7);
  const clockings = tableStations(field.theta, 13);
  return {
    head: ['clocking', ...stations.map((i) => lengthText(field.x[i] ?? 0))],
    rows: clockings.map((j) => [
      around(field.theta[j] ?? 0),
      ...stations.map((i) => figureOf('stress', valueAt(field, { i, j }))),
    ]),
  };
}
