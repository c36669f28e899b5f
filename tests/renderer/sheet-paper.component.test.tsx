/** How a column of paper is laid on pages, and the pen that writes charts in lines. */
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { makeSvgPen, svgElement } from '../../src/renderer/charts/svg-pen.ts';
import { type PaperPage, paginate } from '../../src/renderer/sheet/paginate.ts';

/** Heights of elements, as their `data-h` says; a container is as high as what it holds. */
function heightOf(element: Element): number {
  const own = element.getAttribute('data-h');
  if (own !== null) return Number(own);
  return [...element.children].reduce((sum, child) => sum + heightOf(child), 0);
}
/** Where it begins, in a column that begins at 0. */
function topOf(element: Element): number {
  let top = 0;
  for (
    let here = element;
    here.parentElement && !here.hasAttribute('data-column');
    here = here.parentElement
  ) {
    for (const before of here.parentElement.children) {
      if (before === here) break;
      top += heightOf(before);
    }
  }
  return top;
}
beforeEach(() => {
  vi.spyOn(Element.prototype, 'getBoundingClientRect').mockImplementation(function (this: Element) {
    const top = topOf(this);
    return { top, bottom: top + heightOf(this) } as DOMRect;
  });
  vi.spyOn(HTMLCanvasElement.prototype, 'getContext').mockReturnValue(null);
  return () => vi.restoreAllMocks();
});

const lay = (html: string, height = 100): PaperPage[] => {
  document.body.innerHTML = `<div data-column>${html}</div>`;
  return paginate(document.body.firstElementChild as HTMLElement, height);
};
const p = (name: string, h: number): string => `<p data-h="${h}">${name}</p>`;
const table = (rows: number, h = 10): string =>
  `<table><thead><tr data-h="10"><th>head</th></tr></thead><tbody>${Array.from(
    { length: rows },
    (_, i) => `<tr data-h="${h}"><td>r${i + 1}</td></tr>`,
  ).join('')}</tbody></table>`;
const textOf = (pages: readonly PaperPage[]): string[] =>
  pages.map(({ nodes }) => nodes.map((node) => node.textContent).join('|'));

describe('paper', () => {
  it('is filled with whole blocks in their order', () => {
    expect(textOf(lay(p('a', 40) + p('b', 60) + p('c', 1) + p('d', 99)))).toEqual(['a|b', 'c|d']);
  });

  it('begins a page where a part begins, and tells each page what it is about', () => {
    const pages = lay(
      `${p('a', 10)}<header data-h="10" data-part="Leg" data-page="">leg</header>${p('b', 80)}${p('c', 50)}`,
    );
    expect(textOf(pages)).toEqual(['a', 'leg|b', 'c']);
    expect(pages.map(({ part }) => part)).toEqual(['', 'Leg', 'Leg']);
  });

  it('leaves no heading at the foot without what it is the heading of', () => {
    const heads = '<h2 data-h="10">big</h2><h3 data-h="10">small</h3>';
    expect(textOf(lay(p('a', 75) + heads + p('b', 20)))).toEqual(['a', 'big|small|b']);
    expect(textOf(lay(p('a', 60) + heads + p('b', 20)))).toEqual(['a|big|small|b']);
  });

  it('splits a table between rows, its head on each page', () => {
    const pages = lay(p('a', 50) + table(12));
    expect(textOf(pages)).toEqual(['a|headr1r2r3r4', 'headr5r6r7r8r9r10r11r12']);
    for (const { nodes } of pages.slice(1)) {
      expect((nodes[0] as HTMLElement).querySelector('thead th')?.textContent).toBe('head');
    }
  });

  it('takes no table to the foot for one row alone, nor its last row overleaf alone', () => {
    expect(textOf(lay(p('a', 75) + table(6)))).toEqual(['a', 'headr1r2r3r4r5r6']);
    expect(textOf(lay(p('a', 40) + table(6)))[1]).toBe('headr5r6');
  });

  it('keeps rows together that are one group, the last not alone', () => {
    const group = (name: string): string =>
      `<tbody><tr data-h="20"><td>${name}</td></tr><tr data-h="10"><td>${name}'</td></tr></tbody>`;
    const pages = lay(
      `<table><thead><tr data-h="10"><th>head</th></tr></thead>${['a', 'b', 'c', 'd'].map(group).join('')}</table>`,
    );
    expect(textOf(pages)).toEqual(["headaa'bb'", "headcc'dd'"]);
  });

  it('lays out by its parts what is taller than any page, a shell around them on each', () => {
    const pages = lay(`<article class="card">${p('a', 60)}${p('b', 60)}${p('c', 30)}</article>`);
    expect(textOf(pages)).toEqual(['a', 'bc']);
    for (const { nodes } of pages) expect((nodes[0] as HTMLElement).className).toBe('card');
  });

  it('loses nothing, whatever the heights', () => {
    const html = Array.from({ length: 60 }, (_, i) =>
      i % 7 === 0
        ? `<h2 data-h="9">h${i};</h2>`
        : i % 5 === 0
          ? table(i)
          : p(`p${i};`, (i * 37) % 95),
    ).join('');
    document.body.innerHTML = html;
    const before = [...document.body.querySelectorAll('h2, p, td')].map((one) => one.textContent);
    const pages = lay(html);
    const after = pages.flatMap(({ nodes }) =>
      nodes.flatMap((node) => {
        const element = node as HTMLElement;
        const inside = [...element.querySelectorAll('td')];
        return inside.length > 0 ? inside.map((one) => one.textContent) : [element.textContent];
      }),
    );
    expect(after).toEqual(before);
    for (const { nodes } of pages) {
      const last = nodes.at(-1) as HTMLElement;
      expect(last.localName).not.toBe('h2');
      const all = nodes.reduce((sum, node) => sum + heightOf(node as HTMLElement), 0);
      expect(all).toBeLessThanOrEqual(100);
    }
  });
});

describe('the pen of lines', () => {
  it('writes down strokes, letters with their halo, and boxes', () => {
    const svg = svgElement('svg');
    const pen = makeSvgPen(svg);
    pen.strokeStyle = 'red';
    pen.lineWidth = 2;
    pen.setLineDash([3, 1]);
    pen.beginPath();
    pen.moveTo(1, 2);
    pen.lineTo(3.456, 4);
    pen.stroke();
    pen.setLineDash([]);
    pen.font = '600 13px Some';
    pen.textAlign = 'right';
    pen.strokeStyle = 'white';
    pen.lineWidth = 4;
    pen.strokeText('peak', 9, 9);
    pen.fillStyle = 'blue';
    pen.fillText('peak', 9, 9);
    pen.fillText('bare', 9, 9);
    pen.fillRect(0, 0, 5, 6);
    const [path, haloed, bare, rect] = svg.children;
    expect(path?.getAttribute('d')).toBe('M1 2L3.46 4');
    expect(path?.getAttribute('stroke-dasharray')).toBe('3 1');
    // Once, so that who searches the paper finds it once.
    expect(svg.textContent).toBe('peakbare');
    expect(haloed?.getAttribute('paint-order')).toBe('stroke');
    expect(haloed?.getAttribute('text-anchor')).toBe('end');
    expect(haloed?.getAttribute('font-weight')).toBe('600');
    expect(bare?.hasAttribute('stroke')).toBe(false);
    expect(rect?.getAttribute('fill')).toBe('blue');
  });
});
