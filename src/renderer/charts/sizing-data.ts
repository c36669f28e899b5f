/** From the report of a sizing to what is drawn and said of margin against size. */
import type { SizingReport } from '../../shared/reports.ts';
import { sizeText, sizingAnswer } from '../../shared/sizing-words.ts';
import { signed } from '../../shared/words.ts';

/** Margins from here to there are drawn: deep failures would flatten the rest. */
export function marginSpan(report: SizingReport): { low: number; high: number } {
  const { target, points } = report;
  const margins = points.map(({ margin }) => margin);
  const reach = 1 + target;
  const low = Math.max(Math.min(...margins, 0), -1);
  const high = Math.min(Math.max(...margins, target), target + 2 * reach);
  const room = 0.08 * (high - low || 1);
  return { low: low - room, high: Math.max(high, target + 0.15 * reach) + room };
}

export function sizingSentence(report: SizingReport): string {
  const { vary, points } = report;
  const [first] = points;
  const last = points.at(-1);
  if (!first || !last) return 'Lowest margin: nothing to show.';
  const text = (value: number): string => sizeText(vary, value);
  return `Lowest margin against size from ${text(first.value)}, ${signed(first.margin)}, to ${text(last.value)}, ${signed(last.margin)}; the target is ${signed(report.target)}. ${sizingAnswer(report)}`;
}
