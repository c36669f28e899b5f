/**
 * A canvas context that writes down what is drawn as lines and letters, for paper: the charts draw with it
 * as they do on the screen, and what comes out is sharp at any size. It knows the strokes that `pen.ts`
 * and the charts make, no more.
 */
const SVG = 'http://www.w3.org/2000/svg';

export function svgElement<K extends keyof SVGElementTagNameMap>(
  name: K,
  attributes: Readonly<Record<string, string | number>> = {},
): SVGElementTagNameMap[K] {
  const element = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, String(value));
  return element;
}

const round = (value: number): number => Math.round(value * 100) / 100;
const anchors: Readonly<Record<string, string>> = { left: 'start', center: 'middle', right: 'end' };

/** Widths are those of the real letters where there is a canvas to ask. */
const ruler = (): CanvasRenderingContext2D | null =>
  document.createElement('canvas').getContext('2d');
/** Letters of the page's font are about half as wide as high. */
const SHARE = 0.5;

/** `600 13px name, name` as the attributes of a text. */
function fontAttributes(font: string): { weight: string; size: string } {
  const [, weight = '400', size = '13'] = /^(\d+) ([\d.]+)px/.exec(font) ?? [];
  return { weight, size };
}

export function makeSvgPen(into: SVGElement): CanvasRenderingContext2D {
  const measuring = ruler();
  let path = '';
  let dash: readonly number[] = [];
  let halo: Readonly<Record<string, string | number>> = {};
  const put = (element: SVGElement): void => void into.append(element);

  const stroked = (style: typeof pen): Record<string, string | number> => ({
    stroke: style.strokeStyle,
    'stroke-width': style.lineWidth,
    'stroke-linejoin': style.lineJoin,
    ...(dash.length === 0 ? {} : { 'stroke-dasharray': dash.join(' ') }),
  });
  const letters = (text: string, x: number, y: number): SVGTextElement => {
    const { weight, size } = fontAttributes(pen.font);
    const element = svgElement('text', {
      x: round(x),
      y: round(y),
      'text-anchor': anchors[pen.textAlign] ?? 'start',
      'dominant-baseline': 'central',
      'font-weight': weight,
      'font-size': size,
    });
    element.textContent = text;
    return element;
  };

  const pen = {
    fillStyle: '#000',
    strokeStyle: '#000',
    lineWidth: 1,
    lineJoin: 'miter',
    font: '400 13px sans-serif',
    textAlign: 'left',
    textBaseline: 'middle',
    save: () => {},
    restore: () => {},
    beginPath: () => {
      path = '';
    },
    moveTo: (x: number, y: number) => {
      path += `M${round(x)} ${round(y)}`;
    },
    lineTo: (x: number, y: number) => {
      path += `L${round(x)} ${round(y)}`;
    },
    /** Whole circles only. */
    arc: (x: number, y: number, r: number) => {
      path += `M${round(x - r)} ${round(y)}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0Z`;
    },
    setLineDash: (next: readonly number[]) => {
      dash = [...next];
    },
    stroke: () => put(svgElement('path', { d: path, fill: 'none', ...stroked(pen) })),
    fill: () => put(svgElement('path', { d: path, fill: pen.fillStyle })),
    fillRect: (x: number, y: number, width: number, height: number) =>
      put(
        svgElement('rect', {
          x: round(x),
          y: round(y),
          width: round(Math.max(0, width)),
          height: round(Math.max(0, height)),
          fill: pen.fillStyle,
        }),
      ),
    fillText: (text: string, x: number, y: number) => {
      const element = letters(text, x, y);
      element.setAttribute('fill', pen.fillStyle);
      for (const [key, value] of Object.entries(halo)) element.setAttribute(key, String(value));
      halo = {};
      put(element);
    },
    /** The halo of the letters that follow: drawn under them, so that the paper holds them once. */
    strokeText: () => {
      halo = { ...stroked(pen), 'paint-order': 'stroke' };
    },
    measureText: (text: string) => {
      const { size } = fontAttributes(pen.font);
      if (!measuring) return { width: text.length * SHARE * Number(size) };
      measuring.font = pen.font;
      return { width: measuring.measureText(text).width };
    },
  };
  return pen as unknown as CanvasRenderingContext2D;
}
