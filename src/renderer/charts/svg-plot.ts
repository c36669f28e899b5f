/** A chart in lines, for paper: the same drawing that `plot.ts` puts on a canvas. */
import type { Box } from './place-labels.ts';
import type { Axes, Curve, MakePlot, Painter } from './plot.ts';
import { makeSvgPen, svgElement } from './svg-pen.ts';

let made = 0;

/** Curves may leave the frame by this much, pixels: half of the widest line. */
const SLACK = 1.5;

/** @param svg drawn into anew at each `show` */
export const svgPlotInto =
  (svg: SVGSVGElement, size: { readonly width: number; readonly height: number }): MakePlot =>
  (_canvas, { padding, under, over }) => {
    made += 1;
    const clip = `paper-plot-${made}`;

    function draw(axes: Axes, curves: readonly Curve[]): void {
      const area: Box = {
        left: padding.left,
        top: padding.top,
        right: size.width - padding.right,
        bottom: size.height - padding.bottom,
      };
      const x = (value: number): number =>
        area.left + ((value - axes.xLow) / (axes.xHigh - axes.xLow)) * (area.right - area.left);
      const y = (value: number): number =>
        area.bottom - ((value - axes.yLow) / (axes.yHigh - axes.yLow)) * (area.bottom - area.top);
      svg.replaceChildren();
      const painter: Painter = { context: makeSvgPen(svg), area, x, y };
      under(painter);
      const frame = svgElement('clipPath', { id: clip });
      frame.append(
        svgElement('rect', {
          x: area.left - SLACK,
          y: area.top - SLACK,
          width: area.right - area.left + 2 * SLACK,
          height: area.bottom - area.top + 2 * SLACK,
        }),
      );
      const lines = svgElement('g', { 'clip-path': `url(#${clip})` });
      // The first stands on top.
      for (const { points, colour, width, dash } of curves.toReversed()) {
        lines.append(
          svgElement('polyline', {
            points: points.map((at) => `${x(at.x).toFixed(2)},${y(at.y).toFixed(2)}`).join(' '),
            fill: 'none',
            stroke: colour,
            'stroke-width': width,
            'stroke-linejoin': 'round',
            ...(dash.length === 0 ? {} : { 'stroke-dasharray': dash.join(' ') }),
          }),
        );
      }
      svg.append(frame, lines);
      over(painter);
    }
    return {
      show: draw,
      repaint: () => {},
      resize: () => {},
      xAt: () => null,
      destroy: () => {},
    };
  };
