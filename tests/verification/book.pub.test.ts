/** Every figure of the verification book is within its tolerance, and the book on disk is this one. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { PLOTS, renderBook, topics } from './book.ts';
import { lazy } from './case.ts';
import { judge, judgements } from './judge.ts';

const docs = join(import.meta.dirname, '..', '..', 'docs');

describe.each(topics)('$title', ({ cases }) => {
  describe.each(cases)('$title', (one) => {
    it.each(judgements(one).map((check) => ({ name: check.name, check })))('$name', ({ check }) => {
      const { failure } = judge(check);
      if (failure !== null) expect.fail(`${failure}\n  inputs: ${one.inputs.join('; ')}`);
    });
  });
});

const AGAIN = '`npm run book` writes it anew; look at what has moved before you commit it';

/** A checkout may have turned the line ends. */
const onDisk = (path: string): string =>
  readFileSync(join(docs, path), 'utf8').replaceAll('\r\n', '\n');

function firstDifference(path: string, now: string): string | null {
  let before: string;
  try {
    before = onDisk(path);
  } catch {
    return `docs/${path} is missing: ${AGAIN}.`;
  }
  if (before === now) return null;
  const [old, fresh] = [before.split('\n'), now.split('\n')];
  const line = fresh.findIndex((text, i) => text !== old[i]);
  const at = line < 0 ? fresh.length : line;
  return `docs/${path} is not what the program computes; ${AGAIN}.\n  line ${at + 1}, in the file: ${old[at] ?? '(ends)'}\n  line ${at + 1}, computed:    ${fresh[at] ?? '(ends)'}`;
}

describe('the book in docs', () => {
  const book = lazy(renderBook);

  it('is what the program computes', () => {
    const wrong = [...book()]
      .map(([path, text]) => firstDifference(path, text))
      .filter((message) => message !== null);
    if (wrong.length > 0) expect.fail(wrong.join('\n'));
  });

  it('holds no plot of a case that is gone', () => {
    const expected = [...book().keys()]
      .filter((path) => path.startsWith(`${PLOTS}/`))
      .map((path) => path.slice(PLOTS.length + 1));
    expect(readdirSync(join(docs, PLOTS)).sort(), AGAIN).toEqual(expected.sort());
  });
});
