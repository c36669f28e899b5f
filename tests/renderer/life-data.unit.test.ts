/** What the S-N plot draws. */
import { describe, expect, it } from 'vitest';
import { lifeReport } from '../../src/main/handlers/coupons/life.ts';
import { lifePlot, lifeTables } from '../../src/renderer/charts/life-data.ts';
import { lifeOnLine } from '../../src/shared/life-words.ts';
import { withLives } from './support/lives.ts';

const project = withLives();
const { specimens, life } = project.coupons!;
const report = lifeReport(project, specimens[0]!, life![0]!);
const { fit } = report;

describe('the S-N plot', () => {
  const plot = lifePlot(report)!;

  it('has a dot for each place, run-outs of one end together and as arrows', () => {
    const places = new Set(
      report.lines.map(({ share, cycles, runOut }) => `${share} ${cycles} ${runOut}`),
    );
    expect(plot.dots).toHaveLength(places.size);
    const arrows = plot.dots.filter(({ mark }) => mark === 'arrow');
    expect(arrows.map(({ label }) => label)).toEqual(['×3']);
    expect(arrows[0]!.text[0]).toMatch(/^coupon 10, batch A; coupon 11, batch A; coupon 12/);
    expect(plot.dots.filter(({ mark }) => mark === 'full')).toHaveLength(9);
    expect(plot.dots[0]!.x).toBeCloseTo(Math.log10(report.lines[0]!.cycles), 12);
    expect(plot.dots[0]!.y).toBeCloseTo(Math.log10(report.lines[0]!.share!), 12);
  });

  it('has median, bound and the line that may be taken, each named once, all of it inside', () => {
    expect(plot.lines.flatMap(({ text }) => text ?? []).sort()).toEqual([
      'S-N line',
      'bound',
      'median',
    ]);
    const { x, y } = plot;
    const ends = [...plot.dots, ...plot.lines.flatMap(({ from, to }) => [from, to])];
    expect(ends.every((at) => at.x > x.low && at.x < x.high && at.y > y.low && at.y < y.high)).toBe(
      true,
    );
    const taken = plot.lines.filter(({ look }) => look === 'level');
    const [low, high] = fit!.shares;
    expect(taken[0]!.from.x).toBeCloseTo(Math.log10(lifeOnLine(fit!.bound!, high)), 12);
    expect(taken.at(-1)!.to.x).toBeCloseTo(Math.log10(fit!.longest), 12);
    // On the way it is on its own power law, which is straight on these axes.
    const slope = (taken[0]!.to.y - taken[0]!.from.y) / (taken[0]!.to.x - taken[0]!.from.x);
    expect(slope).toBeCloseTo(-fit!.bound!.exponent, 12);
    expect(low).toBeLessThan(high);
  });

  it('marks decades of cycles, and round shares', () => {
    expect(plot.x.ticks.map(({ text }) => text)).toEqual(['1000', '1e4', '1e5', '1e6', '1e7']);
    for (const { at, text } of plot.x.ticks) expect(10 ** at).toBeCloseTo(Number(text), 6);
    expect(plot.y.ticks.length).toBeGreaterThan(3);
    for (const { at, text } of plot.y.ticks) expect(10 ** at).toBeCloseTo(Number(text), 9);
  });

  it('is drawn without a fit, and not of nothing', () => {
    const bare = lifePlot({ ...report, fit: null })!;
    expect([bare.dots.length, bare.lines.length]).toEqual([plot.dots.length, 0]);
    const one = lifePlot({ ...report, fit: null, lines: report.lines.slice(0, 1) })!;
    expect(one.x.low).toBeLessThan(one.x.high);
    expect(one.x.ticks.length).toBeGreaterThan(0);
    expect(lifePlot({ ...report, lines: [] })).toBeNull();
    const unknown = report.lines.map((line) => ({ ...line, share: null }));
    expect(lifePlot({ ...report, fit: null, lines: unknown })).toBeNull();
  });

  it('is told in two tables, the second only where there is a line', () => {
    const [coupons, lines] = lifeTables(report);
    expect(coupons!.rows.map((row) => row.at(-1))).toEqual(
      report.lines.map(({ runOut }) => (runOut ? 'yes' : 'no')),
    );
    expect(lines!.rows).toHaveLength(fit!.curve.length);
    expect(lifeTables({ ...report, fit: null })).toHaveLength(1);
  });
});
