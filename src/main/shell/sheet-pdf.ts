/** Saves the sheet that a window shows as a PDF: the page lays it out, Electron prints it, the user says where. */
import { existsSync, realpathSync, statSync } from 'node:fs';
import { basename } from 'node:path';
import type { BrowserWindow, Dialog } from 'electron';
import { requests } from '../../shared/contract.ts';
import { ok, type Reply, refuse } from '../../shared/reply.ts';
import type { SheetSaved } from '../../shared/reports-sheet.ts';
import { writeWhole } from '../files/write-whole.ts';
import type { AskFor } from '../jobs/ask-with-jobs.ts';

type Window = Pick<BrowserWindow, 'webContents'>;

/** Sizes and page breaks are the page's own: nothing is added to them and nothing scaled. */
const PRINT = {
  preferCSSPageSize: true,
  printBackground: true,
  margins: { top: 0, bottom: 0, left: 0, right: 0 },
  generateTaggedPDF: true,
} as const;

async function save(
  window: Window,
  dialog: Pick<Dialog, 'showSaveDialog'>,
  name: string,
): Promise<Reply<SheetSaved>> {
  // First: what is saved is what was on the screen when it was asked for.
  const pdf = await window.webContents.printToPDF(PRINT);
  const { canceled, filePath } = await dialog.showSaveDialog(window as BrowserWindow, {
    title: 'Save the sheet',
    defaultPath: `${name}.pdf`,
    filters: [{ name: 'PDF', extensions: ['pdf'] }],
  });
  if (canceled || !filePath) return ok({ name: null });
  // Whole or not at all: the PDF that it replaces outlives a full disk.
  const stands = existsSync(filePath);
  const path = stands ? realpathSync(filePath) : filePath;
  writeWhole(path, pdf, { mode: stands ? statSync(path).mode & 0o777 : undefined });
  return ok({ name: basename(filePath) });
}

/** Answers `sheet.pdf` for this window; all else goes on as it is. */
export const withPdf =
  (ask: AskFor, window: Window, dialog: Pick<Dialog, 'showSaveDialog'>): AskFor =>
  async (name, input, caller) => {
    if (name !== 'sheet.pdf') return ask(name, input, caller);
    const parsed = requests['sheet.pdf'].safeParse(input);
    if (!parsed.success) return refuse('bad-request', 'name', 'sheet.pdf: name is malformed.');
    try {
      return await save(window, dialog, parsed.data.name);
    } catch (error) {
      const said = error instanceof Error ? error.message : String(error);
      return refuse('not-writable', '', `The sheet could not be saved: ${said}`);
    }
  };
