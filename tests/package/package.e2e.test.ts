/** The files that are packed are all that the program needs: it starts from a copy that holds nothing else. */
import { spawn, spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { root } from '../../src/launch/root.mjs';
import builderConfig from '../../src/package/builder-config.mjs';
import { addressFrom } from '../e2e/support/host.ts';

const demo = join(root, 'src', 'main', 'demo', 'curlew.lapwright.json');

describe('what is packed', () => {
  let copy: string;
  beforeAll(() => {
    copy = mkdtempSync(join(tmpdir(), 'lapwright-packed-'));
    for (const pattern of builderConfig.files.filter((one) => !one.startsWith('!'))) {
      const folder = pattern.replace(/\/\*\*$/, '');
      mkdirSync(dirname(join(copy, folder)), { recursive: true });
      cpSync(join(root, folder), join(copy, folder), { recursive: true });
    }
  });
  afterAll(() => rmSync(copy, { recursive: true, force: true }));

  it('imports nothing but Node and Electron', () => {
    const main = join(copy, 'out', 'main');
    const programs = readdirSync(main, { recursive: true, encoding: 'utf8' }).filter((name) =>
      name.endsWith('.js'),
    );
    expect(programs.length).toBeGreaterThan(3);
    const imported = programs.flatMap((name) => {
      const text = readFileSync(join(main, name), 'utf8');
      return [...text.matchAll(/^(?:import|export)[^'"\n]*?from\s*["']([^"']+)["']/gm)].map(
        ([, from]) => from!,
      );
    });
    expect(imported).toContain('electron');
    const foreign = imported.filter(
      (from) => !from.startsWith('node:') && !from.startsWith('.') && from !== 'electron',
    );
    expect(foreign).toEqual([]);
  });

  it('calculates in the terminal and serves its page', async () => {
    const { stdout } = spawnSync(
      process.execPath,
      [join(copy, 'out', 'main', 'cli.js'), 'check', demo],
      {
        encoding: 'utf8',
        cwd: copy,
      },
    );
    expect(stdout).toContain('landing-leg');
    const host = await addressFrom(
      spawn(process.execPath, [join(copy, 'out', 'main', 'host.js'), '--no-open'], {
        stdio: ['ignore', 'pipe', 'pipe'],
        cwd: copy,
      }),
    );
    try {
      const page = await fetch(host.origin);
      expect(await page.text()).toContain('Lapwright');
    } finally {
      await host.stop();
    }
  });
});
