/** A disk that fails at each single step of saving, and a power that goes at each: the old or the new, whole. */
import { chmodSync, existsSync, mkdirSync, rmSync, writeSync } from 'node:fs';
import { join } from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import { disk } from '../../../src/main/files/disk.ts';
import { saveProject } from '../../../src/main/files/save-project.ts';
import { stampOf } from '../../../src/main/files/stamp.ts';
import { writeWhole } from '../../../src/main/files/write-whole.ts';
import { type Faulty, failing, faultyDisk } from './faulty-disk.ts';
import { content, freshPlaces, named, names, put, refusalOf, text, told } from './places.ts';

const places = freshPlaces();
const NAME = 'curlew.lapwright.json';
const BACKUP = `${NAME}.previous`;
const before = text(named('Before'));
const older = text(named('Older'));
const after = named('After');
const wish = { expect: stampOf(Buffer.from(before)), over: false };
let path: string;

/** As two savings before left it. */
function layOut(): void {
  rmSync(places.work, { recursive: true });
  mkdirSync(places.work);
  put(places.work, NAME, before);
  put(places.work, BACKUP, older);
  path = join(places.work, NAME);
}
beforeEach(layOut);

const save = (faulty: Faulty) => saveProject(path, after, wish, faulty);
/** The steps of a saving that goes well. */
function steps(): Faulty['calls'] {
  const watched = faultyDisk(() => undefined);
  told(save(watched));
  layOut();
  return watched.calls;
}
/** Steps that may fail and keep nothing back: tidying, modes, and what follows a renaming: the folder made safe, the lock. */
const harmless = (calls: Faulty['calls']): Set<number> =>
  new Set(
    calls.flatMap((call, at) => {
      if (at > calls.lastIndexOf('renameSync')) return [at];
      if (call === 'renameSync') return [at + 1, at + 2, at + 3];
      // The lock is removed by a second try.
      return ['readdirSync', 'fchmodSync', 'rmSync'].includes(call) ? [at] : [];
    }),
  );

