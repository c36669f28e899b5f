/** docs/security.md names files and tests that are there, and a test for every line. */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { root } from '../../src/launch/root.mjs';
import { read } from './sources.ts';

const page = read('docs/security.md');
const rows = page
  .split('\n')
  .filter((line) => line.startsWith('| '))
  .map((line) => line.split(' | '));
const lines = rows.filter(([first]) => !/^\| (---|item|thing|fault)/.test(first!));
const named = (cell: string): (readonly [file: string, test: string])[] =>
  [...cell.matchAll(/`(tests\/[\w./-]+)` "([^"]+)"/g)].map(([, file, test]) => [file!, test!]);

describe('what is said of security', () => {
  it('names only files that are there', () => {
    const paths = [
      ...page.matchAll(/`((?:src|tests|docs)\/[\w./-]+|\.npmrc|[\w-]+\.(?:md|json))`/g),
    ];
    expect(paths.length).toBeGreaterThan(60);
    const missing = paths.map(([, path]) => path!).filter((path) => !existsSync(join(root, path)));
    expect(missing).toEqual([]);
  });

  it('names only tests that are there', () => {
    const missing = named(page).filter(([file, test]) => {
      const quoted = test.replaceAll("'", "\\'");
      const text = read(file);
      return !text.includes(test) && !text.includes(quoted);
    });
    expect(missing).toEqual([]);
  });

  it('has a test for every line', () => {
    expect(lines.length).toBeGreaterThan(40);
    const without = lines.filter((cells) => named(cells.at(-1)!).length === 0);
    expect(without).toEqual([]);
    for (let item = 1; item <= 20; item++) {
      expect(lines.filter(([first]) => first!.startsWith(`| ${item} `))).toHaveLength(1);
    }
  });
});
