/** What the bench is told about adhesive and spacers, in a few words. */
import { lapOf } from '../../shared/convert-lap.ts';
import type { Adhesive, Bench, CheckResult, Joint } from '../../shared/project.ts';
import type { GapReport } from '../../shared/reports-gap.ts';

type Mix = NonNullable<CheckResult['mix']>;

/** As it was recorded, else as it is now. */
const mixOf = (recorded: CheckResult | undefined, report: GapReport | null): Mix | null => {
  if (recorded) return recorded.mix ?? null;
  if (!report) return null;
  const { mixVolume, mixMass, resin, hardener } = report.amounts;
  return { volume: mixVolume, mass: mixMass, resin, hardener };
};

/** Three figures: a ratio of 2 : 1 is to be seen in grams. */
const grams = (value: number): string => `${Number(value.toPrecision(3))} g`;

export function mixText(recorded: CheckResult | undefined, report: GapReport | null): string {
  const mix = mixOf(recorded, report);
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

export const cureText = (adhesive: Adhesive | undefined): string | null => {
  const steps = adhesive?.process?.cure ?? [];
  return steps.length === 0
    ? null
    : steps.map(({ hours, temperature }) => `${hours} h at ${temperature} °C`).join(', then ');
};

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

/** All of a joint that a verdict hangs on, to be compared. */
export function drawnText(joint: Joint): string {
  const { id: _id, name: _name, bench: _bench, sizes: _sizes, ...drawn } = joint;
  return JSON.stringify(drawn);
}

/** The verdict is of a joint that was drawn otherwise. */
export function changedSince(result: CheckResult | undefined, joint: Joint): string | null {
  const made = result?.made;
  if (!made) return null;
  const same = made.lap === lapOf(joint) && made.overlap === joint.overlap;
  if (same && (made.drawn === undefined || made.drawn === drawnText(joint))) return null;
  const was = `${lapWords[made.lap] ?? made.lap}, overlap ${made.overlap} mm`;
  return same
    ? 'The joint was changed since: this verdict is of other sizes, loads or adhesive. Measure again.'
    : `The joint was changed since: this verdict is of a ${was}. Measure again.`;
}

const lapWords: Readonly<Record<string, string>> = {
  socket: 'single lap in a socket',
  spigot: 'single lap over a spigot',
  'sleeve-double': 'double lap',
};
