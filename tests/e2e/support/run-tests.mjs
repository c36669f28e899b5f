/** Runs vitest and says at the end what it did: the counts on a line of their own. */
import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { electronHere } from '../../../src/launch/electron-binary.mjs';
import { findBrowser } from './find-browser.mjs';

/**
 * @typedef {object} TestFile
 * @property {string} name
 * @property {'passed' | 'failed'} status
 * @property {{ status: string, fullName: string }[]} assertionResults
 */

/**
 * @param {readonly TestFile[]} files
 * @param {(status: string) => boolean} is
 */
const count = (files, is) =>
  files.reduce(
    (sum, file) => sum + file.assertionResults.filter((test) => is(test.status)).length,
    0,
  );

/** @param {string} status */
const isSkipped = (status) => status !== 'passed' && status !== 'failed';

/**
 * A file that could not be loaded, or that failed outside its tests, is a failure too.
 * @param {readonly TestFile[]} files
 */
const brokenFiles = (files) =>
  files.filter(
    ({ status, assertionResults }) =>
      status === 'failed' && !assertionResults.some((test) => test.status === 'failed'),
  );

/**
 * What was skipped, grouped by why.
 * @param {string} root
 * @param {readonly TestFile[]} files
 * @param {{ browser: boolean, noElectron: string | null }} here
 * @returns {string[]}
 */
export function skippedLines(root, files, { browser, noElectron }) {
  /** @type {string[]} */
  const lines = [];
  let withoutBrowser = 0;
  for (const { name, assertionResults } of files) {
    const skipped = assertionResults.filter(({ status }) => isSkipped(status));
    if (skipped.length === 0) continue;
    if (noElectron !== null && name.endsWith('electron-real.e2e.test.ts')) {
      lines.push(`skipped: ${skipped.length} tests in real Electron: ${noElectron}`);
    } else if (!browser && name.endsWith('.e2e.test.ts')) withoutBrowser += skipped.length;
    else {
      const path = relative(root, name).replaceAll('\\', '/');
      lines.push(`skipped: ${skipped.length} tests in ${path}: the file says why`);
    }
  }
  if (withoutBrowser > 0) {
    lines.push(`skipped: ${withoutBrowser} tests in a browser: no Chromium, Chrome or Edge here`);
  }
  return lines;
}

/**
 * @param {readonly TestFile[]} files
 * @returns {string} such as `12 passed, 0 failed, 3 skipped`
 */
export function countsLine(files) {
  const failed = count(files, (status) => status === 'failed') + brokenFiles(files).length;
  const passed = count(files, (status) => status === 'passed');
  return `${passed} passed, ${failed} failed, ${count(files, isSkipped)} skipped`;
}

/**
 * @param {string} root
 * @returns {string | null} why there is no Electron to test in
 */
function whyNoElectron(root) {
  const electron = electronHere(root);
  if ('binary' in electron) return null;
  // The launcher's longer words advise a user; here the fact is enough.
  return electron.reason.startsWith('its program') ? 'no binary here' : electron.reason;
}

/**
 * @param {string} root
 * @param {readonly string[]} args for vitest
 * @returns {Promise<number>} exit code
 */
export async function runTests(root, args) {
  const browser = await findBrowser(root);
  const results = join(root, 'node_modules', '.cache', 'lapwright', `results-${process.pid}.json`);
  mkdirSync(dirname(results), { recursive: true });
  const { status } = spawnSync(
    process.execPath,
    [
      join(root, 'node_modules', 'vitest', 'vitest.mjs'),
      'run',
      '--config',
      join(root, 'tests', 'vitest.config.ts'),
      '--reporter=default',
      '--reporter=json',
      `--outputFile.json=${results}`,
      ...args,
    ],
    { cwd: root, stdio: ['ignore', 'inherit', 'inherit'] },
  );
  /** @type {TestFile[]} */
  let files;
  try {
    files = JSON.parse(readFileSync(results, 'utf8')).testResults;
    rmSync(results);
  } catch {
    console.log('The tests ended without a result.');
    return status || 1;
  }
  const broken = brokenFiles(files);
  for (const { name } of broken) console.log(`failed as a whole: ${relative(root, name)}`);
  for (const line of skippedLines(root, files, {
    browser: browser !== null,
    noElectron: whyNoElectron(root),
  })) {
    console.log(line);
  }
  const counts = countsLine(files);
  console.log(counts);
  const failed = !counts.includes(' 0 failed');
  if (status === 0 && failed) return 1;
  if (status !== 0 && !failed)
    console.log('An error outside the tests made the run fail; it is above.');
  return status ?? 1;
}
