/** Entry of the Electron shell: one process, one core, a window for each project opened. */
import { join, resolve } from 'node:path';
import {
  app,
  BrowserWindow,
  dialog,
  ipcMain,
  Menu,
  nativeTheme,
  protocol,
  session,
} from 'electron';
import { createAsk } from '../ask.ts';
import { dataFolder, makeBenchJournal } from '../files/bench-journal.ts';
import { readProjectFile } from '../files/read-project-file.ts';
import { makeRowJournal } from '../files/row-journal.ts';
import { type AskFor, makeJobs, withJobs } from '../jobs/ask-with-jobs.ts';
import { readPageFiles } from '../page-files.ts';
import { answerAsks } from './answer-asks.ts';
import { guardClose } from './close-guard.ts';
import { confineContents, confineSession } from './confine.ts';
import { fileArgument, fileOfSecondStart } from './file-argument.ts';
import { menuTemplate } from './menu.ts';
import { PAGE_ADDRESS, pageScheme, servePage } from './page-protocol.ts';
import { withPdf } from './sheet-pdf.ts';
import { windowOptions } from './window-options.ts';

/** The folder of what was built: this program is one of the files in its `main`. */
const built = resolve(import.meta.dirname, '..');
const carrier = 'electron';
const journals = {
  journal: makeBenchJournal(dataFolder()),
  rowJournal: makeRowJournal(dataFolder()),
};

const asks = new Map<number, AskFor>();
const jobs = makeJobs({ carrier, worker: join(built, 'main', 'worker.js') });

function openWindow(file: string | null): void {
  const window = new BrowserWindow(
    windowOptions({
      preload: join(built, 'preload', 'preload.cjs'),
      dark: nativeTheme.shouldUseDarkColors,
      packaged: app.isPackaged,
    }),
  );
  const { id } = window.webContents;
  const initial = file === null ? {} : { initial: () => readProjectFile(file) };
  const ask = withJobs(createAsk({ carrier, ...journals, ...initial }), jobs);
  asks.set(id, withPdf(ask, window, dialog));
  window.once('closed', () => {
    asks.delete(id);
    jobs.leave(String(id));
  });
  // A page loaded anew waits for no answer of the old one.
  window.webContents.on('did-navigate', () => jobs.leave(String(id)));
  window.once('ready-to-show', () => window.show());
  guardClose(window, dialog);
  window.loadURL(PAGE_ADDRESS).catch((error: unknown) => {
    // A window closed while it loads is no error.
    if (!window.isDestroyed()) dialog.showErrorBox('The page could not be shown', String(error));
  });
}

async function start(file: string | null): Promise<void> {
  app.on('web-contents-created', (_event, contents) => confineContents(contents));
  app.on('second-instance', (_event, _argv, _folder, data) => {
    const other = fileOfSecondStart(data);
    const [window] = BrowserWindow.getAllWindows();
    if (other !== null || !window) openWindow(other);
    else {
      if (window.isMinimized()) window.restore();
      window.focus();
    }
  });
  app.on('window-all-closed', () => {
    if (process.platform !== 'darwin') app.quit();
  });
  app.on('activate', () => {
    if (BrowserWindow.getAllWindows().length === 0) openWindow(null);
  });
  app.on('will-quit', () => void jobs.close());

  await app.whenReady();
  confineSession(session.defaultSession);
  servePage(session.defaultSession, readPageFiles(join(built, 'renderer')));
  answerAsks(ipcMain, asks);
  Menu.setApplicationMenu(Menu.buildFromTemplate(menuTemplate(process.platform, app.isPackaged)));
  openWindow(file);
  jobs.warm();
}

app.enableSandbox();
protocol.registerSchemesAsPrivileged([pageScheme]);
const file = fileArgument(process.argv);
if (app.requestSingleInstanceLock({ file })) {
  // Not awaited here: Electron becomes ready only after this file has run to its end.
  start(file).catch((error: unknown) => {
    dialog.showErrorBox('Lapwright could not start', String(error));
    app.exit(1);
  });
} else app.quit();
