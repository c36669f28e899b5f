/** Everything by keys alone: the box that finds, the list of keys, the parts of a page. */
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { root } from '../../src/launch/root.mjs';
import { cautionShort } from '../../src/shared/cautions.ts';
import { describeInBrowser } from './support/browser.ts';
import { checked } from './support/checked.ts';
import { type AppOptions, type OpenedApp, openApp } from './support/open-app.ts';
import { violations } from './support/violations.ts';

const pictures = join(root, process.env.LAPWRIGHT_PICTURES ?? 'tests/artefacts');
mkdirSync(pictures, { recursive: true });
const patient = { timeout: 30_000 };
const usual = { viewport: { width: 1280, height: 800 } };

async function withApp(options: AppOptions, work: (app: OpenedApp) => Promise<void>) {
  const app = await openApp({ ...usual, ...options });
  try {
    await checked(app.page);
    await work(app);
    expect(app.problems).toEqual([]);
  } finally {
    await app.close();
  }
}
const press = async (page: Page, ...keys: string[]): Promise<void> => {
  for (const key of keys) await page.keyboard.press(key);
};
const box = (page: Page): Locator => page.getByRole('dialog', { name: 'Find' });
const list = (page: Page): Locator => page.getByRole('dialog', { name: 'Keys' });
async function find(page: Page, text: string): Promise<void> {
  await press(page, 'Control+k');
  await page.keyboard.type(text);
  await press(page, 'Enter');
  await box(page).waitFor({ state: 'detached' });
}
const shot = (page: Page, name: string): Promise<unknown> =>
  page.screenshot({ path: join(pictures, `${name}.png`) });
/** What has the focus, as it is read out. */
const focused = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const held = document.activeElement!;
    const by = held.getAttribute('aria-labelledby');
    const label = by === null ? held.getAttribute('aria-label') : by;
    return (by === null ? label : document.getElementById(by)?.textContent) ?? held.tagName;
  });
const outlined = (page: Page): Promise<string> =>
  page.evaluate(() => getComputedStyle(document.activeElement!).outlineStyle);

