/** In real Electron, where its program is installed; elsewhere skipped, and `npm test` says so. */
import { mkdtempSync, readFileSync, realpathSync, rmSync } from 'node:fs';
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

  it('brings a command of the menu to its page, and lists what was open lately', async () => {
    await page.evaluate(() => {
      const heard: unknown[] = [];
      Object.assign(globalThis, { heard });
      (globalThis as unknown as WithBridge).lapwright.onCommand!((command) => heard.push(command));
    });
    await application.evaluate(({ Menu }) => {
      const items = Menu.getApplicationMenu()!.items.find(({ label }) => label === 'File')!;
      items.submenu!.items.find(({ label }) => label === 'Save')!.click();
    });
    await expect
      .poll(() => page.evaluate(() => (globalThis as unknown as { heard: unknown }).heard))
      .toEqual([{ name: 'save' }]);
  });

  it('saves what the dialog of the system chooses, and tells where a dropped file lies', async () => {
    const path = join(realpathSync.native(profile), 'kestrel.lapwright.json');
    await application.evaluate(({ dialog }, filePath) => {
      dialog.showSaveDialog = async () => ({ canceled: false, filePath });
    }, path);
    const saved = await page.evaluate(async () => {
      const { ask } = (globalThis as unknown as WithBridge).lapwright;
      const demo = await ask('project.demo', {});
      const chosen = await ask('file.choose', { purpose: 'save' });
      if (!demo.ok || !chosen.ok) return null;
      const { document } = demo.value;
      return ask('file.save', { path: chosen.value.path!, document, expect: null });
    });
    expect(saved).toMatchObject({ ok: true, value: { file: { path }, backup: null } });
    expect(JSON.parse(readFileSync(path, 'utf8')).name).toBe('Curlew');

    await page.evaluate(() => {
      const input = document.createElement('input');
      input.type = 'file';
      input.id = 'given';
      document.body.append(input);
    });
    await page.locator('#given').setInputFiles(path);
    const found = await page.evaluate(() => {
      const { pathOf } = (globalThis as unknown as WithBridge).lapwright;
      const input = document.querySelector<HTMLInputElement>('#given')!;
      return [pathOf!(input.files![0]!), pathOf!(new File([], 'made.lapwright.json'))];
    });
    expect(found).toEqual([path, '']);
  });

  it('opens a file that the system hands over in a window of its own', async () => {
    const path = join(realpathSync.native(profile), 'kestrel.lapwright.json');
    const opened = application.waitForEvent('window');
    await application.evaluate(({ app }, file) => {
      app.emit('open-file', { preventDefault: () => undefined }, file);
    }, path);
    const other = await opened;
    await other.waitForLoadState();
    const initial = await other.evaluate(() =>
      (globalThis as unknown as WithBridge).lapwright.ask('project.initial', {}),
    );
    expect(initial).toMatchObject({ ok: true, value: { file: { path } } });
    await other.close();
  });

  it('asks before a window with unsaved changes closes, and has its page save', async () => {
    await application.evaluate(({ dialog }) => {
      dialog.showMessageBoxSync = () => 0;
    });
    await page.evaluate(() => addEventListener('beforeunload', (event) => event.preventDefault()));
    await page.mouse.click(400, 300);
    await application.evaluate(({ BrowserWindow }) => BrowserWindow.getAllWindows()[0]!.close());
    await expect
      .poll(() => page.evaluate(() => (globalThis as unknown as { heard: unknown }).heard))
      .toEqual([{ name: 'save' }, { name: 'save-and-close' }]);
    await application.evaluate(({ dialog }) => {
      dialog.showMessageBoxSync = () => 1;
    });
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
