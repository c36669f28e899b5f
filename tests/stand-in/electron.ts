/**
 * Stands for the module `electron` where its program is not: enough to run the built shell and
 * preload around a page of a real browser. It shows what our code asks of Electron and answers to
 * a page; it cannot show that Electron's own sandbox, isolation, menus and dialogs work.
 */
import { EventEmitter } from 'node:events';
import type { BrowserWindowConstructorOptions, MenuItemConstructorOptions } from 'electron';
import { defaultSession } from './session.ts';
import { StandInContents } from './web-contents.ts';

export { ipcMain } from './ipc.ts';

/** What a test looks at and turns. */
export const standIn = {
  sandboxed: false,
  schemes: [] as { readonly scheme: string }[],
  menu: null as MenuItemConstructorOptions[] | null,
  /** What the shell handed over with the wish to be the only instance. */
  lockData: undefined as unknown,
  quit: false,
  errors: [] as string[],
  questions: [] as { readonly message: string; readonly buttons?: string[] }[],
  /** Files that the system lists as open lately. */
  recent: [] as string[],
  /** What dialogs were asked for, and what the next one gives back; null when it is cancelled. */
  dialogs: [] as Record<string, unknown>[],
  chosen: null as string | null,
  /** The button that the next question is answered with. */
  answer: 0,
  /** Electron becomes ready only after the entry has run to its end. */
  codeLoaded: () => {},
};

const ready = new Promise<void>((resolve) => {
  standIn.codeLoaded = () => {
    app.isReady = true;
    resolve();
  };
});

class App extends EventEmitter {
  isReady = false;
  readonly isPackaged = false;
  enableSandbox(): void {
    if (this.isReady) throw new Error('The sandbox is enabled before the app is ready.');
    standIn.sandboxed = true;
  }
  requestSingleInstanceLock(data: unknown): boolean {
    standIn.lockData = data;
    return true;
  }
  whenReady(): Promise<void> {
    return ready;
  }
  quit(): void {
    standIn.quit = true;
  }
  addRecentDocument(path: string): void {
    standIn.recent.push(path);
  }
  exit(): void {
    standIn.quit = true;
  }
}

export const app = new App();

const windows: BrowserWindow[] = [];

export class BrowserWindow extends EventEmitter {
  readonly webContents: StandInContents;
  readonly options: BrowserWindowConstructorOptions;
  shown = false;
  focused = 0;
  maximised = false;
  bounds: { x: number; y: number; width: number; height: number };

  constructor(options: BrowserWindowConstructorOptions) {
    super();
    if (!app.isReady) throw new Error('A window is made after the app is ready.');
    this.options = options;
    const { x = 10, y = 10, width = 800, height = 600 } = options;
    this.bounds = { x, y, width, height };
    this.webContents = new StandInContents(options.webPreferences ?? {});
    this.webContents.closeAsked = () => void this.close();
    windows.push(this);
    this.webContents.once('destroyed', () => {
      windows.splice(windows.indexOf(this), 1);
      this.emit('closed');
      if (windows.length === 0) app.emit('window-all-closed');
    });
    app.emit('web-contents-created', {}, this.webContents);
  }

  /** None has the keyboard: the first one stands in front. */
  static getFocusedWindow(): BrowserWindow | null {
    return null;
  }
  static getAllWindows(): BrowserWindow[] {
    return [...windows];
  }
  async loadURL(address: string): Promise<void> {
    await this.webContents.loadURL(address);
    this.emit('ready-to-show');
  }
  /** As a click on the window's own button: the page is asked first. */
  async close(): Promise<void> {
    this.emit('close', {});
    await (await this.webContents.ready).close({ runBeforeUnload: true });
  }
  /** Nobody is asked. */
  async destroy(): Promise<void> {
    await (await this.webContents.ready).close();
  }
  show(): void {
    this.shown = true;
  }
  focus(): void {
    this.focused += 1;
  }
  maximize(): void {
    this.maximised = true;
  }
  isMaximized = (): boolean => this.maximised;
  getNormalBounds = () => this.bounds;
  isMinimized = (): boolean => false;
  restore(): void {}
  isDestroyed = (): boolean => !windows.includes(this);
}

export const dialog = {
  showMessageBoxSync(_window: unknown, question: { message: string; buttons?: string[] }): number {
    standIn.questions.push(question);
    return standIn.answer;
  },
  async showMessageBox(_window: unknown, question: { message: string; buttons?: string[] }) {
    standIn.questions.push(question);
    return { response: standIn.answer };
  },
  async showOpenDialog(_window: unknown, options: Record<string, unknown>) {
    standIn.dialogs.push({ purpose: 'open', ...options });
    const { chosen } = standIn;
    return { canceled: chosen === null, filePaths: chosen === null ? [] : [chosen] };
  },
  async showSaveDialog(_window: unknown, options: Record<string, unknown>) {
    standIn.dialogs.push({ purpose: 'save', ...options });
    const { chosen } = standIn;
    return { canceled: chosen === null, filePath: chosen ?? '' };
  },
  showErrorBox(title: string, text: string): void {
    standIn.errors.push(`${title}: ${text}`);
  },
};

export const Menu = {
  buildFromTemplate: (template: MenuItemConstructorOptions[]) => template,
  setApplicationMenu(template: MenuItemConstructorOptions[]): void {
    standIn.menu = template;
  },
};

export const nativeTheme = { shouldUseDarkColors: false };

const display = { id: 1, workArea: { x: 0, y: 0, width: 1920, height: 1040 } };
export const screen = { getPrimaryDisplay: () => display, getAllDisplays: () => [display] };

export const protocol = {
  registerSchemesAsPrivileged(schemes: { readonly scheme: string }[]): void {
    if (app.isReady) throw new Error('Schemes are registered before the app is ready.');
    standIn.schemes = schemes;
  },
};

export const session = { defaultSession };
