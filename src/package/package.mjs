/**
 * npm run package -- [linux|win|mac] [--fetch] [--dir]
 * Builds the program and packs it with electron-builder, pinned here and not among the packages of the project:
 * nobody else needs its three hundred packages. What it lacks it fetches only when told to.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, realpathSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { build } from '../launch/build.mjs';
import { electronHere } from '../launch/electron-binary.mjs';
import { root as projectRoot, say } from '../launch/root.mjs';

export const BUILDER = '26.17.0';
export const systems = /** @type {const} */ (['linux', 'win', 'mac']);
const own = /** @type {Record<string, string>} */ ({ linux: 'linux', win32: 'win', darwin: 'mac' });
/** The builder's own need. */
const NODE = [22, 12];

/**
 * @typedef {object} Plan
 * @property {string[]} args of npx
 */

/**
 * What would be run, or why nothing is.
 * @param {readonly string[]} argv
 * @param {{ platform: NodeJS.Platform, node: string, electron: boolean }} here
 * @returns {Plan | { refusal: string }}
 */
export function planOf(argv, here) {
  /** @type {{ values: { fetch?: boolean, dir?: boolean }, positionals: string[] }} */
  let read;
  try {
    read = parseArgs({
      args: [...argv],
      allowPositionals: true,
      options: { fetch: { type: 'boolean' }, dir: { type: 'boolean' } },
    });
  } catch (error) {
    return { refusal: `${error instanceof Error ? error.message : error}` };
  }
  const { values, positionals } = read;
  const system = positionals[0] ?? own[here.platform];
  if (positionals.length > 1 || !systems.some((one) => one === system)) {
    return { refusal: `Say one of: ${systems.join(', ')}.` };
  }
  if (system === 'mac' && here.platform !== 'darwin') {
    return { refusal: 'A package for macOS can only be made on macOS.' };
  }
  const [major = 0, minor = 0] = here.node.split('.').map(Number);
  if (major < NODE[0] || (major === NODE[0] && minor < NODE[1])) {
    return { refusal: `The builder needs Node ${NODE.join('.')} or later; this is ${here.node}.` };
  }
  if (!values.fetch && !here.electron) {
    return {
      refusal:
        "Electron's program is not here, and packing would fetch it. Say so: npm run package -- --fetch",
    };
  }
  return {
    args: [
      '--yes',
      `electron-builder@${BUILDER}`,
      `--${system}`,
      ...(values.dir ? ['--dir'] : []),
      '--config',
      'src/package/builder-config.mjs',
      '--publish',
      'never',
    ],
  };
}

if (process.argv[1] && realpathSync(process.argv[1]) === fileURLToPath(import.meta.url)) {
  const plan = planOf(process.argv.slice(2), {
    platform: process.platform,
    node: process.versions.node,
    electron: 'binary' in electronHere(projectRoot),
  });
  if ('refusal' in plan) {
    say(plan.refusal);
    process.exitCode = 1;
  } else if (!existsSync(join(projectRoot, 'node_modules'))) {
    say('The packages are not installed: npm ci');
    process.exitCode = 1;
  } else if (build(projectRoot)) {
    const { version } = JSON.parse(readFileSync(join(projectRoot, 'package.json'), 'utf8'));
    say(`Packing Lapwright ${version} …`);
    const npx = process.platform === 'win32' ? 'npx.cmd' : 'npx';
    const { status } = spawnSync(npx, plan.args, {
      cwd: projectRoot,
      stdio: 'inherit',
      shell: process.platform === 'win32',
    });
    process.exitCode = status ?? 1;
  } else process.exitCode = 1;
}
