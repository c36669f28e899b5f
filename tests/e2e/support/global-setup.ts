/** Before the browser tests: a current build, a browser, and whether Electron's program is here. */
import type { TestProject } from 'vitest/node';
import { build } from '../../../src/launch/build.mjs';
import { electronHere } from '../../../src/launch/electron-binary.mjs';
import { root } from '../../../src/launch/root.mjs';
import { type BrowserChoice, findBrowser } from './find-browser.mjs';

declare module 'vitest' {
  interface ProvidedContext {
    /** Null where there is none. */
    browser: BrowserChoice | null;
    /** Electron's program, or null where it is not. */
    electron: string | null;
  }
}

export default async function setUp(project: TestProject): Promise<void> {
  if (!build(root)) throw new Error('The browser tests need a build.');
  project.provide('browser', await findBrowser(root));
  const electron = electronHere(root);
  project.provide('electron', 'binary' in electron ? electron.binary : null);
}
