/** A large project in the app: its check is followed on the page, and stopped. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { makeBigProject } from '../../reference/big-project/make.mjs';
import { describeInBrowser } from './support/browser.ts';
import { openApp } from './support/open-app.ts';
import { violations } from './support/violations.ts';

const folder = mkdtempSync(join(tmpdir(), 'lapwright-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const file = join(folder, 'big.json');
writeFileSync(file, JSON.stringify(makeBigProject({ joints: 400, cases: 20 })));

describeInBrowser('the check of a large project', () => {
  it.each(['light', 'dark'] as const)('is followed and stopped, in %s', async (scheme) => {
    const app = await openApp({ file, colorScheme: scheme });
    try {
      const { page } = app;
      const bar = page.getByRole('progressbar', { name: 'Check of every joint' });
      await bar.waitFor();
      await page.waitForFunction(() =>
        /^\d+ %, Joint \d+/.test(
          document.querySelector('progress')?.getAttribute('aria-valuetext') ?? '',
        ),
      );
      // Joints stand in the table before all are judged, and stay there when it is stopped.
      const rows = page.locator('tbody.joint');
      await rows.nth(4).waitFor();
      expect(await violations(page)).toEqual([]);
      await page.getByRole('button', { name: 'Stop: Check of every joint' }).click();
      const again = page.getByRole('button', { name: 'Check every joint' });
      await again.waitFor();
      expect(await bar.count()).toBe(0);
      const judged = await rows.count();
      expect(judged).toBeGreaterThan(4);
      expect(judged).toBeLessThan(400);
      expect(await page.getByText(`${judged} of 400 joints checked so far.`).count()).toBe(1);
      expect(await violations(page)).toEqual([]);
      await again.click();
      await bar.waitFor();
      expect(app.problems).toEqual([]);
    } finally {
      await app.close();
    }
  });
});
