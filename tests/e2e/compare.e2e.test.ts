/** Single against double lap, as a designer asks: what more does it carry, and why. */
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, it, vi } from 'vitest';
import { root } from '../../src/launch/root.mjs';
import { describeInBrowser } from './support/browser.ts';
import { openApp } from './support/open-app.ts';
import { violations } from './support/violations.ts';

/** Pictures for a person to look at; `LAPWRIGHT_PICTURES=docs` renews those of the documents. */
const pictures = join(root, process.env.LAPWRIGHT_PICTURES ?? 'tests/artefacts');
mkdirSync(pictures, { recursive: true });
const forDocuments = process.env.LAPWRIGHT_PICTURES !== undefined;
const picture = (page: Page, name: string): Promise<Buffer> =>
  page.screenshot({ path: join(pictures, `${name}.png`) });

const sizes = [
  { width: 1280, height: 800 },
  { width: 1920, height: 1080 },
];

/** The figures of one row, column by column. */
const cells = (page: Page, label: string): Promise<string[]> =>
  page
    .getByRole('row')
    .filter({ has: page.getByRole('rowheader', { name: label }) })
    .getByRole('cell')
    .allTextContents();
const factor = (text = ''): number => Number(/× ([\d.]+)/.exec(text)?.[1]);

describeInBrowser('the landing leg and its double lap at equal overlap', () => {
  it('says that the double lap carries clearly more, and shows why', async () => {
    const app = await openApp({ viewport: sizes[0]! });
    try {
      const { page } = app;
      await page.getByRole('button', { name: 'Landing leg', exact: true }).waitFor();
      await page.getByRole('button', { name: 'Landing leg', exact: true }).click();
      await page.getByRole('heading', { name: 'Size Landing leg' }).waitFor();
      await page.keyboard.press('Control+3');
      await page.getByRole('button', { name: 'Double lap at equal overlap' }).click();
      const sentence = page.getByText(/The double lap carries .* times the load of the single lap/);
      await sentence.waitFor({ timeout: 60_000 });
      expect(await sentence.textContent()).toMatch(/two bonds share the load/);

      const [single, double] = (await cells(page, 'bond fails in shear at')).map(factor);
      // Two bonds of the same length: about twice, and a little more for the larger outer one.
      expect(double! / single!).toBeGreaterThan(1.8);
      expect(double! / single!).toBeLessThan(3);
      const area = (await cells(page, 'bonded area')).map((text) => Number.parseFloat(text));
      expect(area[1]! / area[0]!).toBeGreaterThan(1.8);
      const lowest = await cells(page, 'lowest margin');
      expect(lowest[0]).toMatch(/−0\.\d\dfails/);
      expect(lowest[1]).toMatch(/\+0\.\d\dholds.*best/);

      await page.getByRole('button', { name: 'Add a column' }).click();
      await page.getByRole('button', { name: 'Double lap at equal margin' }).click();
      // Equal margin is had with less overlap.
      await page.getByRole('textbox', { name: 'overlap, C' }).waitFor({ timeout: 60_000 });
      const third = page.getByRole('textbox', { name: 'overlap, C' });
      expect(Number(await third.inputValue())).toBeLessThan(14);
      await vi.waitFor(
        async () =>
          expect(factor((await cells(page, 'bond fails in shear at'))[2])).toBeGreaterThan(0),
        { timeout: 60_000 },
      );
      // Saved with the project, to be found again.
      await page.getByText('changes not saved').waitFor();

      const sees = async (scheme: 'light' | 'dark'): Promise<void> => {
        await page.emulateMedia({ colorScheme: scheme });
        for (const size of sizes) {
          await page.setViewportSize(size);
          const wide = await page.evaluate(() => {
            const main = document.querySelector('main')!;
            return main.scrollWidth - main.clientWidth;
          });
          expect(wide).toBe(0);
          await page.mouse.move(2, 2);
          const name = `compare-${size.width}-${scheme}`;
          if (!forDocuments || size.width === 1280) {
            await picture(page, forDocuments ? `compare-${scheme}` : name);
          }
        }
        expect(await violations(page)).toEqual([]);
        if (forDocuments) return;
        await page.setViewportSize(sizes[0]!);
        await page.getByRole('radio', { name: 'from the mouth' }).check();
        await page.getByRole('button', { name: 'Add a column' }).click();
        await picture(page, `compare-add-${scheme}`);
        expect(await violations(page)).toEqual([]);
        await page.keyboard.press('Escape');
        await page.getByRole('radio', { name: 'from the root' }).check();
        for (const label of ['peak shear', 'adhesive volume']) {
          await page.getByRole('rowheader', { name: label }).scrollIntoViewIfNeeded();
          await picture(page, `compare-${label.replace(' ', '-')}-${scheme}`);
        }
        await page.evaluate(() => document.querySelector('main')!.scrollTo(0, 0));
      };
      await sees('light');
      await sees('dark');
      expect(app.problems).toEqual([]);
    } finally {
      await app.close();
    }
  }, 300_000);
});
