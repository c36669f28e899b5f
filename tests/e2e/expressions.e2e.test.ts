/** An overlap typed in inches: understood beneath the field, stored in mm, and the margins follow. */
import type { Locator, Page } from 'playwright-core';
import { expect, it, vi } from 'vitest';
import { describeInBrowser } from './support/browser.ts';
import { openApp } from './support/open-app.ts';
import { violations } from './support/violations.ts';

/** A browser without a graphics card on a busy machine takes its time. */
const patient = { timeout: 30_000 };
const margins = (page: Page): Locator =>
  page.getByRole('list', { name: 'Margins, lowest first' }).getByRole('listitem');

describeInBrowser('an expression with a unit', () => {
  it.each(['light', 'dark'] as const)(
    'is typed, understood and stored, in %s',
    async (colorScheme) => {
      const app = await openApp({ colorScheme, viewport: { width: 1280, height: 800 } });
      try {
        const { page } = app;
        // What the page's policy refuses, eval above all, is told to the page itself.
        await page.evaluate(() => {
          const seen: string[] = [];
          Object.assign(globalThis, { refusedByPolicy: seen });
          document.addEventListener('securitypolicyviolation', (event) =>
            seen.push(`${event.violatedDirective} ${event.blockedURI}`),
          );
        });
        await page.getByRole('button', { name: 'Landing leg', exact: true }).click();
        await margins(page).first().waitFor();
        const before = await margins(page).first().textContent();
        const field = page.getByRole('textbox', { name: 'Overlap' });
        await field.click();
        await page.keyboard.press('Control+A');
        await page.keyboard.type('1/2 in');
        const understood = page.locator('.understood');
        await understood.waitFor();
        expect(await understood.textContent()).toBe('= 12.7 mm');
        expect(await field.inputValue()).toBe('1/2 in');
        await vi.waitFor(async () => {
          expect(await page.getByText(/not recalculated/i).count()).toBe(0);
          expect(await margins(page).first().textContent()).not.toBe(before);
          // Not the figures of what stood there half typed.
          expect((await margins(page).allTextContents()).join()).toContain('elastic over 12.7 mm');
        }, patient);
        expect(await violations(page)).toEqual([]);
        // It hangs over the field below, which is clicked all the same.
        await page.getByRole('textbox', { name: /^gap tolerance$/i }).click();
        expect(await field.inputValue()).toBe('12.7');
        expect(await understood.count()).toBe(0);
        const inInches = await margins(page).allTextContents();

        // The same figure typed in mm gives the same margins.
        await field.fill('20');
        await vi.waitFor(
          async () => expect(await margins(page).allTextContents()).not.toEqual(inInches),
          patient,
        );
        await field.fill('12.7');
        await vi.waitFor(
          async () => expect(await margins(page).allTextContents()).toEqual(inInches),
          patient,
        );

        await field.fill('5 MPa');
        await page.getByText('“5 MPa” is a stress; this field takes a length.').waitFor();
        const refused = (): Promise<string[]> =>
          page.evaluate(
            () => (globalThis as unknown as { refusedByPolicy: string[] }).refusedByPolicy,
          );
        expect(await refused()).toEqual([]);
        expect(app.problems).toEqual([]);
        // And it would have been told: the same eyes see an eval that is tried.
        await page.evaluate(() => void setTimeout(() => new Function('1')));
        await vi.waitFor(async () => expect(await refused()).toEqual(['script-src eval']), patient);
      } finally {
        await app.close();
      }
    },
    90_000,
  );
});
