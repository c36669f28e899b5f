/** The help, made from the table of commands. */
import { type Command, commands } from './commands.ts';
import { paragraph } from './layout.ts';
import { help as helpOption, type Option, version } from './options.ts';

const synopsis = ({ name, file, options }: Command): string => {
  const words = options.map(({ name: word, takes, needed }) => {
    const written = takes ? `--${word} ${takes}` : `--${word}`;
    return needed ? written : `[${written}]`;
  });
  return ['lapwright', name, ...(file ? ['FILE'] : []), ...words].join(' ');
};

const listed = (rows: readonly (readonly [string, string])[], width: number): string => {
  const left = Math.max(...rows.map(([word]) => word.length)) + 4;
  return rows.map(([word, text]) => paragraph(text, width, `  ${word}`.padEnd(left))).join('\n');
};

const optionRows = (options: readonly Option[]): (readonly [string, string])[] =>
  options.map(({ name, takes, help }) => [takes ? `--${name} ${takes}` : `--${name}`, help]);

export function overallHelp(width: number): string {
  return [
    paragraph(
      'Lapwright: screening of bonded joints between carbon-fibre tubes and metal sleeves.',
      width,
    ),
    'lapwright COMMAND [FILE] [OPTIONS]',
    listed(
      commands.map(({ name, file, brief }) => [file ? `${name} FILE` : name, brief] as const),
      width,
    ),
    listed([['help COMMAND', 'explain one command'], ...optionRows([helpOption, version])], width),
  ].join('\n\n');
}

export function commandHelp(command: Command, width: number): string {
  return [
    paragraph(synopsis(command), width),
    paragraph(`${command.name}: ${command.brief}.`, width),
    listed(optionRows([...command.options, helpOption]), width),
    paragraph(command.more, width),
  ].join('\n\n');
}
