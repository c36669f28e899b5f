import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { root } from '../../src/launch/root.mjs';
import { countsLine, skippedLines } from '../e2e/support/run-tests.mjs';

const file = (path: string, ...statuses: string[]) => ({
  name: join(root, path),
  status: statuses.includes('failed') ? ('failed' as const) : ('passed' as const),
  assertionResults: statuses.map((status) => ({ status, fullName: 'x' })),
});
const here = { browser: true, noElectron: null };

describe('what npm test says at the end', () => {
  it('counts every test once', () => {
    const files = [
      file('a.unit.test.ts', 'passed', 'passed', 'failed'),
      file('b.unit.test.ts', 'passed', 'pending', 'skipped', 'todo'),
    ];
    expect(countsLine(files)).toBe('3 passed, 1 failed, 3 skipped');
  });

  it('counts a file that could not be loaded as a failure', () => {
    const broken = { ...file('a.unit.test.ts'), status: 'failed' as const };
    expect(countsLine([broken])).toBe('0 passed, 1 failed, 0 skipped');
    const failing = file('b.unit.test.ts', 'failed', 'passed');
    expect(countsLine([failing])).toBe('1 passed, 1 failed, 0 skipped');
  });

  it('names what was skipped and why', () => {
    const files = [
      file('tests/e2e/electron-real.e2e.test.ts', 'pending', 'pending'),
      file('tests/e2e/size.e2e.test.ts', 'pending'),
      file('tests/shell/shell.e2e.test.ts', 'pending', 'pending'),
      file('tests/x.unit.test.ts', 'pending', 'passed'),
      file('tests/y.unit.test.ts', 'passed'),
    ];
    expect(skippedLines(root, files, { browser: false, noElectron: 'no binary here' })).toEqual([
      'skipped: 2 tests in real Electron: no binary here',
      'skipped: 1 tests in tests/x.unit.test.ts: the file says why',
      'skipped: 3 tests in a browser: no Chromium, Chrome or Edge here',
    ]);
    expect(skippedLines(root, [file('tests/y.unit.test.ts', 'passed')], here)).toEqual([]);
  });
});
