/**
 * The package `@sparticuz/chromium` carries a Linux Chromium in compressed files. They are
 * unpacked once into `node_modules/.cache`; the package's own ways are not used: its place is the
 * shared temporary folder, where anything of that name would be run, and its switches turn off web
 * security.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { brotliDecompressSync } from 'node:zlib';

/** The package's own names folders of the system that it was made for. */
const fontsConf = `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
  <dir prefix="relative">fonts</dir>
  <cachedir prefix="xdg">fontconfig</cachedir>
</fontconfig>
`;
const BLOCK = 512;
const text = (/** @type {Buffer} */ field) => field.toString('latin1').replace(/\0.*$/s, '').trim();

/**
 * @param {Buffer} tar
 * @returns {Generator<{ name: string, content: Buffer }>} its ordinary files
 */
export function* filesOfTar(tar) {
  let at = 0;
  while (at + BLOCK <= tar.length) {
    const header = tar.subarray(at, at + BLOCK);
    const name = text(header.subarray(0, 100));
    if (name === '') return;
    const size = Number.parseInt(text(header.subarray(124, 136)), 8) || 0;
    const kind = header[156];
    at += BLOCK;
    if (kind === 0 || kind === 0x30) yield { name, content: tar.subarray(at, at + size) };
    at += Math.ceil(size / BLOCK) * BLOCK;
  }
}

/**
 * @param {string} archive
 * @param {string} folder
 */
function unpackTar(archive, folder) {
  for (const { name, content } of filesOfTar(brotliDecompressSync(readFileSync(archive)))) {
    const file = join(folder, ...name.split('/'));
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, content);
  }
}

/**
 * @param {string} root
 * @returns {string} folder that holds `chromium`, unpacked now or before
 */
function unpacked(root) {
  const from = join(root, 'node_modules', '@sparticuz', 'chromium');
  const { version } = JSON.parse(readFileSync(join(from, 'package.json'), 'utf8'));
  const folder = join(root, 'node_modules', '.cache', `chromium-${version}`);
  if (existsSync(folder)) return folder;
  process.stderr.write('Unpacking Chromium for the browser tests …\n');
  // Renamed into place when complete, so that a folder of that name is never half of one.
  const part = `${folder}.${process.pid}`;
  rmSync(part, { recursive: true, force: true });
  mkdirSync(part, { recursive: true });
  const program = brotliDecompressSync(readFileSync(join(from, 'bin', 'chromium.br')));
  writeFileSync(join(part, 'chromium'), program, { mode: 0o755 });
  unpackTar(join(from, 'bin', 'swiftshader.tar.br'), part);
  unpackTar(join(from, 'bin', 'al2023.tar.br'), join(part, 'al2023'));
  unpackTar(join(from, 'bin', 'fonts.tar.br'), part);
  writeFileSync(join(part, 'fonts.conf'), fontsConf);
  try {
    renameSync(part, folder);
  } catch (error) {
    rmSync(part, { recursive: true, force: true });
    // Another run was quicker.
    if (!existsSync(folder)) throw error;
  }
  return folder;
}

/**
 * @param {string} root
 * @returns {{ executablePath: string, env: Record<string, string> } | null} null where the package
 *   has no program for this system
 */
export function unpackChromium(root) {
  if (process.platform !== 'linux' || process.arch !== 'x64') return null;
  const folder = unpacked(root);
  const executablePath = join(folder, 'chromium');
  /** @param {Record<string, string>} env */
  const runs = (env) =>
    spawnSync(executablePath, ['--version'], { env: { ...process.env, ...env } }).status === 0;

  /** @type {Record<string, string>} */
  const env = {};
  // A bare system lacks the security libraries; one that has them must use its own.
  if (!runs(env)) env.LD_LIBRARY_PATH = join(folder, 'al2023', 'lib');
  if (!runs(env))
    throw new Error(`The unpacked Chromium does not run: ${executablePath} --version`);
  if (!existsSync('/etc/fonts/fonts.conf')) env.FONTCONFIG_FILE = join(folder, 'fonts.conf');
  return { executablePath, env };
}
