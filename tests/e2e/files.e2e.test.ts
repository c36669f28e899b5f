/** Projects as files, in a browser: saved, opened again, changed by others, not lost. */
import { chmodSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { afterEach, expect, it } from 'vitest';
import { root } from '../../src/launch/root.mjs';
import type { Project } from '../../src/shared/project.ts';
import { describeInBrowser } from './support/browser.ts';
import { type AppOptions, type OpenedApp, openApp } from './support/open-app.ts';
import { frames, useHome } from './support/user-home.ts';
import { violations } from './support/violations.ts';

const pictures = join(root, process.env.LAPWRIGHT_PICTURES ?? 'tests/artefacts');
mkdirSync(pictures, { recursive: true });
const patient = { timeout: 60_000 };
const viewport = { width: 1280, height: 800 };
const schemes = ['light', 'dark'] as const;

const file = join(frames, 'Curlew.lapwright');
let apps: OpenedApp[] = [];
const open = async (options: AppOptions = {}): Promise<OpenedApp> => {
  const app = await openApp({ viewport, ...options });
  apps.push(app);
  await app.page.getByRole('heading', { level: 1 }).waitFor(patient);
  return app;
};
const again = (options: AppOptions = {}): Promise<OpenedApp> =>
  open({ ...options, remember: true });

useHome();
afterEach(async () => {
  for (const app of apps) await app.close();
  apps = [];
});

const button = (page: Page, name: string | RegExp): Locator => page.getByRole('button', { name });
const picture = (page: Page, name: string): Promise<Buffer> =>
  page.screenshot({ path: join(pictures, `files-${name}.png`) });
const saved = (): Project => JSON.parse(readFileSync(file, 'utf8')) as Project;
const isSaved = (page: Page): Promise<void> =>
  page.getByText('changes not saved').waitFor({ state: 'detached', ...patient });

/** Says by the dialog of folders that projects are in `frames`. */
async function chooseFrames(page: Page): Promise<void> {
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('option', { name: 'frames' }).dblclick(patient);
  await dialog.getByText(frames, { exact: true }).waitFor(patient);
  await dialog.getByRole('button', { name: 'Use this folder' }).click();
}
async function saveIntoFrames(page: Page): Promise<void> {
  await page.keyboard.press('Control+s');
  await chooseFrames(page);
  await page.getByRole('dialog').getByRole('button', { name: 'Save', exact: true }).click();
  await page.locator('.file-state').getByText('Curlew.lapwright').waitFor(patient);
}
/** A change that nothing has to be calculated for. */
async function rename(page: Page, to: string): Promise<void> {
  await page.getByRole('button', { name: 'File', exact: true }).click();
  await page.getByRole('menuitem', { name: /^Rename the project/ }).click();
  await page.getByRole('textbox', { name: 'Name' }).fill(to);
  await page.keyboard.press('Enter');
  await page.getByText('changes not saved').waitFor(patient);
}

describeInBrowser('project files', () => {
  it('are saved where the user chooses, and opened again after a new start', async () => {
    const { page, problems, close } = await open();
    await saveIntoFrames(page);
    expect(saved().name).toBe('Curlew');
    await rename(page, 'Curlew two');
    await page.keyboard.press('Control+s');
    await isSaved(page);
    expect(saved().name).toBe('Curlew two');
    expect(problems).toEqual([]);
    await close();

    const next = await again();
    await next.page.getByRole('button', { name: 'File', exact: true }).click();
    await next.page.getByRole('menuitem', { name: /^Curlew two Curlew.lapwright/ }).click();
    await next.page.locator('.file-state').getByText('Curlew.lapwright').waitFor(patient);
    await next.page.getByRole('heading', { name: 'Curlew two' }).waitFor(patient);
    expect(next.problems).toEqual([]);
  });

  it.each(schemes)('have dialogs and a menu that read well in %s', async (colorScheme) => {
    const { page, problems } = await open({ colorScheme });
    // The last one is named as they all were before.
    for (const name of ['heron.lapwright', 'curlew-two.lapwright', 'landing-gear.lapwright.json']) {
      writeFileSync(join(frames, name), readFileSync(join(root, 'docs/example.lapwright.json')));
    }
    await page.keyboard.press('Control+o');
    await page.getByRole('option', { name: 'frames' }).waitFor(patient);
    await picture(page, `folders-first-${colorScheme}`);
    expect(await violations(page)).toEqual([]);
    // By keys alone: down to it, in, use it, open.
    await page.getByRole('listbox').press('f');
    await page.keyboard.press('Enter');
    await page.getByText(frames, { exact: true }).waitFor(patient);
    await button(page, 'Use this folder').press('Enter');
    await page.getByRole('option', { name: 'heron.lapwright' }).waitFor(patient);
    await page.getByRole('option', { name: 'landing-gear.lapwright.json' }).waitFor(patient);
    await picture(page, `folders-open-${colorScheme}`);
    expect(await violations(page)).toEqual([]);
    await page.getByRole('listbox').press('Backspace');
    await page.getByRole('option', { name: 'frames', selected: true }).waitFor(patient);
    await page.keyboard.press('Escape');
    expect(await page.getByRole('dialog').count()).toBe(0);

    await page.keyboard.press('Control+Shift+s');
    await page.getByRole('option', { name: 'heron.lapwright' }).waitFor(patient);
    await picture(page, `folders-save-${colorScheme}`);
    expect(await violations(page)).toEqual([]);
    await page.keyboard.press('Enter');
    await page.locator('.file-state').getByText('Curlew.lapwright').waitFor(patient);

    await page.keyboard.press('Alt+n');
    await page.getByRole('heading', { name: 'New project' }).waitFor(patient);
    await picture(page, `new-${colorScheme}`);
    expect(await violations(page)).toEqual([]);
    await page.keyboard.press('Escape');

    await page.getByRole('button', { name: 'File', exact: true }).press('ArrowDown');
    await page.getByRole('menuitem', { name: /^Curlew/ }).waitFor(patient);
    await picture(page, `menu-${colorScheme}`);
    expect(await violations(page)).toEqual([]);
    await page.keyboard.press('Escape');

    await button(page, 'More of Boom root').click();
    await picture(page, `joint-menu-${colorScheme}`);
    expect(await violations(page)).toEqual([]);
    await page.keyboard.press('Escape');
    expect(problems).toEqual([]);
  });

  it.each(schemes)('changed by another program say so, in %s', async (colorScheme) => {
    const { page, problems } = await open({ colorScheme });
    await saveIntoFrames(page);
    await rename(page, 'Curlew two');
    writeFileSync(file, JSON.stringify({ ...saved(), name: 'Curlew by hand' }));
    const strip = page.getByText(
      /^Curlew.lapwright was changed by another window of Lapwright or another program at \d\d:\d\d\.$/,
    );
    await strip.waitFor(patient);
    await button(page, 'Open that version, losing one change').waitFor();
    await picture(page, `changed-${colorScheme}`);
    expect(await violations(page)).toEqual([]);
    await button(page, 'Keep mine').click();
    expect(await strip.count()).toBe(0);
    await page.keyboard.press('Control+s');
    const dialog = page.getByRole('dialog');
    await dialog.getByText(/or another program since/).waitFor(patient);
    await picture(page, `ask-changed-${colorScheme}`);
    expect(await violations(page)).toEqual([]);
    await dialog.getByRole('button', { name: 'Replace it' }).click();
    await isSaved(page);
    expect(saved().name).toBe('Curlew two');
    expect(readFileSync(`${file}.previous`, 'utf8')).toContain('Curlew by hand');

    writeFileSync(file, JSON.stringify({ ...saved(), name: 'Curlew by hand' }));
    await button(page, 'Open that version').click(patient);
    await page.getByRole('heading', { name: 'Curlew by hand' }).waitFor(patient);
    rmSync(file);
    await page.getByText('Curlew.lapwright is not on the disk any more.').waitFor(patient);
    await page.getByText('changes not saved').waitFor(patient);
    await button(page, 'Save it again').click();
    await isSaved(page);
    expect(saved().name).toBe('Curlew by hand');
    expect(problems).toEqual([]);
  });

  it('that may only be read are saved under another name', async () => {
    const { page, problems } = await open();
    await saveIntoFrames(page);
    chmodSync(file, 0o444);
    await page.getByRole('button', { name: 'File', exact: true }).click();
    await page.getByRole('menuitem', { name: /^Curlew Curlew.lapwright/ }).click();
    await page.getByText('read only', { exact: true }).waitFor(patient);
    await rename(page, 'Curlew two');
    await picture(page, 'read-only-light');
    await page.keyboard.press('Control+s');
    await page
      .getByRole('dialog')
      .getByText(/is read only\.$/)
      .waitFor(patient);
    expect(await violations(page)).toEqual([]);
    await page.getByRole('dialog').getByRole('button', { name: 'Save as …' }).click();
    await page.getByRole('textbox', { name: 'File name' }).fill('two');
    await page.keyboard.press('Enter');
    await page.locator('.file-state').getByText('two.lapwright').waitFor(patient);
    await isSaved(page);
    expect(await page.getByText('read only', { exact: true }).count()).toBe(0);
    expect(saved().name).toBe('Curlew');
    expect(problems).toEqual([]);
  });

  it.skipIf(process.getuid?.() === 0)(
    'in a folder that may only be read are saved elsewhere',
    async () => {
      const { page, problems } = await open();
      await saveIntoFrames(page);
      chmodSync(frames, 0o555);
      try {
        await page.getByRole('button', { name: 'File', exact: true }).click();
        await page.getByRole('menuitem', { name: /^Curlew Curlew.lapwright/ }).click();
        await page.getByText('read only', { exact: true }).waitFor(patient);
        await page.keyboard.press('Control+s');
        await page
          .getByRole('dialog')
          .getByText(/is read only\.$/)
          .waitFor(patient);
        await page.getByRole('dialog').getByRole('button', { name: 'Save as …' }).click();
        await page
          .getByRole('dialog')
          .getByRole('button', { name: 'Save', exact: true })
          .click(patient);
        await page.getByText(/could not be saved: this user may not write there/).waitFor(patient);
      } finally {
        chmodSync(frames, 0o755);
      }
      expect(problems).toEqual([]);
    },
  );

  it.each(schemes)('are not lost with the program, in %s', async (colorScheme) => {
    const first = await open({ colorScheme });
    await saveIntoFrames(first.page);
    await rename(first.page, 'Curlew two');
    await first.page.waitForResponse(/recovery\.keep/, patient);
    first.host.process.kill('SIGKILL');
    await first.close();
    writeFileSync(file, JSON.stringify({ ...saved(), note: 'changed since' }));

    const { page, problems } = await again({ colorScheme });
    const strip = page.getByText(
      /^Curlew two was not saved when (?:its window was closed or Lapwright stopped|this page was loaded anew): changes of Curlew\.lapwright up to \d\d:\d\d are kept\. Curlew\.lapwright has been changed since\.$/,
    );
    await strip.waitFor(patient);
    await picture(page, `recovery-${colorScheme}`);
    expect(await violations(page)).toEqual([]);
    await button(page, /^Open them/).click();
    await page.getByText('changes not saved').waitFor(patient);
    await page.getByRole('heading', { name: 'Curlew two' }).waitFor(patient);
    expect(await button(page, /^Undo/).isDisabled()).toBe(true);
    // The page is loaded anew before it is saved: it is still there.
    page.on('dialog', (dialog) => void dialog.accept());
    await page.reload();
    await strip.waitFor(patient);
    await button(page, /^Open them/).click();
    await page.getByText('changes not saved').waitFor(patient);
    await page.keyboard.press('Control+s');
    await page.getByRole('dialog').getByRole('button', { name: 'Replace it' }).click(patient);
    await isSaved(page);
    expect(saved().name).toBe('Curlew two');
    await page.reload();
    await page.getByRole('heading', { level: 1 }).waitFor(patient);
    expect(await strip.count()).toBe(0);
    // What was under way when the page went is not a fault of it.
    expect(problems.filter((one) => !one.endsWith('ERR_ABORTED'))).toEqual([]);
  });

  it('are those of one page, also when its tab is duplicated or says nothing for long', async () => {
    const { page, host, problems } = await open();
    const keeping = page.waitForRequest(/recovery\.keep$/, patient);
    await rename(page, 'Curlew two');
    const { recovery } = (await keeping).postDataJSON() as { recovery: string };
    const own = (of: Page): Promise<string | null> =>
      of.evaluate(() => sessionStorage.getItem('lapwright-recovery'));
    expect(await own(page)).toBe(JSON.stringify([recovery]));

    // What the host says once it has heard nothing of the page for long enough.
    const silent = { recovery, project: 'Curlew two', origin: '', path: null, changedSince: false };
    const reply = { ok: true, value: { kept: [{ ...silent, at: new Date().toISOString() }] } };
    await page.context().route('**/ask/recovery.kept', (route) => route.fulfill({ json: reply }));
    // A window that its page opens has a copy of what the page keeps for itself, as a duplicated tab has.
    const asked = page.context().waitForEvent('request', {
      ...patient,
      predicate: (request) => request.url().endsWith('recovery.kept'),
    });
    const opening = page.waitForEvent('popup');
    await page.evaluate((address) => void window.open(address), host.address);
    const copy = await opening;
    const strip = (of: Page): Locator =>
      of.getByText(/was not saved when (its window was closed|this page was loaded anew)/);
    await copy.getByRole('heading', { name: 'Curlew', exact: true }).waitFor(patient);
    expect((await asked).postDataJSON()).toEqual({ own: [] });
    expect(await own(copy)).toBe('[]');
    await rename(copy, 'Curlew three');
    await copy.waitForResponse(/recovery\.keep$/, patient);
    expect(await strip(copy).count()).toBe(0);
    expect(JSON.parse((await own(copy)) ?? '')).not.toContain(recovery);

    // The first page goes; loaded anew, the other is offered its own and what that one left.
    await page.close();
    copy.on('dialog', (dialog) => void dialog.accept());
    await copy.reload();
    await strip(copy).nth(1).waitFor(patient);
    expect(await strip(copy).allTextContents()).toEqual([
      expect.stringContaining('Curlew three'),
      expect.stringContaining('Curlew two'),
    ]);
    expect(problems).toEqual([]);
  });

  it.each(schemes)('are dropped onto the window, in %s', async (colorScheme) => {
    const { page, problems } = await open({ colorScheme });
    const drag = async (type: string, names: readonly string[]): Promise<void> => {
      const text = readFileSync(join(root, 'docs/example.lapwright.json'), 'utf8');
      const data = await page.evaluateHandle(
        ([names, text]) => {
          const transfer = new DataTransfer();
          for (const name of names) transfer.items.add(new File([text], name));
          return transfer;
        },
        [names, text] as const,
      );
      await page.dispatchEvent('main', type, { dataTransfer: data });
    };
    await drag('dragenter', ['mast.lapwright']);
    await page.getByText('Drop the project file to open it').waitFor(patient);
    await picture(page, `drop-${colorScheme}`);
    expect(await violations(page)).toEqual([]);
    await drag('drop', ['mast.lapwright', 'two.lapwright']);
    await page.getByText(/^2 files were dropped\. Drop one project file/).waitFor(patient);
    await drag('drop', ['photo.jpg']);
    await page.getByText(/^photo.jpg is no project file/).waitFor(patient);
    await drag('drop', ['mast.lapwright']);
    await page.getByRole('heading', { name: 'Camera mast' }).waitFor(patient);
    expect(await page.getByText('Drop the project file to open it').count()).toBe(0);
    expect(problems).toEqual([]);
  });

  it('begin anew, with a joint that can be worked out once it is loaded', async () => {
    const { page, problems } = await open();
    await page.keyboard.press('Alt+n');
    await page.getByRole('textbox', { name: 'Name' }).fill('Heron');
    await page.getByRole('radio', { name: /^Double lap: tube/ }).check();
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: 'Heron' }).waitFor(patient);
    await button(page, 'Add a joint').click();
    await page.getByRole('menuitem', { name: 'Single lap: strip on a plate' }).click();
    await page.getByRole('heading', { name: 'Size Joint 2' }).waitFor(patient);
    await page.getByRole('combobox', { name: /load case/i }).selectOption({ label: 'Load case 1' });
    await page
      .getByRole('textbox', { name: /^Load case 1, .*force|pull/i })
      .first()
      .fill('2000');
    await page.keyboard.press('Tab');
    await page.getByRole('list', { name: 'Margins, lowest first' }).waitFor(patient);
    await button(page, 'Joints').click();
    await picture(page, 'begun-light');
    await page.keyboard.press('Control+z');
    expect(problems).toEqual([]);
  });
});
