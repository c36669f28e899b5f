/** From the words after the program's name to a command with checked options, or one sentence. */
import { type ParseArgsConfig, parseArgs } from 'node:util';
import { type Command, commands, findCommand } from './commands.ts';
import { didYouMean } from './nearest.ts';
import { help, type Option, version } from './options.ts';

export type Asked =
  | { readonly kind: 'help'; readonly about: Command | null }
  | { readonly kind: 'version' }
  | {
      readonly kind: 'run';
      readonly command: Command;
      /** Empty for a command that takes none. */
      readonly file: string;
      readonly options: ReadonlyMap<string, unknown>;
    };

/** The words typed make no request. */
export class UsageError extends Error {
  readonly command: Command | null;
  constructor(command: Command | null, message: string) {
    super(message);
    this.command = command;
  }
}

const commandNames = [...commands.map(({ name }) => ({ id: name })), { id: 'help' }];

function commandOf(word: string): Command {
  const command = findCommand(word);
  if (command) return command;
  throw new UsageError(
    null,
    `There is no command "${word}".${didYouMean(word, commandNames)} "lapwright help" lists them.`,
  );
}

/** What `parseArgs` makes of one word; its own type names an option's tokens only one by one. */
type Token =
  | {
      readonly kind: 'option';
      readonly name: string;
      readonly rawName: string;
      readonly value?: string | undefined;
      readonly inlineValue?: boolean | undefined;
    }
  | { readonly kind: 'positional'; readonly value: string }
  | { readonly kind: 'option-terminator' };

function tokensOf(words: readonly string[], options: readonly Option[]): readonly Token[] {
  const config: ParseArgsConfig['options'] = {};
  for (const { name, takes } of options) config[name] = { type: takes ? 'string' : 'boolean' };
  config.help = { type: 'boolean', short: 'h' };
  // What is unknown or lacks its value is reported here, in our own words; not being strict also
  // lets `--theta -90` be what it looks like.
  const { tokens } = parseArgs({
    args: [...words],
    options: config,
    strict: false,
    allowPositionals: true,
    tokens: true,
  });
  return tokens;
}

function readOption(command: Command | null, known: readonly Option[], token: Token): unknown {
  if (token.kind !== 'option') return undefined;
  const fail = (message: string): never => {
    throw new UsageError(command, message);
  };
  const option = known.find(({ name }) => name === token.name);
  if (!option) {
    const ids = known.map(({ name }) => ({ id: name }));
    const hint = didYouMean(token.name, ids, '--');
    return fail(`There is no option "${token.rawName}" here.${hint}`);
  }
  if (!option.takes) {
    if (token.value !== undefined) fail(`${token.rawName} takes no value.`);
    return true;
  }
  // A following option is not a value: the value was forgotten.
  if (token.value === undefined || (!token.inlineValue && token.value.startsWith('--'))) {
    return fail(`${token.rawName} needs a value: ${option.takes}, ${option.help}.`);
  }
  const read = option.read(token.value);
  return 'wrong' in read ? fail(`${token.rawName}: ${read.wrong}`) : read.value;
}

function readOptions(
  command: Command | null,
  known: readonly Option[],
  tokens: readonly Token[],
): Map<string, unknown> {
  const options = new Map<string, unknown>();
  for (const token of tokens) {
    if (token.kind !== 'option') continue;
    const value = readOption(command, known, token);
    if (options.has(token.name)) {
      throw new UsageError(command, `--${token.name} stands twice: give it once.`);
    }
    options.set(token.name, value);
  }
  return options;
}

const positionals = (tokens: readonly Token[]): string[] =>
  tokens.flatMap((token) => (token.kind === 'positional' ? [token.value] : []));

function readCommand(command: Command, words: readonly string[]): Asked {
  const known = [...command.options, help];
  const tokens = tokensOf(words, known);
  const options = readOptions(command, known, tokens);
  if (options.has('help')) return { kind: 'help', about: command };
  const [file, ...rest] = positionals(tokens);
  const surplus = command.file ? rest[0] : file;
  if (surplus !== undefined) {
    throw new UsageError(
      command,
      command.file
        ? `"${surplus}" is one word too many: it takes one project file.`
        : `"${surplus}" is one word too many: it takes no file.`,
    );
  }
  if (command.file && (file === undefined || file === '')) {
    throw new UsageError(command, 'A project file is missing.');
  }
  for (const { name, takes, help: meaning, needed } of command.options) {
    if (needed && !options.has(name)) {
      throw new UsageError(command, `--${name} ${takes} is missing: ${meaning}.`);
    }
  }
  const dataOnly = command.options.find(({ name, onlyJson }) => onlyJson && options.has(name));
  if (dataOnly && !options.has('json')) {
    throw new UsageError(
      command,
      `--${dataOnly.name} needs --json: what it adds is printed as data only.`,
    );
  }
  return { kind: 'run', command, file: file ?? '', options };
}

function readNoCommand(words: readonly string[]): Asked {
  const options = readOptions(null, [help, version], tokensOf(words, [help, version]));
  if (options.has('version')) return { kind: 'version' };
  if (options.has('help')) return { kind: 'help', about: null };
  throw new UsageError(null, 'A command is missing. "lapwright help" lists them.');
}

export function readArguments(argv: readonly string[]): Asked {
  const [first, ...rest] = argv;
  if (first === undefined || first.startsWith('-')) return readNoCommand(argv);
  if (first !== 'help') return readCommand(commandOf(first), rest);
  const [about, ...more] = rest;
  if (more.length > 0) throw new UsageError(null, 'help explains one command at a time.');
  return { kind: 'help', about: about === undefined ? null : commandOf(about) };
}
