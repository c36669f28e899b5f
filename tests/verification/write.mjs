/** npm run book: computes the verification book and writes it into docs. */
import { mkdirSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { runnerImport } from 'vite';

const root = join(import.meta.dirname, '..', '..');
const { module: book } = await runnerImport(join(import.meta.dirname, 'book.ts'), {
  root,
  configFile: false,
  logLevel: 'error',
});

const docs = join(root, 'docs');
const files = book.renderBook();
mkdirSync(join(docs, book.PLOTS), { recursive: true });
for (const name of readdirSync(join(docs, book.PLOTS))) {
  if (!files.has(`${book.PLOTS}/${name}`)) rmSync(join(docs, book.PLOTS, name));
}
for (const [path, text] of files) {
  writeFileSync(join(docs, path), text);
  process.stdout.write(`docs/${path}\n`);
}
