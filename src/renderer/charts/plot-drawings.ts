/** Each kind of chart as the drawing of a picture file: its own painter, at the size of the file. */
import type { SizingReport, SweepReport } from '../../shared/reports.ts';
import { makeBondChart } from './bond-chart.ts';
import type { BondCurve, BondPlot } from './bond-picture.ts';
import { makeCompareChart } from './compare-chart.ts';
import type { ComparePlot } from './compare-data.ts';
import { type DotPlot, makeDotChart } from './dot-chart.ts';
import { makeMapChart } from './map-chart.ts';
import { type Field, type Quantity, worstSpot } from './map-data.ts';
import { type Box, chartDrawing, type Drawing, type LegendLine } from './picture-file.ts';
import { makeSizingChart } from './sizing-chart.ts';
import { makeSweepChart } from './sweep-chart.ts';

/** Left of a plot, and right of it for the labels that stand past the mouth. */
const LEFT = 64;
const RIGHT = 150;

/** The overlap over the width of the picture. */
const along = (length: number, { width, height }: Box) => ({
  left: LEFT,
  scale: (width - LEFT - RIGHT) / Math.max(length, 1e-9),
  width,
  height,
});

const legendOf = (curves: readonly BondCurve[]): LegendLine[] =>
  curves.map(({ name, colour, dash, width }) => ({ name, colour, dash, width }));

export const bondDrawing = (plot: BondPlot, axes: string): Drawing =>
  chartDrawing(
    makeBondChart,
    (ink, box) => ({ ...plot, foot: true, ink, view: along(plot.x.at(-1) ?? 0, box) }),
    { axes, legend: legendOf(plot.curves) },
  );

/** The place that is read is the worst one: there the figure of the picture stands. */
export const mapDrawing = (field: Field, quantity: Quantity, axes: string): Drawing =>
  chartDrawing(
    (canvas) => makeMapChart(canvas, () => {}),
    (ink, box) => ({
      field,
      quantity,
      spot: worstSpot(field, quantity),
      foot: true,
      ink,
      view: along(field.x.at(-1) ?? 0, box),
    }),
    { axes },
  );

export const compareDrawing = (
  plot: ComparePlot,
  names: ReadonlyMap<string, string>,
  axes: string,
): Drawing =>
  chartDrawing(makeCompareChart, (ink, box) => ({ ...plot, ...box, ink }), {
    axes,
    // The letter of its column begins the name of a curve; on a sheet of its own it needs the joint.
    legend: legendOf(plot.curves).map((line) => {
      const joint = names.get(line.name.split(' ')[0] ?? '');
      return joint === undefined ? line : { ...line, name: `${line.name}, ${joint}` };
    }),
  });

export const dotDrawing = (plot: DotPlot, axes: string): Drawing =>
  chartDrawing(makeDotChart, (ink, box) => ({ ...plot, ...box, ink }), { axes });

export const sizingDrawing = (report: SizingReport, axes: string): Drawing =>
  chartDrawing(makeSizingChart, (ink, box) => ({ report, ink, left: LEFT, ...box }), { axes });

export interface SweptNow {
  readonly sweep: SweepReport;
  readonly target: number;
  readonly present: number;
  readonly strength: number | null;
}

export const sweepDrawing = (now: SweptNow, axes: string): Drawing =>
  chartDrawing(makeSweepChart, (ink, box) => ({ ...now, ink, left: LEFT, ...box }), { axes });
