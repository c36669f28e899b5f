/** Units switched in a real browser: what is read changes at once, the document not at all. */
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { expect, it, vi } from 'vitest';
import { root } from '../../src/launch/root.mjs';
import { describeInBrowser } from './support/browser.ts';
import { openApp } from './support/open-app.ts';
import { violations } from './support/violations.ts';

const artefacts = join(root, 'tests/artefacts');
mkdirSync(artefacts, { recursive: true });

/** A browser without a graphics card on a busy machine takes its time. */
const patient = { timeout: 30_000 };
const margins = (page: Page): Locator =>
  page.getByRole('list', { name: 'Margins, lowest first' }).getByRole('listitem');
const shear = (page: Page): Locator => page.getByRole('img', { name: /^Shear along/ });
const overlap = (page: Page): Locator => page.getByRole('textbox', { name: 'Overlap' });
/** Where everything stands that must not move. */
const places = (page: Page) =>
  page.evaluate(() =>
    ['.inputs-column', '.section', 'canvas', '.is-sweep', '.margins'].map((selector) => {
      const box = document.querySelector(selector)?.getBoundingClientRect();
      return box ? [selector, box.left, box.top, box.width, box.height].map(String) : [selector];
    }),
  );

async function find(page: Page, words: string): Promise<void> {
  await page.keyboard.press('Control+K');
  await page.keyboard.type(words);
  await page.keyboard.press('Enter');
}

describeInBrowser('units on the screen', () => {
  it.each(['light', 'dark'] as const)(
    'are switched to US and back, and dragging goes on in inches, in %s',
    async (colorScheme) => {
      const app = await openApp({ colorScheme, viewport: { width: 1280, height: 800 } });
      const { page, problems } = app;
      const picture = (name: string): Promise<Buffer> =>
        page.screenshot({ path: join(artefacts, `units-${name}-${colorScheme}.png`) });
      try {
        await page.getByRole('button', { name: 'Landing leg', exact: true }).click();
        await margins(page).first().waitFor();
        await shear(page).waitFor();
        const inMm = Number(await overlap(page).inputValue());
        const saidInSi = await shear(page).getAttribute('aria-label');
        expect(saidInSi).toContain('MPa');
        const before = await places(page);

        await find(page, 'Units: US');
        await vi.waitFor(
          async () => expect(await shear(page).getAttribute('aria-label')).toContain('ksi'),
          patient,
        );
        expect(await shear(page).getAttribute('aria-label')).not.toMatch(/MPa| mm/);
        expect(await page.locator('.is-stress .units').first().textContent()).toBe('ksi');
        expect(Number(await overlap(page).inputValue())).toBeCloseTo(inMm / 25.4, 4);
        // The page stands where it stood, and has nothing to save or to take back.
        expect(await places(page)).toEqual(before);
        expect(await page.getByText('changes not saved').count()).toBe(0);
        expect(await page.getByRole('button', { name: 'Undo', exact: true }).isDisabled()).toBe(
          true,
        );
        expect(await violations(page)).toEqual([]);
        await picture('size');

        // Whoever goes through a field changes nothing.
        await overlap(page).focus();
        expect((await overlap(page).inputValue()).length).toBeGreaterThan(8);
        await page.keyboard.press('Tab');
        expect(await page.getByRole('button', { name: 'Undo', exact: true }).isDisabled()).toBe(
          true,
        );

        const handle = page.getByRole('slider', { name: 'Drag overlap' });
        const box = (await handle.boundingBox())!;
        const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
        await page.mouse.move(x, y);
        await page.mouse.down();
        for (const step of [1, 2, 3, 4]) await page.mouse.move(x + step * 9, y);
        await page.mouse.up();
        await vi.waitFor(async () => {
          const inches = Number(await overlap(page).inputValue());
          expect(inches).toBeGreaterThan(inMm / 25.4 + 0.05);
          // Five thousandths of an inch, exactly.
          expect(await overlap(page).inputValue()).toMatch(/^\d\.\d{1,2}[05]?$/);
        }, patient);
        expect(await page.getByRole('button', { name: /^Undo overlap .* in/ }).count()).toBe(1);
        await page.keyboard.press('Control+Z');
        await find(page, 'Units: SI');
        await vi.waitFor(
          async () => expect(await overlap(page).inputValue()).toBe(inMm.toFixed(1)),
          patient,
        );
        await vi.waitFor(
          async () => expect(await shear(page).getAttribute('aria-label')).toBe(saidInSi),
          patient,
        );
        expect(await page.getByText('changes not saved').count()).toBe(0);

        // They are remembered by the page, and chosen in a sheet.
        await page.getByRole('button', { name: /^Units/ }).click();
        await page.getByRole('radio', { name: 'US' }).check();
        expect(await violations(page)).toEqual([]);
        await picture('sheet');
        await page.keyboard.press('Escape');
        // What is under way is given up by the page that goes.
        expect(problems).toEqual([]);
        await page.reload();
        await page.getByRole('columnheader', { name: /Overlap, in/ }).waitFor();
        await picture('joints');
      } finally {
        await app.close();
      }
    },
    240_000,
  );
});
