/** A test piece of one's own, from its sizes to the statistics of what was measured of it. */
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { root } from '../../src/launch/root.mjs';
import { EIGHTEEN } from '../support/coupons-published.ts';
import { describeInBrowser } from './support/browser.ts';
import { checked } from './support/checked.ts';
import { openApp } from './support/open-app.ts';
import { violations } from './support/violations.ts';

/** Pictures for a person to look at. */
const pictures = join(root, process.env.LAPWRIGHT_PICTURES ?? 'tests/artefacts');
mkdirSync(pictures, { recursive: true });
const patient = { timeout: 60_000 };

async function openCoupons(page: Page): Promise<void> {
  await checked(page);
  await page.keyboard.press('Control+5');
  await page.getByText('What do the strengths rest on?').waitFor(patient);
}
const fits = (page: Page) =>
  page.evaluate(() => {
    const main = document.querySelector('main')!;
    const { documentElement: all } = document;
    return all.scrollWidth <= all.clientWidth && main.scrollWidth <= main.clientWidth;
  });
const shot = (page: Page, name: string) =>
  page.screenshot({ path: join(pictures, `pieces-${name}.png`) });
const pieces = (page: Page) => page.getByRole('region', { name: 'Test pieces' });

describeInBrowser('a test piece of one’s own', () => {
  it('goes from its sizes to a set, its results and their statistics', async () => {
    const app = await openApp({ viewport: { width: 1280, height: 800 } });
    try {
      const { page } = app;
      await openCoupons(page);
      const list = pieces(page);
      await list.getByLabel('Kind of the new test piece').selectOption('flat-double');
      await list.getByRole('button', { name: 'New test piece' }).click();
      // The name has the focus, to be typed over.
      await page.keyboard.type('Own double lap');
      await page.keyboard.press('Tab');
      await list.getByLabel('Width', { exact: true }).fill('20');
      await list.getByLabel('Overlap', { exact: true }).fill('12,5');
      await list.getByText('“12,5” is ambiguous: write 12.5.').waitFor(patient);
      await shot(page, 'form-light');
      expect(await violations(page)).toEqual([]);
      expect(await fits(page)).toBe(true);
      await list.getByLabel('Overlap', { exact: true }).fill('12.5');
      await list.getByLabel('Test piece, source in words').fill('Drawing 12, measured');
      await list.getByLabel('Test piece, kind of source').selectOption('tested');
      expect(await list.locator('tbody').textContent()).toContain(
        'width 20, overlap 12.5, strip 4, upper strap 2, lower strap 2 mm',
      );
      await page.getByRole('checkbox', { name: 'Own double lap' }).check();
      await page.getByRole('button', { name: 'Make 1 set' }).click();
      // Two bonds of 20 by 12.5.
      await page.getByRole('cell', { name: '500.0 mm²' }).waitFor(patient);
      await shot(page, 'plan-light');
      await page.getByRole('button', { name: /^Results of Own double lap/ }).click();
      const lines = EIGHTEEN.map(
        (value, i) => `${(i % 6) + 1},${'ABC'[Math.floor(i / 6)]},${(value * 60).toFixed(1)},100`,
      );
      await page.getByLabel('File of coupon results').setInputFiles({
        name: 'own.csv',
        mimeType: 'text/csv',
        buffer: Buffer.from(['coupon,batch,load_n,cohesive_pct', ...lines].join('\n')),
      });
      await page.getByText('18 results count.').waitFor(patient);
      // Load over the area of these sizes.
      const [first] = EIGHTEEN;
      await expect
        .poll(() => page.locator('.coupon-results tbody td.number').first().textContent(), patient)
        .toBe(((first! * 60) / 500).toFixed(1));
      await page.getByRole('button', { name: 'Statistics', exact: true }).click();
      await page
        .getByText(/^B value .* MPa, A value .* MPa .*, of load over area\.$/)
        .waitFor(patient);
      expect(app.problems).toEqual([]);

      // A piece that results hang on is not changed unasked.
      await page.getByRole('button', { name: 'Plan', exact: true }).click();
      await list.getByRole('button', { name: 'Sizes of Own double lap' }).click();
      await list.getByText(/1 set of it has 18 results: their strengths are load over/).waitFor();
      expect(await list.getByLabel('Width', { exact: true }).count()).toBe(0);
      await list.getByText('Change these sizes').scrollIntoViewIfNeeded();
      await shot(page, 'held-light');
      expect(await violations(page)).toEqual([]);
      await list.getByRole('button', { name: 'Change these sizes' }).click();
      await list.getByLabel('Width', { exact: true }).fill('10');
      await page.getByRole('cell', { name: '250.0 mm²' }).waitFor(patient);
      await list.getByRole('button', { name: 'Remove test piece Own double lap' }).click();
      await list.getByText(/“Own double lap” stays: a set uses it/).waitFor();
      expect(await fits(page)).toBe(true);
      expect(app.problems).toEqual([]);
    } finally {
      await app.close();
    }
  });

  it('is copied from a standard’s, at night', async () => {
    const app = await openApp({ colorScheme: 'dark', viewport: { width: 1280, height: 800 } });
    try {
      const { page } = app;
      await openCoupons(page);
      await page.getByLabel(/^ASTM D1002/).check();
      await page.getByLabel(/^Tube in sleeve as Boom root/).check();
      await page.getByRole('button', { name: 'Make 2 sets' }).click();
      const list = pieces(page);
      await list.getByRole('button', { name: 'Sizes of Lap shear, thin metal' }).click();
      await list.getByText(/^These are sizes of ASTM D1002\./).waitFor(patient);
      await expect.poll(() => page.locator('.is-old').count(), patient).toBe(0);
      await list.scrollIntoViewIfNeeded();
      await shot(page, 'standard-dark');
      expect(await violations(page)).toEqual([]);
      await list.getByRole('button', { name: 'Copy it and change the copy' }).click();
      await list.getByLabel('Overlap', { exact: true }).fill('15');
      await list
        .getByText('Own sizes, changed from those of “Lap shear, thin metal”, ASTM D1002.')
        .waitFor();
      expect(await list.locator('tbody tr').first().textContent()).toContain('overlap 12.7');
      await list.getByRole('button', { name: /^Sizes of Tube in sleeve/ }).click();
      await list.getByLabel('Spigot wall at root').fill('30');
      await list.getByText(/A spigot wall of 30 mm does not fit inside the tube/).waitFor(patient);
      await list.getByLabel('Spigot wall at root').scrollIntoViewIfNeeded();
      await shot(page, 'sleeve-dark');
      expect(await violations(page)).toEqual([]);
      expect(await fits(page)).toBe(true);
      expect(app.problems).toEqual([]);
    } finally {
      await app.close();
    }
  });
});

