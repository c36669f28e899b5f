/** The sleeve of a single lap under the name that it has in a double lap, so that one row holds both. */
import { doubleNames, partWords } from '../../shared/joint-fields.ts';
import type { Joint } from '../../shared/project.ts';

/**
 * `sleeve, yield` of a tube in a socket is `socket, yield`; a part's name alone is changed the same way.
 * `adhesive, yield` stays as it is.
 */
export function named(joint: Joint, text: string): string {
  const names = doubleNames(joint);
  const [part = '', ...rest] = text.split(',');
  const word = partWords[names[part] ?? ''];
  return word === undefined ? text : [word, ...rest].join(',');
}
