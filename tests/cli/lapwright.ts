/** The command line in this process, with what it writes caught; and projects to give it. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';
import { main } from '../../src/cli/main.ts';
import { createAsk } from '../../src/main/ask.ts';
import type { Project, SleeveSingle } from '../../src/shared/project.ts';
import { readProjectText } from '../../src/shared/read-project.ts';

export interface Ran {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

export interface Screen {
  readonly cwd?: string;
  readonly isTTY?: boolean;
  readonly columns?: number;
  readonly errIsTTY?: boolean;
  readonly worker?: string;
  readonly onInterrupt?: (stop: () => void) => () => void;
}

export async function lapwright(argv: readonly string[], screen: Screen = {}): Promise<Ran> {
  let out = '';
  let err = '';
  const code = await main(argv, {
    cwd: process.cwd(),
    ...screen,
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
  });
  return { code, out, err };
}

/** Lines that end in a line break; the last one does too. */
export const linesOf = (text: string): string[] => text.split('\n').slice(0, -1);

export const ask = createAsk({ carrier: 'terminal' });

/** The value that a handler answers, or a failed test. */
export async function answerOf(name: string, input: unknown): Promise<unknown> {
  const reply = await ask(name, input);
  if (!reply.ok) throw new Error(`${name}: ${reply.error.message}`);
  return reply.value;
}

/** A folder that is gone after the test. */
export function folder(): string {
  const path = mkdtempSync(join(tmpdir(), 'lapwright-'));
  onTestFinished(() => rmSync(path, { recursive: true, force: true }));
  return path;
}

export function file(name: string, content: string | Uint8Array | object): string {
  const path = join(folder(), name);
  const bare = typeof content === 'string' || content instanceof Uint8Array;
  writeFileSync(path, bare ? content : JSON.stringify(content));
  return path;
}

const mast = readFileSync(
  join(import.meta.dirname, '..', '..', 'docs', 'example.lapwright.json'),
  'utf8',
);

/** The example of the documentation: one single-lap socket whose margins all reach the target. */
export function mastProject(): Project {
  const read = readProjectText(mast);
  if (!read.ok) throw new Error(read.error.message);
  return read.value;
}

/** The example with its joint changed, and joints added. */
export function changed(
  change: Partial<SleeveSingle>,
  more: (joint: SleeveSingle) => readonly SleeveSingle[] = () => [],
): Project {
  const project = mastProject();
  const joint = project.joints[0] as SleeveSingle;
  return { ...project, joints: [{ ...joint, ...change }, ...more(joint)] };
}
