/** From the stress report to what is drawn and said of peel. Opening is positive. */

import { figureOf, figureText, symbolOf } from '../../shared/measures.ts';
import type { BondStress, StressReport } from '../../shared/reports.ts';
import { clocking, figure, gapWords, lengthText } from '../../shared/words.ts';
import { type BondPlot, DASHED, isMain, placeAlong, type Range, THIN } from './bond-picture.ts';

/** The curve that the margins use: the one with the shear capped at yield, where there is one. */
export const countedPeel = ({ layered }: BondStress): readonly number[] =>
  layered.capped?.peel ?? layered.peel;

/** A strength this many times above the curves would flatten them: it is told, not drawn. */
const FAR = 4;
/** Of an elastic curve that does not count, so much more than the rest is shown, then it is cut. */
const ELASTIC = 2.5;

const known = (values: readonly (number | null)[]): number[] => [
  ...new Set(values.filter((value) => value !== null)),
];

const strengths = (stress: StressReport): number[] =>
  known(stress.bonds.map(({ layered }) => layered.strength));

function reach(stress: StressReport): { low: number; high: number } {
  const counted = stress.bonds.flatMap(countedPeel);
  return { low: Math.min(0, ...counted), high: Math.max(0, ...counted) };
}

/** Strengths that are drawn as lines, lowest first. */
export function drawnStrengths(stress: StressReport): number[] {
  const { low, high } = reach(stress);
  const most = FAR * Math.max(high, -low);
  return strengths(stress)
    .filter((strength) => strength <= most)
    .sort((a, b) => a - b);
}

export function peelRange(stress: StressReport): Range {
  const { low, high } = reach(stress);
  const top = Math.max(high, ...drawnStrengths(stress));
  const elastic = stress.bonds.flatMap(({ layered }) => (layered.capped ? layered.peel : []));
  const upper = Math.max(top, Math.min(ELASTIC * top, Math.max(0, ...elastic)));
  const lower = Math.min(low, Math.max(ELASTIC * low, Math.min(0, ...elastic)));
  const span = Math.max(upper - lower, 1e-9);
  // A bond that is only pressed still shows which side of zero is opening.
  return { low: lower < 0 ? lower - 0.06 * span : 0, high: Math.max(1.14 * upper, 0.2 * span) };
}

const nameOf = (part: string): string => part.replace(/ bond$/, '');

/** The label of a bond's peak, with its place. */
export function peelPeakText(stress: StressReport, index: number): string | null {
  const bond = stress.bonds[index];
  if (!bond || bond.layered.peak.value <= 0) return null;
  const { x, value } = bond.layered.peak;
  const peak = `${figureOf('stress', value)} at ${lengthText(x)}`;
  if (stress.bonds.length === 1) return `peak ${peak}`;
  const isShared = stress.bonds.every(
    ({ layered }) => layered.peak.x === x && figure(layered.peak.value) === figure(value),
  );
  if (!isShared) return `${nameOf(bond.part)} ${peak}`;
  return isMain(index, stress.bonds.length) ? `both ${peak}` : null;
}

/** What is told at the upper edge of a strength that lies above it; null where the lines tell all. */
export function strengthBeyond(stress: StressReport): string | null {
  const drawn = drawnStrengths(stress);
  const far = strengths(stress).filter((strength) => !drawn.includes(strength));
  return far.length === 0
    ? null
    : `peel strength ${far.map((one) => figureOf('stress', one)).join(' and ')} ${symbolOf('stress')} ↑`;
}

export function peelPlot(stress: StressReport): BondPlot {
  const { bonds } = stress;
  const only = bonds.length === 1;
  const style = (index: number) =>
    isMain(index, bonds.length)
      ? ({ colour: 'peel', dash: [], width: 2.25 } as const)
      : ({ colour: 'peel', dash: DASHED, width: 2 } as const);
  const counted = bonds.map((bond, index) => {
    const { peak } = bond.layered;
    return {
      name: only ? 'peel' : bond.part,
      values: countedPeel(bond),
      ...style(index),
      peak: peak.value > 0 ? { ...peak, text: peelPeakText(stress, index) } : null,
    };
  });
  const elastic = bonds.flatMap(({ part, layered }, index) =>
    layered.capped
      ? [
          {
            name: only ? 'elastic' : `${part}, elastic`,
            values: layered.peel,
            ...style(index),
            ...THIN,
            peak: null,
          },
        ]
      : [],
  );
  return {
    x: stress.x,
    curves: [...counted, ...elastic],
    levels: drawnStrengths(stress).map((value) => ({
      value,
      text: `peel strength ${figureOf('stress', value)}`,
    })),
    zones: [],
    range: peelRange(stress),
    beyond: strengthBeyond(stress),
  };
}

const strengthWords = (strength: number | null): string =>
  strength === null ? 'no peel strength given' : `peel strength ${figureText('stress', strength)}`;

/** What the picture shows, in sentences, for whoever does not see it. */
export function peelSentence(stress: StressReport, caseName: string): string {
  const length = stress.x.at(-1) ?? 0;
  const bonds = stress.bonds.map((bond) => {
    const { peak, strength, capped, peel } = bond.layered;
    const opening =
      peak.value > 0
        ? `opens most, ${figureText('stress', peak.value)}, ${placeAlong(peak.x, length, `${lengthText(peak.x)} from the root`)}`
        : 'is pressed together all along';
    const least = Math.min(...countedPeel(bond));
    const closing =
      peak.value > 0 && least < 0 ? `, closes by up to ${figureText('stress', -least)}` : '';
    const elastic = capped
      ? `, ${figureText('stress', Math.max(...peel))} if nothing yielded; the curve has the shear capped at yield`
      : '';
    return `${bond.part} ${opening}${closing}${elastic}, ${strengthWords(strength)}`;
  });
  return (
    `Peel along ${lengthText(length)} of bond, ${caseName}, ${gapWords[stress.gapState]}, clocking ${clocking(stress.theta)}. ` +
    `${bonds.join('; ')}.`
  );
}

/** The worst of the bonds in a few words, for when the figures have come to rest. */
export function peelSpoken(stress: StressReport): string {
  const [first, ...rest] = stress.bonds;
  if (!first) return '';
  const worst = rest.reduce(
    (most, bond) => (bond.layered.peak.value > most.layered.peak.value ? bond : most),
    first,
  );
  const { peak, strength } = worst.layered;
  const opening =
    peak.value > 0 ? `Peel peak ${figureText('stress', peak.value)}` : 'Peel opens nothing';
  return `${opening}, ${strengthWords(strength)}.`;
}
