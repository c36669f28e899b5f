/** The start itself, on a Node that is recent enough. */
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { parseArgs } from 'node:util';
import { build } from './build.mjs';
import { electronHere, getElectron } from './electron-binary.mjs';
import { installPackages } from './packages.mjs';
import { root, say, userFolder } from './root.mjs';
import { runElectron } from './run-electron.mjs';

const usage = `npm start -- [FILE] [options]
  FILE             open this project file; otherwise the demonstration project, and
                   an offer of the file that was open last
  --folder=PATH    a folder that projects may be opened and saved in, in a browser
  --browser        open in a browser even where Electron is installed
  --no-open        only print the address to open
  --get-electron   fetch Electron's program first
  --help           show this`;

/** @param {string[]} argv */
function readArguments(argv) {
  const { values, positionals } = parseArgs({
    args: argv,
    allowPositionals: true,
    options: {
      folder: { type: 'string' },
      browser: { type: 'boolean', default: false },
      'no-open': { type: 'boolean', default: false },
      'get-electron': { type: 'boolean', default: false },
      help: { type: 'boolean', default: false },
    },
  });
  if (positionals.length > 1) throw new Error('Only one project file can be opened at a time.');
  const [file] = positionals;
  return {
    browser: values.browser || values['no-open'],
    noOpen: values['no-open'],
    getElectron: values['get-electron'],
    help: values.help,
    file: file === undefined ? null : resolve(userFolder(), file),
    folder: values.folder === undefined ? null : resolve(userFolder(), values.folder),
  };
}

/** Milliseconds between two looks at who started this. */
const LOOK = 1_000;

/**
 * npm runs this through a shell. Where npm is told to stop, the shell ends and this would stay,
 * seen by nobody: it then stops as if it had been told itself. Windows keeps no such relation.
 */
function stopWithNpm() {
  if (process.platform === 'win32' || process.env.npm_lifecycle_event === undefined) return;
  const { ppid } = process;
  setInterval(() => {
    if (process.ppid !== ppid) process.kill(process.pid, 'SIGTERM');
  }, LOOK).unref();
}

/**
 * @param {string} program
 * @param {{ noOpen: boolean, file: string | null, folder: string | null }} wish
 */
async function runHost(program, { noOpen, file, folder }) {
  const host = await import(pathToFileURL(program).href);
  await host.main([
    ...(noOpen ? ['--no-open'] : []),
    ...(file === null ? [] : [`--file=${file}`]),
    ...(folder === null ? [] : [`--folder=${folder}`]),
  ]);
}

/**
 * @param {string[]} argv
 * @returns {Promise<number>} exit code; the host goes on after it
 */
export async function start(argv) {
  let wish;
  try {
    wish = readArguments(argv);
  } catch (error) {
    say(`${error instanceof Error ? error.message : error}\n${usage}`);
    return 2;
  }
  if (wish.help) {
    console.log(usage);
    return 0;
  }
  stopWithNpm();
  if (!installPackages(root) || !build(root)) return 1;
  if (wish.getElectron) getElectron(root);
  if (!wish.browser) {
    const electron = electronHere(root);
    if ('binary' in electron) {
      const code = await runElectron(electron.binary, root, wish.file);
      if (code !== null) return code;
      say('Electron could not be started: opening in a browser instead.');
    } else say(`Opening in a browser, not in Electron: ${electron.reason}.`);
  }
  await runHost(join(root, 'out', 'main', 'host.js'), wish);
  return 0;
}
