/** Help in a real browser: the notes of the first start, the help of a field, the guide, offline. */
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { describe, expect, it, vi } from 'vitest';
import { root } from '../../src/launch/root.mjs';
import { describeInBrowser } from './support/browser.ts';
import { checked } from './support/checked.ts';
import { type AppOptions, type OpenedApp, openApp } from './support/open-app.ts';
import { violations } from './support/violations.ts';

/** Pictures for a person to look at; `LAPWRIGHT_PICTURES=docs` renews those of the documents. */
const pictures = join(root, process.env.LAPWRIGHT_PICTURES ?? 'tests/artefacts');
mkdirSync(pictures, { recursive: true });
const artefacts = join(root, 'tests/artefacts');
mkdirSync(artefacts, { recursive: true });
/** One of the documents; the others are for a person to look at. */
const picture = (page: Page, name: string): Promise<unknown> =>
  page.screenshot({ path: join(pictures, `${name}.png`) });
const shot = (page: Page, name: string): Promise<unknown> =>
  page.screenshot({ path: join(artefacts, `${name}.png`) });

const patient = { timeout: 60_000 };
const schemes = ['light', 'dark'] as const;

async function withApp(options: AppOptions, work: (app: OpenedApp) => Promise<void>) {
  const app = await openApp({ viewport: { width: 1280, height: 800 }, ...options });
  try {
    await checked(app.page);
    await work(app);
    expect(app.problems).toEqual([]);
  } finally {
    await app.close();
  }
}
const note = (page: Page): Locator => page.getByRole('note');
const guide = (page: Page): Locator => page.getByRole('dialog', { name: 'Guide' });
/** The sweep comes last, and takes its time: it is waited for where it is to be seen on a picture. */
const drawn = (page: Page): Promise<void> =>
  process.env.LAPWRIGHT_PICTURES === undefined
    ? page.getByRole('list', { name: 'Margins, lowest first' }).waitFor(patient)
    : page.locator('canvas').nth(2).waitFor({ timeout: 80_000 });
const active = (page: Page): Promise<string> =>
  page.evaluate(() => document.activeElement?.tagName ?? '');

/** Whether two things on the page lie over one another. */
async function overlap(one: Locator, other: Locator): Promise<boolean> {
  const [a, b] = [await one.boundingBox(), await other.boundingBox()];
  if (!a || !b) throw new Error('One of them is not on the page.');
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}

describeInBrowser('the first start', () => {
  it.each(schemes)('has three notes, each beside what it speaks of: %s', async (scheme) =>
    withApp({ first: true, colorScheme: scheme }, async ({ page }) => {
      await note(page).waitFor(patient);
      expect(await note(page).textContent()).toContain('Landing leg fails');
      expect(await active(page)).toBe('BODY');
      const joint = page.getByRole('button', { name: 'Landing leg', exact: true });
      expect(await overlap(note(page), joint)).toBe(false);
      expect(await violations(page)).toEqual([]);
      await picture(page, `tour-joint-${scheme}`);

      await page.getByRole('button', { name: 'Open Landing leg' }).click();
      await page.getByRole('list', { name: 'Margins, lowest first' }).waitFor(patient);
      await drawn(page);
      expect(await note(page).textContent()).toContain('Drag the end of the overlap');
      for (const spoken of [
        page.getByRole('slider', { name: 'Drag overlap' }),
        page.getByRole('combobox', { name: 'Lap' }),
        page.locator('.margins').first(),
      ]) {
        expect(await overlap(note(page), spoken)).toBe(false);
      }
      expect(await violations(page)).toEqual([]);
      await shot(page, `tour-overlap-${scheme}`);

      await note(page).getByRole('button', { name: 'Next' }).press('Enter');
      await vi.waitFor(async () =>
        expect(await note(page).textContent()).toContain('Press any underlined figure'),
      );
      expect(await note(page).textContent()).toContain('It still fails');
      // The focus went along, since it was in the note; Escape is the end of it.
      await vi.waitFor(async () => expect(await active(page)).toBe('BUTTON'));
      expect(await violations(page)).toEqual([]);
      await shot(page, `tour-numbers-${scheme}`);
      await page.keyboard.press('Escape');
      await vi.waitFor(async () => expect(await note(page).count()).toBe(0));
    }),
  );

  it('comes once: not in another window of this user, nor after a reload', async () => {
    await withApp({ first: true }, async ({ page, host }) => {
      await note(page).waitFor(patient);
      await page.reload();
      await checked(page);
      const other = await page.context().browser()!.newContext();
      const second = await other.newPage();
      await second.goto(host.address);
      await checked(second);
      await second.waitForTimeout(300);
      expect([await note(page).count(), await note(second).count()]).toEqual([0, 0]);
      await other.close();
    });
  });
});

