/** A project made one's own in the window: load cases, adhesives and materials put in and saved. */
import { mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { expect, it, vi } from 'vitest';
import { root } from '../../src/launch/root.mjs';
import curlew from '../../src/main/demo/curlew.lapwright.json' with { type: 'json' };
import type { Project } from '../../src/shared/project.ts';
import { readProjectText } from '../../src/shared/read-project.ts';
import { describeInBrowser } from './support/browser.ts';
import { type OpenedApp, openApp } from './support/open-app.ts';
import { violations } from './support/violations.ts';

/** Pictures for a person to look at. */
const pictures = join(root, process.env.LAPWRIGHT_PICTURES ?? 'tests/artefacts');
mkdirSync(pictures, { recursive: true });

/** A browser without a graphics card on a busy machine takes its time. */
const patient = { timeout: 60_000 };
const viewport = { width: 1280, height: 800 };

const margins = (page: Page): Locator =>
  page.getByRole('list', { name: 'Margins, lowest first' }).getByRole('listitem');
const marginOf = (page: Page, label: string | RegExp): Locator =>
  margins(page).filter({ has: page.locator('.what', { hasText: label }) });
const figureIn = async (margin: Locator): Promise<number> =>
  Number(
    (await margin.locator('.value').textContent())?.match(/[+−]\d+\.\d+/)?.[0].replace('−', '-'),
  );
const field = (page: Page, name: string): Locator =>
  page.getByRole('textbox', { name, exact: true });
const list = (page: Page, name: string): Locator =>
  page.getByRole('combobox', { name, exact: true });
const button = (page: Page, name: string): Locator =>
  page.getByRole('button', { name, exact: true });
const open = (page: Page, group: string, title: string): Promise<void> =>
  page
    .getByRole('region', { name: group, exact: true })
    .locator('summary', { hasText: title })
    .first()
    .click();

async function openJoint(page: Page, name: string): Promise<void> {
  await button(page, name).first().click();
  await margins(page).first().waitFor(patient);
}

async function openByCase(page: Page): Promise<Locator> {
  await button(page, 'By case').click();
  const table = page.getByRole('table', { name: /against load cases/ });
  await table.waitFor(patient);
  return table;
}

/** The margins are of what was typed. */
const settled = (page: Page): Promise<void> =>
  vi.waitFor(
    async () =>
      expect(
        await page
          .locator('.margins-column')
          .getByText(/not recalculated|recalculating/i)
          .count(),
      ).toBe(0),
    patient,
  );

/** What is saved is a project, whole. */
async function saved(page: Page): Promise<Project> {
  await page.getByRole('button', { name: 'File', exact: true }).click();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('menuitem', { name: 'Save a copy' }).click(),
  ]);
  const reading = readProjectText(readFileSync(await download.path(), 'utf8'));
  if (!reading.ok) throw new Error(`${reading.error.field}: ${reading.error.message}`);
  return reading.value;
}

async function inApp(
  scheme: 'light' | 'dark',
  test: (app: OpenedApp) => Promise<void>,
): Promise<void> {
  const app = await openApp({ colorScheme: scheme, viewport });
  try {
    await test(app);
    expect(app.problems).toEqual([]);
  } finally {
    await app.close();
  }
}

