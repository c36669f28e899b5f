/** Opening: every version, and whatever else may stand at a path, left as it is. */
import { execFileSync } from 'node:child_process';
import { chmodSync, mkdirSync, rmSync, symlinkSync, truncateSync } from 'node:fs';
import { join } from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import type { ProjectFiles } from '../../../src/main/files/project-files.ts';
import { MAX_BODY } from '../../../src/shared/contract.ts';
import {
  content,
  demo,
  filesAt,
  freshPlaces,
  isBound,
  named,
  put,
  refusalOf,
  text,
  told,
} from './places.ts';

const places = freshPlaces();
const NAME = 'curlew.lapwright';
let files: ProjectFiles;
let path: string;
beforeEach(() => {
  files = filesAt(places.data);
  told(files.chooseFolder(places.work, false));
  path = join(places.work, NAME);
});

describe('opening', () => {
  it('gives the document with where it stands', () => {
    put(places.work, NAME, text(demo));
    const { document, origin, file, olderVersion } = told(files.open(path));
    expect(document).toEqual(demo);
    expect([origin, olderVersion]).toEqual([NAME, undefined]);
    expect(file).toMatchObject({ path, name: NAME, folder: places.work, writable: true });
    expect(file.stamp).toMatch(/^[0-9a-f]{64}$/);
    expect(Date.now() - Date.parse(file.at)).toBeLessThan(60_000);
  });

  it('takes a project under either suffix, any other JSON, and the copy of the last saving', () => {
    for (const name of [
      'a.lapwright',
      'A.LAPWRIGHT',
      'a.lapwright.json',
      'a.json',
      'B.JSON',
      `${NAME}.previous`,
      'a.lapwright.json.previous',
    ]) {
      expect(told(files.open(put(places.work, name, text(demo)))).origin).toBe(name);
    }
    expect(refusalOf(files.open(put(places.work, 'a.txt', text(demo))))).toMatch(
      /end in "\.lapwright" or "\.json"/,
    );
    expect(refusalOf(files.open(put(places.work, 'a.previous', text(demo))))).toMatch(/end in/);
  });

  it('tells line and column of what is cut off, and offers the copy that is whole', () => {
    const half = text(demo).slice(0, 5000);
    const lines = half.split('\n');
    put(places.work, NAME, half);
    const place = new RegExp(`line (${lines.length}|${lines.length - 1}), column \\d+`);
    const alone = refusalOf(files.open(path));
    expect(alone).toMatch(place);
    expect(alone).toMatch(/Nothing was changed\.$/);

    put(places.work, `${NAME}.previous`, half);
    expect(refusalOf(files.open(path))).toBe(alone);
    put(places.work, `${NAME}.previous`, text(named('Before')));
    const reply = files.open(path);
    expect(refusalOf(reply)).toBe(`${alone} The version before its last saving can be opened.`);
    expect(!reply.ok && reply.error.before).toBe(`${path}.previous`);
    expect(told(files.open(`${path}.previous`)).document.name).toBe('Before');
    expect(content(path)).toBe(half);
    // It is no file that one works on: nothing leads back to it.
    expect(told(files.places()).recent).toEqual([]);
    // Also where the damaged one is what the program was started with.
    const given = filesAt(places.data).openGiven(path);
    expect(!given.ok && given.error.before).toBe(`${path}.previous`);
  });

  it('names the place of what is wrong in it', () => {
    put(places.work, NAME, text({ ...demo, name: '' }));
    const reply = files.open(path);
    expect(refusalOf(reply)).toMatch(/: name: A name cannot be empty; .*Nothing was changed\.$/);
    expect(!reply.ok && reply.error.field).toBe('name');
    const joints = demo.joints.map((joint, i) => (i === 2 ? { ...joint, overlap: 'wide' } : joint));
    put(places.work, NAME, text({ ...demo, joints } as unknown as typeof demo));
    const wide = files.open(path);
    expect(refusalOf(wide)).toBe(
      `bad-input: ${NAME}: joint 3 (${demo.joints[2]!.name}): Overlap must be a number from 1 to 500 mm; it is "wide". Nothing was changed.`,
    );
    expect(!wide.ok && wide.error.field).toBe('joints.2.overlap');
  });

  it('tells by its stamp what stands there now', () => {
    put(places.work, NAME, text(demo));
    const { stamp } = told(files.open(path)).file;
    expect(told(files.stamp(path)).stamp).toBe(stamp);
    put(places.work, NAME, `${text(demo)} `);
    expect(told(files.stamp(path)).stamp).not.toBe(stamp);
    rmSync(path);
    expect(told(files.stamp(path))).toEqual({ stamp: null, at: null });
  });

  it('refuses a file of a newer version, and says that a newer program opens it', () => {
    put(places.work, NAME, text({ ...demo, version: 2 } as unknown as typeof demo));
    const said = refusalOf(files.open(path));
    expect(said).toMatch(/of version 2, from a newer Lapwright; this one reads versions up to 1/);
    expect(said.match(/nothing was changed/gi)).toHaveLength(1);
  });

  it.each<[string, () => void, RegExp]>([
    ['nothing', () => undefined, /there is no such file/],
    ['a folder', () => mkdirSync(path), /it is a folder, not a file/],
    ['an empty file', () => put(places.work, NAME, ''), /The file is empty/],
    ['what is not UTF-8', () => put(places.work, NAME, Uint8Array.of(0x7b, 0xff)), /not UTF-8/],
    ['UTF-16', () => put(places.work, NAME, Buffer.from('\uFEFF{}', 'utf16le')), /not UTF-8/],
    [
      'what is too large',
      () => truncateSync(put(places.work, NAME, '{'), MAX_BODY + 1),
      /17 MB is too large for a project; the limit is 16 MB/,
    ],
    ['another JSON', () => put(places.work, NAME, '{"a":1}'), /not a Lapwright project/],
    ['a list', () => put(places.work, NAME, '[]'), /A project is a JSON object/],
  ])('refuses %s', (_what, lay, said) => {
    lay();
    expect(refusalOf(files.open(path))).toMatch(said);
  });

  it.skipIf(process.platform === 'win32')('refuses a pipe without waiting for it', () => {
    execFileSync('mkfifo', [path]);
    expect(refusalOf(files.open(path))).toMatch(/it is not an ordinary file/);
    expect(refusalOf(files.stamp(path))).toMatch(/it is not an ordinary file/);
    expect(refusalOf(files.save(path, demo, { expect: null, over: true }))).toMatch(/no project/);
  });

  it.skipIf(!isBound)('refuses what this user may not read', () => {
    put(places.work, NAME, text(demo));
    chmodSync(path, 0);
    expect(refusalOf(files.open(path))).toMatch(/this user may not read it/);
  });

  it.skipIf(process.platform === 'win32')('opens the file that a link leads to', () => {
    const target = put(places.work, 'target.lapwright', text(demo));
    symlinkSync(target, path);
    expect(told(files.open(path)).file.path).toBe(target);
    symlinkSync(join(places.work, 'b.json'), join(places.work, 'a.json'));
    symlinkSync(join(places.work, 'a.json'), join(places.work, 'b.json'));
    expect(files.open(join(places.work, 'a.json')).ok).toBe(false);
  });
});

