/** All that a page inside Electron gets from outside: one function that asks the core. */
import { contextBridge, ipcRenderer } from 'electron';
import { ASK_CHANNEL } from '../shared/channel.ts';
import type { Bridge } from '../shared/contract.ts';

const bridge: Bridge = Object.freeze({
  carrier: 'electron',
  ask: (name, input) => ipcRenderer.invoke(ASK_CHANNEL, name, input),
} satisfies Bridge);

contextBridge.exposeInMainWorld('lapwright', bridge);
