/** From the stress report to what is drawn and what is said of it. Nothing here decides a margin. */

import { figureOf, figureText } from '../../shared/measures.ts';
import type { BondStress, StressReport } from '../../shared/reports.ts';
import { clocking, environment, figure, gapWords, lengthText } from '../../shared/words.ts';
import { type BondPlot, DASHED, isMain, placeAlong, type Range, THIN } from './bond-picture.ts';

/** A curve that only grazes zero does not need the other half of the axis. */
const GRAZE = 0.02;

/** Which sides of zero the curves use. */
function sides(stress: StressReport): { above: boolean; below: boolean } {
  const values = stress.bonds.flatMap((bond) => bond.shear);
  const [most, least] = [Math.max(0, ...values), Math.min(0, ...values)];
  const size = Math.max(most, -least);
  const below = -least > GRAZE * size;
  return { above: most > GRAZE * size || !below, below };
}

/** As far as the curves and the allowables go, with room beyond for a label. */
export function shearRange(stress: StressReport, layered = false): Range {
  const { above, below } = sides(stress);
  const values = stress.bonds.flatMap((bond) => [
    ...bond.shear,
    ...(layered ? bond.layered.shear : []),
  ]);
  const limit = Math.max(1e-9, ...stress.bonds.map((bond) => bond.shearYield));
  return {
    low: below ? 1.14 * Math.min(-limit, ...values) : 0,
    high: above ? 1.14 * Math.max(limit, ...values) : 0,
  };
}

/** Yield levels to draw, each once, on the sides that the curves use. */
export function allowables(stress: StressReport): number[] {
  const { above, below } = sides(stress);
  const levels = [...new Set(stress.bonds.map((bond) => bond.shearYield))];
  return levels.flatMap((level) => [...(above ? [level] : []), ...(below ? [-level] : [])]);
}

const samePeak = (a: BondStress, b: BondStress): boolean =>
  a.peak.x === b.peak.x && figure(a.peak.value) === figure(b.peak.value);

/** The label of a bond's peak; two bonds with one peak share one label, at the last of them. */
export function peakText(stress: StressReport, index: number): string | null {
  const bond = stress.bonds[index];
  if (!bond) return null;
  const peak = `peak ${figureOf('stress', bond.peak.value)}`;
  if (stress.bonds.length === 1) return peak;
  if (!stress.bonds.every((other) => samePeak(other, bond))) return `${bond.part}, ${peak}`;
  return index === stress.bonds.length - 1 ? `both bonds, ${peak}` : null;
}

/** What the picture shows, in sentences, for whoever does not see it. */
export function shearSentence(stress: StressReport, caseName: string): string {
  const length = stress.x.at(-1) ?? 0;
  const bonds = stress.bonds.map((bond) => {
    const plastic = bond.plastic.reduce((sum, zone) => sum + zone.to - zone.from, 0);
    const least = bond.shear.reduce((low, value) =>
      Math.abs(value) < Math.abs(low) ? value : low,
    );
    return (
      `${bond.part}: peak ${figureText('stress', bond.peak.value)} ${placeAlong(bond.peak.x, length, `${lengthText(bond.peak.x)} from the root`)}, ` +
      `lowest ${figureText('stress', least)}, yield ${figureText('stress', bond.shearYield)}, ` +
      (plastic > 0 ? `plastic over ${lengthText(plastic)}` : 'no plastic zone')
    );
  });
  const carried = stress.carried
    ? ''
    : ` The bond cannot carry this load; the curve is at the most it carries, ${figure(stress.capacity)} of it.`;
  return (
    `Shear along ${lengthText(length)} of bond, ${caseName}, ${gapWords[stress.gapState]}, clocking ${clocking(stress.theta)}. ` +
    `${bonds.join('; ')}.${carried}`
  );
}

/** @param layered also the elastic shear of the layered shells, thin */
export function shearPlot(stress: StressReport, layered = false): BondPlot {
  const { bonds } = stress;
  const where = environment(stress.temperature, stress.moisture);
  const only = bonds.length === 1;
  const style = (index: number) =>
    isMain(index, bonds.length)
      ? ({ colour: 'shear', dash: [], width: 2.25 } as const)
      : ({ colour: 'shear-second', dash: DASHED, width: 2 } as const);
  const curves = bonds.map((bond, index) => ({
    name: only ? 'shear' : bond.part,
    values: bond.shear,
    ...style(index),
    peak: { ...bond.peak, text: peakText(stress, index) },
  }));
  const thin = bonds.map((bond, index) => ({
    name: only ? 'layered' : `${bond.part}, layered`,
    values: bond.layered.shear,
    ...style(index),
    ...THIN,
    peak: null,
  }));
  return {
    x: stress.x,
    curves: layered ? [...curves, ...thin] : curves,
    levels: allowables(stress).map((value) => ({
      value,
      text: `yield ${figureOf('stress', value)}, ${where}`,
    })),
    zones: bonds.flatMap((bond) => bond.plastic),
    range: shearRange(stress, layered),
    // The scale always reaches the yield.
    beyond: null,
  };
}
