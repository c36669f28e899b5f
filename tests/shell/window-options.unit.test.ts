import { expect, it } from 'vitest';
import { windowOptions } from '../../src/main/shell/window-options.ts';

it('makes a window that is sandboxed and isolated, whole', () => {
  expect(windowOptions({ preload: 'PRELOAD', dark: false, packaged: true })).toEqual({
    title: 'Lapwright',
    width: 1360,
    height: 900,
    minWidth: 720,
    minHeight: 520,
    show: false,
    backgroundColor: '#fbfaf6',
    webPreferences: {
      preload: 'PRELOAD',
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
      spellcheck: false,
      devTools: false,
    },
  });
});

it('differs only in its paper at night and in the tools of developers', () => {
  const day = windowOptions({ preload: 'PRELOAD', dark: false, packaged: true });
  expect(windowOptions({ preload: 'PRELOAD', dark: true, packaged: false })).toEqual({
    ...day,
    backgroundColor: '#12171d',
    webPreferences: { ...day.webPreferences, devTools: true },
  });
});
