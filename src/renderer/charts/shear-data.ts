/** From the stress report to what is drawn and what is said of it. Nothing here decides a margin. */
import type { BondStress, StressReport } from '../../shared/reports.ts';
import { clocking, figure, gapWords, millimetres } from '../../shared/words.ts';

export interface ShearRange {
  readonly low: number;
  readonly high: number;
}

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
export function shearRange(stress: StressReport): ShearRange {
  const { above, below } = sides(stress);
  const values = stress.bonds.flatMap((bond) => bond.shear);
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

const nearest = (x: readonly number[], at: number): number => {
  let best = 0;
  for (let i = 1; i < x.length; i += 1) {
    if (Math.abs((x[i] ?? 0) - at) < Math.abs((x[best] ?? 0) - at)) best = i;
  }
  return best;
};

/** The stations that a readout at this place shows. */
export function readAt(
  stress: StressReport,
  at: number,
): { x: number; values: { part: string; shear: number }[] } {
  const i = nearest(stress.x, at);
  return {
    x: stress.x[i] ?? 0,
    values: stress.bonds.map((bond) => ({ part: bond.part, shear: bond.shear[i] ?? 0 })),
  };
}

const placeOf = (x: number, length: number): string =>
  x <= 1e-6 * length
    ? 'at the root'
    : x >= length * (1 - 1e-6)
      ? 'at the mouth'
      : `${millimetres(x)} from the root`;

const samePeak = (a: BondStress, b: BondStress): boolean =>
  a.peak.x === b.peak.x && figure(a.peak.value) === figure(b.peak.value);

/** The label of a bond's peak; two bonds with one peak share one label, at the last of them. */
export function peakText(stress: StressReport, index: number): string | null {
  const bond = stress.bonds[index];
  if (!bond) return null;
  const peak = `peak ${figure(bond.peak.value)}`;
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
      `${bond.part}: peak ${figure(bond.peak.value)} MPa ${placeOf(bond.peak.x, length)}, ` +
      `lowest ${figure(least)} MPa, yield ${figure(bond.shearYield)} MPa, ` +
      (plastic > 0 ? `plastic over ${millimetres(plastic)}` : 'no plastic zone')
    );
  });
  const carried = stress.carried
    ? ''
    : ` The bond cannot carry this load; the curve is at the most it carries, ${figure(stress.capacity)} of it.`;
  return (
    `Shear along ${millimetres(length)} of bond, ${caseName}, ${gapWords[stress.gapState]}, clocking ${clocking(stress.theta)}. ` +
    `${bonds.join('; ')}.${carried}`
  );
}

/** A dozen stations for the table beside the chart, both ends among them. */
export function shearTable(stress: StressReport, rows = 13): { x: number; shear: number[] }[] {
  const last = stress.x.length - 1;
  const picked = [
    ...new Set(Array.from({ length: rows }, (_, i) => Math.round((i * last) / (rows - 1)))),
  ];
  return picked.map((i) => ({
    x: stress.x[i] ?? 0,
    shear: stress.bonds.map((bond) => bond.shear[i] ?? 0),
  }));
}