describeInBrowser('a load case', () => {
  it('is made on a joint, reverses its load, and sets a margin there', () =>
    inApp('light', async ({ page }) => {
      await openJoint(page, 'Landing leg');
      expect(await marginOf(page, 'cyclic shear').count()).toBe(0);
      await list(page, 'Add a load case').selectOption({ label: 'New load case …' });
      // Its name has the focus: it is typed at once.
      await page.keyboard.type('Flutter');
      await list(page, 'Kind of Flutter').selectOption('cyclic');
      await field(page, 'Cycles of Flutter').fill('1e6');
      await field(page, 'Flutter, axial force').fill('2');
      const margin = marginOf(page, 'cyclic shear').locator('.value');
      await margin.waitFor(patient);
      await settled(page);
      const pulsing = await margin.textContent();
      // Of a line whose own ratio is known, a load that reverses leaves less than one that pulses.
      await open(page, 'Adhesive', 'Cycles');
      await field(page, 'S-N line, load ratio').fill('0.1');
      await field(page, 'Load ratio R of Flutter').fill('-1');
      await vi.waitFor(async () => expect(await margin.textContent()).not.toBe(pulsing), patient);
      await settled(page);
      const cyclic = marginOf(page, 'cyclic shear');
      const reversing = await figureIn(cyclic);
      await field(page, 'Load ratio R of Flutter').fill('0.1');
      await vi.waitFor(
        async () => expect(await figureIn(cyclic)).toBeGreaterThan(reversing),
        patient,
      );
      await field(page, 'Load ratio R of Flutter').fill('-1');
      await settled(page);

      const document = await saved(page);
      expect(document.loadCases.at(-1)).toEqual({
        id: 'case-6',
        name: 'Flutter',
        kind: 'cyclic',
        temperature: 20,
        moisture: 'dry',
        cycles: 1e6,
        ratio: -1,
      });
      expect(document.joints[2]?.loads.at(-1)).toMatchObject({ case: 'case-6', force: 2000 });
      await page.keyboard.press('Control+1');
      const table = await openByCase(page);
      await table.getByRole('button', { name: /^Landing leg, Flutter: / }).waitFor(patient);
    }));

  it('goes with its loads after one more press, by keyboard too', () =>
    inApp('dark', async ({ page }) => {
      const table = await openByCase(page);
      const cross = button(page, 'Remove load case 1, Gust');
      await cross.focus();
      await page.keyboard.press('Enter');
      const dialog = page.getByRole('dialog', { name: 'Gust acts on three joints.' });
      await dialog.waitFor(patient);
      // The first press of Enter keeps it, and so does Escape.
      expect(await button(page, 'Keep the case').evaluate((one) => one.matches(':focus'))).toBe(
        true,
      );
      await page.screenshot({ path: join(pictures, 'editors-ask-dark.png') });
      expect(await violations(page)).toEqual([]);
      await page.keyboard.press('Escape');
      await dialog.waitFor({ state: 'detached' });
      expect(await cross.evaluate((one) => one.matches(':focus'))).toBe(true);
      await table.getByRole('button', { name: 'Gust', exact: true }).waitFor(patient);
      await page.keyboard.press('Enter');
      await button(page, 'Remove it with its loads').click();
      await dialog.waitFor({ state: 'detached' });
      await vi.waitFor(
        async () =>
          expect(await table.getByRole('button', { name: 'Gust', exact: true }).count()).toBe(0),
        patient,
      );
      await button(page, 'Add a load case').click();
      await page.keyboard.type('Ferry');
      const document = await saved(page);
      expect(document.loadCases.map(({ name }) => name)).toEqual([
        ...curlew.loadCases.slice(1).map(({ name }) => name),
        'Ferry',
      ]);
      expect(document.joints.flatMap(({ loads }) => loads.map((load) => load.case))).not.toContain(
        'gust',
      );
    }));
});

