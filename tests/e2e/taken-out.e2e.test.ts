/** Plots and tables taken out of the page: the picture is opened, the figures are those of the page. */
import { mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import Papa from 'papaparse';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { root } from '../../src/launch/root.mjs';
import type { ScatterReport } from '../../src/shared/reports-scatter.ts';
import { figure, signed } from '../../src/shared/words.ts';
import { describeInBrowser } from './support/browser.ts';
import { openApp } from './support/open-app.ts';
import { violations } from './support/violations.ts';

/** Pictures for a person to look at. */
const pictures = join(root, process.env.LAPWRIGHT_PICTURES ?? 'tests/artefacts');
mkdirSync(pictures, { recursive: true });

const patient = { timeout: 150_000 };

async function taken(page: Page, name: string): Promise<{ file: string; bytes: Buffer }> {
  const button = page.getByRole('button', { name, exact: true });
  await button.waitFor(patient);
  await button.focus();
  const [saved] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Enter')]);
  const file = saved.suggestedFilename();
  const path = join(pictures, `taken-${file}`);
  await saved.saveAs(path);
  return { file, bytes: readFileSync(path) };
}

const rowsOf = (bytes: Buffer): Record<string, string>[] =>
  Papa.parse<Record<string, string>>(bytes.toString('utf8'), { header: true, skipEmptyLines: true })
    .data;

/** Size, colour of the paper, and how many pixels of each fifth from top to bottom are not paper. */
const looked = (page: Page, bytes: Buffer) =>
  page.evaluate(async (base64) => {
    const data = Uint8Array.from(atob(base64), (one) => one.charCodeAt(0));
    const image = await createImageBitmap(new Blob([data], { type: 'image/png' }));
    const canvas = new OffscreenCanvas(image.width, image.height);
    const context = canvas.getContext('2d')!;
    context.drawImage(image, 0, 0);
    const { data: pixels } = context.getImageData(0, 0, image.width, image.height);
    const paper = [...pixels.slice(0, 4)];
    const inked = [0, 0, 0, 0, 0];
    const colours = new Set<number>();
    for (let i = 0; i < pixels.length; i += 4) {
      if ([0, 1, 2].every((k) => pixels[i + k] === paper[k])) continue;
      const row = Math.floor(i / 4 / image.width);
      inked[Math.floor((5 * row) / image.height)]! += 1;
      colours.add((pixels[i]! << 16) | (pixels[i + 1]! << 8) | pixels[i + 2]!);
    }
    return {
      width: image.width,
      height: image.height,
      paper,
      inked,
      blue: colours.has(0x1f5fa8),
    };
  }, bytes.toString('base64'));

const low = { margin: 0.3, label: 'adhesive, yield', caseName: 'Gust' };
/** Five samples of a hundred fail. */
const scattered: ScatterReport = {
  jointId: 'boom-tip',
  targetMargin: 0.25,
  tolerances: [],
  middle: low,
  own: low,
  flags: [],
  samples: 100,
  seed: 1,
  method: 'each',
  below: { count: 5, share: 0.05, low: 0.016, high: 0.113 },
  confidence: 0.95,
  mean: 0.2,
  deviation: 0.1,
  lowest: -0.1,
  highest: 0.4,
  percentiles: [{ share: 0.01, value: -0.09, low: -0.1, high: 0 }],
  histogram: { from: -0.1, width: 0.1, counts: [5, 20, 40, 25, 10] },
  governs: [{ label: 'adhesive, yield', caseName: 'Gust', count: 100 }],
  exact: 100,
  check: null,
};

describeInBrowser('what is taken out of the page', () => {
  it.each(['light', 'dark'] as const)(
    'is what stands on it, %s',
    async (colorScheme) => {
      const app = await openApp({ colorScheme, viewport: { width: 1280, height: 800 } });
      const { page } = app;
      try {
        const joints = await taken(page, 'CSV, Joints');
        expect(joints.file).toBe('Curlew-joints.csv');
        const shown = await page
          .locator('tbody.joint tr:has(th)')
          .evaluateAll((list) =>
            list.map((row) => [
              row.querySelector('.joint-name')?.textContent?.trim(),
              row.querySelector('.lowest .value')?.textContent?.trim(),
            ]),
          );
        const margins = rowsOf(joints.bytes).map((row) => [row.joint, signed(Number(row.margin))]);
        expect(margins.toSorted()).toEqual(shown.toSorted());
        expect(margins.length).toBeGreaterThan(3);

        await page.getByRole('button', { name: 'Boom tip to motor mount', exact: true }).click();
        const sweep = await taken(page, 'CSV, Strength against overlap');
        expect(sweep.file).toBe('Curlew-Boom-tip-to-motor-mount-strength-against-overlap.csv');
        const rows = rowsOf(sweep.bytes);
        const block = page.getByRole('region', { name: 'Strength against overlap' });
        await block.getByText('Table', { exact: true }).click();
        await block.locator('.figures-sheet td').first().waitFor(patient);
        const table = await block
          .locator('.figures-sheet tbody tr')
          .evaluateAll((list) =>
            list.map((row) =>
              [...row.querySelectorAll('td')].map((cell) => cell.textContent ?? ''),
            ),
          );
        expect(table.length).toBeGreaterThan(5);
        const asShown = rows.map((row) => [
          Number(row['overlap, mm']).toFixed(1),
          figure(Number(row['bond strength over load asked'])),
          figure(Number(row['lowest of all modes but trough over load asked'])),
          row['set by'],
        ]);
        for (const row of table) expect(asShown).toContainEqual(row);

        const shear = rowsOf((await taken(page, 'CSV, Shear along the bond')).bytes);
        const peaks = Object.keys(shear[0]!).filter((head) =>
          /^(\w+ bond )?shear stress, MPa/.test(head),
        );
        expect(peaks.length).toBeGreaterThan(0);
        const most = Math.max(
          ...shear.flatMap((row) => peaks.map((head) => Math.abs(Number(row[head])))),
        );
        const readings = await page.locator('.is-stress .readings').first().textContent();
        expect(readings).toContain(figure(most));

        for (const what of [
          'Shear along the bond',
          'Peel along the bond',
          'Strength against overlap',
        ]) {
          const picture = await taken(page, `PNG, ${what}`);
          expect(picture.file).toBe(
            `Curlew-Boom-tip-to-motor-mount-${what.toLowerCase().replaceAll(' ', '-')}.png`,
          );
          const seen = await looked(page, picture.bytes);
          expect(seen.width).toBe(2 * 960);
          expect(seen.height).toBeGreaterThan(700);
          // On paper, whatever the page is drawn on; title, curves and caption are all there.
          expect(seen.paper).toEqual([0xfb, 0xfa, 0xf6, 255]);
          for (const part of seen.inked) expect(part).toBeGreaterThan(300);
          expect(seen.blue).toBe(what !== 'Peel along the bond');
        }
        expect(await violations(page)).toEqual([]);
        expect(app.problems).toEqual([]);
      } finally {
        await app.close();
      }
    },
    400_000,
  );

  it('is a drawing of the page as well, at night', async () => {
    const app = await openApp({ colorScheme: 'dark', viewport: { width: 1280, height: 800 } });
    const { page } = app;
    try {
      // What is drawn is looked at here, not how it is computed, which takes its time.
      await page.route('**/ask/joint.scatter', (route) =>
        route.fulfill({ json: { ok: true, value: scattered } }),
      );
      await page.getByRole('button', { name: 'Boom tip to motor mount', exact: true }).click();
      await page.getByRole('button', { name: 'Scatter', exact: true }).click();
      await page.getByRole('button', { name: 'Start', exact: true }).click();
      const rows = rowsOf((await taken(page, 'CSV, Scatter of the lowest margin')).bytes);
      expect(rows.map(({ samples }) => Number(samples))).toEqual(scattered.histogram.counts);
      const picture = await taken(page, 'PNG, Scatter of the lowest margin');
      const seen = await looked(page, picture.bytes);
      expect([seen.width, seen.paper, seen.blue]).toEqual([1920, [0xfb, 0xfa, 0xf6, 255], true]);
      for (const part of seen.inked) expect(part).toBeGreaterThan(300);
      await page.screenshot({ path: join(pictures, 'taken-scatter-dark.png') });
      // The page itself stays as it is looked at.
      expect(await page.evaluate(() => document.documentElement.dataset.theme)).toBe('system');
      expect(app.problems).toEqual([]);
    } finally {
      await app.close();
    }
  }, 400_000);
});
