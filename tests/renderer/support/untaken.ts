/** Plots and tables of a page that cannot be taken out of it: each needs a control of its own at its head. */

/** The figures behind a plot, which the plot's own control gives; what is printed; what explains a figure. */
const ELSEWHERE = '.figures-sheet, .bench-card, .test-sheet, .working, dialog';
/** Drawings that say how something is built, and hold no figures. */
const SKETCHES = '.section, .spring-sketch, .plies, .mark, .domain-mark';

const csv = '[data-takes="csv"]';
const png = '[data-takes="png"]';

/** In the order of the page: a control serves the one plot, and the one table, that follow it in its section. */
export function untaken(root: Element): string[] {
  const missing: string[] = [];
  let free = { csv: false, png: false };
  const nameOf = (one: Element): string =>
    one.getAttribute('aria-label') ??
    one.querySelector('caption')?.textContent?.trim() ??
    `${one.tagName.toLowerCase()}.${one.getAttribute('class') ?? ''}`;
  for (const one of root.querySelectorAll('*')) {
    if (one.closest(ELSEWHERE)) continue;
    if (one.matches('section')) free = { csv: false, png: false };
    if (one.matches(csv)) free.csv = true;
    if (one.matches(png)) free.png = true;
    if (one.matches('table')) {
      const own = one.querySelector(`caption ${csv}, thead ${csv}`) !== null;
      if (!own && !free.csv) missing.push(nameOf(one));
      if (!own) free.csv = false;
    }
    if (one.matches('canvas, svg[role="img"]') && !one.matches(SKETCHES)) {
      if (!free.csv || !free.png) missing.push(nameOf(one));
      free = { csv: false, png: false };
    }
  }
  return missing;
}

/** How many plots and tables there are to be taken. */
export const takable = (root: Element): number =>
  [...root.querySelectorAll('table, canvas, svg[role="img"]')].filter(
    (one) => !one.closest(ELSEWHERE) && !one.matches(SKETCHES),
  ).length;
