/** Files that the user puts on a page: the preload tells where they lie, and they may be used. */
import { statSync } from 'node:fs';
import type { IpcMain } from 'electron';
import { GIVEN_CHANNEL } from '../../shared/channel.ts';
import { openNameTrouble, pathTrouble } from '../files/path-form.ts';
import { type Reach, whereItLeads } from '../files/reach.ts';
import { askOfSender, type WindowAsks } from './answer-asks.ts';

export function takeGiven(path: unknown, reach: Pick<Reach, 'allowFile'>): void {
  if (typeof path !== 'string' || path.length > 4096) return;
  if (pathTrouble(path) !== null || openNameTrouble(path) !== null) return;
  const leads = whereItLeads(path);
  if (!leads.ok || openNameTrouble(leads.value) !== null) return;
  if (statSync(leads.value, { throwIfNoEntry: false })?.isFile()) reach.allowFile(leads.value);
}

export function takeGivenFiles(ipc: IpcMain, windows: WindowAsks, reach: Reach): void {
  ipc.handle(GIVEN_CHANNEL, (event, path: unknown) => {
    if (askOfSender(event, windows)) takeGiven(path, reach);
  });
}
