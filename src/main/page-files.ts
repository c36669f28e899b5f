/**
 * The page's files, read once into a map from the exact path of a request to what answers it.
 * A request is only ever looked up: no path is joined, decoded or normalised, so none can escape.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { extname, join } from 'node:path';

export interface PageFile {
  readonly type: string;
  readonly body: Buffer;
}

export type PageFiles = ReadonlyMap<string, PageFile>;

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ico': 'image/x-icon',
  '.woff2': 'font/woff2',
  '.json': 'application/json; charset=utf-8',
};

/** @throws when the folder or its index.html is missing: without a page there is nothing to serve. */
export function readPageFiles(folder: string): PageFiles {
  const files = new Map<string, PageFile>();
  const read = (place: string, path: string): void => {
    for (const entry of readdirSync(place, { withFileTypes: true })) {
      const file = join(place, entry.name);
      const address = `${path}/${encodeURIComponent(entry.name)}`;
      const type = types[extname(entry.name)];
      if (entry.isDirectory()) read(file, address);
      // A link may point anywhere, and a kind that is not listed is not part of the page.
      else if (entry.isFile() && type) files.set(address, { type, body: readFileSync(file) });
    }
  };
  read(folder, '');
  const index = files.get('/index.html');
  if (!index) throw new Error('The page is not built: its index.html is missing.');
  files.set('/', index);
  return files;
}
