/** What the bench is told about adhesive and spacers, in a few words. */
import type { Adhesive, CheckResult, Joint } from '../../shared/project.ts';
import type { GapReport } from '../../shared/reports-gap.ts';
import { figure } from '../../shared/words.ts';

type Mix = NonNullable<CheckResult['mix']>;

/** As it was recorded, else as it is now. */
const mixOf = (recorded: CheckResult | undefined, report: GapReport | null): Mix | null => {
  if (recorded) return recorded.mix ?? null;
  if (!report) return null;
  const { mixVolume, mixMass, resin, hardener } = report.amounts;
  return { volume: mixVolume, mass: mixMass, resin, hardener };
};

export function mixText(recorded: CheckResult | undefined, report: GapReport | null): string {
  const mix = mixOf(recorded, report);
  if (!mix) return '____';
  const { volume, mass, resin, hardener } = mix;
  if (resin !== null && hardener !== null) {
    return `${figure(resin)} g resin + ${figure(hardener)} g hardener`;
  }
  return mass === null ? `${figure(volume / 1000)} ml` : `${figure(mass)} g`;
}

export const cureText = (adhesive: Adhesive | undefined): string | null => {
  const steps = adhesive?.process?.cure ?? [];
  return steps.length === 0
    ? null
    : steps.map(({ hours, temperature }) => `${hours} h at ${temperature} °C`).join(', then ');
};

export function spacerText({ bench }: Joint): string {
  if (bench?.spacer) {
    const { form, size } = bench.spacer;
    return `${form === 'wire' ? 'wire' : 'beads'} of ${size} mm in the gap`;
  }
  return bench?.jigOffset === undefined
    ? 'no spacer and no jig set'
    : `jig, off centre by ${bench.jigOffset} mm at most`;
}
