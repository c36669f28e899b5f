/**
 * Builds when what was built is not of these sources. They are told apart by their content: times
 * of files say little after a checkout, an unpacked archive or a clock that was set.
 */
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { pathToFileURL } from 'node:url';
import { root as projectRoot, say } from './root.mjs';

const outputs = [
  'main/shell.js',
  'main/host.js',
  'main/worker.js',
  'main/cli.js',
  'preload/preload.cjs',
  'renderer/index.html',
];
const sources = [
  'src',
  'docs',
  'LICENSE',
  'electron.vite.config.ts',
  'package.json',
  'package-lock.json',
];
/** What starts the program, and what packs it, is not built into it. */
const notBuilt = [join('src', 'launch'), join('src', 'package')];
const STAMP = 'built-from';

/**
 * @param {string} root
 * @param {string} place
 * @returns {string[]}
 */
function filesIn(root, place) {
  const path = join(root, place);
  if (notBuilt.includes(place) || !existsSync(path)) return [];
  if (!statSync(path).isDirectory()) return [path];
  return readdirSync(path)
    .sort()
    .flatMap((name) => filesIn(root, join(place, name)));
}

/**
 * @param {string} root
 * @returns {string}
 */
export function sourcesDigest(root) {
  const hash = createHash('sha256');
  for (const file of sources.flatMap((place) => filesIn(root, place))) {
    const content = readFileSync(file);
    hash.update(`${relative(root, file)}\0${content.length}\0`).update(content);
  }
  return hash.digest('hex');
}

/**
 * @param {string} root
 * @param {string} digest of the sources now
 */
function isBuiltFrom(root, digest) {
  const out = join(root, 'out');
  if (!outputs.every((file) => existsSync(join(out, file)))) return false;
  try {
    return readFileSync(join(out, STAMP), 'utf8') === digest;
  } catch {
    return false;
  }
}

/** @param {string} root */
export const buildIsCurrent = (root) => isBuiltFrom(root, sourcesDigest(root));

/**
 * @param {string} root
 * @param {{ always?: boolean }} [options]
 * @returns {boolean} whether a current build is there now
 */
export function build(root, { always = false } = {}) {
  // Before building: a source changed meanwhile then counts as not built yet.
  const digest = sourcesDigest(root);
  if (!always && isBuiltFrom(root, digest)) return true;
  say('Building …');
  const tool = join(root, 'node_modules', 'electron-vite', 'bin', 'electron-vite.js');
  const { status, stdout, stderr } = spawnSync(process.execPath, [tool, 'build'], {
    cwd: root,
    encoding: 'utf8',
    maxBuffer: 64 * 1024 * 1024,
  });
  if (status !== 0) {
    say(`${stdout ?? ''}${stderr ?? ''}`);
    say('The build failed; its message is above.');
    return false;
  }
  writeFileSync(join(root, 'out', STAMP), digest);
  return true;
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  process.exitCode = build(projectRoot, { always: true }) ? 0 : 1;
}