describe('saving', () => {
  it('writes, makes safe, and renames twice: the copy first', () => {
    const calls = steps();
    const told = calls.filter((call) => /^(write|fsync|rename)/.test(call)).join(' ');
    expect(told).toBe(
      'writeSync fsyncSync writeSync fsyncSync renameSync fsyncSync renameSync fsyncSync',
    );
  });

  it.each([
    'ENOSPC',
    'EACCES',
    'EROFS',
    'EIO',
    'EPERM',
    'EDQUOT',
    'EBUSY',
    'ENAMETOOLONG',
    'EWHAT',
  ])('that fails at any step with %s leaves all as it was and says what to do', (code) => {
    const calls = steps();
    const free = harmless(calls);
    for (const at of calls.keys()) {
      layOut();
      const faulty = faultyDisk((number) => {
        if (number === at) throw failing(code);
      });
      const reply = save(faulty);
      const where = `${at} ${calls[at]}`;
      if (free.has(at)) {
        expect([where, reply.ok, content(path)]).toEqual([where, true, text(after)]);
      } else {
        expect([where, reply.ok, content(path)]).toEqual([where, false, before]);
        expect(refusalOf(reply)).toMatch(
          /^(not-writable|bad-input): "curlew\.lapwright\.json" could not be saved: .*\. .*; nothing was changed on the disk\.$/,
        );
        expect([older, before]).toContain(content(join(places.work, BACKUP)));
      }
      expect([where, names(places.work)]).toEqual([where, [NAME, BACKUP]]);
    }
  });

  it.each([
    ['ENOSPC', 'the disk is full. Make room'],
    ['EROFS', 'the disk can only be read. Save it in another folder'],
    ['EACCES', 'this user may not write there. Save it in another folder'],
    ['EIO', 'the disk reports a fault. Save on another disk'],
  ])('says of %s what it means', (code, said) => {
    const faulty = faultyDisk((_number, call) => {
      if (call === 'fsyncSync') throw failing(code);
    });
    expect(refusalOf(save(faulty))).toContain(said);
  });

  it('cut off at any step leaves the old or the new, whole, and a copy that is whole', () => {
    const calls = steps();
    const seen = new Set<string>();
    for (const at of calls.keys()) {
      layOut();
      const faulty = faultyDisk((number) => {
        // The power does not come back to tidy up.
        if (number >= at) throw failing('EIO');
      });
      save(faulty);
      const stands = content(path);
      expect([before, text(after)]).toContain(stands);
      expect([older, before]).toContain(content(join(places.work, BACKUP)));
      // With the new one in its place, what it replaced is kept.
      if (stands === text(after)) expect(content(join(places.work, BACKUP))).toBe(before);
      seen.add(stands);
    }
    expect(seen.size).toBe(2);
  });

  it('cut off in the first saving of a new file leaves none or a whole one', () => {
    for (let at = 0; at < 30; at += 1) {
      rmSync(path, { force: true });
      const faulty = faultyDisk((number) => {
        if (number >= at) throw failing('EIO');
      });
      saveProject(path, after, { expect: null, over: false }, faulty);
      expect([null, text(after)]).toContain(existsSync(path) ? content(path) : null);
    }
  });

  it('notices a change that comes while it writes', () => {
    const theirs = text(named('Theirs'));
    for (const nth of [1, 2, 3]) {
      layOut();
      let flushed = 0;
      const faulty = faultyDisk((_number, call) => {
        if (call === 'fsyncSync') flushed += 1;
        // Once the new text is on the disk, and once its copy is.
        if (call === 'closeSync' && flushed === nth) put(places.work, NAME, theirs);
      });
      const reply = save(faulty);
      if (nth < 3) {
        expect(refusalOf(reply)).toMatch(/^changed: /);
        expect(content(path)).toBe(theirs);
      }
      expect(names(places.work)).toEqual([NAME, BACKUP]);
    }
  });

  it('keeps what it really replaces, also where it may replace anything', () => {
    const theirs = text(named('Theirs'));
    let came = false;
    const faulty = faultyDisk((_number, call) => {
      if (call === 'fsyncSync' && !came) {
        came = true;
        put(places.work, NAME, theirs);
      }
    });
    told(saveProject(path, after, { expect: null, over: true }, faulty));
    expect(content(path)).toBe(text(after));
    expect(content(join(places.work, BACKUP))).toBe(theirs);
  });

  it('notices a file that appears while a new one is written', () => {
    rmSync(path);
    const faulty = faultyDisk((_number, call) => {
      if (call === 'closeSync') put(places.work, NAME, 'theirs');
    });
    const reply = saveProject(path, after, { expect: null, over: false }, faulty);
    expect(refusalOf(reply)).toMatch(/^exists: /);
    expect(content(path)).toBe('theirs');
  });
});

describe('writing whole', () => {
  it('goes on where the disk takes a little at a time', () => {
    const slow = {
      ...disk,
      writeSync: (file: number, bytes: Uint8Array, at: number, length: number) =>
        writeSync(file, bytes, at, Math.min(length, 7)),
    };
    writeWhole(path, before, { disk: slow as typeof disk });
    expect(content(path)).toBe(before);
  });

  it('fails where the disk fills up in the middle, with nothing changed', () => {
    let room = 100;
    const small = {
      ...disk,
      writeSync(file: number, bytes: Uint8Array, at: number, length: number) {
        if (room === 0) throw failing('ENOSPC');
        const taken = writeSync(file, bytes, at, Math.min(length, room));
        room -= taken;
        return taken;
      },
    };
    expect(() => writeWhole(path, text(after), { disk: small as typeof disk })).toThrow('ENOSPC');
    expect(content(path)).toBe(before);
    expect(names(places.work)).toEqual([NAME, BACKUP]);
  });

  it.skipIf(process.platform === 'win32')('makes a file no wider than it was', () => {
    chmodSync(path, 0o600);
    const noModes = faultyDisk((_number, call) => {
      if (call === 'fchmodSync') throw failing('EPERM');
    });
    told(save(noModes));
    expect(disk.statSync(path).mode & 0o777).toBe(0o600);
  });
});
