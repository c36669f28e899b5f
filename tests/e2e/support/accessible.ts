/** What axe does not look at. Each stands by itself, so that a browser can be given it as it is. */

/** Canvases that say too little, or whose figures cannot be read as a table. */
export const silentCanvases = (): string[] =>
  [
    ...document.querySelectorAll('canvas, svg.histogram, svg.gap-range-chart, svg.gap-ring'),
  ].flatMap((canvas) => {
    const label = canvas.getAttribute('aria-label') ?? '';
    const block = canvas.closest('.figure-block, .compare-plots, section');
    const table = block?.querySelector('details.figures, table') ?? null;
    return [
      ...(canvas.getAttribute('role') === 'img' ? [] : ['no picture to a screen reader']),
      ...(label.length > 20 ? [] : [`says only “${label}”`]),
      ...(table === null ? [`no table beside “${label.slice(0, 40)}”`] : []),
    ];
  });

/** Whatever still moves or fades. */
export const moving = (): string[] =>
  [...document.querySelectorAll('*')].flatMap((element) =>
    (['', '::before', '::after'] as const).flatMap((pseudo) => {
      const style = getComputedStyle(element, pseudo);
      const lasts = `${style.transitionDuration}, ${style.animationDuration}`
        .split(',')
        .some((one) => Number.parseFloat(one) > 0);
      return lasts ? [`${element.tagName}.${element.getAttribute('class')}${pseudo}`] : [];
    }),
  );

/** Fields in error that do not lead to the words about it. */
export const unlinkedErrors = (): string[] =>
  [...document.querySelectorAll('[aria-invalid="true"]')].flatMap((field) => {
    const ids = (
      field.getAttribute('aria-describedby') ??
      field.getAttribute('aria-errormessage') ??
      ''
    ).split(' ');
    const words = ids.map((id) => document.getElementById(id)?.textContent ?? '').join('');
    return words.trim() === '' ? [field.getAttribute('aria-label') ?? field.outerHTML] : [];
  });

/** What does not fit: the page would have to be scrolled sideways, or words are cut off with no way to them. */
export function cutOff(): string[] {
  const found: string[] = [];
  for (const scroller of [document.scrollingElement!, document.querySelector('main')!]) {
    const over = scroller.scrollWidth - scroller.clientWidth;
    if (over > 0) found.push(`${scroller.tagName} is ${over} wider than the window`);
  }
  // Controls that lie outside the window, though nothing they are in can be scrolled to them.
  const scrolls = (element: Element | null): boolean => {
    for (let at = element; at && at !== document.body; at = at.parentElement) {
      const { overflowX } = getComputedStyle(at);
      if (/auto|scroll/.test(overflowX) && at.scrollWidth > at.clientWidth) return true;
    }
    return false;
  };
  for (const control of document.querySelectorAll('button, input, select, summary, a, textarea')) {
    const { left, right, width } = control.getBoundingClientRect();
    if (width <= 1 || control.closest('.hidden')) continue;
    if ((right > innerWidth + 1 || left < -1) && !scrolls(control.parentElement)) {
      const name = control.getAttribute('aria-label') ?? control.textContent ?? '';
      found.push(`${control.tagName} “${name.trim().slice(0, 40)}” lies outside`);
    }
  }
  return found;
}
