/**
 * Thousands of wrong project files, opened. `LAPWRIGHT_FUZZ=n` tries n of them, `LAPWRIGHT_SEED=n` others;
 * a failure names seed and number of the file, which give it again. What was found is in `hostile-files.unit.test.ts`.
 */
import { writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { fuzzed } from './fuzz/files.ts';
import { judge } from './fuzz/judge.ts';

const seed = Number(process.env.LAPWRIGHT_SEED ?? 20261125);
const count = Number(process.env.LAPWRIGHT_FUZZ ?? 20_000);
/** A long run tells how far it is. */
const CHUNK = 20_000;
/** Only ends what hangs: a hundred times what a file takes. */
const patience = 60_000 + count * 100;

/** The first files that fail, put down where they can be looked at. */
function failures(from: number, to: number, counted: { accepted: number }): string[] {
  const failed: string[] = [];
  for (let number = from; number < to && failed.length < 5; number++) {
    const bytes = fuzzed(seed, number);
    const verdict = judge(bytes);
    if ('wrong' in verdict) {
      const place = join(tmpdir(), `lapwright-fuzz-${seed}-${number}.lapwright`);
      writeFileSync(place, bytes);
      failed.push(`seed ${seed}, file ${number} (${place}) ${verdict.wrong}`);
    } else if (verdict.accepted) counted.accepted += 1;
  }
  return failed;
}

describe('any file', () => {
  it(
    `is kept whole or refused at its place, ${count} times`,
    () => {
      const counted = { accepted: 0 };
      for (let from = 0; from < count; from += CHUNK) {
        const to = Math.min(count, from + CHUNK);
        expect(failures(from, to, counted)).toEqual([]);
        if (count > CHUNK) console.log(`${to} files, seed ${seed}: ${counted.accepted} opened`);
      }
      // Both happen often enough to mean something.
      expect(counted.accepted).toBeGreaterThan(count / 10);
      expect(counted.accepted).toBeLessThan(count * 0.9);
    },
    patience,
  );
});
