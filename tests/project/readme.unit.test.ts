/** What README and DEVELOPERS show and name is so. */
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, describe, expect, it, vi } from 'vitest';
import { cautions } from '../../src/shared/cautions.ts';
import { lapwright } from '../cli/lapwright.ts';
import { importsOf, trackedFiles } from '../house/sources.ts';

vi.setConfig({ testTimeout: 600_000 });

const root = resolve(import.meta.dirname, '..', '..');
const read = (name: string): string =>
  readFileSync(join(root, name), 'utf8').replaceAll('\r\n', '\n');

const readme = read('README.md');
const developers = read('DEVELOPERS.md');
const { scripts, dependencies, devDependencies } = JSON.parse(read('package.json'));
const packages = Object.keys({ ...dependencies, ...devDependencies });

const place = mkdtempSync(join(tmpdir(), 'lapwright-'));
afterAll(() => rmSync(place, { recursive: true }));

describe('the README', () => {
  const shown = [...readme.matchAll(/```console\n\$ npm run -s lapwright -- (.*)\n([\s\S]*?)```/g)];

  it('shows output', () => expect(shown.length).toBeGreaterThan(1));

  // When one fails because figures or words have changed: paste what the command prints now.
  it.each(shown.map(([, argv, output]) => [argv!, output!]))(
    'shows what is printed by %s',
    async (argv, output) => {
      const demo = await lapwright(['demo']);
      writeFileSync(join(place, 'curlew.lapwright'), demo.out);
      const { out, err } = await lapwright(argv.split(' '), { cwd: place });
      expect(err).toBe('');
      expect(output).toBe(out);
    },
  );

  it('carries every caution', () => {
    for (const caution of cautions) expect(readme).toContain(caution);
  });
});

describe.each([
  ['README.md', readme],
  ['DEVELOPERS.md', developers],
  ['docs/project-file.md', read('docs/project-file.md')],
])('%s', (name, text) => {
  it('links only to what is there', () => {
    const links = [...text.matchAll(/\]\(([^)#]+)[^)]*\)/g)].map(([, target]) => target!);
    const local = links.filter((target) => !/^https:/.test(target));
    expect(local.length).toBeGreaterThan(0);
    const gone = local.filter((target) => !existsSync(join(root, name, '..', target)));
    expect(gone).toEqual([]);
  });

  it('names only npm scripts that are there', () => {
    const named = [...text.matchAll(/npm run (?:-s )?([\w-]+)/g)].map(([, script]) => script);
    expect(named.filter((script) => !(script! in scripts))).toEqual([]);
  });
});

describe('DEVELOPERS.md', () => {
  it('names only places that are there', () => {
    const named = [...developers.matchAll(/`((?:src|tests|docs|reference|\.ci)\/[\w./-]+)`/g)];
    const paths = named.map(([, path]) => path!);
    expect(paths.length).toBeGreaterThan(50);
    expect(paths.filter((path) => !existsSync(join(root, path)))).toEqual([]);
  });

  it('gives a reason for every package that is used, and names no other', () => {
    const [, table = ''] = developers.split('## Dependencies');
    const cells = [...table.matchAll(/^\| (`.*`) \|/gm)].map(([, cell]) => cell!);
    const named = cells.flatMap((cell) => [...cell.matchAll(/`([^`]+)`/g)].map(([, it]) => it!));
    expect(named.filter((name) => !packages.includes(name))).toEqual([]);
    const imported = new Set(
      trackedFiles()
        .filter((file) => /\.(ts|tsx|mjs)$/.test(file))
        .flatMap(importsOf),
    );
    const used = packages.filter((name) =>
      [...imported].some((one) => one === name || one.startsWith(`${name}/`)),
    );
    expect(used.length).toBeGreaterThan(8);
    expect(used.filter((name) => !named.includes(name))).toEqual([]);
  });
});
