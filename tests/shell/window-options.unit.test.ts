import { expect, it } from 'vitest';
import { windowOptions } from '../../src/main/shell/window-options.ts';

it('makes a window that is sandboxed and isolated, whole', () => {
  expect(windowOptions({ preload: 'PRELOAD', dark: false, packaged: true, icon: null })).toEqual({
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
  const day = windowOptions({ preload: 'PRELOAD', dark: false, packaged: true, icon: null });
  expect(windowOptions({ preload: 'PRELOAD', dark: true, packaged: false, icon: null })).toEqual({
    ...day,
    backgroundColor: '#12171d',
    webPreferences: { ...day.webPreferences, devTools: true },
  });
});

it('has its picture where the program says so', () => {
  const setting = { preload: 'PRELOAD', dark: false, packaged: true };
  expect(windowOptions({ ...setting, icon: '/there/icon.png' })).toEqual({
    ...windowOptions({ ...setting, icon: null }),
    icon: '/there/icon.png',
  });
});
