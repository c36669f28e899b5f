import { mkdirSync, mkdtempSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { buildIsCurrent, sourcesDigest } from '../../src/launch/build.mjs';

const outputs = [
  'main/shell.js',
  'main/host.js',
  'main/worker.js',
  'main/cli.js',
  'preload/preload.cjs',
  'renderer/index.html',
];

describe('whether what was built is of these sources', () => {
  let root: string;
  const write = (path: string, text: string): void => {
    const file = join(root, path);
    mkdirSync(join(file, '..'), { recursive: true });
    writeFileSync(file, text);
  };
  beforeEach(() => {
    root = mkdtempSync(join(tmpdir(), 'lapwright-test-'));
    write('src/main/a.ts', 'a');
    write('src/main/deep/b.ts', 'b');
    write('src/launch/start.mjs', 'start');
    write('package.json', '{}');
    for (const file of outputs) write(join('out', file), 'built');
    write('out/built-from', sourcesDigest(root));
  });
  afterEach(() => rmSync(root, { recursive: true }));

  it('is so when nothing changed', () => {
    expect(buildIsCurrent(root)).toBe(true);
  });

  it.each(outputs)('is not so without %s', (file) => {
    rmSync(join(root, 'out', file));
    expect(buildIsCurrent(root)).toBe(false);
  });

  it('is not so on a fresh clone, nor after a build that ended halfway', () => {
    rmSync(join(root, 'out', 'built-from'));
    expect(buildIsCurrent(root)).toBe(false);
    rmSync(join(root, 'out'), { recursive: true });
    expect(buildIsCurrent(root)).toBe(false);
  });

  it('is not so when a source was changed, added, moved or taken away', () => {
    write('src/main/deep/b.ts', 'B');
    expect(buildIsCurrent(root)).toBe(false);
    write('src/main/deep/b.ts', 'b');
    expect(buildIsCurrent(root)).toBe(true);
    write('src/main/new.ts', '');
    expect(buildIsCurrent(root)).toBe(false);
    rmSync(join(root, 'src/main/new.ts'));
    rmSync(join(root, 'src/main/deep/b.ts'));
    expect(buildIsCurrent(root)).toBe(false);
    write('src/main/b.ts', 'b');
    expect(buildIsCurrent(root)).toBe(false);
  });

  it('is not so when the packages or the licence changed', () => {
    write('package-lock.json', '{}');
    expect(buildIsCurrent(root)).toBe(false);
    rmSync(join(root, 'package-lock.json'));
    expect(buildIsCurrent(root)).toBe(true);
    // The page shows it.
    write('LICENSE', 'as it likes');
    expect(buildIsCurrent(root)).toBe(false);
  });

  it('has nothing to do with times, nor with what starts the program', () => {
    utimesSync(join(root, 'src/main/a.ts'), 4e9, 4e9);
    write('src/launch/start.mjs', 'changed');
    expect(buildIsCurrent(root)).toBe(true);
  });
});
