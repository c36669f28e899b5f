/** The Gap check page as a technician has it: from the Joints page to a printed card, by the keyboard alone. */
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { beforeEach, expect, it } from 'vitest';
import { root } from '../../src/launch/root.mjs';
import { describeInBrowser } from './support/browser.ts';
import { checked } from './support/checked.ts';
import { openApp } from './support/open-app.ts';
import { violations } from './support/violations.ts';

/** Pictures for a person to look at. */
const pictures = join(root, process.env.LAPWRIGHT_PICTURES ?? 'tests/artefacts');
mkdirSync(pictures, { recursive: true });
const patient = { timeout: 60_000 };

/** Tab until the focus is on what has this name. */
async function tabTo(page: Page, name: string | RegExp): Promise<void> {
  for (let i = 0; i < 60; i++) {
    const focused = await page.evaluate(() => {
      const here = document.activeElement;
      return here?.getAttribute('aria-label') ?? here?.textContent ?? '';
    });
    if (typeof name === 'string' ? focused.trim() === name : name.test(focused)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`no way by Tab to ${name}`);
}

/** Types every reading of a single lap, surface after surface, each ended by Enter. */
async function typeReadings(page: Page, diameters: readonly number[]): Promise<void> {
  for (const [surface, diameter] of diameters.entries()) {
    for (let i = 0; i < 9; i++) {
      const value = diameter + 0.004 * ((i + surface) % 3);
      await page.keyboard.type(value.toFixed(3));
      await page.keyboard.press('Enter');
    }
  }
}

const pagesOf = (pdf: Buffer): number =>
  pdf.toString('latin1').match(/\/Type\s*\/Page(?![s\w])/g)?.length ?? 0;

const word = (page: Page) => page.locator('.gap-word');
const said = (page: Page, verdict: string) => page.locator('.gap-word', { hasText: verdict });

/** The tests' own folder: what one left there would be offered to the next. */
const forget = (): void =>
  rmSync(join(process.env.LAPWRIGHT_DATA!, 'bench'), { recursive: true, force: true });
beforeEach(forget);

describeInBrowser('the Gap check page', () => {
  it('goes from the Joints page to a printed card by the keyboard alone', async () => {
    const app = await openApp({ viewport: { width: 1280, height: 800 } });
    try {
      const { page } = app;
      await checked(page);
      await tabTo(page, 'Landing leg');
      await page.keyboard.press('Control+4');
      await page.getByText('May this tube and this sleeve be bonded?').waitFor(patient);
      await tabTo(page, 'Start measuring');
      await page.keyboard.press('Enter');
      // The first reading has the focus; what is typed stays until it is a number, Tab goes to the next.
      await page.keyboard.type('21,6');
      const first = page.getByLabel(/^spigot, outside, 1 mm from the mouth, 0°/);
      expect(await first.inputValue()).toBe('21,6');
      await page.keyboard.press('Control+a');
      await page.keyboard.type('21.6');
      for (let i = 0; i < 3; i++) await page.keyboard.press('Tab');
      const row = await page.evaluate(() => document.activeElement?.getAttribute('aria-label'));
      expect(row).toMatch(/^spigot, outside, 7 mm from the mouth, 0°/);
      for (let i = 0; i < 3; i++) await page.keyboard.press('Shift+Tab');
      await page.keyboard.press('Control+a');
      // The tube is over the spigot: first the spigot, then the bore.
      await typeReadings(page, [21.6, 22]);
      await said(page, 'Reject').waitFor(patient);
      expect(await page.locator('.gap-reason').textContent()).toMatch(
        /the joint fails: its margin is/,
      );
      expect(await page.locator('.gap-kept').textContent()).toMatch(/^kept /);
      await page.screenshot({ path: join(pictures, 'gap-check-light.png') });
      const wide = await page.evaluate(
        () => document.documentElement.scrollWidth <= document.documentElement.clientWidth,
      );
      expect(wide).toBe(true);
      expect(await violations(page)).toEqual([]);
      await tabTo(page, 'Record this check');
      await page.keyboard.press('Enter');
      await page.getByRole('button', { name: 'Measure again' }).waitFor(patient);
      let printed = 0;
      await page.exposeFunction('wasPrinted', () => {
        printed += 1;
      });
      await page.evaluate(() => {
        window.print = () => void (window as unknown as { wasPrinted(): void }).wasPrinted();
      });
      await tabTo(page, 'Print card');
      await page.keyboard.press('Enter');
      await expect.poll(() => printed).toBe(1);
      const pdf = await page.pdf({ preferCSSPageSize: true });
      writeFileSync(join(pictures, 'bench-card.pdf'), pdf);
      expect(pagesOf(pdf)).toBe(1);
      await page.emulateMedia({ media: 'print' });
      await page.setViewportSize({ width: 703, height: 1040 });
      await page.screenshot({ path: join(pictures, 'bench-card.png') });
      const card = page.locator('.bench-card');
      expect(await card.textContent()).toContain('Reject');
      expect(app.problems).toEqual([]);
    } finally {
      await app.close();
    }
  });

  it('loses nothing when the window dies, and offers it again', async () => {
    const first = await openApp();
    try {
      const { page } = first;
      await checked(page);
      await page.keyboard.press('Control+4');
      await page.getByRole('button', { name: 'Start measuring' }).click();
      await page.getByLabel('Tube no.').fill('T-0815');
      // "kept" stands there since the number of the tube: the window dies when the reading is kept too.
      const reading = page.waitForResponse(
        (response) =>
          response.url().endsWith('/ask/bench.keep') &&
          (response.request().postData() ?? '').includes('35.61'),
        patient,
      );
      await page.getByLabel(/^spigot, outside, 5 mm from the mouth, 0°/).fill('35.61');
      await page.getByText(/^kept /).waitFor(patient);
      expect((await reading).ok()).toBe(true);
    } finally {
      await first.close();
    }
    const second = await openApp();
    try {
      const { page } = second;
      await checked(page);
      await page.keyboard.press('Control+4');
      const notice = page.locator('.gap-offer', { hasText: 'T-0815' });
      await notice.getByRole('button', { name: 'Take them in' }).click();
      const reading = page.getByLabel(/^spigot, outside, 5 mm from the mouth, 0°/);
      expect(await reading.inputValue()).toBe('35.61');
    } finally {
      await second.close();
    }
  });

  it('accepts good parts of a double lap, at night and on a wide screen', async () => {
    const app = await openApp({ colorScheme: 'dark', viewport: { width: 1920, height: 1080 } });
    try {
      const { page } = app;
      await checked(page);
      await page.keyboard.press('Control+4');
      await page.getByRole('button', { name: 'New check' }).click();
      await page.getByLabel(/^spigot, outside, 5 mm from the mouth, 0°/).focus();
      await typeReadings(page, [35.6, 36, 40, 40.4]);
      await said(page, 'Accept').waitFor(patient);
      await page.screenshot({ path: join(pictures, 'gap-check-dark.png') });
      expect(await violations(page)).toEqual([]);
      const pdf = await page.pdf({ preferCSSPageSize: true });
      expect(pagesOf(pdf)).toBe(1);
      // As many and as long steps as a joint can have.
      await page.getByText('Set by the engineer').click();
      const steps = Array.from({ length: 16 }, (_, i) =>
        `${i + 1}. Wipe with a clean cloth that has been wetted with solvent, one way only, and let it dry `
          .padEnd(100, 'and dry ')
          .slice(0, 100)
          .trim(),
      );
      const field = page.getByLabel(/^Steps of the bonding/);
      await field.fill(steps.join('\n'));
      await field.blur();
      await page.locator('.bench-card.is-long').waitFor({ ...patient, state: 'attached' });
      await said(page, 'Accept').waitFor(patient);
      const long = await page.pdf({ preferCSSPageSize: true });
      writeFileSync(join(pictures, 'bench-card-long.pdf'), long);
      expect(pagesOf(long)).toBe(1);
      // A changed reading has no verdict until it is known again.
      const reading = page.getByLabel(/^tube, outside, 5 mm from the mouth, 0°/);
      await reading.fill('40.2');
      expect(await word(page).textContent()).toBe('Not yet known');
      await reading.fill('23');
      await page.getByRole('button', { name: 'It is right' }).waitFor(patient);
      expect(app.problems).toEqual([]);
    } finally {
      await app.close();
    }
  });

  it('prints one page with the longest names and a reason of several lines, recorded or not', async () => {
    const app = await openApp();
    try {
      const { page } = app;
      await checked(page);
      await page.keyboard.press('Control+4');
      await page
        .getByLabel('Joint', { exact: true })
        .selectOption({ label: 'Boom tip to motor mount' });
      await page.getByRole('button', { name: 'Start measuring' }).click();
      await page.getByLabel('Tube no.').fill('T'.repeat(60));
      await page.getByLabel('Sleeve no.').fill('S'.repeat(60));
      await page.getByLabel('By', { exact: true }).fill('B'.repeat(80));
      await page.getByLabel(/^tube, outside, 4 mm from the mouth, 0°/).focus();
      await typeReadings(page, [32, 32.4]);
      await said(page, 'Hold for engineering').waitFor(patient);
      expect(pagesOf(await page.pdf({ preferCSSPageSize: true }))).toBe(1);
      await page.getByRole('button', { name: 'Record this check' }).click();
      await page.getByRole('button', { name: 'Measure again' }).waitFor(patient);
      expect(pagesOf(await page.pdf({ preferCSSPageSize: true }))).toBe(1);
      expect(app.problems).toEqual([]);
    } finally {
      await app.close();
    }
  });
});
