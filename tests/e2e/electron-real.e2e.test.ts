/** In real Electron, where its program is installed; elsewhere skipped, and `npm test` says so. */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type ElectronApplication, _electron as electron, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { root } from '../../src/launch/root.mjs';
import type { Bridge } from '../../src/shared/contract.ts';

const program = inject('electron');
type WithBridge = { lapwright: Bridge };

describe.skipIf(program === null)('in real Electron', () => {
  let application: ElectronApplication;
  let page: Page;
  const profile = mkdtempSync(join(tmpdir(), 'lapwright-test-'));

  beforeAll(async () => {
    application = await electron.launch({
      executablePath: program!,
      args: [root, `--user-data-dir=${profile}`],
    });
    page = await application.firstWindow();
    await page.waitForLoadState();
  });
  afterAll(async () => {
    await application?.close();
    rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
  });

  it('shows its own page', async () => {
    expect(page.url()).toBe('app://lapwright/');
    await expect.poll(() => page.title()).toContain('Lapwright');
  });

  it('runs that page in a sandbox, isolated, with nothing of Node in it', async () => {
    const preferences = await application.evaluate(({ BrowserWindow }) => {
      const [window] = BrowserWindow.getAllWindows();
      const contents = window!.webContents as unknown as {
        getLastWebPreferences(): { sandbox?: boolean; contextIsolation?: boolean };
      };
      const { sandbox, contextIsolation } = contents.getLastWebPreferences();
      return { sandbox, contextIsolation };
    });
    expect(preferences).toEqual({ sandbox: true, contextIsolation: true });
    const found = await page.evaluate(() => [
      typeof (globalThis as { require?: unknown }).require,
      typeof (globalThis as { process?: unknown }).process,
      Object.isFrozen((globalThis as unknown as WithBridge).lapwright),
    ]);
    expect(found).toEqual(['undefined', 'undefined', true]);
  });

  it('answers the page, and sweeps in its worker', async () => {
    const replies = await page.evaluate(async () => {
      const { ask } = (globalThis as unknown as WithBridge).lapwright;
      const demo = await ask('project.demo', {});
      if (!demo.ok) return [demo];
      const { document } = demo.value;
      return [
        await ask('app.about', {}),
        await ask('joint.sweep', { document, jointId: 'landing-leg', points: 5 }),
      ];
    });
    expect(replies).toMatchObject([
      { ok: true, value: { carrier: 'electron' } },
      { ok: true, value: { points: { length: 5 } } },
    ]);
  });

  it('saves the sheet of the project as a PDF, page by page as it is shown', async () => {
    const path = join(profile, 'sheet.pdf');
    await application.evaluate(({ dialog }, filePath) => {
      dialog.showSaveDialog = async () => ({ canceled: false, filePath });
    }, path);
    await page.getByRole('button', { name: 'Sheet …' }).click();
    await page.getByText(/^\d+ pages, /).waitFor({ timeout: 180_000 });
    const pages = await page.locator('.sheet-pages > .sheet-page').count();
    await page.getByRole('button', { name: 'Save as PDF …' }).click();
    await page.getByText('Saved as sheet.pdf.').waitFor({ timeout: 60_000 });
    const pdf = readFileSync(path).toString('latin1');
    expect(pdf.match(/\/Type\s*\/Page(?![s\w])/g)).toHaveLength(pages);
    await page.keyboard.press('Escape');
  }, 300_000);

  it('goes nowhere else and opens no other window', async () => {
    await page.evaluate(() => {
      globalThis.open('https://elsewhere.test/');
      location.href = 'https://elsewhere.test/';
    });
    await page.waitForTimeout(500);
    expect(page.url()).toBe('app://lapwright/');
    expect(application.windows()).toHaveLength(1);
  });

  it('grants no permission and runs nothing inline', async () => {
    const found = await page.evaluate(async () => {
      const script = document.createElement('script');
      script.textContent = 'window.ranInline = true';
      document.body.append(script);
      return { ran: 'ranInline' in window, notify: await Notification.requestPermission() };
    });
    expect(found).toEqual({ ran: false, notify: 'denied' });
  });
});
