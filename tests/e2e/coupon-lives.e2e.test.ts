/** Lives on the Coupons page: from a set to the adhesive's S-N line, and to the margin that rests on it. */
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { root } from '../../src/launch/root.mjs';
import { lifeFixture } from '../support/coupons.ts';
import { describeInBrowser } from './support/browser.ts';
import { checked } from './support/checked.ts';
import { openApp } from './support/open-app.ts';
import { violations } from './support/violations.ts';

/** Pictures for a person to look at. */
const pictures = join(root, process.env.LAPWRIGHT_PICTURES ?? 'tests/artefacts');
mkdirSync(pictures, { recursive: true });
const patient = { timeout: 40_000 };

/** The reference's sample with most run-outs among failures, its stresses as loads that stay elastic. */
const NEWTONS = 300;
const sample = lifeFixture().cases.find(({ results }) => {
  const out = results.filter(({ runOut }) => runOut).length;
  return out > 0 && results.length >= 12;
})!;
const pasted = sample.results
  .map(({ stress, cycles, runOut }, i) =>
    [i + 1, 'A', stress * NEWTONS, cycles, runOut ? 'yes' : 'no'].join('\t'),
  )
  .join('\n');
const runOuts = sample.results.filter(({ runOut }) => runOut).length;

const shot = (page: Page, name: string) =>
  page.screenshot({ path: join(pictures, `lives-${name}.png`), fullPage: false });
const view = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();
const fits = (page: Page) =>
  page.evaluate(() => {
    const main = document.querySelector('main')!;
    const { documentElement: all } = document;
    return all.scrollWidth <= all.clientWidth && main.scrollWidth <= main.clientWidth;
  });
/** As from a spreadsheet: the clipboard of a test cannot be trusted. */
const paste = (page: Page, name: string, text: string) =>
  page.getByLabel(name, { exact: true }).evaluate((input, words) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData('text', words);
    input.dispatchEvent(new ClipboardEvent('paste', { clipboardData, bubbles: true }));
  }, text);
/** What is being worked out anew is pale: axe is asked of the page as it stays. */
const settled = (page: Page) => expect.poll(() => page.locator('.is-old').count(), patient).toBe(0);

async function openCoupons(page: Page): Promise<void> {
  await page.keyboard.press('Control+5');
  await page.getByText('What do the strengths rest on?').waitFor(patient);
}
async function withSpecimen(page: Page): Promise<void> {
  await page.getByLabel(/^ASTM D3528/).check();
  await page.getByRole('button', { name: 'Make 1 set' }).click();
  await view(page, 'Lives');
}

for (const colorScheme of ['light', 'dark'] as const) {
  describeInBrowser(`lives, ${colorScheme}`, () => {
    it('go from a set to the S-N line of the adhesive and into a margin', async () => {
      const app = await openApp({ colorScheme, viewport: { width: 1280, height: 800 } });
      try {
        const { page } = app;
        /** The figure of cyclic shear on the Size page of the joint that the rotor shakes. */
        const margin = async (): Promise<string> => {
          await page.keyboard.press('Control+1');
          await page.getByRole('button', { name: 'Boom tip to motor mount' }).first().click();
          const row = page.locator('.margin', { hasText: 'adhesive, cyclic shear' });
          return (await row.locator('.value').textContent(patient))!;
        };
        await checked(page);
        const before = await margin();
        await openCoupons(page);
        await view(page, 'Lives');
        await page.getByText(/this project has none yet/).waitFor(patient);
        await shot(page, `none-${colorScheme}`);
        expect(await violations(page)).toEqual([]);
        await page.getByRole('button', { name: 'Go to the plan' }).click();
        await withSpecimen(page);
        await shot(page, `first-${colorScheme}`);
        expect(await violations(page)).toEqual([]);
        await page.getByRole('button', { name: 'Add set of lives' }).click();
        await page.getByText('No S-N line. There are no results yet.').waitFor(patient);
        await page.getByText(/^Stands there now:/).waitFor(patient);
        await shot(page, `empty-${colorScheme}`);
        expect(await violations(page)).toEqual([]);

        await paste(page, 'row 1: coupon', pasted);
        await page.getByText(/^At \S+ cycles the line below the 90 % bound has/).waitFor(patient);
        await settled(page);
        await shot(page, `fit-${colorScheme}`);
        expect(await violations(page)).toEqual([]);
        expect(await fits(page)).toBe(true);
        expect(await page.locator('.coupon-figure canvas').getAttribute('aria-label')).toMatch(
          new RegExp(
            `^S-N plot of \\d+ failures, ${runOuts} run-outs?: peak shear over yield .* The median goes from`,
          ),
        );
        const line = page.getByRole('region', { name: 'S-N line of the adhesive' });
        expect(await line.textContent()).toContain('share = 1.71·n^−0.12');
        await line.scrollIntoViewIfNeeded();
        await page.getByRole('button', { name: /^Take the bound as/ }).click(patient);
        await page.getByText('This line is taken from these coupons as they are.').waitFor(patient);
        expect(await line.textContent()).toContain('Before it stood share = 1.71·n^−0.12');
        await shot(page, `taken-${colorScheme}`);
        expect(await violations(page)).toEqual([]);
        expect(await fits(page)).toBe(true);

        await expect.poll(margin, patient).not.toBe(before);
        expect(app.problems).toEqual([]);
      } finally {
        await app.close();
      }
    });
  });
}
