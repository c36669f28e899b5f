/** Installs the packages when those on disk are not the ones that the lock file names. */
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { say } from './root.mjs';

/** @typedef {Record<string, { version?: string, integrity?: string, optional?: boolean, link?: boolean }>} Packages */

/**
 * @param {string} file
 * @returns {Packages | null}
 */
function packagesIn(file) {
  try {
    return JSON.parse(readFileSync(file, 'utf8')).packages ?? null;
  } catch {
    return null;
  }
}

/**
 * npm leaves a record of what it installed in `node_modules`; it must agree with the lock file in
 * all but what is optional (binaries of other systems), and the folders must really be there.
 * @param {string} root
 */
export function packagesAreCurrent(root) {
  const wanted = packagesIn(join(root, 'package-lock.json'));
  const present = packagesIn(join(root, 'node_modules', '.package-lock.json'));
  if (wanted === null || present === null) return false;
  return Object.entries(wanted).every(([place, { version, integrity, optional }]) => {
    if (place === '') return true;
    const found = present[place];
    if (!found) return optional === true;
    return (
      found.version === version &&
      found.integrity === integrity &&
      existsSync(join(root, place, 'package.json'))
    );
  });
}

/** The npm that runs this, or the one on the path. */
function npmCommand() {
  const own = process.env.npm_execpath;
  if (own?.endsWith('.js') || own?.endsWith('.cjs'))
    return { command: process.execPath, before: [own] };
  return { command: 'npm', before: [] };
}

/**
 * @param {string} root
 * @returns {boolean} whether the packages are there now
 */
export function installPackages(root) {
  if (packagesAreCurrent(root)) return true;
  say('Installing packages (npm ci) …');
  const { command, before } = npmCommand();
  // Building and testing need the development packages, whatever the user's npm leaves out.
  const args = [...before, 'ci', '--include=dev', '--no-audit', '--no-fund', '--loglevel=error'];
  const { status, error } = spawnSync(command, args, {
    cwd: root,
    // Output belongs to the program that is started.
    stdio: ['ignore', 2, 2],
    // On Windows npm is a script, which only a shell starts.
    shell: command === 'npm' && process.platform === 'win32',
  });
  if (status === 0) return true;
  say(error ? `npm could not be run: ${error.message}` : 'npm ci failed; its message is above.');
  return false;
}
