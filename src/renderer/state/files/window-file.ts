/**
 * What a window keeps to itself, also when it is loaded anew: the file that it shows, and that its user does not
 * want to be told of the one before. Another window of the same program has its own.
 */

const FILE = 'lapwright-file';
const CLOSED = 'lapwright-last-closed';

function read(key: string): string | null {
  try {
    return sessionStorage.getItem(key) || null;
  } catch {
    // Where nothing may be kept, a window begins as at its first start.
    return null;
  }
}
function write(key: string, value: string | null): void {
  try {
    if (value === null) sessionStorage.removeItem(key);
    else sessionStorage.setItem(key, value);
  } catch {
    // As above.
  }
}

export const windowFile = {
  /** Path of the file that it shows; null where that stands in none. */
  read: (): string | null => read(FILE),
  write: (path: string | null): void => write(FILE, path),
};
export const lastClosed = {
  read: (): boolean => read(CLOSED) !== null,
  write: (): void => write(CLOSED, 'closed'),
};
