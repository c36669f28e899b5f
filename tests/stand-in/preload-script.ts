/** The built preload, wrapped so that it runs in a plain page before the page's own scripts. */
import { readFileSync } from 'node:fs';

/** The function that Electron's `ipcRenderer` would send through. */
export const INVOKE = '__standInInvoke';

const before = `(() => {
  // A preload runs in the top frame only, unless sub-frames are asked for.
  if (window !== window.top) return;
  const freeze = (value) => {
    if (typeof value === 'object' && value !== null) Object.values(value).forEach(freeze);
    return Object.freeze(value);
  };
  const electron = {
    contextBridge: {
      exposeInMainWorld: (name, api) =>
        Object.defineProperty(window, name, { value: freeze({ ...api }), enumerable: true }),
    },
    ipcRenderer: { invoke: (...message) => window.${INVOKE}(...message) },
  };
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
