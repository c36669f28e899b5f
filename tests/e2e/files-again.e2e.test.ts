/** What becomes of a project when its page, its program or its file is gone, in a browser and on a real disk. */
import { chmodSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterEach, expect, it } from 'vitest';
import { root } from '../../src/launch/root.mjs';
import { describeInBrowser } from './support/browser.ts';
import { type AppOptions, type OpenedApp, openApp } from './support/open-app.ts';
import { button, patient, rename } from './support/project-actions.ts';
import { frames, home, useHome } from './support/user-home.ts';
import { violations } from './support/violations.ts';

const pictures = join(root, process.env.LAPWRIGHT_PICTURES ?? 'tests/artefacts');
mkdirSync(pictures, { recursive: true });
const schemes = ['light', 'dark'] as const;
const mast = readFileSync(join(root, 'docs/example.lapwright.json'), 'utf8');
const file = join(frames, 'mast.lapwright.json');

let apps: OpenedApp[] = [];
const open = async (options: AppOptions = {}): Promise<OpenedApp> => {
  const app = await openApp({ viewport: { width: 1280, height: 800 }, ...options });
  apps.push(app);
  await app.page.getByRole('heading', { level: 1 }).waitFor(patient);
  return app;
};
useHome();
afterEach(async () => {
  for (const app of apps) await app.close();
  apps = [];
});

const picture = (page: Page, name: string): Promise<Buffer> =>
  page.screenshot({ path: join(pictures, `files-${name}.png`) });
const strips = (page: Page): Promise<string[]> => page.locator('.strip > p').allTextContents();

