/** Two programs that save the same file at the same moment: one is told that it has, the other that it has not. */
import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import { saveProject } from '../../../src/main/files/save-project.ts';
import { stampOf } from '../../../src/main/files/stamp.ts';
import { failing, faultyDisk } from './faulty-disk.ts';
import { content, freshPlaces, named, names, put, refusalOf, text, told } from './places.ts';

const places = freshPlaces();
const NAME = 'curlew.lapwright';
const before = text(named('Before'));
const known = { expect: stampOf(Buffer.from(before)), over: false };
const anew = { expect: null, over: false };
let path: string;
beforeEach(() => {
  path = put(places.work, NAME, before);
});
const isLock = (name: unknown): boolean => /\.lapwright-[0-9a-f]{12}\.part$/.test(String(name));
const parts = (): string[] => names(places.work).filter(isLock);

describe('two that save at once', () => {
  it.each([
    ['of its own version', known],
    ['whatever stands there', { expect: null, over: true }],
  ])('the second waits for the first, and does not replace it unseen: %s', (_what, wish) => {
    let theirs = '';
    let renamings = 0;
    const disk = faultyDisk((_number, call) => {
      // The copy is the first; at the second all has been looked at.
      if (call !== 'renameSync' || ++renamings !== 2) return;
      const patience = { dead: 60_000, all: 50 };
      theirs = refusalOf(saveProject(path, named('Theirs'), wish, undefined, patience));
    });
    told(saveProject(path, named('Mine'), wish, disk));
    expect(theirs).toMatch(/^not-writable: "curlew\.lapwright" is being saved by another/);
    expect(content(path)).toBe(text(named('Mine')));
    expect(names(places.work)).toEqual([NAME, `${NAME}.previous`]);
    // Afterwards it is told what has come.
    const late = saveProject(path, named('Theirs'), known);
    expect(refusalOf(late)).toMatch(/^changed: /);
  });

  it.each([anew, known])(
    'a new file does not replace one that comes at the last moment: %o',
    (wish) => {
      rmSync(path);
      const disk = faultyDisk((_number, call) => {
        if (call === 'linkSync') put(places.work, NAME, 'theirs');
      });
      const reply = saveProject(path, named('Mine'), wish, disk);
      expect(refusalOf(reply)).toMatch(wish.expect === null ? /^exists: / : /^changed: /);
      expect(content(path)).toBe('theirs');
      expect(names(places.work)).toEqual([NAME]);
    },
  );

  it.each(['EPERM', 'ENOTSUP', 'EOPNOTSUPP', 'ENOSYS'])(
    'a new file is saved on a disk that says %s of a second name',
    (code) => {
      rmSync(path);
      const disk = faultyDisk((_number, call) => {
        if (call === 'linkSync') throw failing(code);
      });
      told(saveProject(path, named('Mine'), anew, disk));
      expect(content(path)).toBe(text(named('Mine')));
      expect(names(places.work)).toEqual([NAME]);
    },
  );
});

describe('the lock of a program that was killed', () => {
  it('holds nobody up for long, and is removed', () => {
    let left = '';
    const killed = faultyDisk((_number, call) => {
      if (call === 'rmSync' || call === 'renameSync') throw failing('EIO');
    });
    saveProject(path, named('Killed'), known, killed);
    // Of three parts that stay, the lock is the empty one.
    [left = ''] = parts().filter((name) => content(join(places.work, name)) === '');
    expect(left).not.toBe('');
    told(saveProject(path, named('Mine'), known, undefined, { dead: 30, all: 5_000 }));
    expect(content(path)).toBe(text(named('Mine')));
    expect(parts()).not.toContain(left);
  });

  it('is not taken from one that is only slow, without its being told', () => {
    const disk = faultyDisk((_number, call) => {
      // While the copy is made safe, another one takes the lock for dead and is gone again.
      if (call === 'renameSync') {
        for (const name of parts()) {
          if (content(join(places.work, name)) === '') rmSync(join(places.work, name));
        }
      }
    });
    const reply = saveProject(path, named('Mine'), known, disk);
    expect(refusalOf(reply)).toMatch(/^not-writable: .* save again/);
    expect(content(path)).toBe(before);
    expect(parts()).toEqual([]);
  });
});
