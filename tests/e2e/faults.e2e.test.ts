/** Faults while it runs, on the built host and in a browser: nothing is lost, it is said, and it goes on. */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import type { CDPSession, Page } from 'playwright-core';
import { afterEach, expect, it, vi } from 'vitest';
import { root } from '../../src/launch/root.mjs';
import { describeInBrowser } from './support/browser.ts';
import { type AppOptions, type OpenedApp, openApp } from './support/open-app.ts';
import { button, patient, rename } from './support/project-actions.ts';
import { frames, useHome } from './support/user-home.ts';
import { violations } from './support/violations.ts';

const pictures = join(root, process.env.LAPWRIGHT_PICTURES ?? 'tests/artefacts');
mkdirSync(pictures, { recursive: true });
const mast = readFileSync(join(root, 'docs/example.lapwright.json'), 'utf8');
const file = join(frames, 'mast.lapwright.json');
const nameIn = (path: string): string =>
  (JSON.parse(readFileSync(path, 'utf8')) as { name: string }).name;

let apps: OpenedApp[] = [];
const open = async (options: AppOptions = {}): Promise<OpenedApp> => {
  const app = await openApp({ viewport: { width: 1280, height: 800 }, file, ...options });
  apps.push(app);
  await app.page.getByRole('heading', { name: /^Camera mast/ }).waitFor(patient);
  return app;
};
useHome();
afterEach(async () => {
  // One that a test has stopped does not end before it goes on.
  for (const { host } of apps) if (host.process.exitCode === null) host.process.kill('SIGCONT');
  for (const app of apps) await app.close();
  apps = [];
});

const picture = (page: Page, name: string): Promise<Buffer> =>
  page.screenshot({ path: join(pictures, `faults-${name}.png`) });
const isSaved = (page: Page): Promise<void> =>
  page.getByText('changes not saved').waitFor({ state: 'detached', ...patient });
const offer = /^Camera mast two was not saved when/;

describeInBrowser('a fault while it runs', () => {
  it('that ends the page in its tab leaves its changes, which that tab is offered when it is loaded anew', async () => {
    writeFileSync(file, mast);
    const { page, host } = await open();
    await rename(page, 'Camera mast two');
    await page.waitForResponse(/recovery\.keep/, patient);
    const tab = await page.context().newCDPSession(page);
    const crashed = page.waitForEvent('crash', patient);
    void tab.send('Page.crash').catch(() => {});
    await crashed;
    // The page of a dead tab can be told no more; the tab can, as by the user's key.
    await tab.send('Page.reload');
    const evaluate = (expression: string) => inTab(tab, expression);
    await vi.waitFor(
      async () =>
        expect(await evaluate("document.querySelector('.strip > p').textContent")).toMatch(offer),
      patient,
    );
    expect(await evaluate("document.querySelector('h1').textContent")).toBe('Camera mast');
    await evaluate(
      "[...document.querySelectorAll('.strip button')].find((one) => one.textContent.startsWith('Open them')).click()",
    );
    await vi.waitFor(
      async () =>
        expect(await evaluate("document.querySelector('h1').textContent")).toBe('Camera mast two'),
      patient,
    );
    expect(host.process.exitCode).toBeNull();
  });

  it('that ends the host is said by the old page in one line, and the new one offers the changes', async () => {
    writeFileSync(file, mast);
    const old = await open();
    await rename(old.page, 'Camera mast two');
    await old.page.waitForResponse(/recovery\.keep/, patient);
    old.host.process.kill('SIGKILL');
    const { page, problems } = await open({ remember: true });
    const strip = page.getByText(offer);
    await strip.waitFor(patient);
    const line = old.page.getByText(/^Lapwright does not answer: nothing is calculated or saved/);
    await line.waitFor(patient);
    await button(page, /^Open them/).click();
    await page.getByRole('heading', { name: 'Camera mast two' }).waitFor(patient);
    await page.keyboard.press('Control+s');
    await isSaved(page);
    expect(nameIn(file)).toBe('Camera mast two');
    // The old page belongs to no program any more, whatever is started.
    expect(await old.page.locator('.strip > p').count()).toBe(1);
    expect(problems).toEqual([]);
  });

  it('of two windows on one file is none: the second is not saved over the first, and both can be kept', async () => {
    writeFileSync(file, mast);
    const { page: first, host, problems } = await open();
    const second = await first.context().newPage();
    await second.goto(host.address);
    await second.getByRole('heading', { name: 'Camera mast' }).waitFor(patient);
    await rename(first, 'Camera mast one');
    await rename(second, 'Camera mast two');
    await first.keyboard.press('Control+s');
    await isSaved(first);
    await second.bringToFront();
    await second.keyboard.press('Control+s');
    const dialog = second.getByRole('dialog');
    await dialog.getByText(/was changed by another window of Lapwright/).waitFor(patient);
    await picture(second, 'two-windows-light');
    expect(await violations(second)).toEqual([]);
    expect(nameIn(file)).toBe('Camera mast one');
    await dialog.getByRole('button', { name: 'Save as …' }).click();
    await second.getByRole('textbox', { name: 'File name' }).fill('mast two');
    await second.keyboard.press('Enter');
    await isSaved(second);
    expect(nameIn(file)).toBe('Camera mast one');
    expect(nameIn(join(frames, 'mast two.lapwright'))).toBe('Camera mast two');
    expect(problems).toEqual([]);
  });

  it.skipIf(process.platform === 'win32')(
    'that puts the host to sleep ends nothing: what was asked meanwhile is answered once it wakes',
    async () => {
      writeFileSync(file, mast);
      const { page, host, problems } = await open();
      host.process.kill('SIGSTOP');
      await rename(page, 'Camera mast two');
      await page.keyboard.press('Control+s');
      await wait(3_000);
      expect(nameIn(file)).toBe('Camera mast');
      host.process.kill('SIGCONT');
      await isSaved(page);
      expect(nameIn(file)).toBe('Camera mast two');
      expect(await page.getByText(/does not answer/).count()).toBe(0);
      expect(host.process.exitCode).toBeNull();
      expect(problems).toEqual([]);
    },
  );
});

async function inTab(tab: CDPSession, expression: string): Promise<unknown> {
  const { result, exceptionDetails } = await tab.send('Runtime.evaluate', { expression });
  if (exceptionDetails) throw new Error(exceptionDetails.text);
  return result.value;
}
