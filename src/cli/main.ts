/** Entry of the command line. Returns an exit code; never ends the process with text unwritten. */
import { realpathSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Reply } from '../shared/reply.ts';
import type { About } from '../shared/reports.ts';
import { readArguments, UsageError } from './arguments.ts';
import { type CliAsk, INTERRUPTED, Interrupted, openAsk } from './ask.ts';
import { DONE, REFUSED } from './exits.ts';
import { printable } from './figures.ts';
import { commandHelp, overallHelp } from './help.ts';
import { type Outcome, runCommand } from './run.ts';
import { type Io, makeTerminal, type Terminal } from './terminal.ts';

export type { Io } from './terminal.ts';

const said = (out: string): Outcome => ({ code: DONE, out, complaints: [] });

async function respond(
  argv: readonly string[],
  { ask }: CliAsk,
  terminal: Terminal,
): Promise<Outcome> {
  const asked = readArguments(argv);
  if (asked.kind === 'version') {
    const reply = (await ask('app.about', {})) as Reply<About>;
    return said(
      reply.ok ? `lapwright ${reply.value.version} (model ${reply.value.modelVersion})` : '',
    );
  }
  if (asked.kind === 'help') {
    const { width } = terminal;
    return said(asked.about ? commandHelp(asked.about, width) : overallHelp(width));
  }
  return runCommand(ask, asked, terminal.cwd, terminal);
}

const asksForJson = (argv: readonly string[]): boolean => argv.includes('--json');

/** Everything that goes wrong becomes one line, or one JSON object where JSON was asked for. */
function failed(error: unknown, argv: readonly string[]): Outcome {
  if (error instanceof Interrupted) return { code: INTERRUPTED, out: '', complaints: [] };
  const usage = error instanceof UsageError;
  const reason = error instanceof Error ? error.message : String(error);
  const message = usage ? reason : `Something in Lapwright itself went wrong: ${reason}`;
  if (asksForJson(argv)) {
    const code = usage ? 'bad-request' : 'internal';
    const out = JSON.stringify({ error: { code, field: '', message } });
    return { code: REFUSED, out, complaints: [] };
  }
  const name = usage && error.command ? ` ${error.command.name}` : '';
  const hint = name === '' ? '' : ` "lapwright help${name}" explains it.`;
  return { code: REFUSED, out: '', complaints: [`${message}${hint}`] };
}

export async function main(argv: readonly string[], io: Io): Promise<number> {
  const terminal = makeTerminal(io);
  const core = openAsk(io, terminal);
  const outcome = await respond(argv, core, terminal)
    .catch((error: unknown) => failed(error, argv))
    .finally(() => core.close());
  if (outcome.out !== '') terminal.out(`${outcome.out}\n`);
  for (const complaint of outcome.complaints) terminal.err(`lapwright: ${printable(complaint)}\n`);
  const unwritten = await terminal.flushed();
  if (unwritten === null) return outcome.code;
  terminal.err(`lapwright: the output could not be written: ${unwritten}\n`);
  await terminal.flushed();
  return REFUSED;
}

/** Whether node was started on this file, and did not import it. */
function isProgram(): boolean {
  const started = process.argv[1];
  if (started === undefined) return false;
  try {
    return realpathSync(started) === fileURLToPath(import.meta.url);
  } catch {
    return false;
  }
}

if (isProgram()) {
  process.exitCode = await main(process.argv.slice(2), { cwd: process.cwd() });
}