describeInBrowser('the help of a field', () => {
  it('has no mark where that would lie on the reading beside it, and comes by F2 all the same', async () =>
    withApp({}, async ({ page }) => {
      await page.keyboard.press('Control+4');
      await page.getByRole('button', { name: 'Start measuring' }).click();
      const cells = page.getByRole('table').first().getByRole('textbox');
      const mark = page.locator('.field-mark');
      await cells.nth(0).focus();
      await mark.waitFor();
      await cells.nth(1).focus();
      await mark.waitFor({ state: 'attached' });
      await page.waitForFunction(
        () => document.querySelector('.field-mark')?.classList.contains('is-in-the-way') ?? false,
      );
      expect(await mark.isVisible()).toBe(false);
      await page.keyboard.press('F2');
      await page.locator('.field-note').waitFor();
    }));

  it.each(schemes)('lies under it on asking, in %s', async (scheme) =>
    withApp({ colorScheme: scheme }, async ({ page }) => {
      await page.getByRole('button', { name: 'Boom root', exact: true }).click();
      await drawn(page);
      const field = page.getByRole('textbox', { name: 'Outer gap', exact: true });
      await field.focus();
      await page.getByRole('button', { name: 'What Outer gap is' }).waitFor();
      await page.keyboard.press('F2');
      const help = page.locator('.field-note');
      await help.waitFor();
      expect(await help.textContent()).toContain('Usually 0.1 to 0.3 mm.');
      expect(await overlap(help, field)).toBe(false);
      const [box, near] = [(await help.boundingBox())!, (await field.boundingBox())!];
      expect(Math.abs(box.y - near.y - near.height)).toBeLessThan(12);
      expect(box.x >= 0 && box.x + box.width <= 1280 && box.y + box.height <= 800).toBe(true);
      const described = await field.getAttribute('aria-describedby');
      expect(described?.split(' ')).toContain(await help.getAttribute('id'));
      expect(await violations(page)).toEqual([]);
      await picture(page, `field-help-${scheme}`);
      await page.keyboard.press('Escape');
      expect(await help.count()).toBe(0);
      expect(await field.evaluate((one) => one === document.activeElement)).toBe(true);
      await field.fill('0.45');
      await page.getByText('unusual: usually 0.1 to 0.3 mm').waitFor();
      await shot(page, `unusual-${scheme}`);
    }),
  );
});