describe('the file that a start names', () => {
  it('is opened wherever it lies, and its folder may then be used', () => {
    const given = put(places.outside, 'given.txt', text(named('Given')));
    const beside = put(places.outside, 'beside.lapwright', text(named('Beside')));
    expect(files.open(beside).ok).toBe(false);
    expect(told(files.openGiven(given))).toMatchObject({
      origin: 'given.txt',
      file: { path: given },
    });
    expect(files.open(beside).ok).toBe(true);
    // For this run alone; the files that were open stay within reach.
    const next = filesAt(places.data);
    expect(told(next.places()).folders.map(({ path }) => path)).toEqual([places.work]);
    expect(next.open(given).ok).toBe(true);
    expect(next.save(join(places.outside, 'new.lapwright'), demo, ANEW).ok).toBe(false);
  });

  it('is alone within reach where the system has dialogs', () => {
    const electron = filesAt(places.data, { dialogs: true });
    const given = put(places.outside, NAME, text(demo));
    const beside = put(places.outside, 'beside.lapwright', text(demo));
    told(electron.openGiven(given));
    expect(electron.open(given).ok).toBe(true);
    expect(electron.open(beside).ok).toBe(false);
  });

  it('may be missing', () => {
    expect(refusalOf(files.openGiven(join(places.outside, 'no.json')))).toBe(
      'bad-input: no.json: there is no such file.',
    );
    expect(refusalOf(files.openGiven(join(places.outside, 'no', 'no.json')))).toMatch(
      /no such file/,
    );
  });
});
const ANEW = { expect: null, over: false };

