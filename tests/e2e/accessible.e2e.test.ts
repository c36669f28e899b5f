/**
 * Every page, view and dialog against WCAG 2.2 A and AA: by axe, in light and dark, with more contrast and with
 * the system's own colours; and what axe does not look at: reflow, focus, motion, canvases, errors.
 */
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { root } from '../../src/launch/root.mjs';
import { cutOff, moving, silentCanvases, unlinkedErrors } from './support/accessible.ts';
import { describeInBrowser } from './support/browser.ts';
import { tabThrough } from './support/focus.ts';
import { writeFullProject } from './support/full-project.ts';
import { openApp } from './support/open-app.ts';
import { violations } from './support/violations.ts';
import { forgetBench, walk } from './support/walk.ts';

const pictures = join(root, process.env.LAPWRIGHT_PICTURES ?? 'tests/artefacts');
mkdirSync(pictures, { recursive: true });

type Media = Parameters<Page['emulateMedia']>[0];
const plain: Media = { colorScheme: 'light', forcedColors: 'none', contrast: 'no-preference' };
/** Structure is the same in all; colours are not. */
const schemes: readonly {
  readonly name: string;
  readonly media: Media;
  readonly rules?: string[];
}[] = [
  { name: 'light', media: plain },
  { name: 'dark', media: { ...plain, colorScheme: 'dark' }, rules: ['color-contrast'] },
  { name: 'more', media: { ...plain, contrast: 'more' }, rules: ['color-contrast'] },
  { name: 'forced', media: { ...plain, forcedColors: 'active' }, rules: ['color-contrast'] },
];

const usual = { width: 1280, height: 800 };
/** 1280 × 800 at 200 %, and the narrowest that WCAG asks for. */
const narrow = [
  { width: 640, height: 400 },
  { width: 320, height: 640 },
];

describeInBrowser('every page', () => {
  it('is accessible in every scheme, at 200 % and at 320 pixels', async () => {
    forgetBench();
    const app = await openApp({
      file: writeFullProject(),
      viewport: usual,
      context: { reducedMotion: 'reduce' },
    });
    const { page } = app;
    const found: string[] = [];
    const tell = (place: string, what: string, list: readonly string[]): void =>
      void found.push(...list.map((one) => `${place}, ${what}: ${one}`));
    let places = 0;
    let canvases = 0;
    try {
      await walk(page, async (place) => {
        places += 1;
        canvases += await page.locator('canvas').count();
        for (const { name, media, rules } of schemes) {
          await page.emulateMedia(media);
          tell(place, name, await violations(page, rules));
          if (name === 'forced' || name === 'more') await shot(page, place, name);
        }
        await page.emulateMedia(plain);
        tell(place, 'canvas', await page.evaluate(silentCanvases));
        tell(place, 'motion', await page.evaluate(moving));
        tell(place, 'error', await page.evaluate(unlinkedErrors));
        for (const size of narrow) {
          await page.setViewportSize(size);
          await shot(page, place, String(size.width));
          tell(place, `${size.width} wide`, await page.evaluate(cutOff));
        }
        await page.setViewportSize(usual);
      });
      expect(found).toEqual([]);
      expect(places).toBeGreaterThan(30);
      expect(canvases).toBeGreaterThan(15);
      expect(app.problems).toEqual([]);
      expect(app.policyViolations).toEqual([]);
    } finally {
      await app.close();
    }
  }, 1_800_000);

  it('paints its curves in the colours that the system forces', async () => {
    const app = await openApp({ context: { forcedColors: 'active', colorScheme: 'dark' } });
    try {
      const { page } = app;
      await page.getByRole('button', { name: 'Landing leg', exact: true }).click();
      await page.locator('canvas').first().waitFor();
      const colours = await page.evaluate(() => {
        const probe = document.createElement('span');
        probe.style.cssText = 'forced-color-adjust: none';
        document.body.append(probe);
        const read = (name: string): string => {
          probe.style.color = name;
          return getComputedStyle(probe).color;
        };
        return { canvas: read('Canvas'), link: read('LinkText'), shear: read('var(--shear)') };
      });
      expect(colours.shear).toBe(colours.link);
      expect(colours.shear).not.toBe(colours.canvas);
    } finally {
      await app.close();
    }
  });

  it('shows where the focus is, and nothing lies over it', async () => {
    const app = await openApp({ file: writeFullProject(), viewport: usual });
    const { page } = app;
    const found: string[] = [];
    try {
      await page.getByRole('button', { name: 'Landing leg', exact: true }).waitFor();
      for (const size of [usual, narrow[0]!]) {
        await page.setViewportSize(size);
        for (const key of ['1', '2', '3', '4', '5']) {
          await page.keyboard.press(`Control+${key}`);
          await page.waitForTimeout(1500);
          const { wrong, stops } = await tabThrough(page, 60);
          found.push(...wrong.map((one) => `page ${key}, ${size.width} wide: ${one}`));
          expect(stops).toBeGreaterThan(10);
        }
      }
      expect(found).toEqual([]);
    } finally {
      await app.close();
    }
  }, 600_000);
});

const shot = (page: Page, place: string, how: string) =>
  page.screenshot({ path: join(pictures, `a11y-${how}-${place.replace(/\W+/g, '-')}.png`) });
