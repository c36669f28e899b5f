/**
 * Finds Electron's program. Its package is never loaded to find out: without the program that
 * line downloads it on the spot, and can hang for as long as the network does.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { say } from './root.mjs';

const DOWNLOAD_TIME = 5 * 60_000;

/**
 * The folder that the program is in, if it is here at all; from the top of the project, or elsewhere.
 * @param {NodeJS.ProcessEnv} [env]
 */
export const electronFolder = (env = process.env) =>
  env.ELECTRON_OVERRIDE_DIST_PATH || 'node_modules/electron/dist';

/**
 * @param {string} root
 * @param {NodeJS.ProcessEnv} [env]
 * @returns {string | null} the program's file
 */
export function electronBinary(root, env = process.env) {
  const folder = join(root, 'node_modules', 'electron');
  let program = '';
  try {
    program = readFileSync(join(folder, 'path.txt'), 'utf8').trim();
  } catch {
    // Nothing was downloaded; a program from elsewhere may still be named by the environment.
  }
  if (!env.ELECTRON_OVERRIDE_DIST_PATH && program === '') return null;
  const file = resolve(root, electronFolder(env), program || 'electron');
  return existsSync(file) ? file : null;
}

/**
 * Why Electron cannot be used here, in a few words.
 * @param {string} root
 * @param {{ platform?: NodeJS.Platform, env?: NodeJS.ProcessEnv, uid?: number | undefined }} [system]
 * @returns {{ binary: string } | { reason: string }}
 */
export function electronHere(
  root,
  { platform = process.platform, env = process.env, uid = process.getuid?.() } = {},
) {
  const binary = electronBinary(root, env);
  if (binary === null) {
    return { reason: 'its program is not installed; npm start -- --get-electron fetches it' };
  }
  if (platform === 'linux' && uid === 0) {
    return { reason: 'its sandbox does not run as root' };
  }
  if (platform === 'linux' && !env.DISPLAY && !env.WAYLAND_DISPLAY) {
    return { reason: 'there is no display' };
  }
  return { binary };
}

/**
 * Downloads Electron's program, because the user asked for it.
 * @param {string} root
 */
export function getElectron(root) {
  say('Fetching Electron …');
  const script = join(root, 'node_modules', 'electron', 'install.js');
  const { status, error } = spawnSync(process.execPath, [script], {
    cwd: root,
    stdio: ['ignore', 2, 2],
    timeout: DOWNLOAD_TIME,
  });
  if (status === 0) return;
  const late = error && 'code' in error && error.code === 'ETIMEDOUT';
  say(late ? 'Electron did not arrive within five minutes.' : 'Electron could not be fetched.');
}
