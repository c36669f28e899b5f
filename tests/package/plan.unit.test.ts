/** npm run package: what it would run, what it does not fetch, and why it refuses. */
import { chmodSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { BUILDER, type Plan, pack, planOf } from '../../src/package/package.mjs';

const here = {
  platform: 'linux',
  node: '22.12.0',
  electron: 'node_modules/electron/dist',
} as const;
const plan = (argv: string[], other: object = {}): Plan => {
  const found = planOf(argv, { ...here, ...other });
  if ('refusal' in found) throw new Error(found.refusal);
  return found;
};
const refusal = (argv: string[], other: object = {}): string => {
  const found = planOf(argv, { ...here, ...other });
  return 'refusal' in found ? found.refusal : '';
};

describe('what is run', () => {
  it('fetches nothing unless it is told to: the folder alone, of what is here', () => {
    for (const argv of [[], ['linux'], ['--dir']]) {
      const { args, env } = plan(argv);
      expect(args.slice(0, 4)).toEqual([
        '--offline',
        '--yes',
        `electron-builder@${BUILDER}`,
        '--linux',
      ]);
      expect(args).toContain('--dir');
      expect(args).toContain('--config.electronDist=node_modules/electron/dist');
      expect(env.NO_UPDATE_NOTIFIER).toBe('1');
    }
    expect(plan([], { electron: '/there/electron' }).args).toContain(
      '--config.electronDist=/there/electron',
    );
  });

  it('makes installers, for another system too, once it may fetch', () => {
    for (const [argv, system] of [
      [['--fetch'], '--linux'],
      [['win', '--fetch'], '--win'],
    ] as const) {
      const { args } = plan([...argv], { electron: null });
      expect(args.slice(0, 3)).toEqual(['--yes', `electron-builder@${BUILDER}`, system]);
      for (const one of args) expect(one).not.toMatch(/^--(offline|dir|config\.)/);
    }
    expect(plan(['--fetch', '--dir']).args).toContain('--dir');
  });

  it('is for the system that it stands on, and hands nothing on', () => {
    expect(plan([], { platform: 'win32' }).args).toContain('--win');
    expect(plan([], { platform: 'darwin' }).args).toContain('--mac');
    for (const argv of [[], ['--fetch']]) {
      const { args } = plan(argv);
      expect(args.slice(args.indexOf('--publish'))).toEqual(['--publish', 'never']);
      expect(args[args.indexOf('--config') + 1]).toBe('src/package/builder-config.mjs');
    }
  });

  it('ends at some time', () => {
    expect(plan([]).timeout).toBeGreaterThan(60_000);
    expect(plan(['--fetch']).timeout).toBeGreaterThan(plan([]).timeout);
    expect(plan(['--fetch']).timeout).toBeLessThanOrEqual(3600_000);
  });
});

describe('what is refused', () => {
  it("is packing without Electron's program, or for a system that it is not of", () => {
    expect(refusal([], { electron: null })).toContain('--fetch');
    expect(refusal(['--fetch'], { electron: null })).toBe('');
    expect(refusal(['win'])).toContain('npm run package -- win --fetch');
    expect(refusal(['linux'], { platform: 'darwin' })).toContain('linux --fetch');
    expect(refusal(['win'], { platform: 'win32' })).toBe('');
  });

  it('is what cannot be done here at all', () => {
    expect(refusal(['mac'])).toContain('only be made on macOS');
    expect(refusal(['mac', '--fetch'])).toContain('only be made on macOS');
    expect(refusal([], { node: '20.20.2' })).toContain('Node 22.12');
    expect(refusal([], { node: '22.9.0' })).toContain('Node 22.12');
    expect(refusal(['solaris'])).toContain('linux, win, mac');
    expect(refusal([], { platform: 'sunos' })).toContain('linux, win, mac');
    expect(refusal(['--cloud'])).not.toBe('');
  });
});

// A script stands for npx; on Windows it would have to be another.
describe.skipIf(process.platform === 'win32')('the run', () => {
  let place: string;
  const env = () => ({ ...process.env, PATH: `${place}${delimiter}${process.env.PATH}` });
  const stand = (script: string): void => {
    const npx = join(place, 'npx');
    writeFileSync(npx, `#!/bin/sh\n${script}\n`);
    chmodSync(npx, 0o755);
  };
  beforeEach(() => {
    place = mkdtempSync(join(tmpdir(), 'lapwright-test-'));
  });
  afterEach(() => rmSync(place, { recursive: true }));

  it('tells the builder what was planned, and asks nobody', () => {
    stand(`(printf '%s\\n' "$@"; echo "$NO_UPDATE_NOTIFIER"; cat) > told; exit 3`);
    const planned = plan([]);
    expect(pack(planned, { cwd: place, env: env() })).toBe(3);
    // The input is at its end at once: `cat` waits for nobody.
    expect(readFileSync(join(place, 'told'), 'utf8')).toBe(`${planned.args.join('\n')}\n1\n`);
    stand('exit 0');
    expect(pack(planned, { cwd: place, env: env() })).toBe(0);
  });

  it('is stopped when it does not end', () => {
    stand('exec sleep 20');
    expect(pack({ ...plan([]), timeout: 200 }, { cwd: place, env: env() })).toBe(1);
  });
});
