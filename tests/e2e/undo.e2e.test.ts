/** Changes taken back and done again, by keys and by buttons, on every page. */
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { beforeEach, expect, it } from 'vitest';
import { root } from '../../src/launch/root.mjs';
import { describeInBrowser } from './support/browser.ts';
import { type OpenedApp, openApp } from './support/open-app.ts';
import { violations } from './support/violations.ts';

const pictures = join(root, process.env.LAPWRIGHT_PICTURES ?? 'tests/artefacts');
mkdirSync(pictures, { recursive: true });
const patient = { timeout: 30_000 };

const overlap = (page: Page): Locator => page.getByRole('textbox', { name: 'Overlap' });
const button = (page: Page, name: RegExp): Locator => page.getByRole('button', { name });

describeInBrowser('undo', () => {
  let app: OpenedApp;
  beforeEach(async () => {
    app = await openApp({ viewport: { width: 1280, height: 800 } });
    return () => app.close();
  });

  it('takes a drag back as one change, by its name, and leaves fields their own', async () => {
    const { page } = app;
    await page.getByRole('button', { name: 'Landing leg', exact: true }).click(patient);
    await page.getByRole('list', { name: 'Margins, lowest first' }).waitFor(patient);
    expect(await button(page, /^Undo/).isDisabled()).toBe(true);
    const slider = page.getByRole('slider', { name: 'Drag overlap' });
    await slider.focus();
    for (let i = 0; i < 5; i++) await page.keyboard.press('ArrowRight');
    const grown = await overlap(page).inputValue();
    expect(grown).not.toBe('14.0');
    await button(page, new RegExp(`^Undo overlap 14.0 → ${grown} mm, Landing leg$`)).waitFor();
    await page.keyboard.press('Control+z');
    expect(await overlap(page).inputValue()).toBe('14.0');
    await page.getByText(`Undone: overlap 14.0 → ${grown} mm, Landing leg`).waitFor();
    await page.screenshot({ path: join(pictures, 'undo-light.png') });
    expect(await page.getByText('changes not saved').count()).toBe(0);
    await page.keyboard.press('Control+Shift+z');
    expect(await overlap(page).inputValue()).toBe(grown);
    await page.getByText('changes not saved').waitFor();

    // In a field the keys are the field's own: what was typed goes, the document follows.
    await overlap(page).fill('40');
    await page.keyboard.press('Control+z');
    expect(await overlap(page).inputValue()).not.toBe('40');
    await page.keyboard.press('Tab');
    expect(await violations(page)).toEqual([]);
    expect(app.problems).toEqual([]);
  });

  it('crosses pages: a change of one page is taken back on another', async () => {
    const { page } = app;
    await page.getByRole('button', { name: 'Boom tip to motor mount', exact: true }).click(patient);
    await overlap(page).fill('41');
    await page.keyboard.press('Tab');
    await page.getByRole('button', { name: 'Joints', exact: true }).click();
    await button(page, /^Undo overlap 35.0 → 41.0 mm, Boom tip/).click(patient);
    await page.getByRole('button', { name: 'Size', exact: true }).click();
    expect(await overlap(page).inputValue()).toBe('35.0');
    await button(page, /^Redo overlap 35.0 → 41.0 mm, Boom tip/).click(patient);
    expect(await overlap(page).inputValue()).toBe('41.0');
    expect(app.problems).toEqual([]);
  });
});
