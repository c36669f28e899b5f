/**
 * All that a page inside Electron gets from outside: to ask the core, to hear the menu, and the path of a
 * file that the user has put into the page.
 */
import { contextBridge, ipcRenderer, webUtils } from 'electron';
import { ASK_CHANNEL, COMMAND_CHANNEL, GIVEN_CHANNEL } from '../shared/channel.ts';
import type { Bridge } from '../shared/contract.ts';
import { readMenuCommand } from '../shared/menu-commands.ts';

const bridge: Bridge = Object.freeze({
  carrier: 'electron',
  ask: (name, input) => ipcRenderer.invoke(ASK_CHANNEL, name, input),
  onCommand(listener) {
    const hear = (_event: unknown, arrived: unknown): void => {
      const command = readMenuCommand(arrived);
      if (command) listener(command);
    };
    ipcRenderer.on(COMMAND_CHANNEL, hear);
    return () => void ipcRenderer.off(COMMAND_CHANNEL, hear);
  },
  pathOf(file) {
    let path = '';
    try {
      // Only of a file that the user dropped or chose: a page cannot make one with a path.
      path = webUtils.getPathForFile(file);
    } catch {
      // It is no file.
    }
    // Arrives before anything that the page asks about it.
    if (path !== '') ipcRenderer.invoke(GIVEN_CHANNEL, path).catch(() => undefined);
    return path;
  },
} satisfies Bridge);

contextBridge.exposeInMainWorld('lapwright', bridge);
