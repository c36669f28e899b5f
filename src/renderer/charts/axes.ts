/** Axes as a drawing office draws them: hairlines across, figures outside, no box. */
import type { Ink } from './ink.ts';
import { rule, write } from './pen.ts';
import type { Painter } from './plot.ts';
import { tickDecimals, ticks } from './ticks.ts';

const label = (value: number, decimals: number): string =>
  `${value < 0 ? '−' : ''}${Math.abs(value).toFixed(decimals)}`;

/** Hairlines and figures up the left side, from `xFrom` to `xTo` in the data's units. */
export function drawRungs(
  { context, area, x, y }: Painter,
  ink: Ink,
  range: { low: number; high: number; xFrom: number; xTo: number; about: number; strong: number },
): void {
  const values = ticks(range.low, range.high, range.about);
  const decimals = tickDecimals(values);
  for (const value of values) {
    const height = y(value);
    const colour = value === range.strong ? ink.line : ink.rule;
    rule(context, { x: x(range.xFrom), y: height }, { x: x(range.xTo), y: height }, { colour });
    const at = { x: area.left - 10, y: height };
    write(context, label(value, decimals), at, { colour: ink.soft, align: 'right' });
  }
}

/**
 * Figures along the bottom with a short tick at each.
 * @param range.away true where the figures are distances to the left of zero: written without a sign
 */
export function drawFoot(
  { context, area, x }: Painter,
  ink: Ink,
  range: { low: number; high: number; about: number; unit: string; away?: boolean },
): void {
  const values = ticks(range.low, range.high, range.about);
  const decimals = tickDecimals(values);
  const base = area.bottom;
  const colour = ink.line;
  rule(context, { x: x(range.low), y: base }, { x: x(range.high), y: base }, { colour });
  for (const value of values) {
    rule(context, { x: x(value), y: base }, { x: x(value), y: base + 4 }, { colour });
    const at = { x: x(value), y: base + 14 };
    const text = label(range.away ? Math.abs(value) : value, decimals);
    write(context, text, at, { colour: ink.soft, align: 'center' });
  }
  const unit = { x: area.left - 10, y: base + 14 };
  write(context, range.unit, unit, { colour: ink.soft, align: 'right' });
}