describeInBrowser('a project', () => {
  it('stays open when its page is loaded anew, and is named at the next start', async () => {
    writeFileSync(file, mast);
    const { page, close } = await open({ file });
    await page.reload();
    await page.getByRole('heading', { name: 'Camera mast' }).waitFor(patient);
    // What it shows then is what stands on the disk.
    writeFileSync(file, mast.replace('Camera mast', 'Camera mast, mended'));
    await page.reload();
    await page.getByRole('heading', { name: 'Camera mast, mended' }).waitFor(patient);
    expect(await page.locator('.origin').textContent()).toBe('mast.lapwright.json');
    await close();

    const next = await open({ remember: true });
    await next.page
      .getByText(/^You last worked on mast\.lapwright\.json \(…\/home\/frames, \d\d:\d\d\)\.$/)
      .waitFor(patient);
    await picture(next.page, 'last-worked-light');
    expect(await violations(next.page)).toEqual([]);
    await next.page.keyboard.press('Control+2');
    await button(next.page, 'Open it').click();
    await next.page.getByRole('heading', { name: 'Camera mast, mended' }).waitFor(patient);
    expect(await strips(next.page)).toEqual([]);
    expect(next.problems).toEqual([]);
  });

  it('whose file is damaged is opened as it was before, and saved back after asking', async () => {
    writeFileSync(`${file}.previous`, mast);
    const half = mast.slice(0, 900);
    writeFileSync(file, half);
    const { page, problems } = await open({ file });
    await page.getByText(/^mast\.lapwright\.json: The file is not JSON: it stops/).waitFor(patient);
    await picture(page, 'damaged-light');
    expect(await violations(page)).toEqual([]);
    await button(page, 'Open the version before').click();
    await page.getByRole('heading', { name: 'Camera mast' }).waitFor(patient);
    await page.getByText('changes not saved').waitFor(patient);
    expect(readFileSync(file, 'utf8')).toBe(half);
    await page.keyboard.press('Control+s');
    const dialog = page.getByRole('dialog');
    await dialog.getByText(frames, { exact: true }).waitFor(patient);
    await page.keyboard.press('Enter');
    await dialog.getByRole('button', { name: 'Replace it' }).click(patient);
    await page.getByText('changes not saved').waitFor({ state: 'detached', ...patient });
    expect(JSON.parse(readFileSync(file, 'utf8'))).toMatchObject({ name: 'Camera mast' });
    expect(problems).toEqual([]);
  });

  it.each(schemes)('is rescued by a copy when the program dies, in %s', async (colorScheme) => {
    writeFileSync(file, mast);
    const { page, host } = await open({ file, colorScheme });
    await rename(page, 'Camera mast two');
    await page.waitForResponse(/recovery\.keep/, patient);
    host.process.kill('SIGKILL');
    await rename(page, 'Camera mast three');
    await page.keyboard.press('Control+s');
    const line = page.getByText(/^Lapwright does not answer: nothing is calculated or saved/);
    await line.waitFor(patient);
    const box = await page.locator('.strips').boundingBox();
    // More than one turn of everything that asks by itself.
    await page.waitForTimeout(11_000);
    expect(await strips(page)).toHaveLength(1);
    expect(await page.locator('.strips').boundingBox()).toEqual(box);
    expect(await page.locator('.notice').count()).toBe(0);
    expect(await page.getByText(/does not answer/).count()).toBe(1);
    await picture(page, `gone-${colorScheme}`);
    expect(await violations(page)).toEqual([]);
    const taken = page.waitForEvent('download');
    await button(page, 'Save a copy').click();
    const download = await taken;
    expect(download.suggestedFilename()).toBe('mast copy.lapwright.json');
    expect(readFileSync(await download.path(), 'utf8')).toContain('"Camera mast three"');
  });

  it.each(schemes)('put away unsaved is kept and taken back, in %s', async (colorScheme) => {
    writeFileSync(file, mast);
    const first = await open({ file });
    await rename(first.page, 'Camera mast two');
    await first.page.waitForResponse(/recovery\.keep/, patient);
    first.host.process.kill('SIGKILL');
    await first.close();

    const { page, problems } = await open({ remember: true, colorScheme });
    await button(page, /^Put away/).click(patient);
    const away = page.getByText(
      /^The changes of Camera mast two up to \d\d:\d\d are put away: they stay in Lapwright’s own folder until \d+ \w+ \d{4}\.$/,
    );
    await away.waitFor(patient);
    expect(readFileSync((await away.getAttribute('title'))!, 'utf8')).toContain('Camera mast two');
    await picture(page, `put-away-${colorScheme}`);
    expect(await violations(page)).toEqual([]);
    await button(page, /^Take them back/).click();
    await button(page, /^Open them/).click(patient);
    await page.getByRole('heading', { name: 'Camera mast two' }).waitFor(patient);
    expect(problems).toEqual([]);
  });

  it('is saved by keys alone in a folder that nobody chose yet', async () => {
    const { page, problems } = await open();
    await page.keyboard.press('Control+s');
    const dialog = page.getByRole('dialog');
    await dialog.getByText(home, { exact: true }).waitFor(patient);
    await dialog.getByRole('textbox', { name: 'File name' }).press('Enter');
    await dialog.getByText(/choose this folder first/).waitFor(patient);
    await picture(page, 'choose-first-light');
    expect(await violations(page)).toEqual([]);
    await page.keyboard.press('Enter');
    await dialog.getByText(/choose this folder first/).waitFor({ state: 'detached', ...patient });
    await page.keyboard.press('Enter');
    await page.locator('.file-state').getByText('Curlew.lapwright').waitFor(patient);
    expect(readFileSync(join(home, 'Curlew.lapwright'), 'utf8')).toContain('"Curlew"');
    expect(problems).toEqual([]);
  });

  it('has its file’s name in the bar, whatever else is said of it', async () => {
    const named = join(frames, 'Root-joint-of-the-second.lapwright');
    writeFileSync(named, mast);
    chmodSync(named, 0o444);
    const { page, problems } = await open({ file: named });
    await rename(page, 'Camera mast two');
    const stem = page.locator('.origin-stem');
    for (const width of [1280, 1024, 800, 320]) {
      await page.setViewportSize({ width, height: 800 });
      const cut = await stem.evaluate((one) => one.scrollWidth - one.clientWidth);
      expect(cut, `at ${width}`).toBeLessThanOrEqual(0);
      const wide = await page.evaluate(() => document.documentElement.scrollWidth);
      expect(wide, `at ${width}`).toBeLessThanOrEqual(width);
      await picture(page, `name-${width}-light`);
    }
    expect(problems).toEqual([]);
    rmSync(named, { force: true });
  });

  it('cannot be opened by a page without its token, which offers nothing then', async () => {
    const { page, host } = await open();
    const stranger = await (await page.context().browser()!.newContext()).newPage();
    await stranger.goto(host.origin);
    await stranger.getByText('This page is not from the Lapwright that runs now.').waitFor(patient);
    await stranger.getByText(/open the address that it printed/).waitFor(patient);
    for (const name of ['Open the demonstration project', 'Open another file …', 'File']) {
      expect(await stranger.getByRole('button', { name, exact: true }).count()).toBe(0);
    }
    expect(await violations(stranger)).toEqual([]);
    await stranger.context().close();
  });
});
