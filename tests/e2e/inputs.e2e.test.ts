/** The materials of a joint, as an engineer puts them in: a stack of plies, an adhesive's knockdowns. */
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import axe from 'axe-core';
import type { Locator, Page } from 'playwright-core';
import { beforeEach, expect, it, vi } from 'vitest';
import { root } from '../../src/launch/root.mjs';
import { describeInBrowser } from './support/browser.ts';
import { type OpenedApp, openApp } from './support/open-app.ts';

const pictures = join(root, 'tests/artefacts');
mkdirSync(pictures, { recursive: true });
const example = join(root, 'docs/example.lapwright.json');

/** A browser without a graphics card on a busy machine takes its time. */
const patient = { timeout: 30_000 };

const stackField = (page: Page): Locator => page.getByRole('textbox', { name: 'Tube stack' });
const plies = (page: Page): Locator => page.getByRole('img', { name: /^(\d+ plies|One ply) from/ });
const notes = (page: Page): Promise<string[]> =>
  page.getByRole('list', { name: 'Tube stack, to know' }).getByRole('listitem').allTextContents();
const margins = (page: Page): Locator =>
  page.getByRole('list', { name: 'Margins, lowest first' }).getByRole('listitem');

async function openJoint(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Mast foot', exact: true }).click();
  await margins(page).first().waitFor();
}

/** Goes on by Tab alone, as whoever has no mouse. */
async function tabTo(page: Page, target: Locator): Promise<void> {
  for (let step = 0; step < 80; step++) {
    if (await target.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error('The keyboard does not reach it.');
}

async function violations(page: Page): Promise<string[]> {
  await page.evaluate(axe.source);
  return page.evaluate(async () => {
    const tester = (globalThis as unknown as { axe: typeof axe }).axe;
    const results = await tester.run(document, {
      runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
      rules: { region: { enabled: false } },
    });
    return results.violations.map(
      ({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join('; ')}`,
    );
  });
}

describeInBrowser('a stack of plies', () => {
  let app: OpenedApp;
  beforeEach(async () => {
    app = await openApp({ file: example, viewport: { width: 1280, height: 800 } });
    return () => app.close();
  });

  it('is typed by keyboard alone, drawn, flagged, and changes the margins', async () => {
    const { page } = app;
    await openJoint(page);
    const before = await margins(page).first().textContent();
    await tabTo(page, page.getByRole('button', { name: /^New laminate/ }));
    await page.keyboard.press('Enter');
    await plies(page).waitFor();
    expect(await stackField(page).inputValue()).toBe('[0/±45/90]s');

    await tabTo(page, stackField(page));
    await page.keyboard.press('Control+A');
    await page.keyboard.type('[0/+-45/30');
    expect(await stackField(page).getAttribute('aria-invalid')).toBe('true');
    await page.getByText(/bracket is not closed/).waitFor();
    await page.keyboard.type(']');
    await vi.waitFor(
      async () =>
        expect(await plies(page).getAttribute('aria-label')).toBe(
          '4 plies from inside to outside: 0°, 45°, −45°, 30°.',
        ),
      patient,
    );
    const said = (await notes(page)).join(' ');
    for (const word of [/not symmetric/i, /not balanced/i, /scaled/i]) expect(said).toMatch(word);

    await page.keyboard.press('Control+A');
    await page.keyboard.type('[0_2/+-45/90]s');
    await vi.waitFor(async () => {
      expect(await plies(page).getAttribute('aria-label')).toMatch(/^10 plies .*mirror/);
      expect(await page.getByRole('list', { name: 'Tube stack, to know' }).count()).toBe(0);
    }, patient);
    await page.getByText('10 plies, symmetric, balanced').waitFor();
    await vi.waitFor(async () => {
      expect(await page.getByText(/not recalculated/i).count()).toBe(0);
      expect(await margins(page).first().textContent()).not.toBe(before);
    }, patient);
    expect(await page.getByLabel('Laminate properties').textContent()).toMatch(/Ex\d\d\.\d GPa/);

    // And back to what it was.
    await page
      .getByRole('combobox', { name: 'Tube material' })
      .selectOption({ label: 'Carbon tube, mostly axial plies (typical)' });
    await vi.waitFor(
      async () => expect(await margins(page).first().textContent()).toBe(before),
      patient,
    );
    expect(app.problems).toEqual([]);
  });

  it('takes knockdowns off the adhesive, and shows what the core says is left', async () => {
    const { page } = app;
    await openJoint(page);
    const value = (): Promise<string | null> =>
      margins(page).first().locator('.value').textContent();
    const before = await value();
    await tabTo(page, page.locator('summary', { hasText: 'Knockdowns' }));
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'Add knockdowns' }).click();
    await page.getByRole('textbox', { name: 'Knockdown, ageing' }).fill('0.5');
    await page.getByRole('textbox', { name: 'Knockdown, scatter' }).fill('0.5');
    const left = page.getByRole('row', { name: /^Left/ }).getByRole('cell');
    await vi.waitFor(
      async () => expect(await left.first().textContent()).toMatch(/^0\.2\d$/),
      patient,
    );
    await vi.waitFor(async () => expect(await value()).not.toBe(before), patient);
    expect(app.problems).toEqual([]);
  });
});

describeInBrowser('the input column', () => {
  it.each(['light', 'dark'] as const)(
    'is accessible with all of it open, in %s',
    async (scheme) => {
      const app = await openApp({
        file: example,
        colorScheme: scheme,
        viewport: { width: 1280, height: 800 },
      });
      try {
        const { page } = app;
        await openJoint(page);
        await page.getByRole('button', { name: /^New laminate/ }).click();
        await plies(page).waitFor();
        await stackField(page).fill('[0/+-45/90_2]');
        await page.getByText('not symmetric').first().waitFor();
        await page.getByRole('textbox', { name: 'Tube stack' }).scrollIntoViewIfNeeded();
        await page.screenshot({ path: join(pictures, `stack-${scheme}.png`) });
        await page.locator('.inputs summary').evaluateAll((list) => {
          for (const summary of list) (summary as HTMLElement).click();
        });
        await page.getByRole('button', { name: 'Add knockdowns' }).click();
        await page.getByRole('button', { name: 'Add a gap' }).click();
        await page.getByRole('button', { name: 'Add fracture energies' }).click();
        await stackField(page).fill('[0/+-45/x]');
        await page.getByText(/An angle is expected/).waitFor();
        expect(await violations(page)).toEqual([]);
        await stackField(page).fill('[0/+-45/90_2]');
        const column = page.locator('.inputs-column');
        const wide = await column.evaluate((node) => node.scrollWidth - node.clientWidth);
        expect(wide).toBeLessThanOrEqual(0);
        for (const [name, y] of [
          ['ply', 560],
          ['adhesive', 1500],
          ['ledger', 2200],
        ] as const) {
          await column.evaluate((node, top) => {
            node.scrollTop = top;
          }, y);
          await page.screenshot({ path: join(pictures, `inputs-${name}-${scheme}.png`) });
        }
        expect(app.problems).toEqual([]);
      } finally {
        await app.close();
      }
    },
  );
});
