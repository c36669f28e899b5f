/** How a window is made: a pure function, so that a test compares the whole of it. */
import type { BrowserWindowConstructorOptions, Rectangle } from 'electron';

export interface WindowSetting {
  /** The built preload's file. */
  readonly preload: string;
  readonly dark: boolean;
  readonly packaged: boolean;
  /** The file of the window's picture; null where the system takes that from the program's own file. */
  readonly icon: string | null;
  /** Where it was; the usual size, wherever the system puts it, when left out. */
  readonly bounds?: Partial<Rectangle>;
}

export const usualWindow = { width: 1360, height: 900 } as const;
export const leastWindow = { width: 720, height: 520 } as const;

/** The page's own paper, so that a window never flashes in another colour before it is drawn. */
const paper = { light: '#fbfaf6', dark: '#12171d' } as const;

export const windowOptions = (setting: WindowSetting): BrowserWindowConstructorOptions => ({
  title: 'Lapwright',
  ...(setting.icon === null ? {} : { icon: setting.icon }),
  ...usualWindow,
  ...setting.bounds,
  minWidth: leastWindow.width,
  minHeight: leastWindow.height,
  show: false,
  backgroundColor: setting.dark ? paper.dark : paper.light,
  webPreferences: {
    preload: setting.preload,
    sandbox: true,
    contextIsolation: true,
    nodeIntegration: false,
    nodeIntegrationInWorker: false,
    nodeIntegrationInSubFrames: false,
    webSecurity: true,
    allowRunningInsecureContent: false,
    experimentalFeatures: false,
    webviewTag: false,
    navigateOnDragDrop: false,
    // A dictionary would be fetched from the network.
    spellcheck: false,
    devTools: !setting.packaged,
  },
});
