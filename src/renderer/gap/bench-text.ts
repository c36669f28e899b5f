/** What the bench is told about adhesive and spacers, in a few words. */
import { inShown, plainText, symbolOf } from '../../shared/measures.ts';
import type { Bench, CheckResult } from '../../shared/project.ts';
import { mixOf } from '../../shared/recorded-check.ts';
import type { GapReport } from '../../shared/reports-gap.ts';

type Mix = NonNullable<CheckResult['mix']>;

/** As it was recorded, else as it is now. */
const mixNow = (recorded: CheckResult | undefined, report: GapReport | null): Mix | null => {
  if (recorded) return recorded.mix ?? null;
  return report && mixOf(report.amounts);
};

/** Three figures: a ratio of 2 : 1 is to be seen in what is weighed. */
const threeOf = (measure: 'mass' | 'volume', value: number): string =>
  `${Number(inShown(measure, value).toPrecision(3))} ${symbolOf(measure)}`;
const massText = (value: number): string => threeOf('mass', value);
const volumeText = (value: number): string => threeOf('volume', value);

export function mixText(recorded: CheckResult | undefined, report: GapReport | null): string {
  const mix = mixNow(recorded, report);
  if (!mix) return '____';
  const { volume, mass, resin, hardener } = mix;
  if (resin !== null && hardener !== null) {
    return `${massText(resin)} resin + ${massText(hardener)} hardener`;
  }
  return mass === null ? volumeText(volume) : massText(mass);
}

/** Volume in the bonds, waste, volume and mass to mix. */
export function amountText(report: GapReport | null): string {
  if (!report) return '';
  const { volume, waste, mixVolume, mixMass } = report.amounts;
  const mass = mixMass === null ? '' : `, ${massText(mixMass)}`;
  const drawn = report.bonds.length === 0 ? ' by the drawing' : '';
  return `${volumeText(volume)} in the bond${drawn} × ${waste} for waste = ${volumeText(mixVolume)}${mass}`;
}

/** @param made what was recorded, else the joint's bench as it is now */
export function spacerText(made: Pick<Bench, 'spacer' | 'jigOffset'> | undefined): string {
  const jig =
    made?.jigOffset === undefined
      ? ''
      : `jig, off centre by ${plainText('small', made.jigOffset)} at most`;
  if (made?.spacer) {
    const { form, size } = made.spacer;
    const spacer = `${form === 'wire' ? 'wire' : 'beads'} of ${plainText('small', size)} in the gap`;
    return jig === '' ? spacer : `${spacer}; ${jig}`;
  }
  return jig === '' ? 'no spacer and no jig set' : jig;
}
