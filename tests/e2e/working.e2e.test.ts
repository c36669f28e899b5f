/** From a figure to its working and back, without a mouse; by axe in every dress of the page. */
import type { BrowserContextOptions, Locator, Page } from 'playwright-core';
import { afterEach, describe, expect, it } from 'vitest';
import { describeInBrowser } from './support/browser.ts';
import { type OpenedApp, openApp } from './support/open-app.ts';
import { violations } from './support/violations.ts';

const sheet = (page: Page): Locator => page.locator('section#working');
const focused = (page: Page): Promise<string> =>
  page.evaluate(() =>
    document.activeElement === document.body ? '' : (document.activeElement?.textContent ?? ''),
  );

/** Tabs on until the focus is on what matches; says where it ended when it never gets there. */
async function tabTo(page: Page, wanted: RegExp): Promise<void> {
  for (let step = 0; step < 120; step += 1) {
    if (wanted.test(await focused(page))) return;
    await page.keyboard.press('Tab');
  }
  expect(await focused(page)).toMatch(wanted);
}

describeInBrowser('a working', () => {
  let app: OpenedApp;
  afterEach(() => app.close());
  const open = async (context: BrowserContextOptions = {}): Promise<Page> => {
    app = await openApp({ viewport: { width: 1280, height: 800 }, context });
    const { page } = app;
    await page.getByRole('button', { name: 'Boom root', exact: true }).focus();
    await page.keyboard.press('Enter');
    await page.getByRole('list', { name: 'Margins, lowest first' }).waitFor();
    return page;
  };

  it('is reached from a margin by keys alone, and left by Escape', async () => {
    const page = await open();
    await tabTo(page, /^[+−]\d+\.\d\d\s*, .*working$/);
    const figure = await focused(page);
    await page.keyboard.press('Enter');
    await sheet(page).getByRole('article').first().waitFor();
    // The last card ends in the figure that was asked about.
    const result = await sheet(page).locator('.card-result').last().textContent();
    const margin = Number(figure.slice(0, 5).replace('−', '-'));
    const said = Number(/= (−?[\d.]+)/.exec(result ?? '')?.[1]?.replace('−', '-'));
    // The list has two decimals, the card more.
    expect(Math.abs(said - margin)).toBeLessThan(0.0051);
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('working');
    await page.keyboard.press('Escape');
    await sheet(page).waitFor({ state: 'detached' });
    expect(await focused(page)).toBe(figure);
    expect(app.problems).toEqual([]);
  });

  it('is reached from the peaks of both curves, and follows the overlap', async () => {
    const page = await open();
    await tabTo(page, /^outer peak [\d.]+\s* MPa shear/);
    await page.keyboard.press('Enter');
    await sheet(page).getByRole('article').first().waitFor();
    const before = await sheet(page).textContent();
    await page.getByRole('textbox', { name: 'Overlap' }).fill('38');
    await page.waitForFunction(
      (text) => document.querySelector('section#working')?.textContent !== text,
      before,
    );
    await page.keyboard.press('Escape');
    await page.getByRole('button', { name: /outer peak [\d.]+ MPa peel/ }).press('Enter');
    await sheet(page).getByRole('article').first().waitFor();
    expect(app.problems).toEqual([]);
  });

  describe.each([
    ['light', { colorScheme: 'light' }],
    ['dark', { colorScheme: 'dark' }],
    ['forced colours', { forcedColors: 'active' }],
  ] as const)('in %s', (_name, context) => {
    it('has nothing for axe to find, hides no control and fits the window', async () => {
      const page = await open(context);
      await page.locator('.margin .reading').first().click();
      await sheet(page).getByRole('article').first().waitFor();
      expect(await violations(page)).toEqual([]);
      const covered = await page.evaluate(() => {
        const left = document.querySelector('#working')!.getBoundingClientRect().left;
        return [...document.querySelectorAll('.figures-column button, .figures-column input')]
          .filter((one) => one.getBoundingClientRect().right > left + 1)
          .map((one) => one.textContent);
      });
      expect(covered).toEqual([]);
      const wide = await sheet(page).evaluate((one) => one.scrollWidth - one.clientWidth);
      expect(wide).toBeLessThanOrEqual(0);
      expect(app.problems).toEqual([]);
    });
  });
});

describeInBrowser('the bond unrolled', () => {
  it('is read with the arrow keys', async () => {
    const app = await openApp({ viewport: { width: 1280, height: 800 } });
    try {
      const { page } = app;
      await page.getByRole('button', { name: 'Boom root', exact: true }).click();
      await page.getByRole('button', { name: 'Around the bond' }).press('Enter');
      const map = page.getByRole('application', { name: /^shear around/ });
      await map.waitFor();
      const reading = map.locator('output');
      expect(await reading.textContent()).toMatch(/MPa at [\d.]+ mm, −?\d+°$/);
      await map.focus();
      const before = await reading.textContent();
      await page.keyboard.press('ArrowLeft');
      expect(await reading.textContent()).not.toBe(before);
      await page.keyboard.press('Home');
      expect(await reading.textContent()).toBe(before);
      expect(app.problems).toEqual([]);
    } finally {
      await app.close();
    }
  });
});
