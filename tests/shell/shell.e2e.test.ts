/** The built shell and preload, run on the stand-in for Electron. */
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { beforeAll, beforeEach, expect, it, onTestFinished } from 'vitest';
import { root } from '../../src/launch/root.mjs';
import { CONTENT_SECURITY_POLICY } from '../../src/main/policy.ts';
import { COMMAND_CHANNEL } from '../../src/shared/channel.ts';
import type { Bridge } from '../../src/shared/contract.ts';
import { describeInBrowser } from '../e2e/support/browser.ts';
import { app, BrowserWindow, ipcMain, standIn } from '../stand-in/electron.ts';
import { toBrowser } from '../stand-in/pages.ts';
import { INVOKE } from '../stand-in/preload-script.ts';
import { defaultSession } from '../stand-in/session.ts';
import {
  asked,
  DISCARD,
  type Item,
  keptFiles,
  menuItems,
  PAGE,
  SAVE,
  STAY,
  soon,
  startShell,
  type WithBridge,
} from './built-shell.ts';

const FOREIGN = 'https://elsewhere.test/';
const channel = 'lapwright:ask';

/** Asks as a page would that has got hold of the way to the main process. */
const askBehindTheBridge = (call: [string, string]): Promise<unknown> =>
  // biome-ignore lint/suspicious/noExplicitAny: the name is the stand-in's own
  (window as any)[call[0]](call[1], 'app.about', {});

