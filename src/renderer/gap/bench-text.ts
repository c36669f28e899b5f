/** What the bench is told about adhesive and spacers, in a few words. */
import type { Bench, CheckResult } from '../../shared/project.ts';
import { mixOf } from '../../shared/recorded-check.ts';
import type { GapReport } from '../../shared/reports-gap.ts';

type Mix = NonNullable<CheckResult['mix']>;

/** As it was recorded, else as it is now. */
const mixNow = (recorded: CheckResult | undefined, report: GapReport | null): Mix | null => {
  if (recorded) return recorded.mix ?? null;
  return report && mixOf(report.amounts);
};

/** Three figures: a ratio of 2 : 1 is to be seen in grams. */
const grams = (value: number): string => `${Number(value.toPrecision(3))} g`;

export function mixText(recorded: CheckResult | undefined, report: GapReport | null): string {
  const mix = mixNow(recorded, report);
  if (!mix) return '____';
  const { volume, mass, resin, hardener } = mix;
  const millilitres = `${Number((volume / 1000).toPrecision(3))} ml`;
  if (resin !== null && hardener !== null) {
    return `${grams(resin)} resin + ${grams(hardener)} hardener`;
  }
  return mass === null ? millilitres : grams(mass);
}

/** Volume in the bonds, waste, volume and mass to mix. */
export function amountText(report: GapReport | null): string {
  if (!report) return '';
  const { volume, waste, mixVolume, mixMass } = report.amounts;
  const millilitres = (value: number): string => `${Number((value / 1000).toPrecision(3))} ml`;
  const mass = mixMass === null ? '' : `, ${grams(mixMass)}`;
  const drawn = report.bonds.length === 0 ? ' by the drawing' : '';
  return `${millilitres(volume)} in the bond${drawn} × ${waste} for waste = ${millilitres(mixVolume)}${mass}`;
}

/** @param made what was recorded, else the joint's bench as it is now */
export function spacerText(made: Pick<Bench, 'spacer' | 'jigOffset'> | undefined): string {
  const jig =
    made?.jigOffset === undefined ? '' : `jig, off centre by ${made.jigOffset} mm at most`;
  if (made?.spacer) {
    const { form, size } = made.spacer;
    const spacer = `${form === 'wire' ? 'wire' : 'beads'} of ${size} mm in the gap`;
    return jig === '' ? spacer : `${spacer}; ${jig}`;
  }
  return jig === '' ? 'no spacer and no jig set' : jig;
}
