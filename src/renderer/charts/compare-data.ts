/** From the reports of several joints to one plot: what is drawn, and what is said of it. */

import { figureOf, figureText, fixedOf, symbolOf } from '../../shared/measures.ts';
import type { BondStress, StressReport } from '../../shared/reports.ts';
import { figure, lengthText } from '../../shared/words.ts';
import { type BondCurve, isMain, placeAlong, type Range, tableStations } from './bond-picture.ts';
import { countedPeel, drawnStrengths } from './peel-data.ts';
import { allowables, shearRange } from './shear-data.ts';

/** One joint of the plot. */
export interface Compared {
  /** `A`, `B`: its column. */
  readonly letter: string;
  readonly name: string;
  readonly stress: StressReport;
}

export type Quantity = 'shear' | 'peel';
/** The end that all are drawn from. */
export type From = 'root' | 'mouth';

/** A curve with stations of its own: overlaps differ. */
export interface CompareCurve extends BondCurve {
  readonly x: readonly number[];
}

export interface ComparePlot {
  readonly curves: readonly CompareCurve[];
  /** Allowables, drawn dotted. */
  readonly levels: readonly { readonly value: number; readonly text: string }[];
  readonly range: Range;
  /** From the first millimetre to the last; to the left of zero where all are drawn from the mouth. */
  readonly span: Range;
  readonly from: From;
  /** A word about what is not drawn. */
  readonly note: string | null;
}

/** A dash for each column: without colour they can still be told apart. */
export const DASHES: readonly (readonly number[])[] = [[], [11, 4], [9, 3, 2, 3], [2, 3]];

export const dashOf = (letter: string): readonly number[] =>
  DASHES[letter.charCodeAt(0) - 65] ?? [];

const shortPart = (part: string): string => part.replace(/ ?bond$/, '');

const nameOf = (letter: string, { part }: BondStress): string =>
  [letter, shortPart(part)].filter((word) => word !== '').join(' ');

const valuesOf = (bond: BondStress, quantity: Quantity): readonly number[] =>
  quantity === 'shear' ? bond.shear : countedPeel(bond);

const peakOf = (bond: BondStress, quantity: Quantity) =>
  quantity === 'shear' ? bond.peak : bond.layered.peak;

const lengthOf = ({ x }: StressReport): number => x.at(-1) ?? 0;

/** Two bonds with one peak share one label, at the last of them. */
function peakText({ letter, stress }: Compared, index: number, quantity: Quantity): string | null {
  const { bonds } = stress;
  const bond = bonds[index]!;
  const peak = peakOf(bond, quantity);
  const same = bonds.every((other) => {
    const { x, value } = peakOf(other, quantity);
    return x === peak.x && figure(value) === figure(peak.value);
  });
  if (bonds.length === 1 || !same)
    return `${nameOf(letter, bond)} ${figureOf('stress', peak.value)}`;
  return isMain(index, bonds.length) ? `${letter} both ${figureOf('stress', peak.value)}` : null;
}

function curvesOf(one: Compared, quantity: Quantity, from: From): CompareCurve[] {
  const { letter, stress } = one;
  const shift = from === 'mouth' ? -lengthOf(stress) : 0;
  const x = stress.x.map((at) => at + shift);
  return stress.bonds.map((bond, index) => {
    const main = isMain(index, stress.bonds.length);
    const peak = peakOf(bond, quantity);
    return {
      name: nameOf(letter, bond),
      x,
      values: valuesOf(bond, quantity),
      colour: quantity === 'peel' ? 'peel' : main ? 'shear' : 'shear-second',
      dash: dashOf(letter),
      width: main ? 2.25 : 1.25,
      // What is only pressed has no peak of peel.
      peak:
        quantity === 'peel' && peak.value <= 0
          ? null
          : { x: peak.x + shift, value: peak.value, text: peakText(one, index, quantity) },
    };
  });
}

const strengthsOf = ({ bonds }: StressReport): number[] =>
  bonds.flatMap(({ layered }) => layered.strength ?? []);

