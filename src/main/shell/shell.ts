/** Entry of the Electron shell: one process, one core, a window for each project opened. */
import { join, resolve } from 'node:path';
import { app, BrowserWindow, dialog, ipcMain, Menu, protocol, session } from 'electron';
import { COMMAND_CHANNEL } from '../../shared/channel.ts';
import type { MenuCommand } from '../../shared/menu-commands.ts';
import { openDemo } from '../demo/demo.ts';
import { dataFolder, makeBenchJournal } from '../files/bench-journal.ts';
import { isFirstStart } from '../files/first-start.ts';
import { makeProjectFiles } from '../files/project-files.ts';
import { makeRowJournal } from '../files/row-journal.ts';
import { type AskFor, makeJobs } from '../jobs/ask-with-jobs.ts';
import { readPageFiles } from '../page-files.ts';
import { answerAsks } from './answer-asks.ts';
import { confineContents, confineSession } from './confine.ts';
import { fileArgument, fileOfSecondStart } from './file-argument.ts';
import { takeGivenFiles } from './given-files.ts';
import { menuTemplate } from './menu.ts';
import { openWindow as openOneOf, type Windows } from './open-window.ts';
import { pageScheme, servePage } from './page-protocol.ts';
import { windowStore } from './window-state.ts';

/** The folder of what was built: this program is one of the files in its `main`. */
const built = resolve(import.meta.dirname, '..');
const carrier = 'electron';
const data = dataFolder();

const files = makeProjectFiles({ data, dialogs: true, silence: null, listed: showListed });
/** The program is to end once its windows are closed. */
let quitting = false;
const windows: Windows = {
  built,
  files,
  asks: new Map<number, AskFor>(),
  jobs: makeJobs({ carrier, worker: join(built, 'main', 'worker.js') }),
  core: {
    carrier,
    journal: makeBenchJournal(data),
    rowJournal: makeRowJournal(data),
    firstStart: () => isFirstStart(data),
  },
  state: windowStore(data),
  stayed: () => {
    quitting = false;
  },
};
const openWindow = (file: string | null): void => openOneOf(windows, file);

function command(wish: MenuCommand): void {
  const window = BrowserWindow.getFocusedWindow() ?? BrowserWindow.getAllWindows()[0];
  if (window) window.webContents.send(COMMAND_CHANNEL, wish);
  // On macOS the menu is there without a window.
  else openWindow(wish.path ?? null);
}

function showMenu(): void {
  const menu = { recent: files.recent.list(), command };
  Menu.setApplicationMenu(
    Menu.buildFromTemplate(menuTemplate(process.platform, app.isPackaged, menu)),
  );
}

function showListed(used: string | null): void {
  if (used !== null) app.addRecentDocument(used);
  showMenu();
}

function listen(): void {
  app.on('web-contents-created', (_event, contents) => confineContents(contents));
  app.on('second-instance', (_event, _argv, _folder, handed) => {
    const other = fileOfSecondStart(handed);
    const [window] = BrowserWindow.getAllWindows();
    if (other !== null || !window) openWindow(other);
    else {
      if (window.isMinimized()) window.restore();
      window.focus();
    }
  });
  app.on('before-quit', () => {
    quitting = true;
  });
  app.on('window-all-closed', () => {
    if (process.platform !== 'darwin' || quitting) app.quit();
  });
  app.on('activate', () => {
    if (BrowserWindow.getAllWindows().length === 0) openWindow(null);
  });
  app.on('will-quit', () => {
    files.close();
    void windows.jobs.close();
  });
}

/** macOS hands a file over by an event, which may come before the program is ready. */
function listenForFiles(first: string | null): () => string | null {
  let ready = false;
  let early = first;
  app.on('open-file', (event, path) => {
    event.preventDefault();
    if (ready) openWindow(path);
    else early = path;
  });
  return () => {
    ready = true;
    return early;
  };
}

async function start(first: string | null): Promise<void> {
  listen();
  const firstFile = listenForFiles(first);
  await app.whenReady();
  confineSession(session.defaultSession);
  servePage(session.defaultSession, readPageFiles(join(built, 'renderer')));
  answerAsks(ipcMain, windows.asks);
  takeGivenFiles(ipcMain, windows.asks, files.reach);
  showMenu();
  const opening = firstFile();
  openWindow(opening);
  windows.jobs.warm(opening === null ? openDemo() : files.openGiven(opening));
}

app.enableSandbox();
protocol.registerSchemesAsPrivileged([pageScheme]);
const named = fileArgument(process.argv);
const file = named === null ? null : resolve(named);
if (app.requestSingleInstanceLock({ file })) {
  // Not awaited here: Electron becomes ready only after this file has run to its end.
  start(file).catch((error: unknown) => {
    dialog.showErrorBox('Lapwright could not start', String(error));
    app.exit(1);
  });
} else app.quit();
