/** The Coupons page: a plan, its sheet, results from a file and by the keyboard, what they come to. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { root } from '../../src/launch/root.mjs';
import { EIGHTEEN, ETW2 } from '../support/coupons-published.ts';
import { describeInBrowser } from './support/browser.ts';
import { checked } from './support/checked.ts';
import { openApp } from './support/open-app.ts';
import { violations } from './support/violations.ts';

/** Pictures for a person to look at. */
const pictures = join(root, process.env.LAPWRIGHT_PICTURES ?? 'tests/artefacts');
mkdirSync(pictures, { recursive: true });
const patient = { timeout: 60_000 };

const pagesOf = (pdf: Buffer): number =>
  pdf.toString('latin1').match(/\/Type\s*\/Page(?![s\w])/g)?.length ?? 0;

/** Published strengths as loads of a coupon: only their scatter is meant. */
const NEWTONS = 30;
const csvOf = (
  batches: readonly (readonly number[])[],
  adhesion: readonly number[] = [],
): string => {
  const lines = batches.flatMap((batch, i) =>
    batch.map((value, k) => {
      const surface = adhesion[k] ?? 0;
      return `${k + 1},${'ABC'[i]},${(value * NEWTONS).toFixed(2)},${(0.18 + 0.01 * k).toFixed(2)},${100 - surface},${surface}`;
    }),
  );
  return ['coupon,batch,load_n,gap_mm,cohesive_pct,adhesion_pct', ...lines].join('\n');
};
const thirds = [0, 1, 2].map((i) => EIGHTEEN.slice(6 * i, 6 * i + 6));

async function openCoupons(page: Page): Promise<void> {
  await checked(page);
  await page.keyboard.press('Control+5');
  await page.getByText('What do the strengths rest on?').waitFor(patient);
}
const readFile = (page: Page, name: string, text: string) =>
  page
    .getByLabel('File of coupon results')
    .setInputFiles({ name, mimeType: 'text/csv', buffer: Buffer.from(text) });
const fits = (page: Page) =>
  page.evaluate(() => {
    const main = document.querySelector('main')!;
    const { documentElement: all } = document;
    return all.scrollWidth <= all.clientWidth && main.scrollWidth <= main.clientWidth;
  });
const shot = (page: Page, name: string) =>
  page.screenshot({ path: join(pictures, `coupons-${name}.png`) });
