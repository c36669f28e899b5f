/** The project file that a start of the program names. */
const PREFIX = '--file=';

export const fileArgument = (argv: readonly string[]): string | null =>
  argv.find((argument) => argument.startsWith(PREFIX))?.slice(PREFIX.length) || null;

/** What a second start hands to the first: whatever that is, only a path in it counts. */
export function fileOfSecondStart(data: unknown): string | null {
  if (typeof data !== 'object' || data === null || !('file' in data)) return null;
  return typeof data.file === 'string' && data.file !== '' ? data.file : null;
}
