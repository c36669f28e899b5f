/** A window with its page, its own start and its own dialogs; all windows share core, jobs and files. */
import { join } from 'node:path';
import { app, BrowserWindow, dialog, nativeTheme, screen } from 'electron';
import { type AskOptions, createAsk } from '../ask.ts';
import type { ProjectFiles } from '../files/project-files.ts';
import type { SmallStore } from '../files/small-store.ts';
import { type AskFor, type Jobs, withJobs } from '../jobs/ask-with-jobs.ts';
import { chooserOf } from './choose-file.ts';
import { guardClose } from './close-guard.ts';
import icon from './icon.png?asset';
import { reviveGonePage } from './page-gone.ts';
import { PAGE_ADDRESS } from './page-protocol.ts';
import { withPdf } from './sheet-pdf.ts';
import { windowOptions } from './window-options.ts';
import { placeWindow, stateOf, type WindowState } from './window-state.ts';

export interface Windows {
  /** The folder of what was built. */
  readonly built: string;
  readonly asks: Map<number, AskFor>;
  readonly jobs: Jobs;
  readonly files: ProjectFiles;
  readonly core: Pick<AskOptions, 'carrier' | 'journal' | 'rowJournal' | 'firstStart'>;
  readonly state: SmallStore<WindowState | null>;
  /** A window was to close and stays. */
  readonly stayed: () => void;
}

/** What windows may take of each display, the main one first. */
function workAreas() {
  const main = screen.getPrimaryDisplay();
  const others = screen.getAllDisplays().filter(({ id }) => id !== main.id);
  return [main, ...others].map(({ workArea }) => workArea);
}

export function openWindow(shared: Windows, file: string | null): void {
  const { built, asks, jobs, files, core, state, stayed } = shared;
  const before = state.read();
  const window = new BrowserWindow(
    windowOptions({
      preload: join(built, 'preload', 'preload.cjs'),
      dark: nativeTheme.shouldUseDarkColors,
      packaged: app.isPackaged,
      // On Linux nothing else tells a window's picture.
      icon: process.platform === 'linux' ? icon : null,
      bounds: placeWindow(before, workAreas(), BrowserWindow.getAllWindows().length),
    }),
  );
  const { id } = window.webContents;
  const client = String(id);
  const initial = file === null ? {} : { initial: () => files.openGiven(file) };
  const own = { ...files, choose: chooserOf(window, dialog, files.reach) };
  const ask = withJobs(createAsk({ ...core, files: own, ...initial }), jobs);
  asks.set(id, withPdf(ask, window, dialog));
  window.on('close', () => void state.write(stateOf(window)));
  const gone = (): void => {
    jobs.leave(client);
    files.presence.left(client);
  };
  window.once('closed', () => {
    asks.delete(id);
    gone();
  });
  reviveGonePage(window, dialog, { gone });
  // A page loaded anew waits for no answer of the old one.
  window.webContents.on('did-navigate', () => jobs.leave(client));
  window.once('ready-to-show', () => {
    if (before?.maximised) window.maximize();
    window.show();
  });
  guardClose(window, dialog, { discarded: () => files.discard(client), stayed });
  window.loadURL(PAGE_ADDRESS).catch((error: unknown) => {
    // A window closed while it loads is no error.
    if (!window.isDestroyed()) dialog.showErrorBox('The page could not be shown', String(error));
  });
}