describeInBrowser('the guide', () => {
  it.each(schemes)('opens offline, is searched, shows pictures, leads back: %s', async (scheme) =>
    withApp({ colorScheme: scheme }, async (app) => {
      const { page } = app;
      const asked: string[] = [];
      page.on('request', (request) => asked.push(request.url()));
      const name = page.getByRole('button', { name: 'Boom root', exact: true });
      await name.focus();
      await page.keyboard.press('Shift+F1');
      await guide(page).getByRole('heading', { name: 'Getting started' }).waitFor(patient);
      const shown = guide(page)
        .locator(scheme === 'dark' ? 'img.is-night' : 'img.is-day')
        .first();
      await vi.waitFor(async () =>
        expect(
          await shown.evaluate((one: HTMLImageElement) => one.complete && one.naturalWidth > 0),
        ).toBe(true),
      );
      expect(await violations(page)).toEqual([]);
      await shot(page, `guide-${scheme}`);
      // A line is as long as can be read.
      const letters = await guide(page)
        .locator('.guide-text > p')
        .first()
        .evaluate((one) => {
          const text = one.firstChild as Text;
          const range = document.createRange();
          let most = 0;
          for (let i = 0, start = 0, top = Number.NaN; i < text.length; i++) {
            range.setStart(text, i);
            range.setEnd(text, i + 1);
            const box = range.getBoundingClientRect();
            if (box.top > top + 4) start = i;
            if (Number.isNaN(top) || box.top > top + 4) top = box.top;
            most = Math.max(most, i - start + 1);
          }
          return most;
        });
      expect(letters).toBeGreaterThan(60);
      expect(letters).toBeLessThanOrEqual(80);

      await guide(page).getByRole('searchbox', { name: 'Search the guide' }).fill('edge moment');
      const found = guide(page).getByRole('list', { name: 'Places found' });
      await found.getByRole('button', { name: /Flat single lap: edge moment/ }).waitFor(patient);
      expect(await violations(page)).toEqual([]);
      await shot(page, `guide-search-${scheme}`);
      await found.getByRole('button', { name: /Flat single lap: edge moment/ }).click();
      const heading = guide(page).getByRole('heading', {
        name: '11. Flat single lap: edge moment',
      });
      await vi.waitFor(async () => {
        const box = await heading.boundingBox();
        expect(box && box.y > 0 && box.y < 300).toBe(true);
      });
      expect(await violations(page)).toEqual([]);
      await shot(page, `guide-method-${scheme}`);
      await guide(page).getByRole('button', { name: 'Back', exact: true }).click();
      await guide(page).getByRole('heading', { name: 'Getting started' }).waitFor();
      await guide(page).getByRole('link', { name: 'Margins and states' }).first().click();
      await guide(page).getByRole('heading', { name: 'Margins and states' }).waitFor();
      await page.keyboard.press('Escape');
      expect(await guide(page).count()).toBe(0);
      // Back to where one was, to the joint that had the focus.
      expect(await name.evaluate((one) => one === document.activeElement)).toBe(true);
      const { origin } = app.host;
      expect(asked.filter((url) => !url.startsWith(origin) && !url.startsWith('data:'))).toEqual(
        [],
      );
    }),
  );

  it('opens from the menu of the “?”, whose Escape closes it again', async () =>
    withApp({}, async ({ page }) => {
      const help = page.getByRole('button', { name: 'Help' });
      await help.click();
      expect(await violations(page)).toEqual([]);
      await shot(page, 'help-menu');
      await page.keyboard.press('Escape');
      expect(await page.getByRole('button', { name: 'Guide' }).count()).toBe(0);
      await help.click();
      await page.getByRole('button', { name: 'Guide' }).click();
      await guide(page).getByRole('heading', { name: 'Getting started' }).waitFor(patient);
      await guide(page).getByRole('button', { name: 'Close' }).click();
      await help.click();
      await page.getByRole('button', { name: 'Show the three notes again' }).click();
      await note(page).waitFor();
    }));
});

describe.skipIf(process.env.LAPWRIGHT_PICTURES === undefined)('pictures of the guide', () => {
  describeInBrowser('beside those of other tests', () => {
    it.each(schemes)(
      '%s',
      async (scheme) =>
        withApp({ colorScheme: scheme }, async ({ page }) => {
          await page.keyboard.press('Control+k');
          await page.keyboard.type('gust');
          await picture(page, `command-box-${scheme}`);
          await page.keyboard.press('Escape');
          await page.getByRole('button', { name: 'By case' }).click();
          await page.locator('.corners').first().waitFor(patient);
          await picture(page, `by-case-${scheme}`);
          await page.getByRole('button', { name: 'List' }).click();
          await page.getByRole('button', { name: 'Landing leg', exact: true }).click();
          await page.locator('canvas').nth(2).waitFor(patient);
          await page.getByRole('button', { name: 'Find', exact: true }).click();
          await page.locator('.is-view').getByRole('button', { name: 'Find', exact: true }).click();
          await page
            .getByRole('button', { name: /^Use it/ })
            .first()
            .waitFor(patient);
          await picture(page, `find-${scheme}`);
          await page.getByRole('button', { name: 'Scatter', exact: true }).click();
          await page.getByRole('textbox', { name: 'Samples' }).fill('2000');
          await page.getByRole('button', { name: 'Start', exact: true }).click();
          await page.locator('.study-result').waitFor({ timeout: 240_000 });
          await picture(page, `scatter-${scheme}`);
        }),
      400_000,
    );
  });
});