describeInBrowser('the built shell', () => {
  let window: BrowserWindow;
  let page: Page;

  beforeAll(async () => {
    ({ window, page } = await startShell());
  });

  beforeEach(async () => {
    standIn.answer = DISCARD;
    await window.loadURL(PAGE);
    window.webContents.foreignRequests.length = 0;
  });

  it('enables the sandbox and registers its scheme before the app is ready', () => {
    expect(standIn.sandboxed).toBe(true);
    expect(standIn.schemes).toEqual([
      { scheme: 'app', privileges: { standard: true, secure: true, supportFetchAPI: true } },
    ]);
    expect(standIn.errors).toEqual([]);
  });

  it('shows the page once it is drawn', async () => {
    expect(window.shown).toBe(true);
    await soon(async () => expect(await page.title()).toContain('Lapwright'));
  });

  it('gives the page one frozen bridge and nothing else', async () => {
    const found = await page.evaluate(() => {
      const bridge = (window as { lapwright?: Bridge }).lapwright!;
      return {
        names: Object.keys(bridge).sort(),
        frozen: Object.isFrozen(bridge),
        require: typeof (globalThis as { require?: unknown }).require,
        process: typeof (globalThis as { process?: unknown }).process,
      };
    });
    expect(found).toEqual({
      names: ['ask', 'carrier', 'onCommand', 'pathOf'],
      frozen: true,
      require: 'undefined',
      process: 'undefined',
    });
  });

  it('answers its page', async () => {
    const reply = await page.evaluate(() =>
      (window as { lapwright?: Bridge }).lapwright!.ask('app.about', {}),
    );
    expect(reply).toMatchObject({ ok: true, value: { carrier: 'electron' } });
  });

  it('computes a sweep in its worker', async () => {
    const reply = await page.evaluate(async () => {
      const { ask } = (window as { lapwright?: Bridge }).lapwright!;
      const demo = await ask('project.demo', {});
      if (!demo.ok) return demo;
      const { document } = demo.value;
      return ask('joint.sweep', { document, jointId: 'landing-leg', points: 5 });
    });
    expect(reply).toMatchObject({ ok: true, value: { points: { length: 5 } } });
  });

  it('sends the policy with the page, and it holds', async () => {
    const response = await page.reload();
    expect(response?.headers()['content-security-policy']).toBe(CONTENT_SECURITY_POLICY);
    const ran = await page.evaluate(() => {
      const script = document.createElement('script');
      script.textContent = 'window.ranInline = true';
      document.body.append(script);
      return 'ranInline' in window;
    });
    expect(ran).toBe(false);
  });

  it('refuses a sub-frame, even one with the address of the page', async () => {
    await page.evaluate(() => {
      const frame = document.createElement('iframe');
      frame.name = 'inner';
      document.body.append(frame);
    });
    const inner = await soon(() => {
      const frame = page.frame({ name: 'inner' });
      if (!frame) throw new Error('not yet');
      return frame;
    });
    expect(
      await inner.evaluate(askBehindTheBridge, [INVOKE, channel] as [string, string]),
    ).toMatchObject({ ok: false, error: { code: 'bad-request' } });
    const sender = window.webContents;
    const impostor = { url: PAGE };
    expect(await ipcMain.deliver(sender, impostor, channel, ['app.about', {}])).toMatchObject({
      ok: false,
    });
    expect(
      await ipcMain.deliver(sender, sender.mainFrame, channel, ['app.about', {}]),
    ).toMatchObject({ ok: true });
  });

  it('refuses a foreign page in its window, and a window that it does not know', async () => {
    await page.goto('about:blank');
    expect(
      await page.evaluate(askBehindTheBridge, [INVOKE, channel] as [string, string]),
    ).toMatchObject({ ok: false, error: { code: 'bad-request' } });
    await window.loadURL(PAGE);
    const frame = { url: PAGE };
    const stranger = Object.assign(Object.create(window.webContents), {});
    Object.defineProperties(stranger, { id: { value: 999 }, mainFrame: { value: frame } });
    expect(await ipcMain.deliver(stranger, frame, channel, ['app.about', {}])).toMatchObject({
      ok: false,
    });
  });

  it('does not let the page be led elsewhere', async () => {
    await page.evaluate((address) => {
      location.href = address;
    }, FOREIGN);
    await page.waitForTimeout(200);
    expect(window.webContents.foreignRequests).toEqual([]);
    expect(page.url()).toBe(toBrowser(PAGE));
  });

  it('fills no frame, not even with its own page', async () => {
    const asked: string[] = [];
    const seen = (event: { url: string; defaultPrevented: boolean }): void => {
      asked.push(`${event.url} ${event.defaultPrevented}`);
    };
    window.webContents.on('will-frame-navigate', seen);
    await page.evaluate(
      (addresses) => {
        for (const address of addresses) {
          const frame = document.createElement('iframe');
          frame.src = address;
          document.body.append(frame);
        }
      },
      [FOREIGN, toBrowser(PAGE)],
    );
    await page.waitForTimeout(200);
    window.webContents.off('will-frame-navigate', seen);
    expect(window.webContents.foreignRequests).toEqual([]);
    // The policy stops them first; where it did not, the shell would.
    expect(asked.every((line) => line.endsWith('true'))).toBe(true);
    for (const url of [FOREIGN, PAGE]) {
      let prevented = false;
      window.webContents.emit('will-frame-navigate', {
        url,
        isMainFrame: false,
        preventDefault: () => {
          prevented = true;
        },
      });
      expect([url, prevented]).toEqual([url, true]);
    }
  });

  it('opens no other window', async () => {
    const { popupsDenied } = window.webContents;
    await page.evaluate((address) => void globalThis.open(address), FOREIGN);
    await soon(() => expect(window.webContents.popupsDenied).toBeGreaterThan(popupsDenied));
    expect(window.webContents.popups).toEqual([]);
    expect(window.webContents.foreignRequests).toEqual([]);
  });

  it('saves the sheet as a PDF where the user says, and nothing where it is given up', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'lapwright-test-'));
    onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
    await page.getByRole('button', { name: 'Tail strut lug', exact: true }).click();
    await page.getByRole('button', { name: 'Sheet …' }).click();
    await page.getByText(/^\d+ pages, /).waitFor({ timeout: 120_000 });
    const pages = await page.locator('.sheet-pages > .sheet-page').count();
    standIn.chosen = join(folder, 'lug.pdf');
    await page.getByRole('button', { name: 'Save as PDF …' }).click();
    await page.getByText('Saved as lug.pdf.').waitFor();
    expect(standIn.dialogs.map(({ defaultPath }) => defaultPath)).toEqual([
      'Curlew-Tail-strut-lug.pdf',
    ]);
    const pdf = readFileSync(standIn.chosen!).toString('latin1');
    expect(pdf.startsWith('%PDF')).toBe(true);
    expect(pdf.match(/\/Type\s*\/Page(?![s\w])/g)).toHaveLength(pages);
    standIn.chosen = null;
    const reply = await page.evaluate(() =>
      (window as { lapwright?: Bridge }).lapwright!.ask('sheet.pdf', { name: 'again' }),
    );
    expect(reply).toEqual({ ok: true, value: { name: null } });
    standIn.chosen = join(folder, 'none', 'lug.pdf');
    const failed = await page.evaluate(() =>
      (window as { lapwright?: Bridge }).lapwright!.ask('sheet.pdf', { name: 'again' }),
    );
    expect(failed).toMatchObject({ ok: false, error: { code: 'not-writable' } });
    expect(readdirSync(folder)).toEqual(['lug.pdf']);
  }, 180_000);

  it('grants no permission', async () => {
    const permissions = ['media', 'geolocation', 'notifications', 'clipboard-read', 'openExternal'];
    for (const permission of permissions) {
      expect([permission, await defaultSession.ask(permission)]).toEqual([permission, false]);
      expect([permission, defaultSession.check(permission)]).toEqual([permission, false]);
    }
    expect(defaultSession.device()).toBe(false);
  });

  it('attaches no webview', () => {
    let prevented = false;
    window.webContents.emit('will-attach-webview', {
      preventDefault: () => {
        prevented = true;
      },
    });
    expect(prevented).toBe(true);
  });

  /** A page may ask to stay only after somebody has done something in it. */
  const holdBack = async (): Promise<void> => {
    await page.evaluate(() => addEventListener('beforeunload', (event) => event.preventDefault()));
    await page.mouse.click(400, 300);
    standIn.questions.length = 0;
  };
  /** What the page hears of the menu from now on. */
  const hear = (): Promise<void> =>
    page.evaluate(() => {
      const heard: unknown[] = [];
      Object.assign(globalThis, { heard });
      (globalThis as unknown as WithBridge).lapwright.onCommand!((command) => heard.push(command));
    });
  const heard = (): Promise<unknown> =>
    page.evaluate(() => (globalThis as unknown as { heard: unknown[] }).heard);

  it('asks before a page with unsaved changes closes, and keeps it when told to', async () => {
    await holdBack();
    await hear();
    standIn.answer = STAY;
    await window.close();
    await soon(() => expect(standIn.questions).toHaveLength(1));
    expect(standIn.questions[0]?.message).toContain('not saved');
    expect(standIn.questions[0]?.buttons).toEqual(['Save', 'Discard changes', 'Stay']);
    await page.waitForTimeout(200);
    expect(window.isDestroyed()).toBe(false);
    expect(await heard()).toEqual([]);
  });

  it('has the page save before it closes, and only save where it is loaded anew', async () => {
    await holdBack();
    await hear();
    standIn.answer = SAVE;
    await window.close();
    await soon(async () => expect(await heard()).toEqual([{ name: 'save-and-close' }]));
    expect(window.isDestroyed()).toBe(false);
    await page.reload({ timeout: 1_000 }).catch(() => {});
    await soon(async () =>
      expect(await heard()).toEqual([{ name: 'save-and-close' }, { name: 'save' }]),
    );
  });

  it('brings commands of the menu to its page, and no others', async () => {
    await hear();
    const items = menuItems('File');
    for (const label of ['New project', 'Open …', 'Save', 'Save as …', 'Print …']) {
      items.find((item) => item.label === label)!.click!();
    }
    for (const wrong of ['save', { name: 'delete' }, null, { name: 'open-file' }, 7]) {
      window.webContents.send(COMMAND_CHANNEL, wrong);
    }
    window.webContents.send(COMMAND_CHANNEL, { name: 'open-file', path: '/a', more: true });
    await soon(async () =>
      expect(await heard()).toEqual([
        { name: 'new' },
        { name: 'open' },
        { name: 'save' },
        { name: 'save-as' },
        { name: 'print' },
        { name: 'open-file', path: '/a' },
      ]),
    );
  });

  it('opens in its page what the menu of help names', async () => {
    await soon(async () => expect(await page.title()).toBe('Curlew · Lapwright'));
    const help = standIn.menu!.find(({ role }) => role === 'help')!.submenu as unknown as Item[];
    const dialog = (name: string) => page.getByRole('dialog', { name, exact: true });
    for (const [label, name] of [
      ['Keys', 'Keys'],
      ['Guide', 'Guide'],
      ['About Lapwright', 'About Lapwright'],
    ] as const) {
      help.find((item) => item.label === label)!.click!();
      await dialog(name).waitFor();
      await page.keyboard.press('Escape');
      await dialog(name).waitFor({ state: 'detached' });
    }
    help.find((item) => item.label === 'About Lapwright')!.click!();
    const { node } = process.versions;
    await dialog('About Lapwright').getByText(`Node ${node}`).waitFor();
    // The stand-in is no Electron, and has no version of it.
    expect(await dialog('About Lapwright').textContent()).toContain('Runs inElectron');
    await page.getByRole('button', { name: 'Read their notices' }).click();
    await page.getByText('SIL OPEN FONT LICENSE').first().waitFor();
    expect(window.webContents.foreignRequests).toEqual([]);
  });

  it('gives a second start its own window and focuses the first when no file is named', async () => {
    const before = window.focused;
    app.emit('second-instance', {}, [], '', { file: null });
    expect(window.focused).toBe(before + 1);
    expect(BrowserWindow.getAllWindows()).toHaveLength(1);

    app.emit('second-instance', {}, [], '', { file: join(root, 'no-such-project.json') });
    const [, second] = BrowserWindow.getAllWindows();
    const other = await second!.webContents.ready;
    await other.waitForURL(toBrowser(PAGE));
    const initial = (): Promise<unknown> =>
      (globalThis as unknown as { lapwright: Bridge }).lapwright.ask('project.initial', {});
    expect(await other.evaluate(initial)).toMatchObject({
      ok: false,
      error: { message: 'no-such-project.json: there is no such file.' },
    });
    expect(await page.evaluate(initial)).toMatchObject({ ok: true });
    await second!.close();
    await soon(() => expect(BrowserWindow.getAllWindows()).toHaveLength(1));
  });

  it('loads a page that died anew, which is offered what it kept', async () => {
    const document = await asked<{ document: object }>(page, 'project.demo', {});
    await asked(page, 'recovery.keep', {
      recovery: 'of-the-dead-page',
      document: document.document,
      origin: '',
      path: null,
      expect: null,
    });
    // The page itself lives on here: it is told to the shell alone that it died.
    window.webContents.emit('render-process-gone', {}, { reason: 'crashed', exitCode: 139 });
    await soon(() => expect(window.webContents.reloads).toBe(1));
    await page.getByText(/^Curlew was not saved when its window was closed or/).waitFor();
    expect(await asked(page, 'recovery.drop', { recovery: 'of-the-dead-page' })).toMatchObject({
      dropped: true,
    });
  });

  // Last: it closes the window.
  it('lets the page go when told to, puts its changes away, and quits with its last window', async () => {
    await asked(page, 'recovery.keep', {
      recovery: 'put-away',
      document: {},
      origin: '',
      path: null,
      expect: null,
    });
    expect(keptFiles()).toContain('put-away.json');
    await holdBack();
    standIn.answer = DISCARD;
    await window.close();
    await soon(() => expect(keptFiles()).toContain('put-away.put-away.json'));
    expect(keptFiles()).not.toContain('put-away.json');
    await soon(() => expect(window.isDestroyed()).toBe(true));
    if (process.platform !== 'darwin') expect(standIn.quit).toBe(true);
  });
});
