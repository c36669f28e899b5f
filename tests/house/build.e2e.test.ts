/** What comes out of the build. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { builtinModules } from 'node:module';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { root } from '../../src/launch/root.mjs';
import { importsOf } from './sources.ts';

const out = join(root, 'out');

describe('the build', () => {
  it('gives the sandboxed preload as CommonJS in one file that needs only Electron', () => {
    expect(readdirSync(join(out, 'preload'))).toEqual(['preload.cjs']);
    const preload = readFileSync(join(out, 'preload', 'preload.cjs'), 'utf8');
    const required = [...preload.matchAll(/\brequire\(["'`]([^"'`]+)["'`]\)/g)].map(([, it]) => it);
    expect(required).toEqual(['electron']);
    expect(preload).not.toMatch(/^\s*(import|export)\b/m);
  });

  it('gives programs that need no package at run time', () => {
    const files = ['', 'chunks'].flatMap((folder) =>
      readdirSync(join(out, 'main', folder))
        .filter((name) => name.endsWith('.js'))
        .map((name) => join('out', 'main', folder, name)),
    );
    expect(files.length).toBeGreaterThanOrEqual(4);
    const known = new Set([...builtinModules, 'electron']);
    const packages = files.flatMap((file) =>
      importsOf(file)
        .filter((name) => !name.startsWith('.') && !known.has(name.replace(/^node:/, '')))
        .map((name) => `${file} needs ${name}`),
    );
    expect(packages).toEqual([]);
  });

  it('lets only the shell load Electron', () => {
    const entries = ['host.js', 'worker.js', 'cli.js'];
    const seen = new Set<string>();
    const follow = (file: string): void => {
      if (seen.has(file)) return;
      seen.add(file);
      for (const name of importsOf(join('out', 'main', file))) {
        expect([file, name]).not.toEqual([file, 'electron']);
        if (name.startsWith('.')) follow(join(file, '..', name));
      }
    };
    for (const entry of entries) follow(entry);
    expect(seen.size).toBeGreaterThan(entries.length);
  });

  it('gives a page that holds the parser of mathjs and nothing else of it', () => {
    const assets = join(out, 'renderer', 'assets');
    const code = readdirSync(assets)
      // The notices name every package that a part was taken from.
      .filter((name) => name.endsWith('.js') && !name.startsWith('notices-'))
      .map((name) => readFileSync(join(assets, name), 'utf8'))
      .join('\n');
    expect(code).toContain('Unexpected end of expression');
    // Names that a build can not shorten: the package whole would be half as much again to load.
    for (const other of ['bellNumbers', 'typed-function', 'simplifyCore']) {
      expect([other, code.includes(other)]).toEqual([other, false]);
    }
  });

  it('gives a page without inline scripts or styles, and with its own fonts', () => {
    const html = readFileSync(join(out, 'renderer', 'index.html'), 'utf8');
    expect(html).not.toMatch(/<style|\sstyle=|\son\w+=/i);
    for (const [, attributes, content] of html.matchAll(/<script([^>]*)>([^<]*)<\/script>/g)) {
      expect(attributes).toContain('src=');
      expect(content!.trim()).toBe('');
    }
    for (const [, path] of html.matchAll(/(?:src|href)="([^"]+)"/g)) {
      expect(path).toMatch(/^\.\//);
      expect(existsSync(join(out, 'renderer', path!))).toBe(true);
    }
    const assets = readdirSync(join(out, 'renderer', 'assets'));
    expect(assets.some((name) => name.endsWith('.woff2'))).toBe(true);
  });
});
