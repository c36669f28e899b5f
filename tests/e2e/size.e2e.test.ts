/** The main path, as an engineer walks it: from the table to a joint that holds. */
import { execFileSync } from 'node:child_process';
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, expect, it, vi } from 'vitest';
import { root } from '../../src/launch/root.mjs';
import type { CheckReport } from '../../src/shared/reports.ts';
import { signed } from '../../src/shared/words.ts';
import { describeInBrowser } from './support/browser.ts';
import { checked } from './support/checked.ts';
import { type OpenedApp, openApp } from './support/open-app.ts';

/** Pictures for a person to look at; `LAPWRIGHT_PICTURES=docs` renews those of the documents. */
const pictures = join(root, process.env.LAPWRIGHT_PICTURES ?? 'tests/artefacts');
mkdirSync(pictures, { recursive: true });
const picture = (page: Page, name: string): Promise<Buffer> =>
  page.screenshot({ path: join(pictures, `${name}.png`) });
const forDocuments = process.env.LAPWRIGHT_PICTURES !== undefined;

/** A browser without a graphics card on a busy machine takes its time. */
const patient = { timeout: 30_000 };

const margins = (page: Page): Locator =>
  page.getByRole('list', { name: 'Margins, lowest first' }).getByRole('listitem');

const overlapField = (page: Page): Locator => page.getByRole('textbox', { name: 'Overlap' });
const handle = (page: Page): Locator => page.getByRole('slider', { name: 'Drag overlap' });

async function openJoint(page: Page, name: string): Promise<void> {
  await page.getByRole('button', { name, exact: true }).click();
  await margins(page).first().waitFor();
}

/** The table's rows as name, state and figure. */
async function tableRows(page: Page): Promise<string[][]> {
  const rows = page.locator('tbody.joint tr:has(th)');
  await checked(page);
  return rows.evaluateAll((list) =>
    list.map((row) => [
      row.querySelector('.joint-name')?.textContent?.trim() ?? '',
      row.querySelector('.lowest .state')?.textContent?.trim() ?? '',
      row.querySelector('.lowest .value')?.textContent?.trim() ?? '',
    ]),
  );
}

function checkInTerminal(file: string): CheckReport {
  const cli = join(root, 'out', 'main', 'cli.js');
  try {
    return JSON.parse(
      execFileSync(process.execPath, [cli, 'check', file, '--json'], { encoding: 'utf8' }),
    ) as CheckReport;
  } catch (error) {
    // Exit 1 only says that some margins are below the target.
    const { status, stdout } = error as { status: number; stdout: string };
    expect(status).toBe(1);
    return JSON.parse(stdout) as CheckReport;
  }
}

describeInBrowser('the Curlew project', () => {
  let app: OpenedApp;
  beforeEach(async () => {
    app = await openApp({ viewport: { width: 1280, height: 800 } });
    return () => app.close();
  });

  it('opens on its joints: one fails, one is low, two hold', async () => {
    const rows = await tableRows(app.page);
    expect(rows.map(([, state]) => state)).toEqual(['fails', 'low', 'holds', 'holds']);
    expect(rows[0]![0]).toBe('Landing leg');
    await app.page.getByText('one fails, one is low and two hold').waitFor();
    expect(app.problems).toEqual([]);
  });

  it('holds once the overlap is dragged, and the picture moves with the hand', async () => {
    const { page } = app;
    await openJoint(page, 'Landing leg');
    const first = margins(page).first();
    expect(await first.textContent()).toMatch(/ultimate strain.*fails/);
    const box = (await handle(page).boundingBox())!;
    const x = box.x + box.width / 2;
    const y = box.y + box.height / 2;
    await page.mouse.move(x, y);
    await page.mouse.down();
    const seen = new Set<string>();
    for (let step = 1; step <= 40; step++) {
      await page.mouse.move(x + step * 8, y);
      seen.add(await overlapField(page).inputValue());
    }
    await page.mouse.up();
    // The typed field follows the hand, not only its end.
    expect(seen.size).toBeGreaterThan(20);
    expect(Number(await overlapField(page).inputValue())).toBeGreaterThan(22);
    await vi.waitFor(
      async () => expect(await margins(page).first().textContent()).toMatch(/holds/),
      patient,
    );
    await page.getByText('Every margin reaches the target.').first().waitFor();
    expect(app.problems).toEqual([]);
  });

  it('moves the overlap by arrow keys, as a slider does', async () => {
    const { page } = app;
    await openJoint(page, 'Landing leg');
    await handle(page).focus();
    await page.keyboard.press('ArrowRight');
    expect(await overlapField(page).inputValue()).toBe('14.5');
    await page.keyboard.press('Shift+ArrowRight');
    await page.keyboard.press('Shift+ArrowRight');
    expect(await overlapField(page).inputValue()).toBe('24.5');
    expect(await handle(page).getAttribute('aria-valuenow')).toBe('24.5');
    await vi.waitFor(
      async () => expect(await margins(page).first().textContent()).toMatch(/holds/),
      patient,
    );
    await page.keyboard.press('Home');
    expect(await overlapField(page).inputValue()).toBe('1.0');
  });

  it('holds once it is a double lap', async () => {
    const { page } = app;
    await openJoint(page, 'Landing leg');
    await page
      .getByRole('combobox', { name: 'Lap' })
      .selectOption({ label: 'double, spigot and socket' });
    await vi.waitFor(
      async () => expect(await margins(page).first().textContent()).toMatch(/holds/),
      patient,
    );
    const first = await margins(page).first().textContent();
    expect(first).toMatch(/\+0\.\d\d/);
    // Back to the table: nothing fails any more.
    await page.keyboard.press('Control+1');
    await vi.waitFor(async () => {
      const rows = await tableRows(page);
      expect(rows.map(([, state]) => state)).not.toContain('fails');
    }, patient);
  });

  it('says what is wrong with a typed value, keeps the last result in view, and recovers', async () => {
    const { page } = app;
    await openJoint(page, 'Landing leg');
    const field = overlapField(page);
    const before = await margins(page).first().textContent();

    await field.fill('1,5');
    expect(await field.getAttribute('aria-invalid')).toBe('true');
    await page.getByText(/1\.5/).first().waitFor();
    expect(await margins(page).first().textContent()).toBe(before);

    await field.fill('700');
    const message = page.getByText(/It lies between 1\D.*500/);
    await message.first().waitFor();
    expect(await field.getAttribute('aria-invalid')).toBe('true');
    // What is out of its range is not taken in: the figures are still those of the overlap before.
    expect(await margins(page).first().textContent()).toBe(before);

    await field.fill('30');
    await vi.waitFor(async () => {
      expect(await field.getAttribute('aria-invalid')).not.toBe('true');
      expect(await margins(page).first().textContent()).toMatch(/holds/);
    }, patient);
  });

  it('names the wall that does not fit inside the tube', async () => {
    const { page } = app;
    await openJoint(page, 'Landing leg');
    const wall = page.getByRole('textbox', { name: 'Wall at root' });
    await wall.fill('12');
    await page
      .getByText(/does not fit inside the tube/)
      .first()
      .waitFor();
    expect(await wall.getAttribute('aria-invalid')).toBe('true');
  });

  it('keeps the caution in view on every page', async () => {
    const { page } = app;
    const caution = page.getByText(/^Screening calculation\./);
    expect(await caution.isVisible()).toBe(true);
    await openJoint(page, 'Landing leg');
    expect(await caution.isVisible()).toBe(true);
    const box = (await caution.boundingBox())!;
    expect(box.y + box.height).toBeLessThanOrEqual(800);
  });
});

