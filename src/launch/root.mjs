/** Where the project is, and what every launcher says to the user. */
import { dirname, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = resolve(dirname(fileURLToPath(import.meta.url)), '..', '..');

/**
 * Progress goes to the error stream: the output stream belongs to the program that is started.
 * @param {string} line
 */
export const say = (line) => process.stderr.write(`${line}\n`);

/**
 * Paths are meant from where the user stands, which npm changes and remembers.
 * @returns {string}
 */
export const userFolder = () => process.env.INIT_CWD || process.cwd();
