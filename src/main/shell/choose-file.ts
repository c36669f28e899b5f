/** The system's own dialog: what is chosen in it may be opened and saved. */
import { existsSync } from 'node:fs';
import { basename, join } from 'node:path';
import type { BrowserWindow, Dialog } from 'electron';
import { FILE_SUFFIX, LONG_SUFFIX, withSuffix } from '../../shared/project-text.ts';
import { ok, type Reply, refuse } from '../../shared/reply.ts';
import type { ChosenFile } from '../../shared/reports-files.ts';
import { isOnShare, pathTrouble } from '../files/path-form.ts';
import type { FileWish } from '../files/project-files.ts';
import { type Reach, whereItLeads } from '../files/reach.ts';

export type FileDialogs = Pick<Dialog, 'showOpenDialog' | 'showSaveDialog'>;

/** A dialog gives a name without an ending the first of these, and leaves one that ends in another of them. */
const project = {
  name: 'Lapwright project',
  extensions: [FILE_SUFFIX, LONG_SUFFIX].map((suffix) => suffix.slice(1)),
};

/** Where the dialog begins; a page may not make it call another machine. */
function beginning({ name, folder }: FileWish): { readonly defaultPath?: string } {
  const place = folder !== undefined && !pathTrouble(folder) && !isOnShare(folder) ? folder : '';
  const file = name === undefined ? '' : basename(name.replaceAll('\\', '/'));
  const path = join(place, file);
  return place === '' && file === '' ? {} : { defaultPath: path };
}

async function pathFrom(
  window: BrowserWindow,
  dialogs: FileDialogs,
  wish: FileWish,
): Promise<string | null> {
  if (wish.purpose === 'open') {
    const { canceled, filePaths } = await dialogs.showOpenDialog(window, {
      title: 'Open a project',
      ...beginning(wish),
      filters: [
        { ...project, extensions: [...project.extensions, 'json'] },
        { name: 'Version before the last saving', extensions: ['previous'] },
      ],
      properties: ['openFile'],
    });
    return canceled ? null : (filePaths[0] ?? null);
  }
  const { canceled, filePath } = await dialogs.showSaveDialog(window, {
    title: 'Save the project',
    ...beginning(wish),
    filters: [project],
    properties: ['createDirectory', 'showOverwriteConfirmation'],
  });
  return canceled || !filePath ? null : filePath;
}

/** @returns what answers `file.choose` for the page of this window */
export function chooserOf(window: BrowserWindow, dialogs: FileDialogs, reach: Reach) {
  let open = false;
  return async (wish: FileWish): Promise<Reply<ChosenFile>> => {
    if (open) return refuse('bad-request', '', 'The dialog is open already.');
    open = true;
    try {
      const chosen = await pathFrom(window, dialogs, wish);
      if (chosen === null) return ok({ path: null });
      const path = wish.purpose === 'save' ? withSuffix(chosen) : chosen;
      const leads = whereItLeads(path);
      if (!leads.ok) return leads;
      reach.allowFile(leads.value);
      // The system has asked already whether the file that was there may go.
      const over = wish.purpose === 'save' && path === chosen && existsSync(leads.value);
      return ok({ path: leads.value, ...(over ? { over } : {}) });
    } finally {
      open = false;
    }
  };
}
