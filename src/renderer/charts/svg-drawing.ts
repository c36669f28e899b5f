/**
 * A drawing of the page (SVG) painted on a canvas: each shape by the style that it has on paper. Loading it
 * as an image would lose the page's font, and with it the minus sign on a bare system.
 */
import { FONT, type Ink } from './ink.ts';
import type { Drawing } from './picture-file.ts';

const SHAPES = 'line, rect, path, polyline, polygon, circle, text';

const number = (element: Element, name: string): number => {
  const animated = (element as unknown as Record<string, SVGAnimatedLength | undefined>)[name];
  return animated?.baseVal?.value ?? 0;
};

function pathOf(shape: SVGGeometryElement): Path2D {
  const path = new Path2D();
  switch (shape.tagName) {
    case 'line':
      path.moveTo(number(shape, 'x1'), number(shape, 'y1'));
      path.lineTo(number(shape, 'x2'), number(shape, 'y2'));
      return path;
    case 'rect':
      path.rect(
        number(shape, 'x'),
        number(shape, 'y'),
        number(shape, 'width'),
        number(shape, 'height'),
      );
      return path;
    case 'circle':
      path.arc(number(shape, 'cx'), number(shape, 'cy'), number(shape, 'r'), 0, 2 * Math.PI);
      return path;
    case 'path':
      return new Path2D(shape.getAttribute('d') ?? '');
    default: {
      [...(shape as SVGPolylineElement).points].forEach(({ x, y }, i) => {
        if (i === 0) path.moveTo(x, y);
        else path.lineTo(x, y);
      });
      if (shape.tagName === 'polygon') path.closePath();
      return path;
    }
  }
}

/** A patterned ground: strokes to the right and up, inside the shape. */
function hatch(
  context: CanvasRenderingContext2D,
  path: Path2D,
  box: DOMRect,
  colour: string,
): void {
  context.save();
  context.clip(path);
  context.strokeStyle = colour;
  context.lineWidth = 1;
  context.setLineDash([]);
  context.beginPath();
  for (let at = box.x - box.height; at < box.x + box.width; at += 6) {
    context.moveTo(at, box.y + box.height);
    context.lineTo(at + box.height, box.y);
  }
  context.stroke();
  context.restore();
}

function paintText(context: CanvasRenderingContext2D, text: SVGTextElement): void {
  const style = getComputedStyle(text);
  context.font = `${style.fontWeight} ${style.fontSize} ${FONT}`;
  context.fillStyle = style.fill;
  context.textBaseline =
    style.dominantBaseline === 'middle' || style.dominantBaseline === 'central'
      ? 'middle'
      : 'alphabetic';
  context.textAlign =
    style.textAnchor === 'middle' ? 'center' : style.textAnchor === 'end' ? 'right' : 'left';
  const x = text.x.baseVal.numberOfItems > 0 ? text.x.baseVal.getItem(0).value : 0;
  const y = text.y.baseVal.numberOfItems > 0 ? text.y.baseVal.getItem(0).value : 0;
  const words = text.textContent ?? '';
  // A halo of the paper, where letters cross a line.
  if (style.stroke !== 'none') {
    context.strokeStyle = style.stroke;
    context.lineWidth = Number.parseFloat(style.strokeWidth) || 1;
    context.lineJoin = 'round';
    context.strokeText(words, x, y);
  }
  context.fillText(words, x, y);
}

function paintShape(context: CanvasRenderingContext2D, shape: SVGGeometryElement): void {
  const style = getComputedStyle(shape);
  if (style.display === 'none' || style.visibility === 'hidden') return;
  const path = pathOf(shape);
  context.globalAlpha = Number(style.opacity);
  if (style.fill.startsWith('url('))
    hatch(context, path, shape.getBBox(), style.stroke === 'none' ? style.color : style.stroke);
  else if (style.fill !== 'none') {
    context.globalAlpha = Number(style.opacity) * Number(style.fillOpacity);
    context.fillStyle = style.fill;
    context.fill(path);
  }
  if (style.stroke === 'none') return;
  context.globalAlpha = Number(style.opacity) * Number(style.strokeOpacity);
  context.strokeStyle = style.stroke;
  context.lineWidth = Number.parseFloat(style.strokeWidth) || 1;
  context.setLineDash(
    style.strokeDasharray === 'none'
      ? []
      : style.strokeDasharray.split(/[ ,]+/).map((part) => Number.parseFloat(part)),
  );
  context.stroke(path);
}

/** As it stands on the page, in the colours that the page has while it is painted. */
export function svgDrawing(svg: SVGSVGElement, axes: string): Drawing {
  const { width, height } = svg.getBoundingClientRect();
  return {
    axes,
    width,
    height,
    paint(context, _box, _ink: Ink) {
      for (const shape of svg.querySelectorAll<SVGGeometryElement>(SHAPES)) {
        if (shape.closest('defs') !== null) continue;
        const at = shape.getCTM();
        context.save();
        if (at) context.transform(at.a, at.b, at.c, at.d, at.e, at.f);
        if (shape.tagName === 'text') paintText(context, shape as unknown as SVGTextElement);
        else paintShape(context, shape);
        context.restore();
      }
    },
  };
}
