/** The sheet as a PDF: what it replaces is there until the new one is, whole. */
import { linkSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { withPdf } from '../../src/main/shell/sheet-pdf.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'lapwright-pdf-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

it('takes the place of an older one, and is not written into it', async () => {
  const path = join(folder, 'lug.pdf');
  writeFileSync(path, 'older');
  // Another name of the same file: what is written into it is seen there.
  linkSync(path, join(folder, 'same.pdf'));
  const window = { webContents: { printToPDF: async () => Buffer.from('newer') } };
  const dialog = { showSaveDialog: async () => ({ canceled: false, filePath: path }) };
  const ask = withPdf(
    async () => {
      throw new Error('It is answered here.');
    },
    window as unknown as Parameters<typeof withPdf>[1],
    dialog as unknown as Parameters<typeof withPdf>[2],
  );
  const reply = await ask('sheet.pdf', { name: 'lug' });
  expect(reply).toEqual({ ok: true, value: { name: 'lug.pdf' } });
  expect(readFileSync(path, 'utf8')).toBe('newer');
  expect(readFileSync(join(folder, 'same.pdf'), 'utf8')).toBe('older');
  expect(readdirSync(folder).sort()).toEqual(['lug.pdf', 'same.pdf']);
});
