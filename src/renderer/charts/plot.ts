/**
 * One chart on one canvas, outside the reactive graph: it is handed plain arrays and paints. Chart.js
 * draws the curves; axes, marks and labels are painted by the caller, before and after them, because
 * a drawing office wants to say where every label stands.
 */
import { Chart, LinearScale, LineController, LineElement, PointElement } from 'chart.js';
import type { Box, Point } from './place-labels.ts';

Chart.register(LineController, LineElement, PointElement, LinearScale);

export interface Curve {
  readonly points: Point[];
  readonly colour: string;
  readonly width: number;
  readonly dash: readonly number[];
}

export interface Axes {
  readonly xLow: number;
  readonly xHigh: number;
  readonly yLow: number;
  readonly yHigh: number;
}

export interface Painter {
  readonly context: CanvasRenderingContext2D;
  readonly area: Box;
  readonly x: (value: number) => number;
  readonly y: (value: number) => number;
}

export interface Plot {
  show(axes: Axes, curves: readonly Curve[]): void;
  /** Paints again what is there: a mark has moved, the curves have not. */
  repaint(): void;
  resize(width: number, height: number): void;
  /** The value under a pixel, null outside the plot. */
  xAt(pixel: number): number | null;
  destroy(): void;
}

export interface PlotOptions {
  readonly padding: { left: number; right: number; top: number; bottom: number };
  readonly under: (painter: Painter) => void;
  readonly over: (painter: Painter) => void;
}

export type MakePlot = (canvas: HTMLCanvasElement, options: PlotOptions) => Plot;
/** Pixels of a canvas for one of the page, where it is not drawn for the screen but for a file. */
export function densityOf(canvas: HTMLCanvasElement): number {
  const given = Number(canvas.dataset.density);
  return given > 0 ? given : window.devicePixelRatio || 1;
}

const nothing: Plot = {
  show: () => {},
  repaint: () => {},
  resize: () => {},
  xAt: () => null,
  destroy: () => {},
};

export function makePlot(canvas: HTMLCanvasElement, options: PlotOptions): Plot {
  const context = canvas.getContext('2d');
  // Without a canvas (a test's document has none) the data table beside it still tells everything.
  if (!context) return nothing;

  // Given the chart, not closing over it: it paints once while it is being built.
  const paint = (drawn: Chart<'line', Point[]>, what: (painter: Painter) => void): void => {
    const { x, y } = drawn.scales;
    if (!x || !y) return;
    context.save();
    what({
      context,
      area: drawn.chartArea,
      x: (value) => x.getPixelForValue(value),
      y: (value) => y.getPixelForValue(value),
    });
    context.restore();
  };
  const chart: Chart<'line', Point[]> = new Chart(context, {
    type: 'line',
    data: { datasets: [] },
    options: {
      animation: false,
      // Left out, it is that of the screen, whichever screen the window is moved to.
      ...(canvas.dataset.density ? { devicePixelRatio: densityOf(canvas) } : {}),
      responsive: false,
      maintainAspectRatio: false,
      parsing: false,
      normalized: true,
      events: [],
      layout: { padding: options.padding },
      elements: {
        point: { radius: 0, hitRadius: 0 },
        line: { tension: 0, borderJoinStyle: 'round' },
      },
      scales: {
        x: { type: 'linear', display: false },
        y: { type: 'linear', display: false },
      },
    },
    plugins: [
      {
        id: 'drawing',
        beforeDatasetsDraw: (drawn) => paint(drawn as Chart<'line', Point[]>, options.under),
        afterDatasetsDraw: (drawn) => paint(drawn as Chart<'line', Point[]>, options.over),
      },
    ],
  });

  return {
    show(axes, curves) {
      const { x, y } = chart.options.scales ?? {};
      Object.assign(x ?? {}, { min: axes.xLow, max: axes.xHigh });
      Object.assign(y ?? {}, { min: axes.yLow, max: axes.yHigh });
      chart.data.datasets = curves.map((curve) => ({
        data: curve.points,
        borderColor: curve.colour,
        borderWidth: curve.width,
        borderDash: [...curve.dash],
      }));
      chart.update('none');
    },
    repaint: () => chart.draw(),
    resize: (width, height) => chart.resize(width, height),
    xAt(pixel) {
      const { left, right } = chart.chartArea;
      if (pixel < left || pixel > right) return null;
      return chart.scales.x?.getValueForPixel(pixel) ?? null;
    },
    destroy: () => chart.destroy(),
  };
}
