/** Saving through the door of files: whole, with a copy of what stood there, and only what is wanted. */
import { chmodSync, existsSync, mkdirSync, statSync, symlinkSync, utimesSync } from 'node:fs';
import { join } from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import type { ProjectFiles } from '../../../src/main/files/project-files.ts';
import {
  content,
  demo,
  filesAt,
  freshPlaces,
  isBound,
  named,
  names,
  put,
  refusalOf,
  text,
  told,
} from './places.ts';

const places = freshPlaces();
let files: ProjectFiles;
let path: string;
beforeEach(() => {
  files = filesAt(places.data);
  told(files.chooseFolder(places.work, false));
  path = join(places.work, 'curlew.lapwright');
});
const anew = { expect: null, over: false };

describe('saving', () => {
  it('writes a new file as the page hands it out, and says where it stands', () => {
    const { file, backup } = told(files.save(path, demo, anew));
    expect(content(path)).toBe(text(demo));
    expect(backup).toBeNull();
    expect(file).toMatchObject({
      path,
      name: 'curlew.lapwright',
      folder: places.work,
      writable: true,
    });
    expect(names(places.work)).toEqual(['curlew.lapwright']);
    expect(told(files.stamp(path))).toEqual({ stamp: file.stamp, at: file.at });
  });

  it('keeps what stood there, of the last time alone', () => {
    let stamp = told(files.save(path, named('One'), anew)).file.stamp;
    for (const name of ['Two', 'Three']) {
      const saved = told(files.save(path, named(name), { expect: stamp, over: false }));
      expect(saved.backup).toBe('curlew.lapwright.previous');
      stamp = saved.file.stamp;
    }
    expect(content(path)).toBe(text(named('Three')));
    expect(content(`${path}.previous`)).toBe(text(named('Two')));
    expect(names(places.work)).toHaveLength(2);
  });

  it('refuses where another content stands than was opened, unless it is told to', () => {
    const { stamp } = told(files.save(path, named('One'), anew)).file;
    put(places.work, 'curlew.lapwright', text(named('Theirs')));
    expect(refusalOf(files.save(path, named('Mine'), { expect: stamp, over: false }))).toMatch(
      /^changed: "curlew\.lapwright" is not as it was/,
    );
    expect(content(path)).toBe(text(named('Theirs')));
    expect(names(places.work)).toEqual(['curlew.lapwright']);
    told(files.save(path, named('Mine'), { expect: stamp, over: true }));
    expect(content(path)).toBe(text(named('Mine')));
    expect(content(`${path}.previous`)).toBe(text(named('Theirs')));
  });

  it('takes a file that was written again unchanged for the same', () => {
    const { stamp } = told(files.save(path, named('One'), anew)).file;
    put(places.work, 'curlew.lapwright', text(named('One')));
    utimesSync(path, new Date(0), new Date(0));
    expect(files.save(path, named('Two'), { expect: stamp, over: false }).ok).toBe(true);
  });

  it('refuses a name that is taken, and writes a file anew that is gone', () => {
    put(places.work, 'curlew.lapwright', 'not even a project');
    expect(refusalOf(files.save(path, demo, anew))).toMatch(/^exists: There is a file "curlew/);
    expect(content(path)).toBe('not even a project');
    const other = join(places.work, 'other.lapwright');
    told(files.save(other, demo, { expect: 'f'.repeat(64), over: false }));
    expect(content(other)).toBe(text(demo));
  });

  it.skipIf(process.platform === 'win32')('leaves who may read and write it as it was', () => {
    const { stamp } = told(files.save(path, demo, anew)).file;
    for (const mode of [0o600, 0o664, 0o640]) {
      chmodSync(path, mode);
      told(files.save(path, demo, { expect: stamp, over: false }));
      expect(statSync(path).mode & 0o777).toBe(mode);
      expect(statSync(`${path}.previous`).mode & 0o777).toBe(mode);
    }
  });

  it.skipIf(process.platform === 'win32')('follows a link to its file, if that may be used', () => {
    mkdirSync(join(places.work, 'deep'));
    const target = put(join(places.work, 'deep'), 'target.lapwright', text(named('One')));
    symlinkSync(target, path);
    const saved = told(files.save(path, named('Two'), { expect: null, over: true }));
    expect(saved.file.path).toBe(target);
    expect(content(target)).toBe(text(named('Two')));
    expect(names(places.work)).toEqual(['curlew.lapwright', 'deep']);

    const foreign = put(places.outside, 'foreign.lapwright', text(named('Foreign')));
    const out = join(places.work, 'out.lapwright');
    symlinkSync(foreign, out);
    expect(refusalOf(files.save(out, demo, { expect: null, over: true }))).toMatch(
      /not in a folder that you chose/,
    );
    expect(content(foreign)).toBe(text(named('Foreign')));

    const nowhere = join(places.work, 'nowhere.lapwright');
    symlinkSync(join(places.work, 'missing.lapwright'), nowhere);
    expect(refusalOf(files.save(nowhere, demo, anew))).toMatch(/a link that leads nowhere/);
  });

  it('refuses what could not be opened again, and names the place', () => {
    const wrong = { ...demo, name: '' };
    const reply = files.save(path, wrong, anew);
    expect(refusalOf(reply)).toMatch(/^bad-input: "curlew.lapwright" is not saved, .*: name: /);
    expect(!reply.ok && reply.error.field).toBe('name');
    for (const document of [null, 7, [], {}, { ...demo, version: 2 }]) {
      expect(files.save(path, document, anew).ok).toBe(false);
    }
    expect(existsSync(path)).toBe(false);
  });

  it('refuses a folder and a file that may only be read', () => {
    mkdirSync(path);
    expect(refusalOf(files.save(path, demo, { expect: null, over: true }))).toMatch(
      /^bad-input: A folder has the name/,
    );
    const kept = put(places.work, 'kept.lapwright', text(demo));
    chmodSync(kept, 0o444);
    expect(refusalOf(files.save(kept, named('New'), { expect: null, over: true }))).toMatch(
      /^not-writable: "kept\.lapwright" may only be read: save under another name/,
    );
    expect(content(kept)).toBe(text(demo));
    expect(told(files.open(kept)).file.writable).toBe(false);
  });

  it('names the copy where a folder stands in its place', () => {
    const { stamp } = told(files.save(path, named('One'), anew)).file;
    mkdirSync(`${path}.previous`);
    const reply = files.save(path, named('Two'), { expect: stamp, over: false });
    expect(refusalOf(reply)).toMatch(
      /^bad-input: "curlew\.lapwright" is not saved, for a folder has the name "curlew\.lapwright\.previous"/,
    );
    expect(content(path)).toBe(text(named('One')));
    expect(names(places.work)).toEqual(['curlew.lapwright', 'curlew.lapwright.previous']);
  });

  it.skipIf(!isBound)('refuses in a folder that may only be read', () => {
    chmodSync(places.work, 0o555);
    expect(refusalOf(files.save(path, demo, anew))).toMatch(/^not-writable: .*may not write/);
    chmodSync(places.work, 0o755);
    expect(names(places.work)).toEqual([]);
  });

  it.each([
    ['a.json', 'end in ".lapwright" or ".lapwright.json"'],
    ['a.txt', 'end in ".lapwright"'],
    ['.lapwright', 'end in ".lapwright"'],
    ['.lapwright.json', 'end in ".lapwright"'],
    ['alapwright', 'end in ".lapwright"'],
    ['a.lapwright.previous', 'end in ".lapwright"'],
    [`${'x'.repeat(240)}.lapwright`, 'too long'],
    [`${'ö'.repeat(120)}.lapwright`, 'too long'],
  ])('refuses the name %s', (name, said) => {
    const reply = files.save(join(places.work, name), demo, anew);
    expect(refusalOf(reply)).toMatch(/^bad-input: /);
    expect(refusalOf(reply)).toContain(said);
    expect(names(places.work)).toEqual([]);
  });

  it('keeps the long suffix of a file that has it, and makes the copy beside it', () => {
    const long = put(places.work, 'old.lapwright.json', text(named('One')));
    const { stamp } = told(files.open(long)).file;
    const saved = told(files.save(long, named('Two'), { expect: stamp, over: false }));
    expect(saved).toMatchObject({
      file: { path: long, name: 'old.lapwright.json' },
      backup: 'old.lapwright.json.previous',
    });
    expect(names(places.work)).toEqual(['old.lapwright.json', 'old.lapwright.json.previous']);
    expect(content(`${long}.previous`)).toBe(text(named('One')));
    expect(told(files.open(`${long}.previous`)).document.name).toBe('One');
  });

  it('takes every name that disks take', () => {
    for (const name of ['a b', 'Möwe ≥ 2', "it's", '-rf', 'x'.repeat(230), '%2e%2e', '日本']) {
      const place = join(places.work, `${name}.lapwright`);
      told(files.save(place, demo, anew));
      expect(content(place)).toBe(text(demo));
    }
  });

  it('removes what a crash left, and no file of the user', () => {
    const old = put(places.work, '.lapwright-0123456789ab.part', '{"half":');
    utimesSync(old, new Date(0), new Date(0));
    const young = put(places.work, '.lapwright-ba9876543210.part', '{"half":');
    const theirs = put(places.work, '.lapwright-notes.part', 'notes');
    utimesSync(theirs, new Date(0), new Date(0));
    told(files.save(path, demo, anew));
    expect([old, young, theirs].map(existsSync)).toEqual([false, true, true]);
  });
});
