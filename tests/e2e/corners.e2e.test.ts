/** The Joints page by load case: from the table to a state, and a long project. */
import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { root } from '../../src/launch/root.mjs';
import curlew from '../../src/main/demo/curlew.lapwright.json' with { type: 'json' };
import type { CornersReport } from '../../src/shared/reports.ts';
import { signed } from '../../src/shared/words.ts';
import { describeInBrowser } from './support/browser.ts';
import { openApp } from './support/open-app.ts';
import { violations } from './support/violations.ts';

/** Pictures for a person to look at. */
const pictures = join(root, process.env.LAPWRIGHT_PICTURES ?? 'tests/artefacts');
mkdirSync(pictures, { recursive: true });

const patient = { timeout: 60_000 };

async function openByCase(page: Page): Promise<Locator> {
  await page.getByRole('button', { name: 'By case' }).click();
  const table = page.getByRole('table', { name: /against load cases/ });
  await table.waitFor(patient);
  return table;
}

function cornersInTerminal(file: string): CornersReport {
  const cli = join(root, 'out', 'main', 'cli.js');
  try {
    const out = execFileSync(process.execPath, [cli, 'corners', file, '--json'], {
      encoding: 'utf8',
    });
    return JSON.parse(out) as CornersReport;
  } catch (error) {
    // Exit 1 only says that some margins are below the target.
    const { status, stdout } = error as { status: number; stdout: string };
    expect(status).toBe(1);
    return JSON.parse(stdout) as CornersReport;
  }
}

describeInBrowser('joints by case', () => {
  it('show the figures of the terminal, and open the state of a cell', async () => {
    const app = await openApp({ viewport: { width: 1280, height: 800 } });
    try {
      const { page } = app;
      const table = await openByCase(page);
      const report = cornersInTerminal(join(root, 'src/main/demo/curlew.lapwright.json'));
      const shown = await table.locator('.corner .value').allTextContents();
      const expected = report.joints.flatMap(({ cells }) =>
        cells.map(({ lowest }) => signed(lowest!.margin)),
      );
      expect(shown.toSorted()).toEqual(expected.toSorted());

      await table.getByRole('button', { name: /^Boom root, Gust, cold soak/ }).focus();
      await page.keyboard.press('ArrowRight');
      await page.keyboard.press('Enter');
      await page.getByRole('heading', { name: 'Size Boom root' }).waitFor();
      const drawn = page.getByRole('combobox', { name: 'Load case drawn' });
      await drawn.waitFor(patient);
      const chosen = (select: Locator): Promise<string> =>
        select.evaluate((one) => (one as HTMLSelectElement).selectedOptions[0]?.text ?? '');
      expect(await chosen(drawn)).toBe('Gust, hot deck');
      const cell = report.joints[0]!.cells.find(({ caseId }) => caseId === 'gust-hot')!;
      const gap = page.getByRole('combobox', { name: 'Gap drawn' });
      expect(await gap.inputValue()).toBe(cell.lowest!.gapState);
      const note = await page.locator('.drawn-note').textContent();
      expect(note).toContain(`θ ${Math.round(cell.lowest!.theta)}°`);
      // The way back leads to the same view.
      await page.keyboard.press('Control+1');
      await page.getByRole('table', { name: /against load cases/ }).waitFor(patient);
      expect(app.problems).toEqual([]);
    } finally {
      await app.close();
    }
  });

  for (const scheme of ['light', 'dark'] as const) {
    for (const [width, height] of [
      [1280, 800],
      [1920, 1080],
    ] as const) {
      it(`are accessible, and stay in the window: ${scheme}, ${width} × ${height}`, async () => {
        const app = await openApp({ colorScheme: scheme, viewport: { width, height } });
        try {
          const { page } = app;
          const table = await openByCase(page);
          await table.getByRole('button', { name: 'Hard landing' }).click();
          expect(await violations(page)).toEqual([]);
          await page.screenshot({ path: join(pictures, `joints-by-case-${scheme}-${width}.png`) });
          const overflow = await page.evaluate(
            () => document.documentElement.scrollWidth - window.innerWidth,
          );
          expect(overflow).toBeLessThanOrEqual(0);
          expect(app.problems).toEqual([]);
        } finally {
          await app.close();
        }
      });
    }
  }

  it('keep heads and first column in view over many joints and cases', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'lapwright-'));
    const file = join(folder, 'long.lapwright.json');
    const [gust] = curlew.loadCases;
    const strut = curlew.joints.find(({ id }) => id === 'tail-strut')!;
    const loadCases = Array.from({ length: 12 }, (_, i) => ({
      ...gust!,
      id: `gust-${i}`,
      name: `Gust from ${30 * i}°`,
    }));
    const joints = Array.from({ length: 30 }, (_, i) => ({
      ...strut,
      id: `strut-${i}`,
      name: `Strut ${i}`,
      loads: loadCases.map(({ id }, k) => ({ case: id, force: 2000 + 100 * k + 20 * i })),
    }));
    writeFileSync(file, JSON.stringify({ ...curlew, loadCases, joints }));
    const app = await openApp({ file, viewport: { width: 1280, height: 800 } });
    try {
      const { page } = app;
      const table = await openByCase(page);
      const frame = page.locator('.corners-frame');
      await frame.evaluate((one) => one.scrollTo(one.scrollWidth, one.scrollHeight));
      const place = await frame.evaluate((one) => {
        const of = (found: Element | null): DOMRect => found!.getBoundingClientRect();
        const at = of(one);
        const corner = of(one.querySelector('thead th'));
        const rows = [...one.querySelectorAll('tbody th')];
        return {
          left: corner.left - at.left,
          top: corner.top - at.top,
          row: of(rows.at(-1)!).left - at.left,
          scrolled: [one.scrollLeft, one.scrollTop],
        };
      });
      expect(place.scrolled.every((by) => by > 50)).toBe(true);
      expect(Math.abs(place.left)).toBeLessThan(2);
      expect(Math.abs(place.top)).toBeLessThan(2);
      expect(Math.abs(place.row)).toBeLessThan(2);
      await page.screenshot({ path: join(pictures, 'joints-by-case-long.png') });
      // A cell that is walked to is not left under the heads that stay.
      await table.getByRole('button', { name: /^Strut 29, Gust from 330°/ }).focus();
      for (let step = 0; step < 25; step++) await page.keyboard.press('ArrowUp');
      const isSeen = await page.evaluate(() => {
        const held = document.activeElement!.getBoundingClientRect();
        const head = document.querySelector('.corners thead th')!.getBoundingClientRect();
        return held.top >= head.bottom - 1;
      });
      expect(isSeen).toBe(true);
      expect(app.problems).toEqual([]);
    } finally {
      await app.close();
      rmSync(folder, { recursive: true, force: true });
    }
  });
});
