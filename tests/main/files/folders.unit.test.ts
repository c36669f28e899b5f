/** Folders: what is shown of them, which may be chosen, and how paths are told on each system. */
import { chmodSync, existsSync, mkdirSync, realpathSync, rmSync, symlinkSync } from 'node:fs';
import { homedir } from 'node:os';
import { join } from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import {
  isInside,
  isOnShare,
  openNameTrouble,
  pathTrouble,
  saveNameTrouble,
} from '../../../src/main/files/path-form.ts';
import type { ProjectFiles } from '../../../src/main/files/project-files.ts';
import { makeReach } from '../../../src/main/files/reach.ts';
import {
  demo,
  filesAt,
  freshPlaces,
  isBound,
  names,
  put,
  refusalOf,
  text,
  told,
} from './places.ts';

const places = freshPlaces();
let files: ProjectFiles;
beforeEach(() => {
  files = filesAt(places.data);
});

describe('looking into a folder', () => {
  const lay = (): void => {
    for (const name of ['b10', 'b9', '.hidden', 'A']) mkdirSync(join(places.work, name));
    for (const name of [
      'z.lapwright.json',
      'a.lapwright',
      'a.lapwright.previous',
      '.lapwright',
      '.h.lapwright.json',
      'notes.txt',
      'p.json',
    ])
      put(places.work, name, text(demo));
  };

  it('shows its folders alone while it is not chosen', () => {
    lay();
    const view = told(files.look(places.work));
    expect(view).toMatchObject({ path: places.work, above: places.top, chosen: false, more: 0 });
    expect(view.folders.map(({ name }) => name)).toEqual(['A', 'b9', 'b10']);
    expect(view.projects).toEqual([]);
  });

  it('shows its projects once it is, and in the folders below', () => {
    lay();
    const view = told(files.chooseFolder(places.work, false));
    expect(view.chosen).toBe(true);
    expect(view.projects.map(({ name }) => name)).toEqual(['a.lapwright', 'z.lapwright.json']);
    expect(Date.parse(view.projects[0]!.at)).toBeGreaterThan(0);
    put(join(places.work, 'A'), 'deep.lapwright.json', text(demo));
    expect(told(files.look(join(places.work, 'A'))).projects).toHaveLength(1);
    expect(told(files.look(places.top)).chosen).toBe(false);
  });

  it('begins with that of the user, and ends at the top', () => {
    expect(told(files.look(undefined)).path).toBe(realpathSync.native(homedir()));
    let view = told(files.look(places.work));
    for (let steps = 0; view.above !== null && steps < 30; steps += 1) {
      view = told(files.look(view.above));
    }
    expect(view.above).toBeNull();
  });

  it('shows no more than 500 entries, and says how many there are', () => {
    told(files.chooseFolder(places.work, false));
    for (let n = 0; n < 510; n += 1) mkdirSync(join(places.work, `f${n}`));
    put(places.work, 'a.lapwright.json', text(demo));
    const view = told(files.look(places.work));
    expect([view.folders.length, view.projects.length, view.more]).toEqual([499, 1, 11]);
  });

  it.skipIf(process.platform === 'win32')(
    'shows no project that a link takes from elsewhere',
    () => {
      told(files.chooseFolder(places.work, false));
      symlinkSync(
        put(places.outside, 'a.lapwright.json', text(demo)),
        join(places.work, 'a.lapwright.json'),
      );
      symlinkSync(join(places.work, 'none'), join(places.work, 'b.lapwright.json'));
      symlinkSync(places.outside, join(places.work, 'linked'));
      const view = told(files.look(places.work));
      expect(view.projects).toEqual([]);
      expect(view.folders.map(({ name }) => name)).toEqual(['linked']);
      // Where it leads it is not chosen.
      expect(told(files.look(join(places.work, 'linked')))).toMatchObject({
        path: places.outside,
        chosen: false,
      });
    },
  );

  it('says why it cannot', () => {
    const file = put(places.work, 'a.txt', '');
    expect(refusalOf(files.look(file))).toMatch(/it is a file, not a folder/);
    expect(refusalOf(files.look(join(places.work, 'none')))).toMatch(/is not there|no such folder/);
    expect(refusalOf(files.look('work'))).toMatch(/must be a full one/);
    expect(refusalOf(files.look('/a\0b'))).toMatch(/a character in it that no path has/);
  });

  it.skipIf(!isBound)('says so where this user may not look', () => {
    chmodSync(places.outside, 0);
    expect(refusalOf(files.look(places.outside))).toMatch(/this user may not look into it/);
    chmodSync(places.outside, 0o755);
  });
});

