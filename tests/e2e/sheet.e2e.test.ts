/** The printed sheet in a browser: its figures beside those of the screen and the terminal, its pages as PDF. */
import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, it, onTestFinished } from 'vitest';
import { root } from '../../src/launch/root.mjs';
import { describeInBrowser } from './support/browser.ts';
import { checked } from './support/checked.ts';
import { openApp } from './support/open-app.ts';
import { violations } from './support/violations.ts';

/** Pictures for a person to look at; `LAPWRIGHT_PICTURES=docs` renews those of the documents. */
const pictures = join(root, process.env.LAPWRIGHT_PICTURES ?? 'tests/artefacts');
const artefacts = join(root, 'tests/artefacts');
for (const folder of [pictures, artefacts]) mkdirSync(folder, { recursive: true });
const forDocuments = process.env.LAPWRIGHT_PICTURES !== undefined;
/** Strength against overlap of four joints takes its time on a busy machine. */
const patient = { timeout: 240_000 };

const pagesOf = (pdf: Buffer): number =>
  pdf.toString('latin1').match(/\/Type\s*\/Page(?![s\w])/g)?.length ?? 0;
/** Width and height of every page, points. */
const sizesOf = (pdf: Buffer): string[] => [
  ...new Set(
    [...pdf.toString('latin1').matchAll(/\/MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)\s*\]/g)].map(
      ([, width, height]) => `${Math.round(Number(width))} × ${Math.round(Number(height))}`,
    ),
  ),
];

const paper = (page: Page) => page.locator('.sheet-pages > .sheet-page');
const laid = (page: Page, what: RegExp | string = /^\d+ pages?, /): Promise<void> =>
  page.locator('.sheet-panel [role="status"]', { hasText: what }).waitFor(patient);

/** Pages whose body holds more than it has room for, or runs out at the side. */
const overfull = (page: Page): Promise<string[]> =>
  paper(page).evaluateAll((all) =>
    all.flatMap((one, i) => {
      const body = one.querySelector('.sheet-body')!;
      const box = body.getBoundingClientRect();
      const over = [...body.querySelectorAll('*')].filter((inside) => {
        // Letters of a drawing may reach into its margin.
        if (inside.closest('svg') && inside.localName !== 'svg') return false;
        const { bottom, right } = inside.getBoundingClientRect();
        return bottom > box.bottom + 1 || right > box.right + 1;
      });
      return over.length === 0 ? [] : [`page ${i + 1}: ${over[0]!.outerHTML.slice(0, 90)}`];
    }),
  );

/** What each margin is called and how it is written, joint by joint. */
const marginsOnPaper = (page: Page): Promise<string[]> =>
  page.locator('.margins-table tbody tr').evaluateAll((rows) =>
    rows.map((row) => {
      const name = row.querySelector('th')!.firstChild!.textContent!.trim();
      const state = row.querySelector('.state-cell')!.textContent!.trim();
      return `${name} ${state} ${row.querySelector('.margin-figure')!.textContent}`;
    }),
  );
const marginsOnScreen = (page: Page): Promise<string[]> =>
  page.locator('ol.margins > li').evaluateAll((rows) =>
    rows.map((row) => {
      const name = row.querySelector('.what')!.textContent!.trim();
      const state = row.querySelector('.state')!.textContent!.trim();
      return `${name} ${state} ${row.querySelector('.value')!.childNodes[0]!.textContent!.trim()}`;
    }),
  );