describe('the files that were open lately', () => {
  const project = (name: string): string =>
    put(places.work, `${name}.lapwright`, text(named(name)));

  it('are twelve, the youngest first, each once, with whether they are still there', () => {
    let hour = 0;
    const now = (): Date => new Date(Date.UTC(2026, 2, 1, hour++));
    files = filesAt(places.data, { now });
    for (let n = 1; n <= 14; n += 1) told(files.open(project(`P${n}`)));
    told(files.open(project('P9')));
    const { recent } = told(files.places());
    const expected = [9, 14, 13, 12, 11, 10, 8, 7, 6, 5, 4, 3];
    expect(recent.map(({ project }) => project)).toEqual(expected.map((n) => `P${n}`));
    rmSync(recent[1]!.path);
    const again = told(filesAt(places.data).places()).recent;
    expect(again.map(({ found }) => found)).toEqual([true, false, ...Array(10).fill(true)]);
    expect(again[0]).toMatchObject({ name: 'P9.lapwright', folder: places.work });
  });

  it('tell where a dialog begins: by the last that was opened or saved, or the folder of the start', () => {
    const last = (of: ProjectFiles): string | null => told(of.places()).last;
    expect(last(files)).toBeNull();
    told(files.chooseFolder(places.outside, false));
    // Chosen, but nothing came of it.
    expect(last(files)).toBeNull();
    expect(files.save(join(places.outside, 'a.txt'), demo, ANEW).ok).toBe(false);
    expect(last(files)).toBeNull();
    told(files.open(project('One')));
    expect(last(files)).toBe(places.work);
    told(files.save(join(places.outside, 'one.lapwright.json'), demo, ANEW));
    expect(last(files)).toBe(places.outside);
    const next = filesAt(places.data);
    expect(last(next)).toBe(places.outside);
    told(next.giveFolder(places.work));
    expect(last(next)).toBe(places.work);
    told(next.open(join(places.outside, 'one.lapwright.json')));
    expect(last(next)).toBe(places.outside);
  });

  it('are told of as they change', () => {
    const listed: (string | null)[] = [];
    files = filesAt(places.data, { listed: (used) => listed.push(used) });
    told(files.chooseFolder(places.work, false));
    const one = project('One');
    told(files.open(one));
    expect(told(files.forget(one))).toEqual({ forgotten: true });
    expect(told(files.forget(one))).toEqual({ forgotten: false });
    expect(listed).toEqual([one, null]);
    expect(content(one)).toBe(text(named('One')));
    expect(told(files.places()).recent).toEqual([]);
  });

  it('are none where their list is damaged, and that may not widen what can be reached', () => {
    const one = project('One');
    for (const damaged of ['', '{', '[', '{"files":1}', '[{"path":7}]', 'null']) {
      put(places.data, 'recent.json', damaged);
      put(places.data, 'folders.json', damaged);
      const fresh = filesAt(places.data);
      expect(told(fresh.places())).toMatchObject({ folders: [], recent: [] });
      expect(fresh.open(one).ok).toBe(false);
    }
    put(places.data, 'folders.json', '["work", "../work", "C:work"]');
    expect(told(filesAt(places.data).places()).folders).toEqual([]);
  });

  it('are remembered for the run where nothing can be written', () => {
    const data = put(places.top, 'no-folder', '');
    files = filesAt(data);
    told(files.chooseFolder(places.work, false));
    told(files.open(project('One')));
    const { folders, recent } = told(files.places());
    expect([folders.length, recent.length]).toEqual([1, 1]);
    expect(told(filesAt(data).places()).folders).toEqual([]);
  });
});