describeInBrowser('the keyboard', () => {
  it('opens a joint by a few letters, goes round its parts, draws a case, takes a change back', async () =>
    withApp({}, async ({ page }) => {
      await find(page, 'boom tip');
      await page.getByRole('heading', { name: 'Size Boom tip to motor mount' }).waitFor(patient);
      await page.getByRole('list', { name: 'Margins, lowest first' }).waitFor(patient);
      expect(await focused(page)).toBe('Inputs and materials');

      const round: string[] = [];
      for (let i = 0; i < 4; i++) {
        await press(page, 'F6');
        round.push(await focused(page));
        expect(await outlined(page)).toBe('solid');
      }
      expect(round).toEqual(['Drawing', 'Margins', 'Bar', 'Inputs and materials']);
      await press(page, 'Shift+F6', 'Shift+F6');
      expect(await focused(page)).toBe('Margins');
      await shot(page, 'keys-pane-light');

      await find(page, 'cold gust');
      await expect
        .poll(() => page.getByRole('combobox', { name: 'Load case drawn' }).inputValue())
        .toMatch(/^gust-cold/);

      await find(page, 'overlap');
      expect(await focused(page)).toBe('Overlap');
      await page.keyboard.type('41');
      // While one writes undo is the field's own, and the pages have their keys.
      await press(page, 'Control+1');
      await expect.poll(() => page.getByRole('textbox', { name: 'Overlap' }).count()).toBe(0);
      await press(page, 'Control+2');
      await find(page, 'overlap');
      expect(await focused(page)).toBe('Overlap');
      await find(page, 'undo');
      await page.getByText(/^Undone: overlap/).waitFor(patient);
      expect(await page.getByRole('textbox', { name: 'Overlap' }).inputValue()).toBe('35.0');
      // Where the box was opened from has the focus again.
      expect(await focused(page)).toBe('Overlap');

      await find(page, 'fitting');
      await expect.poll(() => focused(page)).toBe('Fitting factor');
    }));

  it('saves, writing or not: the first time it asks where', async () =>
    withApp({}, async ({ page }) => {
      await find(page, 'landing leg');
      await find(page, 'overlap');
      await page.keyboard.type('30');
      await press(page, 'Control+s');
      const asked = page.getByRole('dialog', { name: 'Save Curlew' });
      await asked.getByRole('textbox', { name: 'File name' }).waitFor(patient);
      await press(page, 'Escape');
      await asked.waitFor({ state: 'detached', ...patient });
      // What was typed is still there, and still unsaved.
      expect(await focused(page)).toBe('Overlap');
      await page.getByText('changes not saved').waitFor(patient);
    }));

  it('keeps the focus in its sheets, and gives it back', async () =>
    withApp({}, async ({ page }) => {
      await page.getByRole('button', { name: 'Landing leg', exact: true }).focus();
      const before = await page.evaluate(() => document.activeElement!.textContent);
      await press(page, 'Control+k');
      for (let i = 0; i < 4; i++) {
        await press(page, 'Tab');
        const inside = await page.evaluate(
          () =>
            document.activeElement === document.body ||
            document.activeElement!.closest('dialog') !== null,
        );
        expect(inside).toBe(true);
      }
      await press(page, 'F1');
      await list(page).waitFor();
      expect(await box(page).count()).toBe(0);
      await press(page, 'Escape');
      expect(await list(page).count()).toBe(0);
      expect(await page.evaluate(() => document.activeElement!.textContent)).toBe(before);
    }));

  describe.each(['light', 'dark'] as const)('in %s', (colorScheme) => {
    it('lists all keys, readable for everybody', async () =>
      withApp({ colorScheme }, async ({ page }) => {
        await shot(page, `keys-bar-${colorScheme}`);
        for (const opener of ['F1', 'Control+/']) {
          await press(page, opener);
          await list(page).waitFor();
          const keys = await list(page).locator('kbd').allTextContents();
          for (const wanted of 'Ctrl+K F1 Ctrl+/ F6 Shift+F6 Ctrl+1 Ctrl+5 Ctrl+Z Ctrl+Shift+Z Ctrl+O Ctrl+S Ctrl+P'.split(
            ' ',
          )) {
            expect(keys).toContain(wanted);
          }
          await list(page).getByText(cautionShort).waitFor();
          expect(await violations(page)).toEqual([]);
          await shot(page, `keys-list-${colorScheme}`);
          await press(page, 'Escape');
        }
        await press(page, 'Control+k');
        expect(await violations(page)).toEqual([]);
        await shot(page, `keys-find-empty-${colorScheme}`);
        await page.keyboard.type('gust');
        expect(await violations(page)).toEqual([]);
        await shot(page, `keys-find-${colorScheme}`);
        await page.keyboard.type('qqqq');
        await page.getByText('Nothing goes by these letters.').waitFor();
        expect(await violations(page)).toEqual([]);
        await press(page, 'Escape');

        await find(page, 'boom root');
        await page.getByRole('list', { name: 'Margins, lowest first' }).waitFor(patient);
        await press(page, 'F6');
        expect(await violations(page)).toEqual([]);
      }));
  });

  it('at twice the size its sheets scroll', async () =>
    withApp(
      {
        viewport: { width: 640, height: 400 },
        context: { reducedMotion: 'reduce', deviceScaleFactor: 2 },
      },
      async ({ page }) => {
        await press(page, 'F1');
        const inside = (sheet: Locator): Promise<boolean> =>
          sheet.evaluate((dialog) => {
            const { top, left, bottom, right } = dialog.getBoundingClientRect();
            return top >= 0 && left >= 0 && bottom <= innerHeight && right <= innerWidth;
          });
        expect(await inside(list(page))).toBe(true);
        await shot(page, 'keys-list-zoomed');
        await press(page, 'End');
        await expect
          .poll(() =>
            list(page)
              .locator('.keys-sheet')
              .evaluate((body) => body.scrollTop),
          )
          .toBeGreaterThan(50);
        await press(page, 'Escape', 'Control+k');
        await page.keyboard.type('boom');
        expect(await inside(box(page))).toBe(true);
        for (let i = 0; i < 12; i++) await press(page, 'ArrowDown');
        const active = box(page).locator('[aria-selected="true"]');
        expect(
          await active.evaluate((option) => {
            const { top, bottom } = option.getBoundingClientRect();
            const frame = option.parentElement!.getBoundingClientRect();
            return top >= frame.top - 1 && bottom <= frame.bottom + 1;
          }),
        ).toBe(true);
        await shot(page, 'keys-find-zoomed');
        expect(await violations(page)).toEqual([]);
      },
    ));
});
