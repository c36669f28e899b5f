/**
 * node tests/package/draw-icons.mjs
 * Draws the icons from icon.svg (and icon-small.svg, where a hairline would be less than a pixel) with the
 * browser that the tests use, and puts them together as Windows and macOS want them.
 */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { root, say } from '../../src/launch/root.mjs';
import { icnsOf, icoOf } from '../../src/package/icon-files.mjs';
import { findBrowser, launchOptions } from '../e2e/support/find-browser.mjs';

const here = join(root, 'src', 'package');
const icons = join(here, 'icons');
/** Pixels; up to `SMALL` from the simpler drawing. */
export const sizes = [16, 24, 32, 48, 64, 128, 256, 512, 1024];
const SMALL = 48;

const browserHere = await findBrowser(root);
if (!browserHere) throw new Error('Drawing the icons needs a browser.');
const browser = await chromium.launch(launchOptions(browserHere));
/** @type {Map<number, Buffer>} */
const drawn = new Map();
try {
  const page = await browser.newPage();
  for (const size of sizes) {
    const svg = readFileSync(join(here, size <= SMALL ? 'icon-small.svg' : 'icon.svg'), 'utf8');
    await page.setViewportSize({ width: size, height: size });
    await page.setContent(
      `<style>html,body{margin:0;background:transparent}svg{display:block;width:${size}px;height:${size}px}</style>${svg}`,
    );
    drawn.set(size, await page.screenshot({ omitBackground: true }));
  }
} finally {
  await browser.close();
}
mkdirSync(icons, { recursive: true });
for (const [size, png] of drawn) writeFileSync(join(icons, `${size}x${size}.png`), png);
// The window's own, on Linux.
writeFileSync(join(root, 'src', 'main', 'shell', 'icon.png'), drawn.get(256));
writeFileSync(
  join(icons, 'icon.ico'),
  icoOf([16, 24, 32, 48, 64, 128, 256].map((s) => drawn.get(s))),
);
writeFileSync(join(icons, 'icon.icns'), icnsOf(drawn));
say(`Drawn: ${sizes.join(', ')} pixels, icon.ico, icon.icns`);