describe('choosing a folder', () => {
  it('keeps the folders, the youngest first, each once', () => {
    for (const folder of [places.work, places.outside, places.work]) {
      told(files.chooseFolder(folder, false));
    }
    expect(told(filesAt(places.data).places()).folders).toEqual([
      { path: places.work, name: 'work' },
      { path: places.outside, name: 'outside' },
    ]);
  });

  it('makes it where only its last part is missing and it is wanted', () => {
    const made = join(places.work, 'new');
    expect(refusalOf(files.chooseFolder(made, false))).toMatch(/^not-found: There is no folder/);
    expect(existsSync(made)).toBe(false);
    expect(told(files.chooseFolder(made, true))).toMatchObject({ path: made, chosen: true });
    expect(files.chooseFolder(join(places.work, 'a', 'b'), true).ok).toBe(false);
    expect(files.chooseFolder(`${places.work}/x/..`, true).ok).toBe(false);
    expect(names(places.work)).toEqual(['new']);
  });

  it('takes no file, and not the whole disk', () => {
    const file = put(places.work, 'a.txt', '');
    expect(refusalOf(files.chooseFolder(file, true))).toMatch(/is a file, not a folder/);
    expect(refusalOf(files.chooseFolder('/', false))).toMatch(/The whole disk cannot be chosen/);
    expect(refusalOf(files.chooseFolder('/./', true))).toMatch(/The whole disk cannot/);
  });

  it('holds by where the folder is, not by what comes to its place', () => {
    told(files.chooseFolder(places.work, false));
    rmSync(places.work, { recursive: true });
    symlinkSync(places.outside, places.work);
    const secret = put(places.outside, 'a.lapwright.json', text(demo));
    expect(files.open(join(places.work, 'a.lapwright.json')).ok).toBe(false);
    expect(files.open(secret).ok).toBe(false);
  });
});

describe('a path', () => {
  it.each([
    ['a\\b.json', 'full'],
    ['C:a.json', 'full'],
    ['\\a.json', 'full'],
    ['/a.json', 'full'],
    ['..\\a.json', 'full'],
    ['\\\\?\\C:\\a.json', 'devices'],
    ['\\\\.\\COM1', 'devices'],
    ['//./pipe/x', 'devices'],
    ['C:\\a.json:stream', 'colon'],
    ['C:\\work\\con.lapwright.json', 'device'],
    ['C:\\nul\\a.json', 'device'],
    ['C:\\a\0.json', 'character'],
  ])('of Windows is refused as %s', (path, said) => {
    expect(pathTrouble(path, 'win32')).toContain(said);
  });

  it('of Windows may have a drive, in either case and with either stroke', () => {
    for (const path of ['C:\\a.json', 'd:/bench/b.json', 'C:\\console\\a.json']) {
      expect(pathTrouble(path, 'win32')).toBeNull();
    }
    expect(pathTrouble('\\\\server\\share\\a.json', 'win32')).toBeNull();
    expect(isOnShare('\\\\server\\share\\a.json', 'win32')).toBe(true);
    expect(isOnShare('C:\\a.json', 'win32')).toBe(false);
  });

  it('on a share is not even looked at unless its folder was chosen', () => {
    const reach = makeReach({ data: places.data, known: () => false, platform: 'win32' });
    expect(refusalOf(reach.file('\\\\server\\share\\a.lapwright.json'))).toMatch(
      /choose its folder/,
    );
  });

  it('lies in a folder by its parts, not by its letters', () => {
    for (const [folder, path, inside] of [
      ['/a/b', '/a/b', true],
      ['/a/b', '/a/b/c/d', true],
      ['/a/b', '/a/b/..c', true],
      ['/a/b', '/a/bc', false],
      ['/a/b', '/a', false],
      ['/a/b', '/a/b/../c', false],
    ] as const) {
      expect([path, isInside(folder, path, 'linux')]).toEqual([path, inside]);
    }
    expect(isInside('C:\\Work', 'c:\\work\\a.json', 'win32')).toBe(true);
    expect(isInside('C:\\Work', 'D:\\Work\\a.json', 'win32')).toBe(false);
  });

  it('has the ending of its kind', () => {
    for (const name of ['x.lapwright', 'X.Lapwright', 'x.lapwright.json']) {
      expect(saveNameTrouble(`C:\\a\\${name}`, 'win32')).toBeNull();
      expect(openNameTrouble(`C:\\a\\${name}`, 'win32')).toBeNull();
      expect(openNameTrouble(`/a/${name}.previous`, 'linux')).toBeNull();
      expect(saveNameTrouble(`/a/${name}.previous`, 'linux')).toContain(`"${name}.previous"`);
      expect(saveNameTrouble(`C:\\${name}\\x`, 'win32')).toContain('"x"');
    }
    expect(saveNameTrouble('C:\\a\\.lapwright', 'win32')).toContain('".lapwright"');
    expect(openNameTrouble('C:\\a\\.lapwright', 'win32')).toContain('".lapwright"');
    expect(openNameTrouble('/a/x.json.previous', 'linux')).toContain('"x.json.previous"');
    expect(openNameTrouble('/a/x.Json', 'linux')).toBeNull();
  });
});