describeInBrowser('the printed sheet', () => {
  it('says of the whole project what the screen and the terminal say', async () => {
    const app = await openApp({ viewport: { width: 1280, height: 800 }, colorScheme: 'dark' });
    try {
      const { page } = app;
      const names = ['Boom root', 'Boom tip to motor mount', 'Landing leg', 'Tail strut lug'];
      const joint = (name: string) => page.getByRole('button', { name, exact: true });
      await checked(page);
      const onJoints = await page
        .locator('table.joints tbody.joint')
        .evaluateAll((rows) =>
          rows.map(
            (row) =>
              `${row.querySelector('.joint-name')!.textContent} ${row.querySelector('.lowest .state')!.textContent} ${row.querySelector('.lowest .value')!.textContent}`,
          ),
        );
      const onSize: string[] = [];
      for (const name of names) {
        await page.keyboard.press('Control+1');
        await joint(name).click();
        await page.getByRole('heading', { name: `Size ${name}` }).waitFor(patient);
        await page.locator('ol.margins > li').first().waitFor(patient);
        await page.waitForFunction(() => !document.querySelector('.behind-word'));
        onSize.push(...(await marginsOnScreen(page)));
      }
      await page.keyboard.press('Control+1');
      await page.getByRole('button', { name: 'Sheet …' }).click();
      await laid(page);

      expect(onSize.length).toBeGreaterThan(30);
      expect(await marginsOnPaper(page)).toEqual(onSize);
      const table = await page.locator('.joints-table tbody').evaluateAll((rows) =>
        rows.map((row) => {
          const cells = [...row.querySelectorAll('td')].map((cell) => cell.textContent!.trim());
          return `${row.querySelector('th')!.firstChild!.textContent} ${cells[1]} ${cells[2]}`;
        }),
      );
      expect(table).toEqual(onJoints);
      // As the terminal prints them: the lowest first, with the star of what is typical.
      const folder = mkdtempSync(join(tmpdir(), 'lapwright-test-'));
      onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
      const cli = (...args: string[]): string => {
        try {
          return execFileSync(process.execPath, [join(root, 'out/main/cli.js'), ...args], {
            encoding: 'utf8',
            stdio: ['ignore', 'pipe', 'ignore'],
          });
        } catch (error) {
          // A margin below the target is told by the exit code too.
          return (error as { stdout: string }).stdout;
        }
      };
      const file = join(folder, 'curlew.lapwright.json');
      writeFileSync(file, cli('demo'));
      const printed = [...cli('check', file).matchAll(/[▲◆●] (\w+)\s+([+−][\d.]+)/g)].map(
        ([, state, margin]) => `${state} ${margin}`,
      );
      expect(printed).toHaveLength(4);
      expect(table.map((row) => row.split(' ').slice(-2).join(' '))).toEqual(printed);

      expect(await overfull(page)).toEqual([]);
      expect(await violations(page)).toEqual([]);
      // Paper is light whatever the screen is.
      const [ground, line] = await page.evaluate(() => {
        const at = (what: string): Element => document.querySelector(`.sheet-pages ${what}`)!;
        return [
          getComputedStyle(at('.sheet-page')).backgroundColor,
          getComputedStyle(at('polyline')).stroke,
        ];
      });
      expect([ground, line]).toEqual(['rgb(255, 255, 255)', 'rgb(31, 95, 168)']);

      const pdf = await page.pdf({ preferCSSPageSize: true, printBackground: true });
      writeFileSync(join(artefacts, 'sheet.pdf'), pdf);
      expect(pagesOf(pdf)).toBe(await paper(page).count());
      expect(sizesOf(pdf)).toEqual(['595 × 842']);
      // What is printed is the pages alone.
      await page.emulateMedia({ media: 'print' });
      expect(await page.locator('.bar').isVisible()).toBe(false);
      expect(await page.locator('.sheet-panel').isVisible()).toBe(false);
      expect(await page.locator('footer.caution').isVisible()).toBe(false);
      expect(await paper(page).first().isVisible()).toBe(true);
      expect(app.problems).toEqual([]);
    } finally {
      await app.close();
    }
  }, 480_000);

  it('prints one joint on Letter and A4, with the working of all its margins', async () => {
    const app = await openApp({ viewport: { width: 1360, height: 900 } });
    try {
      const { page } = app;
      await page.getByRole('button', { name: 'Landing leg', exact: true }).click(patient);
      await page.locator('ol.margins > li').first().waitFor(patient);
      let printed = 0;
      await page.exposeFunction('wasPrinted', () => {
        printed += 1;
      });
      await page.evaluate(() => {
        window.print = () => void (window as unknown as { wasPrinted(): void }).wasPrinted();
      });
      await page.keyboard.press('Control+p');
      await laid(page);
      expect(await page.locator('.joints-table').count()).toBe(0);
      const usual = await paper(page).count();
      await page.getByLabel('Job number').fill('C-117');
      await page.getByLabel('Revision').fill('B');
      await page.getByLabel('Prepared by').fill('A. Writer');
      await page.locator('.title-revision', { hasText: 'B' }).first().waitFor(patient);
      await page.screenshot({
        path: join(pictures, forDocuments ? 'sheet.png' : 'sheet-view.png'),
      });
      expect(await violations(page)).toEqual([]);
      // The key prints what is laid out.
      await page.getByRole('button', { name: 'Print …' }).focus();
      await page.keyboard.press('Control+p');
      await expect.poll(() => printed).toBe(1);

      await page.getByLabel('Letter').check();
      await page.locator('.sheet-pages > .is-letter').first().waitFor(patient);
      const letter = await page.pdf({ preferCSSPageSize: true });
      expect([pagesOf(letter), sizesOf(letter)]).toEqual([
        await paper(page).count(),
        ['612 × 792'],
      ]);
      expect(await overfull(page)).toEqual([]);

      await page.getByLabel('of all margins').check();
      await page.locator('.sheet-page .card').first().waitFor(patient);
      await laid(page);
      const margins = await marginsOnPaper(page);
      expect(await page.locator('.working-title').count()).toBe(margins.length);
      expect(await overfull(page)).toEqual([]);
      const numbers = await page.locator('.sheet-page .sheet-number').allTextContents();
      expect(numbers.length).toBeGreaterThan(usual);
      expect(numbers).toEqual(numbers.map((_, i) => `page ${i + 1} of ${numbers.length}`));
      // Neither a heading at a foot nor a table without its head.
      const amiss = await paper(page).evaluateAll((all) =>
        all.flatMap((one) => {
          const body = one.querySelector('.sheet-body')!;
          const last = body.lastElementChild!;
          const heads = [...body.querySelectorAll('table:not(.card-values)')].filter(
            (table) => table.querySelector('thead') === null,
          );
          return [...(/^h\d$/.test(last.localName) ? [last] : []), ...heads].map(
            (element) => element.outerHTML,
          );
        }),
      );
      expect(amiss).toEqual([]);
      const pdf = await page.pdf({ preferCSSPageSize: true });
      expect(pagesOf(pdf)).toBe(numbers.length);

      // The paper is remembered; Escape gives the page back.
      await page.keyboard.press('Escape');
      await page.locator('ol.margins > li').first().waitFor(patient);
      await page.getByRole('button', { name: 'Sheet …' }).click();
      await page.locator('.sheet-pages > .is-letter').first().waitFor(patient);
      await page.emulateMedia({ media: 'print' });
      await page.setViewportSize({ width: 816, height: 1054 });
      await page.screenshot({ path: join(artefacts, 'sheet-page.png') });
      expect(app.problems).toEqual([]);
    } finally {
      await app.close();
    }
  }, 480_000);
});
