/** A copy of the project as a clone would have it, with an npm that notes what it was told. */
import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { text } from 'node:stream/consumers';
import { root } from '../../src/launch/root.mjs';
import { allFiles } from '../house/sources.ts';

/**
 * Instead of fetching anything it links the packages that are here already. Never let the real
 * one run on such a copy: it would follow the link and empty the folder.
 */
const npm = (from: string, notes: string): string => `
const { appendFileSync, symlinkSync } = require('node:fs');
appendFileSync(${JSON.stringify(notes)}, process.argv.slice(2).join(' ') + '\\n');
symlinkSync(${JSON.stringify(from)}, 'node_modules', 'junction');
`;

export interface Copy {
  readonly root: string;
  /** What a start in the copy must find around it: above all, this npm and no other. */
  readonly env: NodeJS.ProcessEnv;
  /** What npm was told so far, a line for each time. */
  npmCalls(): string[];
  run(
    script: string,
    args?: readonly string[],
    options?: { readonly cwd?: string; readonly env?: NodeJS.ProcessEnv },
  ): ChildProcess;
  remove(): void;
}

export function freshCopy(): Copy {
  const place = mkdtempSync(join(tmpdir(), 'lapwright-test-'));
  const copy = join(place, 'a clone');
  for (const file of allFiles()) cpSync(join(root, file), join(copy, file));
  const notes = join(place, 'npm-calls');
  writeFileSync(join(place, 'npm.cjs'), npm(join(root, 'node_modules'), notes));
  const noElectron = join(place, 'no-electron');
  mkdirSync(noElectron);

  const env = {
    ...process.env,
    npm_execpath: join(place, 'npm.cjs'),
    ELECTRON_OVERRIDE_DIST_PATH: noElectron,
    DISPLAY: '',
    WAYLAND_DISPLAY: '',
    INIT_CWD: copy,
  };
  const started: ChildProcess[] = [];
  return {
    root: copy,
    env,
    npmCalls: () => (existsSync(notes) ? readFileSync(notes, 'utf8').trim().split('\n') : []),
    run(script, args = [], { cwd = copy, env: more = {} } = {}) {
      const child = spawn(process.execPath, [join(copy, 'src', 'launch', script), ...args], {
        cwd,
        stdio: ['ignore', 'pipe', 'pipe'],
        env: { ...env, INIT_CWD: cwd, ...more },
      });
      started.push(child);
      return child;
    },
    remove() {
      for (const child of started) child.kill();
      rmSync(place, { recursive: true, force: true, maxRetries: 5 });
    },
  };
}

/** What a program wrote until its end: output, progress and exit code. */
export async function outcome(child: ChildProcess) {
  const read = (stream: ChildProcess['stdout']) => (stream ? text(stream) : '');
  const [out, progress, [code]] = await Promise.all([
    read(child.stdout),
    read(child.stderr),
    once(child, 'close'),
  ]);
  return { out, progress, code: code as number | null };
}
