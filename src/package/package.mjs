/**
 * npm run package -- [linux|win|mac] [--fetch] [--dir]
 * Builds the program and packs it with electron-builder, pinned here and not among the packages of the project:
 * nobody else needs its three hundred packages. Without --fetch nothing comes from the network: it then makes the
 * folder alone, for this system, of what is here already.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, realpathSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { build } from '../launch/build.mjs';
import { electronBinary, electronFolder } from '../launch/electron-binary.mjs';
import { root as projectRoot, say } from '../launch/root.mjs';

export const BUILDER = '26.17.0';
export const systems = /** @type {const} */ (['linux', 'win', 'mac']);
const own = /** @type {Record<string, string>} */ ({ linux: 'linux', win32: 'win', darwin: 'mac' });
/** The builder's own need. */
const NODE = [22, 12];
const MINUTE = 60_000;

/**
 * @typedef {object} Plan
 * @property {string[]} args of npx
 * @property {Record<string, string>} env what is added to the environment
 * @property {number} timeout milliseconds
 */

/**
 * What would be run, or why nothing is.
 * @param {readonly string[]} argv
 * @param {{ platform: NodeJS.Platform, node: string, electron: string | null }} here where Electron's program is
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
  const { fetch = false, dir = false } = values;
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
  if (!fetch && system !== own[here.platform]) {
    return {
      refusal: `Electron's program for ${system} would be fetched. Say so: npm run package -- ${system} --fetch`,
    };
  }
  if (!fetch && here.electron === null) {
    return {
      refusal:
        "Electron's program is not here, and packing would fetch it. Say so: npm run package -- --fetch",
    };
  }
  return {
    args: [
      ...(fetch ? [] : ['--offline']),
      '--yes',
      `electron-builder@${BUILDER}`,
      `--${system}`,
      // An installer needs tools that the builder fetches.
      ...(dir || !fetch ? ['--dir'] : []),
      '--config',
      'src/package/builder-config.mjs',
      ...(fetch ? [] : [`--config.electronDist=${here.electron}`]),
      '--publish',
      'never',
    ],
    // It asks on its own whether there is a later builder.
    env: { NO_UPDATE_NOTIFIER: '1' },
    timeout: (fetch ? 60 : 20) * MINUTE,
  };
}

/**
 * @param {Plan} plan
 * @param {{ cwd: string, env?: NodeJS.ProcessEnv, platform?: NodeJS.Platform }} place
 * @returns {number} exit code
 */
export function pack(plan, { cwd, env = process.env, platform = process.platform }) {
  // On Windows npx is a script, which only a shell starts: it takes an argument apart at its blanks.
  const shell = platform === 'win32';
  const args = shell ? plan.args.map((one) => (/\s/.test(one) ? `"${one}"` : one)) : plan.args;
  const { status, error } = spawnSync(shell ? 'npx.cmd' : 'npx', args, {
    cwd,
    env: { ...env, ...plan.env },
    // Nothing asks a question that nobody sees.
    stdio: ['ignore', 'inherit', 'inherit'],
    timeout: plan.timeout,
    shell,
  });
  if (status === 0) return 0;
  const late = error && 'code' in error && error.code === 'ETIMEDOUT';
  if (late) say(`The builder was stopped: it had not ended in ${plan.timeout / MINUTE} minutes.`);
  else if (error) say(`npx could not be run: ${error.message}`);
  else if (plan.args.includes('--offline')) {
    say('Nothing was fetched. Where the builder itself is missing: npm run package -- --fetch');
  }
  return status ?? 1;
}

/** @param {string[]} argv */
function main(argv) {
  const plan = planOf(argv, {
    platform: process.platform,
    node: process.versions.node,
    electron: electronBinary(projectRoot) === null ? null : electronFolder(),
  });
  if ('refusal' in plan) {
    say(plan.refusal);
    return 1;
  }
  if (!existsSync(join(projectRoot, 'node_modules'))) {
    say('The packages are not installed: npm ci');
    return 1;
  }
  if (!build(projectRoot)) return 1;
  const { version } = JSON.parse(readFileSync(join(projectRoot, 'package.json'), 'utf8'));
  say(`Packing Lapwright ${version} …`);
  return pack(plan, { cwd: projectRoot });
}

if (process.argv[1] && realpathSync(process.argv[1]) === fileURLToPath(import.meta.url)) {
  process.exitCode = main(process.argv.slice(2));
}
