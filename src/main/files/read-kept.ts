/** A file of our own in the data folder, whatever another program has put in its place. */
import { MAX_BODY } from '../../shared/contract.ts';
import { readTextFile } from './read-project-file.ts';

/** What is kept holds a project and a little more. */
const MOST = 2 * MAX_BODY;

/** Never waits for a named pipe, and reads no more than is kept. @throws where it is no such file */
export function readKept(path: string): string {
  const text = readTextFile(path, MOST, 'what is kept');
  if (!text.ok) throw new Error(text.error.message);
  return text.value;
}
