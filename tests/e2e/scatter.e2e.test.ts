/** What matters and Scatter in the app: run, follow, stop, typing meanwhile, tolerances, an older document. */
import { execFile, execFileSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { promisify } from 'node:util';
import type { Page } from 'playwright-core';
import { expect, it, vi } from 'vitest';
import { root } from '../../src/launch/root.mjs';
import type { ScatterReport } from '../../src/shared/reports-scatter.ts';
import { belowSentence } from '../../src/shared/scatter-words.ts';
import { describeInBrowser } from './support/browser.ts';
import { openApp } from './support/open-app.ts';
import { violations } from './support/violations.ts';

const artefacts = join(root, 'tests/artefacts');
mkdirSync(artefacts, { recursive: true });
const picture = (page: Page, name: string) =>
  page.screenshot({ path: join(artefacts, `${name}.png`) });

const run = promisify(execFile);

/** A browser without a graphics card on a busy machine takes its time. */
const patient = { timeout: 240_000 };

async function openView(page: Page, joint: string, view: string): Promise<void> {
  await page.getByRole('button', { name: joint, exact: true }).click();
  await page.getByRole('list', { name: 'Margins, lowest first' }).waitFor();
  await page.getByRole('button', { name: view, exact: true }).click();
}

const start = (page: Page) => page.getByRole('button', { name: 'Start', exact: true }).click();

/** Milliseconds from each key to the end of the frame that shows it. */
async function typingTimes(page: Page, keys: number): Promise<number[]> {
  await page.evaluate(() => {
    const times: number[] = [];
    Object.assign(window, { keyTimes: times });
    window.addEventListener('keydown', ({ timeStamp }) => {
      requestAnimationFrame(() => {
        const channel = new MessageChannel();
        channel.port1.onmessage = () => times.push(performance.now() - timeStamp);
        channel.port2.postMessage(null);
      });
    });
  });
  await page.getByRole('textbox', { name: 'Outside diameter', exact: true }).focus();
  for (let i = 0; i < keys; i++) {
    await page.keyboard.press(i % 2 === 0 ? 'End' : 'Backspace');
    await page.keyboard.press('5');
    await page.waitForTimeout(60);
  }
  await page.waitForTimeout(500);
  return page.evaluate(() => (window as unknown as { keyTimes: number[] }).keyTimes);
}

const percentileOf = (values: readonly number[], share: number): number =>
  [...values].sort((a, b) => a - b)[Math.min(Math.ceil(share * values.length), values.length) - 1]!;

describeInBrowser('tolerances of a joint', () => {
  it('scatter: the same answer as the terminal, dimmed once the project changes', async () => {
    const app = await openApp({ viewport: { width: 1280, height: 800 } });
    try {
      const { page } = app;
      await openView(page, 'Landing leg', 'Scatter');
      await page.getByRole('textbox', { name: 'Samples' }).fill('4000');
      const cli = join(root, 'out', 'main', 'cli.js');
      const demo = execFileSync(process.execPath, [cli, 'demo'], { encoding: 'utf8' });
      const file = join(artefacts, 'curlew.lapwright.json');
      writeFileSync(file, demo);
      // Page and terminal compute at the same time, each in a process of its own.
      await start(page);
      const [{ stdout: printed }] = await Promise.all([
        run(
          process.execPath,
          [cli, 'scatter', file, '--joint', 'landing-leg', '--samples', '4000', '--json'],
          { encoding: 'utf8' },
        ),
        page.locator('.study-answer').waitFor(patient),
      ]);
      const said = await page.locator('.study-answer').textContent();
      expect(said).toBe(belowSentence(JSON.parse(printed) as ScatterReport));
      await page.getByRole('img', { name: /^Histogram of the lowest margin/ }).waitFor();
      expect(await violations(page)).toEqual([]);
      await picture(page, 'scatter-light');
      // A tolerance that is changed is written into the project, with those that it did not say yet.
      const field = page.getByRole('textbox', { name: 'Spread of adhesive shear yield' });
      await field.fill('3');
      await page.getByText('Of the project before its last change').waitFor();
      await page.getByText('of the project, for every joint').waitFor();
      expect(await field.inputValue()).toBe('3');
      await page.getByRole('button', { name: 'Typical ones instead' }).click();
      await page.getByText('the project gives none').waitFor();
      await vi.waitFor(async () => expect(await field.inputValue()).toBe('6'), { timeout: 30_000 });
      expect(app.problems).toEqual([]);
    } finally {
      await app.close();
    }
  }, 300_000);

  it('what matters: the largest swing first, in light and dark', async () => {
    const app = await openApp({ viewport: { width: 1920, height: 1080 }, colorScheme: 'dark' });
    try {
      const { page } = app;
      await openView(page, 'Landing leg', 'What matters');
      await page.getByRole('button', { name: 'Compute', exact: true }).click();
      const rows = page.locator('.tornado tbody tr');
      await rows.first().waitFor(patient);
      expect(await rows.first().textContent()).toMatch(/adhesive shear yield/);
      expect(await rows.last().textContent()).toMatch(/moves nothing/);
      expect(await violations(page)).toEqual([]);
      await picture(page, 'matters-dark');
      await page.emulateMedia({ colorScheme: 'light' });
      await page.setViewportSize({ width: 1280, height: 800 });
      await picture(page, 'matters-light');
      expect(app.problems).toEqual([]);
    } finally {
      await app.close();
    }
  }, 300_000);

  it('runs beside typing, and stops at once', async () => {
    const app = await openApp({ viewport: { width: 1280, height: 800 } });
    try {
      const { page } = app;
      await openView(page, 'Boom tip to motor mount', 'Scatter');
      const without = await typingTimes(page, 20);
      await start(page);
      await page.getByRole('progressbar', { name: 'Scatter' }).waitFor(patient);
      const during = await typingTimes(page, 20);
      const bar = page.getByRole('progressbar', { name: 'Scatter' });
      expect(await bar.isVisible()).toBe(true);
      await picture(page, 'scatter-running');
      const stop = () =>
        page.evaluate(async () => {
          const button = document.querySelector<HTMLButtonElement>('.job button')!;
          const begun = performance.now();
          button.click();
          while (document.querySelector('.job')) await new Promise(requestAnimationFrame);
          return performance.now() - begun;
        });
      const afterTyping = await stop();
      await page.getByText('Stopped: nothing was counted.').waitFor();
      await start(page);
      // Until it is under way, with its share done.
      await page.locator('.job-share', { hasText: '%' }).waitFor(patient);
      const underWay = await stop();
      await page.getByText('Stopped: nothing was counted.').waitFor();
      const report = {
        'typing without a run, p50, ms': percentileOf(without, 0.5),
        'typing without a run, p95, ms': percentileOf(without, 0.95),
        'typing during a run, p50, ms': percentileOf(during, 0.5),
        'typing during a run, p95, ms': percentileOf(during, 0.95),
        keys: during.length,
        'from stop to stopped, the joint still being analysed after the typing, ms': afterTyping,
        'from stop to stopped, ms': underWay,
      };
      writeFileSync(join(artefacts, 'scatter-typing.json'), JSON.stringify(report, null, 2));
      // Every key was answered by a frame, during the run as without it.
      expect(during.length).toBeGreaterThanOrEqual(40);
      expect(app.problems).toEqual([]);
    } finally {
      await app.close();
    }
  }, 300_000);
});
