import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { packagesAreCurrent } from '../../src/launch/packages.mjs';

const wanted = {
  '': { name: 'x' },
  'node_modules/a': { version: '1.0.0', integrity: 'A' },
  'node_modules/b': { version: '2.0.0', integrity: 'B' },
  'node_modules/b/node_modules/c': { version: '3.0.0', integrity: 'C' },
  'node_modules/for-another-system': { version: '1.0.0', integrity: 'D', optional: true },
};
type Packages = Record<string, object>;

describe('whether the packages are those of the lock file', () => {
  let root: string;
  const write = (path: string, value: unknown): void => {
    const file = join(root, path);
    mkdirSync(join(file, '..'), { recursive: true });
    writeFileSync(file, typeof value === 'string' ? value : JSON.stringify(value));
  };
  const record = (packages: Packages): void =>
    write('node_modules/.package-lock.json', { packages });
  const present = (): Packages => {
    const { '': _top, 'node_modules/for-another-system': _other, ...rest } = wanted;
    return { ...rest, 'node_modules/more': { version: '1.0.0' } };
  };
  beforeEach(() => {
    root = mkdtempSync(join(tmpdir(), 'lapwright-test-'));
    write('package-lock.json', { packages: wanted });
    for (const place of Object.keys(wanted)) {
      if (place !== '' && !place.includes('another')) write(join(place, 'package.json'), '{}');
    }
    record(present());
  });
  afterEach(() => rmSync(root, { recursive: true }));

  it('is so when all that is not optional is there', () => {
    expect(packagesAreCurrent(root)).toBe(true);
  });

  it('is not so on a fresh clone', () => {
    rmSync(join(root, 'node_modules'), { recursive: true });
    expect(packagesAreCurrent(root)).toBe(false);
  });

  it('is not so when one is missing, of another version or of other content', () => {
    const { 'node_modules/a': _a, ...without } = present();
    record(without);
    expect(packagesAreCurrent(root)).toBe(false);
    record({ ...present(), 'node_modules/a': { version: '1.0.1', integrity: 'A' } });
    expect(packagesAreCurrent(root)).toBe(false);
    record({ ...present(), 'node_modules/a': { version: '1.0.0', integrity: 'Z' } });
    expect(packagesAreCurrent(root)).toBe(false);
  });

  it('is not so when the record says more than is on the disk', () => {
    rmSync(join(root, 'node_modules', 'b', 'node_modules'), { recursive: true });
    expect(packagesAreCurrent(root)).toBe(false);
  });

  it('is not so when the record cannot be read', () => {
    write('node_modules/.package-lock.json', '{');
    expect(packagesAreCurrent(root)).toBe(false);
  });
});
