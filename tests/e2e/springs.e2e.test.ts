/** The view of springs: what is on the page is what the terminal gives, and what is saved. */
import { execFileSync } from 'node:child_process';
import { mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { root } from '../../src/launch/root.mjs';
import type { SpringsReport } from '../../src/shared/reports-springs.ts';
import { describeInBrowser } from './support/browser.ts';
import { openApp } from './support/open-app.ts';
import { violations } from './support/violations.ts';

const pictures = join(root, 'tests/artefacts');
mkdirSync(pictures, { recursive: true });
const demo = join(root, 'src/main/demo/curlew.lapwright.json');
const inTerminal = (...words: string[]): string =>
  execFileSync(process.execPath, [join(root, 'out/main/cli.js'), 'springs', demo, ...words], {
    encoding: 'utf8',
  });

describeInBrowser('the view of springs', () => {
  it.each(['light', 'dark'] as const)('shows, saves and says the same, %s', async (colorScheme) => {
    const app = await openApp({ colorScheme, viewport: { width: 1280, height: 800 } });
    const { page } = app;
    try {
      await page.getByRole('button', { name: 'Boom root', exact: true }).click();
      await page.getByRole('button', { name: 'Springs', exact: true }).click();
      const table = page.getByRole('table', { name: /Stiffness of Boom root/ });
      await table.waitFor();
      await page.screenshot({ path: join(pictures, `springs-${colorScheme}.png`) });

      const report = JSON.parse(inTerminal('--joint', 'boom-root', '--json')) as SpringsReport;
      expect(report.states).toHaveLength(3);
      const text = (await table.textContent()) ?? '';
      for (const { springs } of report.states) {
        for (const { stiffness } of springs) {
          expect(text).toContain(stiffness.toExponential(3).split('e')[0]);
        }
      }

      const [saved] = await Promise.all([
        page.waitForEvent('download'),
        page.getByRole('button', { name: 'Save as CSV' }).click(),
      ]);
      expect(saved.suggestedFilename()).toBe('Curlew-Boom-root-springs.csv');
      const file = readFileSync(await saved.path(), 'utf8');
      expect(file.trimEnd()).toBe(inTerminal('--joint', 'boom-root', '--csv').trimEnd());

      expect(await violations(page)).toEqual([]);
      expect(app.problems).toEqual([]);
      await page.setViewportSize({ width: 1920, height: 1080 });
      await page.screenshot({ path: join(pictures, `springs-wide-${colorScheme}.png`) });
    } finally {
      await app.close();
    }
  });
});