/** Each level once, with the letters of those that have it where not all do. */
function levelsOf(
  all: readonly Compared[],
  word: string,
  levels: (stress: StressReport) => readonly number[],
  has: (stress: StressReport) => readonly number[],
): { value: number; text: string }[] {
  const values = [...new Set(all.flatMap(({ stress }) => levels(stress)))];
  return values.map((value) => {
    const owners = all.filter(({ stress }) => has(stress).includes(value));
    const whose =
      owners.length === all.length ? '' : `, ${owners.map(({ letter }) => letter).join(' ')}`;
    return { value, text: `${word} ${figureOf('stress', Math.abs(value))}${whose}` };
  });
}

function peelRange(all: readonly Compared[], levels: readonly { value: number }[]): Range {
  const values = all.flatMap(({ stress }) => stress.bonds.flatMap(countedPeel));
  const high = Math.max(0, ...values, ...levels.map(({ value }) => value));
  const low = Math.min(0, ...values);
  const span = Math.max(high - low, 1e-9);
  return { low: low < 0 ? low - 0.06 * span : 0, high: Math.max(1.14 * high, 0.2 * span) };
}

/** A strength far above every curve would flatten them: told, not drawn. */
function farNote(all: readonly Compared[], levels: readonly { value: number }[]): string | null {
  const known = [...new Set(all.flatMap(({ stress }) => strengthsOf(stress)))];
  const far = known.filter((value) => !levels.some((level) => level.value === value));
  return far.length === 0
    ? null
    : `↑ peel strength ${far
        .sort((a, b) => a - b)
        .map((one) => figureOf('stress', one))
        .join(', ')}`;
}

export function comparePlot(all: readonly Compared[], quantity: Quantity, from: From): ComparePlot {
  const longest = Math.max(0, ...all.map(({ stress }) => lengthOf(stress)));
  const ranges = all.map(({ stress }) => shearRange(stress));
  const levels =
    quantity === 'shear'
      ? levelsOf(all, 'yield', allowables, allowables)
      : levelsOf(all, 'peel strength', drawnStrengths, strengthsOf);
  return {
    curves: all.flatMap((one) => curvesOf(one, quantity, from)),
    levels,
    range:
      quantity === 'shear'
        ? {
            low: Math.min(0, ...ranges.map(({ low }) => low)),
            high: Math.max(0, ...ranges.map(({ high }) => high)),
          }
        : peelRange(all, levels),
    span: from === 'mouth' ? { low: -longest, high: 0 } : { low: 0, high: longest },
    from,
    note: quantity === 'peel' ? farNote(all, levels) : null,
  };
}

/** What the picture shows, in sentences, for whoever does not see it. */
export function compareSentence(
  all: readonly Compared[],
  quantity: Quantity,
  caseName: string,
): string {
  const each = all.map(({ letter, name, stress }) => {
    const length = lengthOf(stress);
    const bonds = stress.bonds.map((bond) => {
      const { x, value } = peakOf(bond, quantity);
      const where = placeAlong(x, length, `${lengthText(x)} from the root`);
      return quantity === 'peel' && value <= 0
        ? `${bond.part} is pressed together all along`
        : `${bond.part} peaks at ${figureText('stress', value)} ${where}`;
    });
    return `${letter}, ${name}: ${bonds.join(' and ')}, over ${lengthText(length)}`;
  });
  const what = quantity === 'shear' ? 'Shear' : 'Peel';
  return `${what} along the bonds over one another, ${caseName}. ${each.join('; ')}.`;
}

/** A dozen stations of every column, each over its own length. */
export function compareTables(
  all: readonly Compared[],
  from: From,
): { caption: string; head: string[]; rows: string[][] }[] {
  return all.map(({ letter, name, stress }) => {
    const length = lengthOf(stress);
    const columns = stress.bonds.flatMap((bond) =>
      (['shear', 'peel'] as const).map((quantity) => ({
        title: `${[shortPart(bond.part), quantity].filter((word) => word !== '').join(' ')}, ${symbolOf('stress')}`,
        values: valuesOf(bond, quantity),
      })),
    );
    return {
      caption: `${letter}, ${name}`,
      head: [`from the ${from}, ${symbolOf('length')}`, ...columns.map(({ title }) => title)],
      rows: tableStations(stress.x).map((i) => {
        const x = stress.x[i] ?? 0;
        return [
          fixedOf('length', from === 'mouth' ? length - x : x, 2),
          ...columns.map(({ values }) => figureOf('stress', values[i] ?? 0)),
        ];
      }),
    };
  });
}
