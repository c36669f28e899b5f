/** The built program in a process of its own: what main() alone cannot show. */
import { spawn, spawnSync } from 'node:child_process';
import { closeSync, existsSync, openSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, it, vi } from 'vitest';
import { makeBigProject } from '../../reference/big-project/make.mjs';
import { buildIsCurrent } from '../../src/launch/build.mjs';
import { file, lapwright, mastProject } from './lapwright.ts';

// A busy machine computes a joint in seconds, not in a tenth of one.
vi.setConfig({ testTimeout: 600_000 });

const root = resolve(import.meta.dirname, '..', '..');
const program = join(root, 'out', 'main', 'cli.js');

const run = (argv: readonly string[], cwd: string) =>
  spawnSync(process.execPath, [program, ...argv], { cwd, encoding: 'utf8' });

// `npm test` builds first; a test run by hand does not judge what was built from other sources.
describe.skipIf(!buildIsCurrent(root))('the built command line', () => {
  it('checks a relative path from another folder, like main()', async () => {
    const path = file('mast.json', mastProject());
    const { status, stdout, stderr } = run(['check', 'mast.json'], dirname(path));
    expect({ code: status, out: stdout, err: stderr }).toEqual(await lapwright(['check', path]));
    expect(status).toBe(0);
    expect(stdout).not.toContain('\u001B');
  });

  it('ends with the code and the line of a refusal, without a stack trace', () => {
    const { status, stdout, stderr } = run(['check', 'gone.json'], import.meta.dirname);
    expect({ status, stdout, stderr }).toEqual({
      status: 2,
      stdout: '',
      stderr: 'lapwright: gone.json: there is no such file.\n',
    });
  });

  it('writes all of a long answer into a pipe', async () => {
    const path = file('mast.json', mastProject());
    const argv = ['stress', path, '--joint', 'mast-foot', '--case', 'wind-hot', '--json'];
    const long = [...argv, '--stations', '2000'];
    const { status, stdout } = run(long, import.meta.dirname);
    expect(status).toBe(0);
    // More than a pipe holds at once.
    expect(stdout.length).toBeGreaterThan(200_000);
    expect(stdout).toBe((await lapwright(long)).out);
  });

  it('is quiet when its reader leaves', async () => {
    const path = file('mast.json', mastProject());
    const argv = ['stress', path, '--joint', 'mast-foot', '--case', 'wind-hot', '--json'];
    const child = spawn(process.execPath, [program, ...argv, '--stations', '2000'], {
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    child.stdout.destroy();
    let said = '';
    child.stderr.on('data', (chunk) => {
      said += chunk;
    });
    const code = await new Promise((done) => child.once('close', done));
    expect({ code, said }).toEqual({ code: 0, said: '' });
  });

  it('is ended by Ctrl+C while it computes, with 130 and a clean screen', async () => {
    const path = file('big.json', makeBigProject({ joints: 40, cases: 20 }));
    // A pipe stands for the screen.
    const script = `import { main } from ${JSON.stringify(pathToFileURL(program).href)};
      process.exitCode = await main(['check', process.argv[1]], { cwd: '.', errIsTTY: true });`;
    const child = spawn(process.execPath, ['--input-type=module', '-e', script, path], {
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    let [said, told] = ['', ''];
    child.stdout.on('data', (chunk) => {
      told += chunk;
    });
    child.stderr.on('data', (chunk) => {
      if (said === '') child.kill('SIGINT');
      said += chunk;
    });
    const code = await new Promise((done) => child.once('close', done));
    expect({ code, told }).toEqual({ code: 130, told: '' });
    expect(said).toMatch(/░ +\d+ %/);
    expect(said.endsWith('\r\u001B[K')).toBe(true);
  });

  it.skipIf(!existsSync('/dev/full'))('says when its output could not be written', () => {
    const full = openSync('/dev/full', 'w');
    const { status, stderr } = spawnSync(process.execPath, [program, 'demo'], {
      stdio: ['ignore', full, 'pipe'],
      encoding: 'utf8',
    });
    closeSync(full);
    expect(status).toBe(2);
    expect(stderr).toMatch(/^lapwright: the output could not be written: .*ENOSPC.*\n$/);
  });
});