const view = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();
/** Tab until the focus is on what has this name. */
async function tabTo(page: Page, name: string | RegExp): Promise<void> {
  for (let i = 0; i < 80; i++) {
    const focused = await page.evaluate(() => {
      const here = document.activeElement as HTMLInputElement | null;
      const label = here?.labels?.[0]?.textContent;
      return (here?.getAttribute('aria-label') ?? label ?? here?.textContent ?? '').trim();
    });
    if (typeof name === 'string' ? focused === name : name.test(focused)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`no way by Tab to ${name}`);
}

describeInBrowser('the Coupons page', () => {
  it('plans by the keyboard alone, and prints the sheet on one page', async () => {
    const app = await openApp({ viewport: { width: 1280, height: 800 } });
    try {
      const { page } = app;
      await openCoupons(page);
      await tabTo(page, /^ASTM D1002/);
      await page.keyboard.press('Space');
      await tabTo(page, /^Tube in sleeve as Boom tip/);
      await page.keyboard.press('Space');
      await tabTo(page, 'cold');
      await page.keyboard.press('Space');
      await tabTo(page, 'wet');
      await page.keyboard.press('Space');
      expect(await page.locator('.coupon-sum').textContent()).toBe(
        '2 specimens × 3 environments × 1 gap: 6 sets; 108 coupons.',
      );
      await shot(page, 'matrix-light');
      expect(await violations(page)).toEqual([]);
      expect(await fits(page)).toBe(true);
      await tabTo(page, 'Make 6 sets');
      await page.keyboard.press('Enter');
      await expect
        .poll(() => page.locator('.coupon-sets tbody td:nth-child(6)').allTextContents(), patient)
        .toHaveLength(6);
      await expect
        .poll(
          async () =>
            (await page.locator('.coupon-sets tbody td:nth-child(6)').allTextContents()).every(
              (text) => /^\d+(\.\d+)? k?N$/.test(text),
            ),
          patient,
        )
        .toBe(true);
      await shot(page, 'plan-light');
      expect(await violations(page)).toEqual([]);
      expect(await fits(page)).toBe(true);
      const pdf = await page.pdf({ preferCSSPageSize: true });
      writeFileSync(join(pictures, 'coupon-sheet.pdf'), pdf);
      const sheet = page.locator('.test-sheet');
      expect(await sheet.textContent()).toContain('no design allowable (ASTM D4896)');
      expect(await sheet.textContent()).toContain('Screening calculation.');
      await page.emulateMedia({ media: 'print' });
      await page.setViewportSize({ width: 703, height: 1040 });
      await shot(page, 'sheet');
      expect(pagesOf(pdf)).toBe(1);
      expect(app.problems).toEqual([]);
    } finally {
      await app.close();
    }
  });

  it('takes results from a file and by typing, and says what they come to', async () => {
    const app = await openApp({ viewport: { width: 1280, height: 800 } });
    try {
      const { page } = app;
      await openCoupons(page);
      await page.getByLabel(/^ASTM D1002/).check();
      await page.getByRole('button', { name: 'Make 1 set' }).click();
      await page.getByRole('button', { name: /^Results of Lap shear, thin metal/ }).click();
      // Five from the grid's last row but one, by the keyboard.
      await page.getByLabel('row 1: load, N').focus();
      await page.keyboard.type('4100');
      await page.keyboard.press('Enter');
      await page.keyboard.type('4150,5');
      await page.getByText(/coupon 2: load: “4150,5” is ambiguous: write 4150.5/).waitFor(patient);
      expect(await violations(page)).toEqual([]);
      await page.keyboard.press('Control+A');
      await page.keyboard.type('4150.5');
      await page.getByText('2 results of 18 planned').waitFor(patient);
      // Typed results of no batch stand beside those of the file: nothing clashes.
      await page.getByRole('button', { name: 'Remove coupon 2' }).click();
      await page.getByRole('button', { name: 'Remove coupon 1' }).click();
      await page.getByText('Coupon 1 was removed.').waitFor(patient);
      await readFile(page, 'bad.csv', 'coupon,load_n\n1,many\n');
      await page.getByText(/Line 2: Load_n: “many” is not a number/).waitFor(patient);
      await readFile(page, 'eighteen.csv', csvOf(thirds));
      await page.getByText('18 results taken in.').waitFor(patient);
      await page.getByText('18 results count.').waitFor(patient);
      await shot(page, 'results-light');
      expect(await violations(page)).toEqual([]);
      expect(await fits(page)).toBe(true);
      // The same file again changes nothing; another figure of a coupon is asked about.
      await readFile(page, 'eighteen.csv', csvOf(thirds));
      await page.getByText('18 results stood here already.').waitFor(patient);
      await readFile(page, 'other.csv', 'coupon,batch,load_n\n3,B,4000\n19,C,4100\n');
      await page.getByText('1 coupon is here already with other figures: 3.').waitFor(patient);
      await shot(page, 'question-light');
      expect(await violations(page)).toEqual([]);
      await page.getByRole('button', { name: 'Take in nothing' }).click();
      await page.getByText('18 results of 18 planned').waitFor(patient);

      await view(page, 'Statistics');
      await page.getByText(/^B value .* \(Weibull\), of load over area\.$/).waitFor(patient);
      const said = await page.locator('.coupon-decisions').textContent();
      // Printed critical value of 18 results: 2.652.
      expect(said).toMatch(
        /Results that lie apart, all together MNR 2\.094; critical 2\.652, at 5 %/,
      );
      expect(await page.locator('.coupon-page').textContent()).toContain(
        '3 batches and 18 results: met',
      );
      await shot(page, 'statistics-light');
      expect(await violations(page)).toEqual([]);
      expect(await fits(page)).toBe(true);
      await page.locator('.figures summary').click();
      await expect.poll(() => page.locator('.figures-sheet tbody tr').count()).toBe(18);

      await view(page, 'Measured over predicted');
      await page
        .getByText(/^Coupons of this set broke at \d\.\d\d of the predicted load/)
        .waitFor(patient);
      await page.getByRole('radio', { name: 'overlap' }).check({ force: true });
      await page.getByRole('radio', { name: 'gap' }).check({ force: true });
      await shot(page, 'agreement-light');
      expect(await violations(page)).toEqual([]);
      expect(await fits(page)).toBe(true);

      // A set with results is not removed unasked.
      await view(page, 'Plan');
      await page.getByRole('button', { name: /^Remove set/ }).click();
      expect(await violations(page)).toEqual([]);
      await page.getByRole('button', { name: 'Keep the set' }).click();
      await page.getByText('One more set', { exact: true }).click();
      await page.getByText('Sets by the matrix', { exact: true }).click();
      await page.getByLabel('Batches', { exact: true }).fill('2,5');
      await shot(page, 'plan-open-light');
      expect(await violations(page)).toEqual([]);
      expect(await fits(page)).toBe(true);
      expect(await page.locator('.coupon-sets tbody tr').count()).toBe(1);
      expect(app.problems).toEqual([]);
    } finally {
      await app.close();
    }
  });

  it('draws coupons that came off a surface apart, over all sets of the adhesive, at night', async () => {
    const app = await openApp({ colorScheme: 'dark', viewport: { width: 1920, height: 1080 } });
    try {
      const { page } = app;
      await openCoupons(page);
      await page.getByLabel(/^ASTM D1002/).check();
      await page.getByLabel('wet', { exact: true }).check();
      await page.getByRole('button', { name: 'Make 2 sets' }).click();
      const results = page.getByRole('button', { name: /^Results of Lap shear/ });
      await results.first().click();
      await readFile(page, 'dry.csv', csvOf(thirds));
      await page.getByText('18 results count.').waitFor(patient);
      await shot(page, 'results-dark');
      await page.getByLabel('Set', { exact: true }).selectOption({ index: 1 });
      await page.getByText('0 results of 18 planned').waitFor(patient);
      await readFile(page, 'wet.csv', csvOf(ETW2, [0, 80, 20]));
      await page
        .getByText(/count; three came off a surface\./)
        .first()
        .waitFor(patient);
      await view(page, 'Statistics');
      await page.locator('.coupon-decisions').waitFor(patient);
      await shot(page, 'statistics-dark');
      expect(await violations(page)).toEqual([]);
      await view(page, 'Measured over predicted');
      await page.getByRole('radio', { name: 'all sets of the adhesive' }).check({ force: true });
      await page.getByRole('radio', { name: 'temperature' }).check({ force: true });
      await page.getByText(/^Coupons with Toughened epoxy paste broke at/).waitFor(patient);
      expect(await page.locator('.coupon-figure canvas').getAttribute('aria-label')).toMatch(
        /^Measured over predicted load of 38 coupons against temperature: .* 3 of them are kept apart and drawn as crosses\.$/,
      );
      await shot(page, 'agreement-dark');
      expect(await violations(page)).toEqual([]);
      await view(page, 'Ledger');
      await page
        .getByText(/^All three environments that joints meet rest on values that are typical/)
        .waitFor(patient);
      await shot(page, 'ledger-dark');
      expect(await violations(page)).toEqual([]);
      expect(app.problems).toEqual([]);
    } finally {
      await app.close();
    }
  });

  it('goes from a matrix to a margin that says what it rests on', async () => {
    const app = await openApp({ viewport: { width: 1280, height: 800 } });
    try {
      const { page } = app;
      await openCoupons(page);
      await page.getByLabel(/^ASTM D3528/).check();
      await page.getByLabel('room', { exact: true }).uncheck();
      await page.getByLabel('wet', { exact: true }).check();
      await page.getByRole('button', { name: 'Make 1 set' }).click();
      await page.getByRole('button', { name: /^Results of Double lap shear/ }).click();
      const rows = thirds.flatMap((batch, i) =>
        batch.map((value, k) => `${6 * i + k + 1},${'ABC'[i]},${(value * 100).toFixed(1)},100`),
      );
      await readFile(page, 'wet.csv', ['coupon,batch,load_n,cohesive_pct', ...rows].join('\n'));
      await page.getByText('18 results of 18 planned').waitFor(patient);
      await view(page, 'Statistics');
      await page.getByRole('button', { name: 'Take the B value as the allowable' }).click(patient);
      await page
        .getByText(/in place of the knockdown for scatter/)
        .first()
        .waitFor(patient);
      // What is being worked out anew is pale: axe is asked of the page as it stays.
      await expect.poll(() => page.locator('.is-old').count(), patient).toBe(0);
      await shot(page, 'allowable-light');
      expect(await violations(page)).toEqual([]);
      expect(await fits(page)).toBe(true);
      await view(page, 'Ledger');
      await page
        .getByText('Of three environments that joints meet, one rests on an allowable tested there')
        .waitFor(patient);
      await shot(page, 'ledger-light');
      expect(await violations(page)).toEqual([]);
      expect(await fits(page)).toBe(true);
      const [file] = await Promise.all([
        page.waitForEvent('download'),
        view(page, 'Ledger as CSV'),
      ]);
      expect(file.suggestedFilename()).toBe('Curlew-ledger.csv');
      // The landing leg lands hot and wet.
      const hot = page.locator('tbody', { hasText: 'B-basis, 18 coupons, 60 °C wet' });
      await hot.getByRole('button', { name: 'Landing leg' }).first().click();
      await page.getByText('B-basis, 18 coupons, 60 °C wet').first().waitFor(patient);
      await shot(page, 'rests-on-light');
      expect(app.problems).toEqual([]);
    } finally {
      await app.close();
    }
  });
});
