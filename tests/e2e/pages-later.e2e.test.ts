/** What the first picture waits for, and what comes after it. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { expect, it } from 'vitest';
import { root } from '../../src/launch/root.mjs';
import { browser, describeInBrowser } from './support/browser.ts';
import { checked } from './support/checked.ts';
import { startHost } from './support/host.ts';
import { openApp } from './support/open-app.ts';

const assets = join(root, 'out/renderer/assets');
const patient = { timeout: 30_000 };
const pieces = ['SizePage', 'ComparePage', 'GapPage', 'CouponsPage', 'SheetView'];

const packed = (name: string): number => gzipSync(readFileSync(join(assets, name))).length;

describeInBrowser('the script of the page', () => {
  it('that the first picture waits for is under 200 kB as packed', () => {
    const head = readFileSync(join(root, 'out/renderer/index.html'), 'utf8');
    const first = [...head.matchAll(/(?:src|href)="[^"]*\/([^"/]+\.js)"/g)].map(
      ([, name]) => name!,
    );
    expect(first.some((name) => name.startsWith('index-'))).toBe(true);
    const total = first.reduce((sum, name) => sum + packed(name), 0);
    expect(total).toBeGreaterThan(20_000);
    expect(total).toBeLessThan(200_000);
  });

  it('comes with every page before one asks for it', async () => {
    const app = await openApp();
    try {
      await checked(app.page);
      const brought = (): Promise<string[]> =>
        app.page.evaluate(() => performance.getEntriesByType('resource').map(({ name }) => name));
      for (const piece of pieces) {
        await expect
          .poll(async () => (await brought()).some((name) => name.includes(`/${piece}-`)), patient)
          .toBe(true);
      }
      expect(app.problems).toEqual([]);
    } finally {
      await app.close();
    }
  });

  it('says so when a page does not come, and brings it when loaded again', async () => {
    const host = await startHost();
    const context = await (await browser()).newContext();
    try {
      const piece = '**/GapPage-*.js';
      await context.route(piece, (route) => route.abort());
      const page = await context.newPage();
      await page.goto(host.address);
      await checked(page);
      await page.keyboard.press('Control+4');
      const missing = page.getByText('This page of the program could not be loaded');
      await missing.waitFor(patient);
      await context.unroute(piece);
      await page.getByRole('button', { name: 'Load again' }).click();
      await checked(page);
      await page.keyboard.press('Control+4');
      await page.getByText('May this tube and this sleeve be bonded?').waitFor(patient);
      expect(await missing.count()).toBe(0);
    } finally {
      await context.close();
      await host.stop();
    }
  });
});