describeInBrowser('an adhesive', () => {
  it('is copied, its wet yield halved, and tested: the margins fall and lose their mark', () =>
    inApp('light', async ({ page }) => {
      await openJoint(page, 'Landing leg');
      await settled(page);
      const shear = marginOf(page, /^adhesive, ultimate strain/);
      const strain = await figureIn(shear);
      const typical = (label: string | RegExp): Promise<number> =>
        marginOf(page, label).locator('.typical').count();
      const before = await margins(page).locator('.value').allTextContents();
      expect(await typical(/^adhesive, ultimate strain/)).toBe(1);
      expect(await typical(/^tube, laminate strength/)).toBe(1);

      await open(page, 'Adhesive', 'Adhesive: name and source');
      await button(page, 'Copy this adhesive').click();
      expect(await field(page, 'Adhesive, name').inputValue()).toBe('Toughened epoxy paste (copy)');
      expect(await field(page, 'Adhesive, name').evaluate((one) => one.matches(':focus'))).toBe(
        true,
      );
      await page.keyboard.type('Our paste');
      await settled(page);
      // A copy is as good as the first.
      expect(await margins(page).locator('.value').allTextContents()).toEqual(before);
      await list(page, 'Adhesive, kind of source').selectOption('tested');
      await field(page, 'Adhesive, source in words').fill('Thick adherends, our batch 4');
      await vi.waitFor(
        async () => expect(await typical(/^adhesive, ultimate strain/)).toBe(0),
        patient,
      );
      // The carbon is typical still: the tube itself, and what is between its plies.
      expect(await typical(/^tube, laminate strength/)).toBe(1);
      expect(await typical(/^laminate, between plies/)).toBe(1);

      await open(page, 'Adhesive', 'Stiffness and strength');
      await open(page, 'Adhesive', '60 °C wet');
      const yieldField = field(page, 'Shear yield at 60 °C wet');
      expect(await yieldField.inputValue()).toBe('20');
      await yieldField.fill('10');
      await vi.waitFor(
        async () =>
          expect(await margins(page).locator('.value').allTextContents()).not.toEqual(before),
        patient,
      );
      await settled(page);
      // The hard landing is at 60 °C wet.
      expect(await shear.textContent()).toContain('Hard landing');
      expect(await figureIn(shear)).toBeLessThan(strain);

      const document = await saved(page);
      const states = curlew.adhesives[0]!.states;
      expect(document.adhesives.map(({ name }) => name)).toEqual([
        'Toughened epoxy paste',
        'Our paste',
      ]);
      expect(document.adhesives[0]?.states).toEqual(states);
      expect(document.adhesives[1]?.states).toEqual([
        ...states.slice(0, 4),
        { ...states[4], shearYield: 10 },
      ]);
      expect(document.adhesives[1]?.source.kind).toBe('tested');
      expect(document.joints.map(({ adhesive }) => adhesive)).toEqual([
        'toughened-paste',
        'toughened-paste',
        'toughened-paste-copy',
        'toughened-paste',
      ]);
    }));

  it('with two states of one temperature is refused at its place', () =>
    inApp('light', async ({ page }) => {
      await openJoint(page, 'Boom root');
      await open(page, 'Adhesive', 'Stiffness and strength');
      await button(page, 'Add a state').click();
      const temperature = field(page, 'State 6, temperature');
      expect(await temperature.evaluate((one) => one.matches(':focus'))).toBe(true);
      await temperature.fill('60');
      const said = page.getByText('"Toughened epoxy paste" has two wet states at 60 °C: keep one.');
      await said.waitFor(patient);
      expect(await temperature.getAttribute('aria-describedby')).toContain(
        await said.getAttribute('id'),
      );
      await temperature.fill('80');
      await said.waitFor({ state: 'detached', ...patient });
      await settled(page);
      await field(page, 'Shear yield at 80 °C wet').fill('x');
      await page
        .getByText(/^“x”|not a number|number/i)
        .first()
        .waitFor(patient);
      await button(page, 'Remove 80 °C wet, state 6').click();
      await settled(page);
      expect((await saved(page)).adhesives).toEqual(curlew.adhesives);
    }));
});

describeInBrowser('the editors', () => {
  it.each(['light', 'dark'] as const)('are accessible with all of them open, in %s', (scheme) =>
    inApp(scheme, async ({ page }) => {
      await openByCase(page);
      await button(page, 'Add a load case').click();
      await list(page, 'Kind of load case 6').selectOption('cyclic');
      await page.getByRole('heading', { name: 'Conditions' }).scrollIntoViewIfNeeded();
      await page.locator('.joints-page').evaluate((one) => one.scrollIntoView({ block: 'end' }));
      expect(await violations(page)).toEqual([]);
      await page.screenshot({ path: join(pictures, `editors-cases-${scheme}.png`) });

      await page.keyboard.press('Control+2');
      await margins(page).first().waitFor(patient);
      await open(page, 'Adhesive', 'Adhesive: name and source');
      await button(page, 'Copy this adhesive').click();
      await open(page, 'Socket', 'Material properties');
      await page
        .getByRole('region', { name: 'Socket', exact: true })
        .getByRole('button', { name: 'Copy this material' })
        .click();
      await list(page, 'Socket material').selectOption({ index: 2 });
      // Nothing is left closed, also of what opens inside of what was opened.
      const closed = page.locator('.inputs details:not([open]) > summary');
      while ((await closed.count()) > 0) await closed.first().click();
      await page.getByText('Not used by any joint, variant or coupon:').first().waitFor(patient);
      expect(await violations(page)).toEqual([]);
      const column = page.locator('.inputs-column');
      expect(await column.evaluate((one) => one.scrollWidth - one.clientWidth)).toBeLessThanOrEqual(
        0,
      );
      for (const group of ['Tube', 'Socket', 'Adhesive', 'Loads']) {
        await page
          .getByRole('region', { name: group, exact: true })
          .evaluate((one) => one.scrollIntoView({ block: 'start' }));
        await page.screenshot({ path: join(pictures, `editors-${group}-${scheme}.png`) });
      }
    }),
  );
});
