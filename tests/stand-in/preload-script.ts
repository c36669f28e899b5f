/** The built preload, wrapped so that it runs in a plain page before the page's own scripts. */
import { readFileSync } from 'node:fs';

/** The function that Electron's `ipcRenderer` would send through. */
export const INVOKE = '__standInInvoke';
/** What arrives from the main process, as `webContents.send` would bring it. */
export const HEAR = '__standInHear';
/** A page that closes its window: in Electron it may, in a plain browser not. */
export const CLOSE = '__standInClose';
/** Paths of files by their names, as the system would know them of a file that was dropped. */
export const PATHS = '__standInPaths';

const before = `(() => {
  // A preload runs in the top frame only, unless sub-frames are asked for.
  if (window !== window.top) return;
  const freeze = (value) => {
    if (typeof value === 'object' && value !== null) Object.values(value).forEach(freeze);
    return Object.freeze(value);
  };
  const listeners = [];
  const electron = {
    contextBridge: {
      exposeInMainWorld: (name, api) =>
        Object.defineProperty(window, name, { value: freeze({ ...api }), enumerable: true }),
    },
    ipcRenderer: {
      invoke: (...message) => window.${INVOKE}(...message),
      on: (channel, listener) => listeners.push({ channel, listener }),
      off: (channel, listener) => {
        const at = listeners.findIndex((one) => one.channel === channel && one.listener === listener);
        if (at >= 0) listeners.splice(at, 1);
      },
    },
    webUtils: {
      getPathForFile: (file) => {
        if (!(file instanceof File)) throw new TypeError('This is no file.');
        return window.${PATHS}?.[file.name] ?? '';
      },
    },
  };
  const hidden = (name, value) => Object.defineProperty(window, name, { value, enumerable: false });
  hidden('${HEAR}', (channel, ...args) => {
    for (const one of listeners) if (one.channel === channel) one.listener({}, ...args);
  });
  hidden('close', () => void window.${CLOSE}());
  const module = { exports: {} };
  const exports = module.exports;
  // All that the loader of a sandboxed preload has.
  const require = (name) => {
    if (name === 'electron') return electron;
    throw new Error('A sandboxed preload cannot load ' + name);
  };
`;

export const preloadScript = (file: string): string =>
  `${before}\n(() => {\n${readFileSync(file, 'utf8')}\n})();\n})();`;
