import { chmodSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { runElectron } from '../../src/launch/run-electron.mjs';

// Windows runs no script that stands for a program.
describe.skipIf(process.platform === 'win32')('running Electron', () => {
  let folder: string;
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'lapwright-test-'));
  });
  afterEach(() => {
    vi.unstubAllEnvs();
    rmSync(folder, { recursive: true });
  });
  /** A program that notes what it was given and then does as the code says. */
  const program = (code: string): string => {
    const file = join(folder, 'electron');
    const notes = JSON.stringify(join(folder, 'notes.json'));
    const note = `require('node:fs').writeFileSync(${notes}, JSON.stringify({ args: process.argv.slice(2), asNode: process.env.ELECTRON_RUN_AS_NODE ?? null }));`;
    writeFileSync(file, `#!${process.execPath}\n${note}\n${code}\n`);
    chmodSync(file, 0o755);
    return file;
  };
  const noted = (): unknown => JSON.parse(readFileSync(join(folder, 'notes.json'), 'utf8'));

  it('hands over the project and the file, and never runs it as a plain Node', async () => {
    vi.stubEnv('ELECTRON_RUN_AS_NODE', '1');
    expect(await runElectron(program(''), 'ROOT', '/a folder/b.json')).toBe(0);
    expect(noted()).toEqual({ args: ['ROOT', '--file=/a folder/b.json'], asNode: null });
  });

  it('names no file when there is none', async () => {
    expect(await runElectron(program(''), 'ROOT', null)).toBe(0);
    expect(noted()).toMatchObject({ args: ['ROOT'] });
  });

  it('says that it could not start when it fails at once, or is not there', async () => {
    expect(await runElectron(program('process.exit(127);'), 'ROOT', null)).toBeNull();
    expect(
      await runElectron(program('process.kill(process.pid, "SIGKILL");'), 'ROOT', null),
    ).toBeNull();
    expect(await runElectron(join(folder, 'none'), 'ROOT', null)).toBeNull();
  });

  it('ends it when told to end, and counts that as a good end', async () => {
    const before = process.listenerCount('SIGHUP');
    const ended = runElectron(program('setInterval(() => {}, 1000);'), 'ROOT', null);
    await vi.waitFor(noted, 10_000);
    process.emit('SIGHUP', 'SIGHUP');
    expect(await ended).toBe(0);
    expect(process.listenerCount('SIGHUP')).toBe(before);
  });
});
