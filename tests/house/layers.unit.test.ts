/** Who may import whom, kept by the linter: each rule is broken once, and each neighbour tried. */
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { root } from '../../src/launch/root.mjs';
import { allFiles, importsOf } from './sources.ts';

type Case = readonly [folder: string, imported: string];

const forbidden: readonly Case[] = [
  ['src/model/a', 'zod'],
  ['src/model/a', 'node:fs'],
  ['src/model/a', 'mathjs/number'],
  ['src/model/a', 'solid-js/store'],
  ['src/model/a', '../../shared/reply.ts'],
  ['src/model', '../shared/reply.ts'],
  ['src/model', '../main/ask.ts'],
  ['src/shared', 'node:fs'],
  ['src/shared', 'node:fs/promises'],
  ['src/shared', 'electron'],
  ['src/shared', 'solid-js'],
  ['src/shared', 'mathjs'],
  ['src/shared', '../model/errors.ts'],
  ['src/shared', '../main/ask.ts'],
  ['src/shared', '../renderer/bridge.ts'],
  ['src/renderer', 'electron'],
  ['src/renderer', 'node:path'],
  ['src/renderer', 'node:fs/promises'],
  ['src/renderer', 'mathjs'],
  ['src/renderer', 'mathjs/number'],
  ['src/renderer', '../model/errors.ts'],
  ['src/renderer/size', '../../main/ask.ts'],
  ['src/renderer/size', '../../cli/main.ts'],
  ['src/main', 'electron'],
  ['src/main', './shell/menu.ts'],
  ['src/main/jobs', 'electron/main'],
  ['src/main/jobs', '../shell/menu.ts'],
  ['src/main/loopback', '../../renderer/bridge.ts'],
  ['src/main/handlers', '../../cli/main.ts'],
  ['src/main/shell', '../loopback/server.ts'],
  ['src/main/shell', '../../model/errors.ts'],
  ['src/main/shell', '../../renderer/bridge.ts'],
  ['src/preload', 'node:fs'],
  ['src/preload', 'zod'],
  ['src/preload', '../main/policy.ts'],
  ['src/cli', 'electron'],
  ['src/cli', '../model/errors.ts'],
  ['src/cli', '../main/shell/menu.ts'],
  ['src/cli', '../renderer/bridge.ts'],
  ['src/launch', 'zod'],
  ['src/documents', 'zod'],
  ['src/documents', '../shared/reply.ts'],
  ['src/renderer', '../documents/render.ts'],
  ['src/main', '../documents/pages.ts'],
  ['src/launch', '../main/policy.ts'],
];
const allowed: readonly Case[] = [
  ['src/model/a', '../errors.ts'],
  ['src/model/a', './b.ts'],
  ['src/shared', 'zod'],
  ['src/shared', 'papaparse'],
  ['src/shared', 'mathjs/number'],
  ['src/shared', './reply.ts'],
  ['src/renderer', 'solid-js'],
  ['src/renderer', 'chart.js'],
  ['src/renderer', './size/form-model.ts'],
  ['src/renderer/size', '../../shared/reply.ts'],
  ['src/main', 'node:fs/promises'],
  ['src/main', 'zod'],
  ['src/main/handlers', '../../model/errors.ts'],
  ['src/main/loopback', '../../shared/reply.ts'],
  ['src/main/shell', 'electron'],
  ['src/main/shell', '../policy.ts'],
  ['src/preload', 'electron'],
  ['src/preload', '../shared/channel.ts'],
  ['src/cli', 'node:fs'],
  ['src/cli', '../main/ask.ts'],
  ['src/launch', 'node:fs'],
  ['src/documents', 'marked'],
  ['src/documents', './pages.ts'],
  ['src/launch', './root.mjs'],
];

interface Report {
  readonly diagnostics: readonly {
    readonly category: string;
    readonly location: { readonly path: string | { readonly file: string } };
  }[];
}

