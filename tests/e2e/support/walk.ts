/** Every page, view and dialog of the window, one after the other. */
import { rmSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';

const patient = { timeout: 240_000 };

/** Called at each place, once it has come to rest. */
export type AtPlace = (place: string) => Promise<void>;

const button = (page: Page, name: string | RegExp) =>
  page.getByRole('button', typeof name === 'string' ? { name, exact: true } : { name });

/** The tests' own folder: what one left there would be offered to the next. */
export const forgetBench = (): void =>
  rmSync(join(process.env.LAPWRIGHT_DATA!, 'bench'), { recursive: true, force: true });

/** Nothing is calculated any more, and what appears late has appeared. */
const rest = (page: Page) =>
  page.waitForFunction(
    () => document.querySelector('.figure-empty, .behind-word, .job') === null,
    undefined,
    patient,
  );

async function joints(page: Page, at: AtPlace): Promise<void> {
  await button(page, 'Landing leg').waitFor(patient);
  await rest(page);
  await at('joints');
  await button(page, 'By case').click();
  await page.locator('.corners').waitFor(patient);
  await rest(page);
  await at('joints by case');
  await button(page, 'List').click();
}

async function size(page: Page, at: AtPlace): Promise<void> {
  await button(page, 'Landing leg').click();
  await page.getByRole('list', { name: 'Margins, lowest first' }).waitFor(patient);
  await rest(page);
  await at('size');
  await page.locator('.figures summary').first().click();
  await at('size, figures open');
  await page.locator('.figures summary').first().click();
  await button(page, 'Around the bond').click();
  await page.getByRole('application', { name: /peel around/ }).waitFor(patient);
  await rest(page);
  await at('size, around the bond');
  await button(page, 'Around the bond').click();
  await page.locator('.margin .value').first().click();
  await page.locator('.working .card').first().waitFor(patient);
  await at('size, working');
  await page.keyboard.press('Escape');

  await button(page, 'Find').click();
  await page.locator('.find-question button[type="submit"]').click();
  await page.locator('.find-result canvas').waitFor(patient);
  await at('size, find');
  await button(page, 'What matters').click();
  await button(page, 'Compute').click();
  await page.locator('.tornado').waitFor(patient);
  await at('size, what matters');
  await button(page, 'Scatter').click();
  await page.getByLabel('Samples', { exact: true }).fill('2000');
  await button(page, 'Start').click();
  await page.locator('svg.histogram').waitFor(patient);
  await at('size, scatter');
  await button(page, 'Sizes').click();
  await button(page, 'Analyse').click();
  await page.locator('.sizes-common').waitFor(patient);
  await at('size, sizes');
  await button(page, 'Springs').click();
  await page.locator('.springs-table').waitFor(patient);
  await at('size, springs');
  await button(page, 'Stress').click();

  const overlap = page.getByRole('textbox', { name: 'Overlap', exact: true });
  const before = await overlap.inputValue();
  await overlap.fill('1,5');
  await page.waitForFunction(() => {
    const callout = document.querySelector('.callout');
    return callout !== null && getComputedStyle(callout).opacity === '1';
  });
  await at('size, an error');
  await overlap.fill(before);
  await rest(page);
}

async function compare(page: Page, at: AtPlace): Promise<void> {
  await page.keyboard.press('Control+3');
  await page.locator('.compare-plots canvas').nth(1).waitFor(patient);
  await rest(page);
  await at('compare');
}

/** Types every reading of a single lap, surface after surface, each ended by Enter. */
async function typeReadings(page: Page, diameters: readonly number[]): Promise<void> {
  for (const [surface, diameter] of diameters.entries()) {
    for (let i = 0; i < 9; i++) {
      await page.keyboard.type((diameter + 0.004 * ((i + surface) % 3)).toFixed(3));
      await page.keyboard.press('Enter');
    }
  }
}

async function measure(page: Page, joint: string, diameters: readonly number[], verdict: string) {
  await page.getByLabel('Joint', { exact: true }).selectOption({ label: joint });
  await button(page, 'Start measuring').click();
  await page.locator('input.reading').first().focus();
  await typeReadings(page, diameters);
  await page.locator('.gap-word', { hasText: verdict }).waitFor(patient);
}

async function gap(page: Page, at: AtPlace): Promise<void> {
  await page.keyboard.press('Control+4');
  await page.getByText('May this tube and this sleeve be bonded?').waitFor(patient);
  await at('gap check, start');
  await measure(page, 'Landing leg', [21.6, 22], 'Reject');
  await at('gap check, reject');
  await page.getByText('Set by the engineer').click();
  await button(page, 'Find the range of gaps').click();
  await page.locator('.gap-range-chart').waitFor(patient);
  await at('gap check, set by the engineer');
  await page.getByText('Set by the engineer').click();
  await button(page, 'Record this check').click();
  await button(page, 'Measure again').waitFor(patient);
  await at('gap check, recorded');
  await measure(page, 'Boom tip to motor mount', [32, 32.4], 'Hold');
  await at('gap check, hold');
  await measure(page, 'Boom root', [35.6, 36, 40, 40.4], 'Accept');
  await at('gap check, accept');
}

async function coupons(page: Page, at: AtPlace): Promise<void> {
  await page.keyboard.press('Control+5');
  await page.locator('.coupon-sets').waitFor(patient);
  await page.waitForFunction(
    () => !document.querySelector('.coupon-sets .is-old'),
    undefined,
    patient,
  );
  await rest(page);
  await at('coupons, plan');
  const views = page.getByRole('navigation', { name: 'Views of the coupons' });
  for (const [name, there] of [
    ['Results', '.coupon-results'],
    ['Statistics', '.coupon-figure canvas'],
    ['Measured over predicted', '.coupon-figure canvas'],
    ['Lives', '.coupon-figure canvas'],
    ['Ledger', '.ledger-table'],
  ] as const) {
    await views.getByRole('button', { name, exact: true }).click();
    await page.locator(there).first().waitFor(patient);
    await rest(page);
    if (name === 'Measured over predicted') {
      await page.getByRole('radio', { name: 'all sets of the adhesive' }).check();
      await page.getByRole('heading', { name: /^Strength against gap/ }).waitFor(patient);
    }
    await at(`coupons, ${name.toLowerCase()}`);
  }
}

async function dialogs(page: Page, at: AtPlace): Promise<void> {
  await page.keyboard.press('Control+k');
  await page.keyboard.type('joint');
  await at('box of actions');
  await page.keyboard.press('Escape');
  for (const [letters, place, seen] of [
    ['units of each quantity', 'units', 'dialog[open]'],
    ['about lapwright', 'about', 'dialog[open]'],
    ['guide', 'guide', '[class*="guide"]'],
    ['new project', 'new project', 'dialog[open]'],
    ['save as', 'save as', 'dialog[open]'],
    ['rename the project', 'rename the project', 'dialog[open]'],
    ['list of keys', 'list of keys', 'dialog[open]'],
    ['sheet of this joint', 'printed sheet', '[class*="sheet-view"]'],
  ] as const) {
    await page.keyboard.press('Control+k');
    await page.getByRole('combobox', { name: /^Action/ }).fill(letters);
    await page.keyboard.press('Enter');
    await page.locator(seen).first().waitFor(patient);
    await rest(page);
    await at(place);
    await page.keyboard.press('Escape');
    await page
      .locator(seen)
      .first()
      .waitFor({ ...patient, state: 'detached' });
  }
}

/** The texts that open in the place of what the program says of itself. */
async function licences(page: Page, at: AtPlace): Promise<void> {
  await page.keyboard.press('Control+k');
  await page.getByRole('combobox', { name: /^Action/ }).fill('about lapwright');
  await page.keyboard.press('Enter');
  for (const [opens, text, place] of [
    ['Read the licence', 'Licence', 'about, licence'],
    ['Read their notices', 'Third-party notices', 'about, notices'],
  ] as const) {
    await button(page, opens).click();
    await page.getByRole('region', { name: text, exact: true }).waitFor(patient);
    await at(place);
    await button(page, 'Back').click();
  }
  await page.keyboard.press('Escape');
}

async function emptyProject(page: Page, at: AtPlace): Promise<void> {
  const empty = {
    format: 'lapwright-project',
    version: 1,
    name: 'Empty',
    settings: {
      targetMargin: 0,
      factors: { limit: 1, ultimate: 1.5, fitting: 1.15 },
      adherendShear: true,
    },
    adherends: [],
    adhesives: [],
    loadCases: [],
    joints: [],
  };
  await page
    .getByLabel('Open a project file')
    .first()
    .setInputFiles({
      name: 'empty.lapwright.json',
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify(empty)),
    });
  await button(page, 'Open without saving').waitFor(patient);
  await at('a question before opening');
  await button(page, 'Open without saving').click();
  await page.getByText('There is nothing to size yet').waitFor(patient);
  await at('empty project, joints');
  for (const [key, name] of [
    ['2', 'size'],
    ['3', 'compare'],
    ['4', 'gap check'],
    ['5', 'coupons'],
  ] as const) {
    await page.keyboard.press(`Control+${key}`);
    await at(`empty project, ${name}`);
  }
}

/** @param page with the full project open */
export async function walk(page: Page, at: AtPlace): Promise<void> {
  await joints(page, at);
  await size(page, at);
  await compare(page, at);
  await gap(page, at);
  await coupons(page, at);
  await dialogs(page, at);
  await licences(page, at);
  await emptyProject(page, at);
}
