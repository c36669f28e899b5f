/** The project file that a start of the program names. */
import { fileURLToPath } from 'node:url';
import { isOpenName } from '../../shared/project-text.ts';

const PREFIX = '--file=';

/** The path in an argument; null where that is no file of this machine. */
function pathIn(argument: string): string | null {
  // Some launchers of Linux hand over the address of a file, whatever they were asked for.
  if (!/^file:/i.test(argument)) return argument;
  try {
    return fileURLToPath(argument);
  } catch {
    return null;
  }
}

/**
 * Behind its switch, or as a plain argument: so the system starts the program for a file that belongs to it.
 * Plain arguments that end otherwise are the program's own folder, or a switch's.
 */
export function fileArgument(argv: readonly string[]): string | null {
  const [, ...after] = argv;
  const switched = after.find((argument) => argument.startsWith(PREFIX))?.slice(PREFIX.length);
  if (switched !== undefined) return switched || null;
  return (
    after
      .filter((argument) => !argument.startsWith('-'))
      .map(pathIn)
      .find((path) => path !== null && isOpenName(path)) ?? null
  );
}

/** What a second start hands to the first: whatever that is, only a path in it counts. */
export function fileOfSecondStart(data: unknown): string | null {
  if (typeof data !== 'object' || data === null || !('file' in data)) return null;
  return typeof data.file === 'string' && data.file !== '' ? data.file : null;
}
