/** Axes as a drawing office draws them: hairlines across, figures outside, no box. */
import type { Measure } from '../../shared/display-units.ts';
import { fromShown, inShown, symbolOf } from '../../shared/measures.ts';
import type { Ink } from './ink.ts';
import { rule, write } from './pen.ts';
import type { Painter } from './plot.ts';
import { tickDecimals, ticks } from './ticks.ts';

const label = (value: number, decimals: number): string =>
  `${value < 0 ? '−' : ''}${Math.abs(value).toFixed(decimals)}`;

/** Round in the unit on the screen, each with its place in the data's own; a pure number has one unit. */
function rungsOf(
  range: { low: number; high: number; about: number },
  measure: Measure | null,
): { decimals: number; marks: { at: number; shown: number }[] } {
  const ends = [range.low, range.high].map((end) => (measure ? inShown(measure, end) : end));
  const values = ticks(ends[0]!, ends[1]!, range.about);
  const marks = values.map((shown) => ({
    shown,
    at: measure ? fromShown(measure, shown) : shown,
  }));
  return { decimals: tickDecimals(values), marks };
}

/**
 * Hairlines and figures up the left side, from `xFrom` to `xTo` in the data's units.
 * @param measure what the figures are; null of a pure number
 * @returns how high they stand
 */
export function drawRungs(
  { context, area, x, y }: Painter,
  ink: Ink,
  range: { low: number; high: number; xFrom: number; xTo: number; about: number; strong: number },
  measure: Measure | null = null,
): number[] {
  const { decimals, marks } = rungsOf(range, measure);
  for (const { at: value, shown } of marks) {
    const height = y(value);
    const colour = value === range.strong ? ink.line : ink.rule;
    rule(context, { x: x(range.xFrom), y: height }, { x: x(range.xTo), y: height }, { colour });
    const at = { x: area.left - 10, y: height };
    write(context, label(shown, decimals), at, { colour: ink.soft, align: 'right' });
  }
  return marks.map(({ at }) => y(at));
}

/**
 * Figures along the bottom with a short tick at each.
 * @param range.away true where the figures are distances to the left of zero: written without a sign
 */
export function drawFoot(
  { context, area, x }: Painter,
  ink: Ink,
  range: { low: number; high: number; about: number; measure: Measure; away?: boolean },
): void {
  const { decimals, marks } = rungsOf(range, range.measure);
  const base = area.bottom;
  const colour = ink.line;
  rule(context, { x: x(range.low), y: base }, { x: x(range.high), y: base }, { colour });
  for (const { at: value, shown } of marks) {
    rule(context, { x: x(value), y: base }, { x: x(value), y: base + 4 }, { colour });
    const at = { x: x(value), y: base + 14 };
    const text = label(range.away ? Math.abs(shown) : shown, decimals);
    write(context, text, at, { colour: ink.soft, align: 'center' });
  }
  const unit = { x: area.left - 14, y: base + 14 };
  write(context, symbolOf(range.measure), unit, { colour: ink.soft, align: 'right' });
}
