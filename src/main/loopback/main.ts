/** Entry of the loopback host: serves the page on this machine only and shows it in a browser. */
import { randomBytes } from 'node:crypto';
import { realpathSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { SILENCE } from '../../shared/contract-files.ts';
import { openDemo } from '../demo/demo.ts';
import { dataFolder, makeBenchJournal } from '../files/bench-journal.ts';
import { isFirstStart } from '../files/first-start.ts';
import { makeProjectFiles } from '../files/project-files.ts';
import { makeRowJournal } from '../files/row-journal.ts';
import { createAskWithJobs } from '../jobs/ask-with-jobs.ts';
import { readPageFiles } from '../page-files.ts';
import { type Shown, showPage } from './open-browser.ts';
import { createHost } from './server.ts';
import { IDLE, watchPages } from './watch-pages.ts';

/** The folder of what was built: this program is one of the files in its `main`. */
const built = resolve(import.meta.dirname, '..');
/** Milliseconds between one Ctrl+C and another that is not the same. */
const IMPATIENT = 1_000;

/**
 * @param argv `--file=PATH` opens that project, `--folder=PATH` is a folder chosen for projects,
 * `--no-open` prints the address and opens nothing, `--idle=SECONDS` is how long no page may be silent
 */
export async function main(argv: readonly string[]): Promise<void> {
  const { values } = parseArgs({
    args: [...argv],
    options: {
      file: { type: 'string' },
      folder: { type: 'string' },
      'no-open': { type: 'boolean', default: false },
      idle: { type: 'string', default: String(IDLE / 1000) },
    },
  });
  const { file, folder } = values;
  const projectFiles = makeProjectFiles({ data: dataFolder(), dialogs: false, silence: SILENCE });
  if (folder !== undefined) {
    const given = projectFiles.giveFolder(resolve(folder));
    if (!given.ok) console.error(given.error.message);
  }
  const initial = file === undefined ? openDemo : () => projectFiles.openGiven(resolve(file));
  const core = createAskWithJobs({
    carrier: 'loopback',
    journal: makeBenchJournal(dataFolder()),
    rowJournal: makeRowJournal(dataFolder()),
    firstStart: () => isFirstStart(dataFolder()),
    worker: join(built, 'main', 'worker.js'),
    files: projectFiles,
    initial,
  });
  // Before anything else: a cold thread takes longer than all that follows.
  core.warm(initial());
  const token = randomBytes(32).toString('base64url');
  const files = readPageFiles(join(built, 'renderer'));
  const pages = watchPages(Number(values.idle) * 1000, () => {
    console.log('No page has been open for a while: Lapwright stops.');
    void stop();
  });
  const ask: typeof core.ask = async (...asked) => {
    const answered = pages.asked();
    try {
      return await core.ask(...asked);
    } finally {
      answered();
    }
  };
  const server = createHost({ ask, files, token });
  await new Promise<void>((ready, failed) => {
    server.once('error', failed);
    server.listen(0, '127.0.0.1', ready);
  });
  const { port } = server.address() as AddressInfo;
  // The fragment is never sent over the wire; the page takes it out of the address bar.
  const address = `http://127.0.0.1:${port}/#token=${token}`;

  let shown: Shown | null = null;
  let stopping = 0;
  const stop = async (): Promise<void> => {
    if (stopping !== 0) {
      // A shell and npm may both pass on one Ctrl+C; a later one means that the user is tired of waiting.
      if (performance.now() - stopping > IMPATIENT) process.exit(1);
      return;
    }
    stopping = performance.now();
    server.close();
    server.closeAllConnections();
    projectFiles.close();
    await Promise.all([core.close(), shown?.close()]);
    process.exit(0);
  };
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) {
    process.on(signal, () => void stop());
  }

  console.log(`Lapwright is open at ${address}`);
  console.log('Ctrl+C stops it.');
  if (values['no-open']) return;
  shown = await showPage(address, { onClosed: () => void stop() });
  // A window of our own is seen to close, and may sleep as long as it likes.
  if (shown.how === 'window') pages.end();
  if (shown.how === 'not') console.log('No browser was found to open it in: copy the address.');
}

// Started as a program, not imported by the launcher.
if (process.argv[1] && realpathSync(process.argv[1]) === fileURLToPath(import.meta.url)) {
  await main(process.argv.slice(2));
}