describeInBrowser('rows of results that are not complete', () => {
  it('outlive the window and the host, and never count before they are complete', async () => {
    const plan = async (page: Page): Promise<void> => {
      await openCoupons(page);
      await page.getByLabel(/^ASTM D1002/).check();
      await page.getByRole('button', { name: 'Make 1 set' }).click();
    };
    const first = await openApp({ viewport: { width: 1280, height: 800 } });
    try {
      const { page } = first;
      await plan(page);
      await page.getByRole('button', { name: /^Results of Lap shear/ }).click();
      await page.getByLabel('row 1: load, N').fill('4100');
      await page.getByLabel('row 2: cohesive, per cent').fill('100');
      const kept = page.waitForResponse(
        (response) =>
          response.url().endsWith('/ask/rows.keep') &&
          (response.request().postData() ?? '').includes('41OO'),
        patient,
      );
      await page.getByLabel('coupon 2: load, N').fill('41OO');
      await page.getByText('1 row is not complete: it does not count.').waitFor(patient);
      expect((await kept).ok()).toBe(true);
      await page.getByText('1 result of 18 planned').waitFor(patient);
      await shot(page, 'open-row-light');
      expect(await violations(page)).toEqual([]);
      expect(await fits(page)).toBe(true);
      expect(first.problems).toEqual([]);
    } finally {
      await first.close();
    }
    const second = await openApp({
      remember: true,
      colorScheme: 'dark',
      viewport: { width: 1280, height: 800 },
    });
    try {
      const { page } = second;
      // The plan was never saved: planned again, its set is the one that the rows are of.
      await plan(page);
      await page
        .getByText(/and not in this file: 1 result and 1 row that is not complete\.$/)
        .waitFor(patient);
      await expect.poll(() => page.locator('.is-old').count(), patient).toBe(0);
      await shot(page, 'offered-dark');
      expect(await violations(page)).toEqual([]);
      await page.getByRole('button', { name: 'Take them in' }).click();
      expect(await page.getByLabel('coupon 2: load, N').inputValue()).toBe('41OO');
      expect(await page.getByLabel('coupon 1: load, N').inputValue()).toBe('4100');
      await page.getByText('1 result of 18 planned').waitFor(patient);
      await shot(page, 'taken-in-dark');
      expect(await violations(page)).toEqual([]);
      expect(second.problems).toEqual([]);
    } finally {
      await second.close();
    }
  });
});
