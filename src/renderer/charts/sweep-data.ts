/** From the sweep report to what is drawn and said of strength against overlap. */

import { fixedOf, symbolOf } from '../../shared/measures.ts';
import type { SweepReport } from '../../shared/reports.ts';
import { figure, lengthText } from '../../shared/words.ts';

/** Strength at an overlap, between the points of the sweep; null outside it. */
export function strengthAt(
  sweep: SweepReport,
  overlap: number,
): { bond: number; all: number; mode: string } | null {
  const after = sweep.points.findIndex((point) => point.overlap >= overlap);
  const next = sweep.points[after];
  if (!next) return null;
  const last = sweep.points[after - 1];
  if (!last) return next.overlap === overlap ? next : null;
  const share = (overlap - last.overlap) / (next.overlap - last.overlap);
  return {
    bond: last.bond + share * (next.bond - last.bond),
    all: last.all + share * (next.all - last.all),
    mode: share < 0.5 ? last.mode : next.mode,
  };
}

/** Always room for the target line; curves far above it are cut rather than flatten the rest. */
export function sweepHigh(sweep: SweepReport, target: number): number {
  const asked = 1 + target;
  const most = Math.max(...sweep.points.flatMap(({ bond, all }) => [bond, all]), 0);
  return Math.max(1.3 * asked, Math.min(1.12 * most, 3 * asked));
}

export const plateauText = (plateau: number): string =>
  `past ${fixedOf('length', plateau, 0)} ${symbolOf('length')}, more overlap buys under 2 %`;

export function sweepSentence(sweep: SweepReport, overlap: number, target: number): string {
  const [first] = sweep.points;
  const last = sweep.points.at(-1);
  if (!first || !last) return 'Strength against overlap: nothing to show.';
  const here = strengthAt(sweep, overlap);
  const present = here
    ? ` At the present ${lengthText(overlap)} the bond reaches ${figure(here.bond)} and the lowest of all modes but the durability trough, ${here.mode}, ${figure(here.all)}.`
    : '';
  const plateau =
    sweep.plateau === null
      ? ' More overlap still adds strength at the end of the range.'
      : ` ${plateauText(sweep.plateau).replace('past', 'Past')}.`;
  return (
    `Strength over the load asked for, against overlap from ${lengthText(first.overlap)} to ${lengthText(last.overlap)}: ` +
    `the bond from ${figure(first.bond)} to ${figure(last.bond)}, all modes but the durability trough from ${figure(first.all)} to ${figure(last.all)}; ` +
    `the target is ${figure(1 + target)}.${present}${plateau}`
  );
}

export function sweepTable(sweep: SweepReport, rows = 13): SweepReport['points'] {
  const last = sweep.points.length - 1;
  const picked = [
    ...new Set(Array.from({ length: rows }, (_, i) => Math.round((i * last) / (rows - 1)))),
  ];
  return picked.flatMap((i) => sweep.points[i] ?? []);
}
