/** Both pages, light and dark, by axe: WCAG 2.2 A and AA. */
import { expect, it } from 'vitest';
import { describeInBrowser } from './support/browser.ts';
import { openApp } from './support/open-app.ts';
import { violations } from './support/violations.ts';

describeInBrowser('accessible', () => {
  it.each(['light', 'dark'] as const)(
    'in %s, on both pages and with an error',
    async (scheme) => {
      const app = await openApp({ colorScheme: scheme });
      try {
        const { page } = app;
        const joint = page.getByRole('button', { name: 'Landing leg', exact: true });
        await joint.waitFor();
        expect(await violations(page)).toEqual([]);
        await joint.click();
        await page.getByRole('list', { name: 'Margins, lowest first' }).waitFor();
        expect(await violations(page)).toEqual([]);
        await page.getByRole('button', { name: 'Around the bond', exact: true }).click();
        await page.getByRole('application', { name: /peel around/ }).waitFor();
        expect(await violations(page)).toEqual([]);
        await page.getByRole('button', { name: 'Around the bond', exact: true }).click();
        await page.getByRole('textbox', { name: 'Overlap' }).fill('1,5');
        // The message appears after a pause, which spares whoever is still typing: judge it once it is there.
        await page.waitForFunction(() => {
          const callout = document.querySelector('.callout');
          return callout !== null && getComputedStyle(callout).opacity === '1';
        });
        expect(await violations(page)).toEqual([]);
        // Canvases speak: a role, a sentence, and the figures in a table.
        const canvases = await page.locator('canvas').evaluateAll((list) =>
          list.map((canvas) => {
            const spoken = canvas.closest('[role="img"]') ?? canvas;
            return [spoken.getAttribute('role'), spoken.getAttribute('aria-label') ?? ''];
          }),
        );
        expect(canvases.length).toBeGreaterThan(0);
        for (const [role, label] of canvases) {
          expect(role).toBe('img');
          expect(label!.length).toBeGreaterThan(20);
        }
      } finally {
        await app.close();
      }
    },
    60_000,
  );
});
