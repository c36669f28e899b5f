/** Goes round by the tab key and looks at each stop: is it seen that the focus is there, does anything lie over it. */
import type { Page } from 'playwright-core';

interface Stop {
  readonly name: string;
  readonly seen: boolean;
  readonly covered: boolean;
}

/** Of what has the focus; null for the page itself. */
function lookAtFocus(): Stop | null {
  const here = document.activeElement;
  if (!here || here === document.body) return null;
  const name = `${here.tagName} ${here.getAttribute('aria-label') ?? here.textContent?.trim().slice(0, 30) ?? ''}`;
  // A switch that is drawn by its label shows the focus there; the handle of the section in its grip.
  const shows = [
    here,
    here.parentElement,
    here.nextElementSibling,
    here.closest('label'),
    here.querySelector('.handle-grip'),
  ];
  const seen = shows.some((one) =>
    ['', '::after'].some((pseudo) => {
      if (!one) return false;
      const style = getComputedStyle(one, pseudo);
      const outlined = style.outlineStyle !== 'none' && Number.parseFloat(style.outlineWidth) >= 1;
      return outlined || (one.matches('.handle-grip') && Number.parseFloat(style.strokeWidth) >= 3);
    }),
  );
  const { left, right, top, bottom } = here.getBoundingClientRect();
  // Not entirely hidden: one of nine places of it is on top.
  let covered = true;
  for (const x of [0.1, 0.5, 0.9]) {
    for (const y of [0.1, 0.5, 0.9]) {
      const on = document.elementFromPoint(left + x * (right - left), top + y * (bottom - top));
      if (
        on &&
        (on === here ||
          here.contains(on) ||
          on.contains(here) ||
          on.closest('label')?.contains(here))
      ) {
        covered = false;
      }
    }
  }
  return { name, seen, covered };
}

export async function tabThrough(
  page: Page,
  most: number,
): Promise<{ wrong: string[]; stops: number }> {
  const wrong: string[] = [];
  let stops = 0;
  for (let i = 0; i < most; i++) {
    await page.keyboard.press('Tab');
    const stop = await page.evaluate(lookAtFocus);
    if (!stop) continue;
    stops += 1;
    if (!stop.seen) wrong.push(`${stop.name} does not show its focus`);
    if (stop.covered) wrong.push(`${stop.name} is covered`);
  }
  return { wrong, stops };
}
