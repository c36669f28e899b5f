/** The files that are packed are all that the program needs: it starts from a copy that holds nothing else. */
import { spawn, spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { isBuiltin } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { root } from '../../src/launch/root.mjs';
import builderConfig from '../../src/package/builder-config.mjs';
import { sizeOfPng } from '../../src/package/icon-files.mjs';
import type { Opened } from '../../src/shared/reports.ts';
import { describeInBrowser } from '../e2e/support/browser.ts';
import { addressFrom } from '../e2e/support/host.ts';
import { asked, startShell } from '../shell/built-shell.ts';
import { type BrowserWindow, standIn } from '../stand-in/electron.ts';

const demo = join(root, 'src', 'main', 'demo', 'curlew.lapwright.json');

let copy: string;
beforeAll(() => {
  copy = mkdtempSync(join(tmpdir(), 'lapwright-packed-'));
  for (const pattern of builderConfig.files.filter((one) => !one.startsWith('!'))) {
    const place = pattern.replace(/\/\*\*$/, '');
    mkdirSync(dirname(join(copy, place)), { recursive: true });
    cpSync(join(root, place), join(copy, place), { recursive: true });
  }
  for (const { from, to } of builderConfig.extraResources) {
    cpSync(join(root, from), join(copy, 'resources', to));
  }
});
afterAll(() => rmSync(copy, { recursive: true, force: true }));

describe('what is packed', () => {
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
      (from) => !isBuiltin(from) && !from.startsWith('.') && from !== 'electron',
    );
    expect(foreign).toEqual([]);
  });

  it('brings its licence and the notices of others along', () => {
    const resource = (name: string): string => readFileSync(join(copy, 'resources', name), 'utf8');
    expect(resource('LICENSE.txt')).toBe(readFileSync(join(root, 'LICENSE'), 'utf8'));
    expect(resource('third-party-notices.md')).toContain('mathjs');
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

describeInBrowser('the window of what is packed', () => {
  let page: Page;
  let window: BrowserWindow;
  const failed: string[] = [];
  beforeAll(async () => {
    // As Electron finds it.
    const { main } = JSON.parse(readFileSync(join(copy, 'package.json'), 'utf8'));
    ({ page, window } = await startShell(join(copy, main)));
    // Reloading gives up what the page fetches ahead of need.
    page.on('requestfailed', (request) => {
      const reason = request.failure()?.errorText;
      if (reason !== 'net::ERR_ABORTED') failed.push(`${request.url()}: ${reason}`);
    });
  });

  it('shows its page, with the bridge and its fonts', async () => {
    await page.getByRole('heading', { level: 1 }).waitFor();
    expect(await asked<{ carrier: string }>(page, 'app.about', {})).toMatchObject({
      carrier: 'electron',
    });
    await page.reload();
    await page.getByRole('heading', { level: 1 }).waitFor();
    expect(
      await page.evaluate(async () =>
        (await document.fonts.ready).check('16px "Source Sans 3 Variable"'),
      ),
    ).toBe(true);
    expect(failed).toEqual([]);
    expect(standIn.errors).toEqual([]);
  });

  it('has its picture, out of what is packed', () => {
    const { icon } = window.options;
    if (process.platform !== 'linux') return expect(icon).toBeUndefined();
    expect(String(icon).startsWith(copy)).toBe(true);
    expect(sizeOfPng(readFileSync(String(icon)))).toEqual({ width: 256, height: 256 });
  });

  it('works out the whole project, in a thread of its own', async () => {
    const { document } = await asked<Opened>(page, 'project.demo', {});
    const report = await asked<{ joints: unknown[] }>(page, 'project.check', { document });
    expect(report.joints.length).toBeGreaterThan(0);
  });
});
