/** The record of a check: what the verdict was of, and whether the joint has changed since. */
import { usualChecklist } from './bench-words.ts';
import { lapOf } from './convert-lap.ts';
import type { Adhesive, CheckResult, Joint, Project } from './project.ts';
import type { GapReport, GapVerdict } from './reports-gap.ts';

export const cureText = (adhesive: Adhesive | undefined): string | null => {
  const steps = adhesive?.process?.cure ?? [];
  return steps.length === 0
    ? null
    : steps.map(({ hours, temperature }) => `${hours} h at ${temperature} °C`).join(', then ');
};

/** Adhesive to mix, as a record has it. */
export const mixOf = ({ mixVolume, mixMass, resin, hardener }: GapReport['amounts']) => ({
  volume: mixVolume,
  mass: mixMass,
  resin,
  hardener,
});

function madeOf(document: Project, joint: Joint, { gap, guarded }: GapVerdict) {
  const adhesive = document.adhesives.find(({ id }) => id === joint.adhesive);
  const { spacer, jigOffset, checklist } = joint.bench ?? {};
  const openTime = adhesive?.process?.openTime;
  return {
    lap: lapOf(joint),
    overlap: joint.overlap,
    drawn: drawnText(joint),
    adhesive: adhesive?.name ?? '',
    spacer,
    jigOffset,
    openTime,
    cure: cureText(adhesive) ?? '',
    steps: checklist ?? usualChecklist,
    remarks: gap.flags.map(({ message }) => message),
    guarded: guarded?.margin ?? null,
  };
}

/** What is written down of a verdict; null while there is none. */
export function resultOf(document: Project, joint: Joint, verdict: GapVerdict) {
  const { state, reasons, gap, measured, targetMargin, modelVersion } = verdict;
  if (state === 'unknown') return null;
  return {
    verdict: state,
    reason: reasons[0]!.message,
    bonds: gap.bonds.map(({ bond, held }, i) => ({
      bond,
      min: { value: held.min.value, uncertainty: held.min.uncertainty },
      mean: { value: held.mean.value, uncertainty: held.mean.uncertainty },
      max: { value: held.max.value, uncertainty: held.max.uncertainty },
      from: gap.limits[i]!.from,
      to: gap.limits[i]!.to,
    })),
    made: madeOf(document, joint, verdict),
    mix: mixOf(gap.amounts),
    margin: measured?.margin ?? null,
    targetMargin,
    modelVersion,
  };
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
