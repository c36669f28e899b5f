/** One browser for each test file, started when first needed and closed after the last test. */
import { type Browser, chromium } from 'playwright-core';
import { afterAll, describe, inject } from 'vitest';
import { launchOptions } from './find-browser.mjs';

const choice = inject('browser');

/** `describe` for tests that drive a browser: skipped, and said so, where there is none. */
export const describeInBrowser = describe.skipIf(choice === null);

let running: Promise<Browser> | null = null;

export function browser(): Promise<Browser> {
  if (choice === null) throw new Error('There is no browser here: use describeInBrowser.');
  running ??= chromium.launch(launchOptions(choice));
  return running;
}

afterAll(async () => {
  const open = running;
  running = null;
  await (await open)?.close();
});