describeInBrowser('the same figures', () => {
  it.each([
    ['Curlew', 'src/main/demo/curlew.lapwright.json'],
    ['a file written by hand', 'docs/example.lapwright.json'],
  ])('in the app and in the terminal: %s', async (_name, path) => {
    const file = join(root, path);
    const app = await openApp({ file });
    try {
      const report = checkInTerminal(file);
      const rows = await tableRows(app.page);
      const terminal = report.joints
        .map(({ name, lowest }) => [name, lowest!.state, signed(lowest!.margin)])
        .sort((a, b) => a[0]!.localeCompare(b[0]!));
      expect(rows.sort((a, b) => a[0]!.localeCompare(b[0]!))).toEqual(terminal);
      expect(rows.length).toBeGreaterThan(0);
    } finally {
      await app.close();
    }
  });
});

describeInBrowser('pictures', () => {
  const sizes = forDocuments
    ? ([[1280, 800]] as const)
    : ([
        [1280, 800],
        [1920, 1080],
      ] as const);
  let app: OpenedApp;
  beforeAll(async () => {
    app = await openApp({ viewport: { width: 1280, height: 800 } });
    await openJoint(app.page, 'Boom root');
    // The sweep comes last: shear, peel and strength are three canvases.
    await app.page.locator('canvas').nth(2).waitFor({ timeout: 80_000 });
  });
  afterAll(() => app.close());
  const workspace = (page: Page, name: string): Promise<void> =>
    page.getByRole('button', { name, exact: true }).click();

  // One after another in one window: the figures of the joint need not be computed again.
  it.each(
    sizes.flatMap(([width, height]) =>
      (['light', 'dark'] as const).map((scheme) => ({ scheme, width, height })),
    ),
  )(
    'show the joints and one joint without scrolling the window: $scheme, $width × $height',
    async ({ scheme, width, height }) => {
      const { page } = app;
      const named = (name: string): string => (width === 1280 ? name : `${name}-${width}`);
      await page.setViewportSize({ width, height });
      await page.emulateMedia({ colorScheme: scheme });
      await workspace(page, 'Joints');
      await tableRows(page);
      await picture(page, named(`joints-page-${scheme}`));
      await openJoint(page, 'Boom root');
      await page.locator('canvas').nth(2).waitFor();
      await picture(page, named(`size-page-${scheme}`));
      const clipped = await page
        .locator('.figures-column')
        .evaluate((column) => column.scrollHeight - column.clientHeight);
      expect(clipped).toBeLessThanOrEqual(0);
      const overflow = await page.evaluate(() => ({
        x: document.documentElement.scrollWidth - window.innerWidth,
        y: document.documentElement.scrollHeight - window.innerHeight,
      }));
      expect(overflow.x).toBeLessThanOrEqual(0);
      expect(overflow.y).toBeLessThanOrEqual(0);
      await page.locator('.margin .reading').first().click();
      await page.locator('#working article').first().waitFor();
      await picture(page, named(`working-${scheme}`));
      await page.keyboard.press('Escape');
      await page.getByRole('button', { name: 'Around the bond' }).click();
      await page.getByRole('application').first().waitFor();
      await picture(page, named(`around-${scheme}`));
      await page.getByRole('button', { name: 'Around the bond' }).click();
      expect(app.problems).toEqual([]);
    },
  );
});
