/** What the bench is told about adhesive and spacers, in a few words. */
import type { Joint } from '../../shared/project.ts';
import type { GapReport } from '../../shared/reports-gap.ts';
import { figure } from '../../shared/words.ts';

export function mixText(report: GapReport | null): string {
  if (!report) return '____';
  const { mixVolume, mixMass, resin, hardener } = report.amounts;
  if (resin !== null && hardener !== null) {
    return `${figure(resin)} g resin + ${figure(hardener)} g hardener`;
  }
  return mixMass === null ? `${figure(mixVolume / 1000)} ml` : `${figure(mixMass)} g`;
}

export function spacerText({ bench }: Joint): string {
  if (bench?.spacer) {
    const { form, size } = bench.spacer;
    return `${form === 'wire' ? 'wire' : 'beads'} of ${size} mm in the gap`;
  }
  return bench?.jigOffset === undefined
    ? 'no spacer and no jig set'
    : `jig, off centre by ${bench.jigOffset} mm at most`;
}
