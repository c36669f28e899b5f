/** What every page of the window is kept from, event by event. */
import { EventEmitter } from 'node:events';
import type { Session, WebContents, WindowOpenHandlerResponse } from 'electron';
import { describe, expect, it } from 'vitest';
import { confineContents, confineSession } from '../../src/main/shell/confine.ts';

class Contents extends EventEmitter {
  opening: ((details: { url: string }) => WindowOpenHandlerResponse) | null = null;
  setWindowOpenHandler(handler: Contents['opening']): void {
    this.opening = handler;
  }
}

const confined = (): Contents => {
  const contents = new Contents();
  confineContents(contents as unknown as WebContents);
  return contents;
};
const isPrevented = (name: string, url: string, isMainFrame = true): boolean => {
  let prevented = false;
  confined().emit(name, {
    url,
    isMainFrame,
    preventDefault: () => {
      prevented = true;
    },
  });
  return prevented;
};

const elsewhere = [
  'https://elsewhere.test/',
  'http://127.0.0.1:80/',
  'file:///etc/hostname',
  'app://elsewhere/',
  'app://lapwright:81/',
  'app://user@lapwright/',
  'app://lapwright.elsewhere.test/',
  'data:text/html,x',
  'blob:app://lapwright/x',
  'javascript:alert(1)',
  'view-source:app://lapwright/',
  'about:blank',
  '',
];

describe('a page', () => {
  it.each(['will-navigate', 'will-frame-navigate', 'will-redirect'])(
    'is led nowhere else by %s, and no frame is filled',
    (name) => {
      for (const url of elsewhere) expect([url, isPrevented(name, url)]).toEqual([url, true]);
      for (const url of ['app://lapwright/', ...elsewhere]) {
        expect([url, isPrevented(name, url, false)]).toEqual([url, true]);
      }
      expect(isPrevented(name, 'app://lapwright/')).toBe(false);
    },
  );

  it('opens no window, not even of itself', () => {
    for (const url of ['app://lapwright/', ...elsewhere]) {
      expect(confined().opening!({ url })).toEqual({ action: 'deny' });
    }
  });

  it('attaches no webview', () => {
    expect(isPrevented('will-attach-webview', 'app://lapwright/')).toBe(true);
  });
});

describe('the session', () => {
  type Answer = (granted: boolean) => void;
  interface Handlers {
    request: ((contents: unknown, permission: string, answer: Answer) => void) | null;
    check: ((contents: unknown, permission: string) => boolean) | null;
    device: ((details: unknown) => boolean) | null;
    download: ((event: object, item: object) => void) | null;
  }
  const handlers: Handlers = { request: null, check: null, device: null, download: null };
  confineSession({
    on: (name: string, handler: Handlers['download']) => {
      if (name === 'will-download') handlers.download = handler;
    },
    setPermissionRequestHandler: (handler: Handlers['request']) => {
      handlers.request = handler;
    },
    setPermissionCheckHandler: (handler: Handlers['check']) => {
      handlers.check = handler;
    },
    setDevicePermissionHandler: (handler: Handlers['device']) => {
      handlers.device = handler;
    },
  } as unknown as Session);

  it.each([
    'clipboard-read',
    'clipboard-sanitized-write',
    'display-capture',
    'fileSystem',
    'fullscreen',
    'geolocation',
    'hid',
    'idle-detection',
    'media',
    'mediaKeySystem',
    'midi',
    'midiSysex',
    'notifications',
    'openExternal',
    'pointerLock',
    'serial',
    'storage-access',
    'usb',
    'window-management',
    'one that is yet to come',
  ])('grants no %s, neither asked nor checked', (permission) => {
    const granted: boolean[] = [];
    handlers.request!(null, permission, (answer) => granted.push(answer));
    expect(granted).toEqual([false]);
    expect(handlers.check!(null, permission)).toBe(false);
  });

  it('takes out only what the page made itself', () => {
    const isPrevented = (url: string): boolean => {
      let prevented = false;
      const preventDefault = (): void => {
        prevented = true;
      };
      handlers.download!({ preventDefault }, { getURL: () => url });
      return prevented;
    };
    expect(isPrevented('blob:app://lapwright/0c0ffee0')).toBe(false);
    const others = elsewhere.filter((url) => url !== 'blob:app://lapwright/x');
    for (const url of [
      ...others,
      'app://lapwright/',
      'blob:null/x',
      'blob:https://elsewhere.test/x',
      'blob:app://lapwright.elsewhere.test/x',
      'blob:app://lapwright:81/x',
    ]) {
      expect([url, isPrevented(url)]).toEqual([url, true]);
    }
  });

  it('hands out no device', () => {
    for (const deviceType of ['usb', 'hid', 'serial']) {
      expect(handlers.device!({ deviceType })).toBe(false);
    }
  });
});
