/**
 * Every page and its views, as a person has them who has asked the system for something: forced colours, more
 * contrast, a page zoomed to 200 %, no motion. By axe (WCAG 2.2 A and AA), and by what axe cannot see.
 */
import type { BrowserContextOptions, Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { describeInBrowser } from './support/browser.ts';
import { openApp } from './support/open-app.ts';
import { violations } from './support/violations.ts';

interface State {
  readonly name: string;
  go(page: Page): Promise<void>;
}

const press = (name: string, keys: string, seen: (page: Page) => Promise<unknown>): State => ({
  name,
  async go(page) {
    await page.keyboard.press(keys);
    await seen(page);
  },
});
const view = (name: string): State => ({
  name: `Size, ${name}`,
  go: (page) => page.getByRole('button', { name, exact: true }).click(),
});

/** In the order in which they are walked through. */
const states: readonly State[] = [
  press('Joints', 'Control+1', (page) =>
    page.getByRole('button', { name: 'Landing leg', exact: true }).waitFor(),
  ),
  {
    name: 'Size',
    async go(page) {
      await page.getByRole('button', { name: 'Landing leg', exact: true }).click();
      await page.getByRole('list', { name: 'Margins, lowest first' }).waitFor();
    },
  },
  view('Find'),
  view('What matters'),
  view('Scatter'),
  view('Sizes'),
  view('Springs'),
  view('Stress'),
  press('Compare', 'Control+3', (page) => page.locator('main').waitFor()),
  press('Gap check', 'Control+4', (page) =>
    page.getByRole('button', { name: 'Start measuring' }).waitFor(),
  ),
  press('Coupons', 'Control+5', (page) => page.getByRole('heading').first().waitFor()),
  press('Keys', 'F1', (page) => page.getByRole('dialog').waitFor()),
];

/** Figures outside their box: what would make a person scroll the whole page sideways. */
const sideways = (page: Page): Promise<number> =>
  page.evaluate(() => (document.scrollingElement?.scrollWidth ?? 0) - window.innerWidth);

/** Canvases that say nothing to who cannot see them. */
const silent = (page: Page): Promise<string[]> =>
  page.locator('canvas').evaluateAll((canvases) =>
    canvases
      .map((canvas) => canvas.closest('[role="img"], [role="application"]') ?? canvas)
      .filter((spoken) => (spoken.getAttribute('aria-label') ?? '').length < 20)
      .map(({ outerHTML }) => outerHTML.slice(0, 200)),
  );

async function walk(
  context: BrowserContextOptions,
  look: (page: Page) => Promise<object>,
): Promise<Record<string, object>> {
  const app = await openApp({ context });
  try {
    const found: Record<string, object> = {};
    for (const state of states) {
      await state.go(app.page);
      found[state.name] = await look(app.page);
    }
    await app.page.keyboard.press('Escape');
    return found;
  } finally {
    await app.close();
  }
}

const everywhere = (value: object): Record<string, object> =>
  Object.fromEntries(states.map(({ name }) => [name, value]));

describeInBrowser('every page', () => {
  it.each([
    ['dark', { colorScheme: 'dark' }],
    ['in forced colours', { forcedColors: 'active', colorScheme: 'dark' }],
    ['with more contrast', { contrast: 'more' }],
  ] as const)('is without violations, %s', async (_name, context) => {
    const found = await walk(context, async (page) => ({
      axe: await violations(page),
      silent: await silent(page),
    }));
    expect(found).toEqual(everywhere({ axe: [], silent: [] }));
  });

  it('fits a page at 200 %', async () => {
    const viewport = { width: 640, height: 400 };
    const found = await walk({ viewport }, async (page) => ({ over: await sideways(page) }));
    expect(found).toEqual(everywhere({ over: 0 }));
  });

  it('keeps still where motion is not wanted', async () => {
    const found = await walk({ reducedMotion: 'reduce' }, (page) =>
      page.evaluate(() => ({
        moving: [...document.querySelectorAll('*')]
          .filter((one) => {
            const { transitionDuration, animationDuration } = getComputedStyle(one);
            const longest = (text: string): number =>
              Math.max(...text.split(',').map((part) => Number.parseFloat(part)));
            // A step of a millisecond only puts a word on the page later.
            return longest(transitionDuration) > 0 || longest(animationDuration) > 0.001;
          })
          .map(({ outerHTML }) => outerHTML.slice(0, 120)),
      })),
    );
    expect(found).toEqual(everywhere({ moving: [] }));
  });

  it('paints its curves in the colours that the system forces', async () => {
    const app = await openApp({ context: { forcedColors: 'active', colorScheme: 'dark' } });
    try {
      const { page } = app;
      await page.getByRole('button', { name: 'Landing leg', exact: true }).click();
      const canvas = page.locator('canvas').first();
      await canvas.waitFor();
      const colours = await page.evaluate(() => {
        const probe = document.createElement('span');
        probe.style.cssText = 'forced-color-adjust: none';
        document.body.append(probe);
        const read = (name: string): string => {
          probe.style.color = name;
          return getComputedStyle(probe).color;
        };
        return { canvas: read('Canvas'), link: read('LinkText'), shear: read('var(--shear)') };
      });
      expect(colours.shear).toBe(colours.link);
      expect(colours.shear).not.toBe(colours.canvas);
    } finally {
      await app.close();
    }
  });
});
