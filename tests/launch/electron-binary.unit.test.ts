import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { electronBinary, electronHere, getElectron } from '../../src/launch/electron-binary.mjs';

describe("Electron's program", () => {
  let root: string;
  let folder: string;
  beforeEach(() => {
    root = mkdtempSync(join(tmpdir(), 'lapwright-test-'));
    folder = join(root, 'node_modules', 'electron');
    mkdirSync(join(folder, 'dist', 'inner'), { recursive: true });
    // Loading the package would end the test: nothing may.
    writeFileSync(join(folder, 'index.js'), 'process.exit(9)');
  });
  afterEach(() => rmSync(root, { recursive: true }));
  const install = (): string => {
    const program = join(folder, 'dist', 'inner', 'Electron');
    writeFileSync(join(folder, 'path.txt'), 'inner/Electron');
    writeFileSync(program, '');
    return program;
  };

  it('is not there before it was downloaded', () => {
    expect(electronBinary(root, {})).toBeNull();
  });

  it('is where the package says', () => {
    expect(electronBinary(root, {})).toBeNull();
    const program = install();
    expect(electronBinary(root, {})).toBe(program);
  });

  it('is not there when the package only says so', () => {
    rmSync(install());
    expect(electronBinary(root, {})).toBeNull();
  });

  it('is looked for where the environment says', () => {
    install();
    const dist = join(root, 'elsewhere');
    const env = { ELECTRON_OVERRIDE_DIST_PATH: dist };
    expect(electronBinary(root, env)).toBeNull();
    mkdirSync(join(dist, 'inner'), { recursive: true });
    writeFileSync(join(dist, 'inner', 'Electron'), '');
    expect(electronBinary(root, env)).toBe(join(dist, 'inner', 'Electron'));
  });

  it('is fetched by its own script, when asked for, and missed without harm', () => {
    const script = join(folder, 'install.js');
    writeFileSync(script, 'process.exit(1);');
    getElectron(root);
    expect(electronBinary(root, {})).toBeNull();
    writeFileSync(
      script,
      `const { writeFileSync } = require('node:fs');
       writeFileSync(__dirname + '/dist/electron', '');
       writeFileSync(__dirname + '/path.txt', 'electron');`,
    );
    getElectron(root);
    expect(electronBinary(root, {})).toBe(join(folder, 'dist', 'electron'));
  });

  it('is used where it can run, else the reason is given', () => {
    const screen = { DISPLAY: ':0' };
    const here = (platform: NodeJS.Platform, env: NodeJS.ProcessEnv, uid?: number) =>
      electronHere(root, { platform, env, uid });
    expect(here('linux', screen, 1000)).toEqual({
      reason: 'its program is not installed; npm start -- --get-electron fetches it',
    });
    const binary = install();
    expect(here('linux', screen, 1000)).toEqual({ binary });
    expect(here('linux', { WAYLAND_DISPLAY: 'wayland-0' }, 1000)).toEqual({ binary });
    expect(here('linux', screen, 0)).toEqual({ reason: 'its sandbox does not run as root' });
    expect(here('linux', {}, 1000)).toEqual({ reason: 'there is no display' });
    expect(here('darwin', {}, 0)).toEqual({ binary });
    expect(here('win32', {})).toEqual({ binary });
  });
});