describe('the linter', () => {
  const place = mkdtempSync(join(tmpdir(), 'lapwright-test-'));
  afterAll(() => rmSync(place, { recursive: true }));
  const name = (kind: string, i: number): string => `${kind}${i}.ts`;
  let refused: ReadonlySet<string>;

  beforeAll(() => {
    const {
      vcs: _noRepositoryHere,
      $schema: _,
      ...config
    } = JSON.parse(readFileSync(join(root, '.biome.json'), 'utf8'));
    writeFileSync(join(place, '.biome.json'), JSON.stringify(config));
    const write = (kind: string, cases: readonly Case[]): void =>
      cases.forEach(([folder, imported], i) => {
        mkdirSync(join(place, folder), { recursive: true });
        writeFileSync(
          join(place, folder, name(kind, i)),
          `import * as it from '${imported}';\n\nconsole.log(it);\n`,
        );
      });
    write('forbidden', forbidden);
    write('allowed', allowed);
    const biome = join(root, 'node_modules', '@biomejs', 'biome', 'bin', 'biome');
    const { stdout } = spawnSync(
      process.execPath,
      [biome, 'lint', '--reporter=json', '--max-diagnostics=none', '.'],
      { cwd: place, encoding: 'utf8' },
    );
    const { diagnostics } = JSON.parse(stdout) as Report;
    refused = new Set(
      diagnostics
        .filter(({ category }) => category === 'lint/style/noRestrictedImports')
        .map(({ location: { path } }) => (typeof path === 'string' ? path : path.file))
        .map((path) => path.replaceAll('\\', '/').split('/').at(-1)!),
    );
  });

  it.each(forbidden.map((one, i) => [...one, i] as const))('refuses, in %s, %s', (_in, _it, i) => {
    expect(refused).toContain(name('forbidden', i));
  });
  it.each(allowed.map((one, i) => [...one, i] as const))('allows, in %s, %s', (_in, _it, i) => {
    expect(refused).not.toContain(name('allowed', i));
  });
});

/** What a path is part of: a layer is the folder under `src`, the shell its own. */
const layerOf = (path: string): string =>
  path.startsWith('src/main/shell/') ? 'shell' : (path.split('/')[1] ?? '');

const mayImport: Readonly<Record<string, readonly string[]>> = {
  model: ['model'],
  shared: ['shared'],
  main: ['main', 'model', 'shared'],
  shell: ['shell', 'main', 'shared'],
  preload: ['preload', 'shared'],
  renderer: ['renderer', 'shared'],
  cli: ['cli', 'main', 'shared'],
  launch: ['launch'],
  package: ['package', 'launch'],
  documents: ['documents'],
};

describe('the sources', () => {
  const files = allFiles().filter((file) => /^src\/.*\.(ts|tsx|mjs)$/.test(file));

  it('are found', () => {
    expect(files.length).toBeGreaterThan(50);
    expect(new Set(files.map(layerOf))).toEqual(new Set(Object.keys(mayImport)));
  });

  // The linter looks at the text of an import; this looks at where it leads, however it is written.
  it('import only what their layer may', () => {
    const wrong = files.flatMap((file) =>
      importsOf(file)
        .filter((imported) => imported.startsWith('.'))
        .map((imported) => join(dirname(file), imported).replaceAll('\\', '/'))
        .filter((path) => path.startsWith('src/'))
        .filter((path) => !mayImport[layerOf(file)]?.includes(layerOf(path)))
        .map((path) => `${file} imports ${path}`),
    );
    expect(wrong).toEqual([]);
  });

  it('load Electron only where a window is made', () => {
    const knowing = files.filter((file) =>
      importsOf(file).some((imported) => /^electron(\/|$)/.test(imported)),
    );
    expect(new Set(knowing.map(layerOf))).toEqual(new Set(['shell', 'preload']));
  });

  it('keep the model and the page free of Node', () => {
    const wrong = files
      .filter((file) => ['model', 'shared', 'renderer'].includes(layerOf(file)))
      .filter((file) => importsOf(file).some((imported) => imported.startsWith('node:')));
    expect(wrong).toEqual([]);
  });
});
