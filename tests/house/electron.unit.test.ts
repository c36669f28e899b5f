/** What the shell never calls, however it is written: read in its sources. */
import { expect, it } from 'vitest';
import { allFiles, read } from './sources.ts';

const shell = allFiles().filter((file) => /^src\/(main|preload)\/.*\.ts$/.test(file));
const withText = (pattern: RegExp): string[] => shell.filter((file) => pattern.test(read(file)));

it('loads one address, its own', () => {
  expect(withText(/\.loadURL\(/)).toEqual(['src/main/shell/open-window.ts']);
  expect(read('src/main/shell/open-window.ts').match(/\.loadURL\([^)]*\)/g)).toEqual([
    '.loadURL(PAGE_ADDRESS)',
  ]);
  expect(withText(/\.loadFile\(|file:\/\/\//)).toEqual([]);
});

it.each([
  ['opens nothing outside', /\bopenExternal\b|\bopenPath\b/],
  ['turns on no features of the browser', /\b(enable|disable)BlinkFeatures\b|appendSwitch\(/],
  ['lets no webview open windows', /\ballowpopups\b/i],
  ['runs no text as a program', /\beval\(|new Function\(|executeJavaScript\(|insertCSS\(/],
  ['takes no way around the policy', /bypassCSP|onHeadersReceived|registerFileProtocol/],
  ['has no module of the old remote kind', /@electron\/remote|enableRemoteModule/],
])('%s', (_what, pattern) => {
  expect(withText(pattern)).toEqual([]);
});

it('hands the page functions of its own, and no part of Electron', () => {
  const preload = read('src/preload/preload.ts');
  expect(preload.match(/exposeInMainWorld\([^)]*\)/g)).toEqual([
    "exposeInMainWorld('lapwright', bridge)",
  ]);
  const [, bridge = ''] = /const bridge[^{]*\{([\s\S]*?)\n\}/.exec(preload) ?? [];
  // Called within them, never given away.
  expect(bridge.match(/(ipcRenderer|webUtils|contextBridge)(?!\.)/g)).toBeNull();
});
