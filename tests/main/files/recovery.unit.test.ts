/** Unsaved documents: offered when their page is gone and not before, whoever had it, and never lost. */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, mkdirSync, readdirSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it, onTestFinished, vi } from 'vitest';
import { makeProjectFiles, type ProjectFiles } from '../../../src/main/files/project-files.ts';
import { markRunning, type RunningMark } from '../../../src/main/files/running.ts';
import { SILENCE } from '../../../src/shared/contract-files.ts';
import { demo, freshPlaces, named, put, refusalOf, text, told } from './places.ts';

const places = freshPlaces();
const SECOND = 1000;
const DAY = 24 * 60 * 60 * SECOND;
const HOUR = 60 * 60 * SECOND;
let time: number;
/** By how much the clock was set, on or back. */
let set: number;
const jump = (by: number): void => {
  time += by;
  set += by;
};
const now = (): Date => new Date(time);
const open: ProjectFiles[] = [];
beforeEach(() => {
  time = Date.now();
  set = 0;
});
afterEach(() => {
  for (const files of open.splice(0)) files.close();
});

/** A host, or with `silence` null an Electron; each is a process of its own to the others. */
function host(silence: number | null = SILENCE): ProjectFiles {
  const ran = (): number => time - set;
  const files = makeProjectFiles({ data: places.data, dialogs: false, silence, now, ran });
  open.push(files);
  return files;
}
const unsaved = (recovery: string, document: unknown = demo, path: string | null = null) => ({
  recovery,
  document,
  origin: 'curlew.lapwright.json',
  path,
  expect: null as string | null,
});
const offered = (files: ProjectFiles, ...own: string[]): string[] =>
  told(files.recovery.kept(own, 'asking')).kept.map(({ recovery }) => recovery);
/** As after a crash: nothing is tidied, nothing beats. */
function crash(files: ProjectFiles): void {
  files.close();
  open.splice(open.indexOf(files), 1);
}
const onDisk = (): string[] =>
  readdirSync(join(places.data, 'recovery'), { recursive: true })
    .map((name) => basename(String(name)))
    .filter((name) => name.endsWith('.json'))
    .sort();

describe('what is not saved', () => {
  it('is offered after a crash, the youngest first, whole and as it was last', () => {
    const first = host();
    told(first.recovery.keep(unsaved('doc-one', named('Old')), 'p1'));
    time += SECOND;
    told(first.recovery.keep(unsaved('doc-two', named('Two')), 'p2'));
    time += SECOND;
    told(first.recovery.keep(unsaved('doc-one', named('New')), 'p1'));
    crash(first);
    const { kept } = told(host().recovery.kept([], 'p'));
    expect(kept).toEqual([
      {
        recovery: 'doc-one',
        project: 'New',
        origin: 'curlew.lapwright.json',
        path: null,
        at: new Date(time).toISOString(),
        changedSince: false,
      },
      expect.objectContaining({ recovery: 'doc-two', project: 'Two' }),
    ]);
    const recovered = told(host().recovery.open('doc-one'));
    expect(recovered).toMatchObject({ document: named('New'), file: null, expect: null });
    expect(onDisk()).toEqual(['doc-one.json', 'doc-two.json']);
  });

  it('is not offered while its page is there, nor to the page itself', () => {
    const files = host();
    told(files.recovery.keep(unsaved('doc-one'), 'p1'));
    expect(offered(files)).toEqual([]);
    // In the background a page says a word once a minute.
    for (let i = 0; i < 3; i++) {
      time += 61 * SECOND;
      expect(offered(files)).toEqual([]);
      files.presence.heard('p1');
    }
    time += 91 * SECOND;
    expect(offered(files)).toEqual(['doc-one']);
    // Loaded anew it has another name, and the same document.
    expect(told(files.recovery.kept(['doc-one'], 'p1-anew')).kept).toEqual([]);
    expect(offered(files)).toEqual([]);
  });

  it('is not offered while its page was loaded anew, all that it had kept', () => {
    const files = host();
    told(files.recovery.keep(unsaved('doc-one'), 'p1'));
    told(files.recovery.keep(unsaved('doc-two'), 'p1'));
    files.presence.left('p1');
    expect(offered(files)).toHaveLength(2);
    expect(told(files.recovery.kept(['doc-one', 'doc-two'], 'p1-anew')).kept).toEqual([]);
    expect(offered(files)).toEqual([]);
  });

  it('is offered in Electron when its window is closed, however silent it was', () => {
    const files = host(null);
    told(files.recovery.keep(unsaved('doc-one'), '7'));
    time += DAY;
    expect(offered(files)).toEqual([]);
    files.presence.left('7');
    expect(offered(files)).toEqual(['doc-one']);
  });

  it('is offered in Electron to a page that was loaded anew after it died, though it has lost its own list', () => {
    const files = host(null);
    told(files.recovery.keep(unsaved('doc-one'), '7'));
    files.presence.left('7');
    files.presence.heard('7');
    expect(offered(files)).toEqual(['doc-one']);
    expect(told(files.recovery.kept(['doc-one'], '7')).kept).toEqual([]);
    expect(offered(files)).toEqual([]);
  });

  it('is not offered by another program that runs, until that is gone', () => {
    const first = host();
    told(first.recovery.keep(unsaved('doc-one'), 'p1'));
    time += 20 * SECOND;
    const second = host();
    expect(offered(second)).toEqual([]);
    crash(first);
    expect(offered(second, 'doc-one')).toEqual([]);
    expect(offered(host())).toEqual(['doc-one']);
  });

  it.each([5 * HOUR, -5 * HOUR, 4000 * DAY, -4000 * DAY])(
    'is not offered while its page is there, nor deleted, where the clock is set by %d ms',
    (by) => {
      const files = host();
      told(files.recovery.keep(unsaved('doc-one'), 'p1'));
      told(files.recovery.keep(unsaved('doc-two'), 'p2'));
      jump(by);
      expect(offered(files)).toEqual([]);
      files.presence.heard('p1');
      time += 89 * SECOND;
      expect(offered(files)).toEqual([]);
      // Gone they count as soon as with a clock that goes right, also that which was silent since before.
      time += 2 * SECOND;
      expect(offered(files).sort()).toEqual(['doc-one', 'doc-two']);
      crash(files);
      jump(-by);
      expect(offered(host())).toHaveLength(2);
      jump(by);
      expect(offered(host())).toHaveLength(2);
    },
  );

  it('is put away, but stays on the disk, and goes when it is old', () => {
    const first = host();
    told(first.recovery.keep(unsaved('doc-one'), 'p1'));
    told(first.recovery.keep(unsaved('doc-two'), 'p1'));
    const { dropped, at, until } = told(first.recovery.drop('doc-one'));
    expect(dropped).toBe(true);
    expect(basename(at ?? '')).toBe('doc-one.put-away.json');
    expect(existsSync(at ?? '')).toBe(true);
    expect(Math.abs(Date.parse(until ?? '') - time - 90 * DAY)).toBeLessThan(60 * SECOND);
    expect(told(first.recovery.drop('doc-one'))).toEqual({ dropped: false, at: null, until: null });
    crash(first);
    time += 89 * DAY;
    expect(offered(host())).toEqual(['doc-two']);
    expect(onDisk()).toEqual(['doc-one.put-away.json', 'doc-two.json']);
    time += 2 * DAY;
    // What nobody put away stays, however old it seems.
    expect(offered(host())).toEqual(['doc-two']);
    expect(onDisk()).toEqual(['doc-two.json']);
  });

  it('is taken back, once, and never over what was kept since', () => {
    const first = host();
    told(first.recovery.keep(unsaved('doc-one', named('Old')), 'p1'));
    told(first.recovery.drop('doc-one'));
    expect(told(first.recovery.takeBack('doc-one'))).toEqual({ back: true });
    expect(told(first.recovery.takeBack('doc-one'))).toEqual({ back: false });
    expect(told(first.recovery.takeBack('doc-two'))).toEqual({ back: false });
    expect(told(first.recovery.open('doc-one')).document).toEqual(named('Old'));
    told(first.recovery.drop('doc-one'));
    told(first.recovery.keep(unsaved('doc-one', named('New')), 'p1'));
    expect(told(first.recovery.takeBack('doc-one'))).toEqual({ back: false });
    expect(told(first.recovery.open('doc-one')).document).toEqual(named('New'));
    crash(first);
    expect(offered(host())).toEqual(['doc-one']);
  });

  it('is put away with all that its page kept, when the user discards it', () => {
    const files = host();
    told(files.recovery.keep(unsaved('doc-one'), 'p1'));
    told(files.recovery.keep(unsaved('doc-two'), 'p2'));
    files.discard('p1');
    expect(onDisk()).toEqual(['doc-one.put-away.json', 'doc-two.json']);
  });

  it('is kept whatever it is, and given back as it was while it is unfinished', () => {
    const files = host();
    const [joint, ...others] = demo.joints as readonly { readonly tube?: object }[];
    const tube = { ...joint?.tube, wall: undefined };
    const wrong = {
      ...demo,
      name: '',
      settings: { ...demo.settings, targetMargin: null },
      joints: [{ ...joint, overlap: -7, adhesive: 'gone', tube }, ...others, joint],
    };
    told(files.recovery.keep(unsaved('doc-one', wrong), 'p1'));
    crash(files);
    const { kept } = told(host().recovery.kept([], 'p'));
    expect(kept[0]?.project).toBe('Project without a name');
    expect(told(host().recovery.open('doc-one')).document).toEqual(
      JSON.parse(JSON.stringify(wrong)),
    );
  });

  it.each([
    ['nothing', null, ''],
    ['a text', 'curlew', ''],
    ['a list', [demo], ''],
    ['empty', {}, ''],
    ['without joints', { ...demo, joints: undefined }, 'joints'],
    ['with a number for its joints', { ...demo, joints: 5 }, 'joints'],
    ['with nothing for a joint', { ...demo, joints: [null] }, 'joints.0'],
    ['with a joint of no kind', { ...demo, joints: [{}] }, 'joints.0'],
    ['with a text for its materials', { ...demo, adherends: 'x' }, 'adherends'],
    ['without settings', { ...demo, settings: null }, 'settings'],
    ['with fields for its name', { ...demo, name: { a: 1 } }, 'name'],
    ['with a number for its name', { ...demo, name: 7 }, 'name'],
  ])(
    'is not given to a page that could not show it, and stays kept: %s',
    (_how, document, field) => {
      const files = host();
      told(files.recovery.keep(unsaved('doc-one', document), 'p1'));
      crash(files);
      const next = host();
      expect(offered(next)).toEqual(['doc-one']);
      const refused = refusalOf(next.recovery.open('doc-one'));
      expect(refused).toMatch(
        /These changes are damaged and cannot be opened; they stay kept\. \S/,
      );
      expect(refused).toContain(field);
      expect(offered(next)).toEqual(['doc-one']);
      expect(onDisk()).toEqual(['doc-one.json']);
    },
  );

  it('is not given back as another version than it is', () => {
    const files = host();
    told(files.recovery.keep(unsaved('doc-one', { ...demo, version: 2 }), 'p1'));
    expect(refusalOf(files.recovery.open('doc-one'))).toMatch(/from a newer Lapwright/);
    expect(refusalOf(files.recovery.open('doc-gone'))).toMatch(/^not-found: /);
  });

  it('tells whether its file has changed since, and only of files within reach', () => {
    const files = host();
    told(files.chooseFolder(places.work, false));
    const path = put(places.work, 'a.lapwright.json', text(named('Saved')));
    const { stamp } = told(files.open(path)).file;
    const secret = put(places.outside, 'b.lapwright.json', text(named('Secret')));
    told(files.recovery.keep({ ...unsaved('doc-one', named('Mine'), path), expect: stamp }, 'p1'));
    told(files.recovery.keep({ ...unsaved('doc-two', demo, secret), expect: 'x' }, 'p1'));
    crash(files);
    const next = host();
    const changed = () =>
      Object.fromEntries(
        told(next.recovery.kept([], 'p')).kept.map((one) => [one.recovery, one.changedSince]),
      );
    expect(changed()).toEqual({ 'doc-one': false, 'doc-two': false });
    expect(told(next.recovery.open('doc-two')).file).toBeNull();
    writeFileSync(path, text(named('Theirs')));
    expect(changed()).toMatchObject({ 'doc-one': true });
    const recovered = told(next.recovery.open('doc-one'));
    expect(recovered).toMatchObject({ document: named('Mine'), expect: stamp, file: { path } });
    expect(recovered.file?.stamp).not.toBe(stamp);
    rmSync(path);
    expect(changed()).toMatchObject({ 'doc-one': false });
    expect(told(next.recovery.open('doc-one')).file).toBeNull();
  });

  it('is passed over where its file is damaged, and the file stays', () => {
    const files = host();
    told(files.recovery.keep(unsaved('doc-one'), 'p1'));
    crash(files);
    const [folder = ''] = readdirSync(join(places.data, 'recovery'));
    const place = join(places.data, 'recovery', folder);
    writeFileSync(join(place, 'doc-two.json'), '{"project":"unsaved","at":"x"');
    writeFileSync(join(place, 'doc-three.json'), '{"project":"unsaved","at":"x","recovery":7}');
    expect(offered(host())).toEqual(['doc-one']);
    expect(onDisk()).toHaveLength(3);
  });

  it('says when it cannot be kept, and that the project should be saved', () => {
    writeFileSync(join(places.data, 'recovery'), 'a file');
    expect(refusalOf(host().recovery.keep(unsaved('doc-one'), 'p1'))).toMatch(
      /^internal: The unsaved changes could not be kept: .*Save a copy of the project\.$/,
    );
  });
});

describe('a process', () => {
  const marks: RunningMark[] = [];
  afterEach(() => {
    for (const mark of marks.splice(0)) mark.close();
  });
  const mark = (pid?: number): RunningMark => {
    const made = markRunning(places.data, now, pid);
    marks.push(made);
    return made;
  };

  it('is alive while it beats', () => {
    const other = mark(process.ppid).own();
    expect(mark().isAlive(other)).toBe(true);
    time += 61 * SECOND;
    // Its number belongs to another program by now.
    expect(mark().isAlive(other)).toBe(false);
  });

  it('is not alive when its number is gone, or its token is not its own', async () => {
    const child = spawn(process.execPath, ['-e', '']);
    const gone = once(child, 'exit');
    const other = mark(child.pid!).own();
    await gone;
    expect(mark().isAlive(other)).toBe(false);
    const alive = mark(process.ppid).own();
    expect(mark().isAlive({ ...alive, token: 'f'.repeat(24) })).toBe(false);
    expect(mark().isAlive({ ...alive, token: '../running' })).toBe(false);
  });

  it.each([5 * HOUR, -5 * HOUR])(
    'is alive while it had no time to touch its file, where the clock is set by %d ms',
    (by) => {
      vi.useFakeTimers({ toFake: ['setInterval', 'clearInterval'] });
      onTestFinished(() => void vi.useRealTimers());
      const running = join(places.data, 'running');
      mkdirSync(running, { recursive: true });
      const other = { pid: process.ppid, token: 'a'.repeat(24) };
      const touched = (): void => utimesSync(put(running, other.token, '1'), now(), now());
      const beat = (): void => {
        time += 5 * SECOND;
        vi.advanceTimersByTime(5 * SECOND);
      };
      touched();
      const me = mark();
      beat();
      expect(me.isAlive(other)).toBe(true);
      jump(by);
      expect(me.isAlive(other)).toBe(true);
      beat();
      expect(me.isAlive(other)).toBe(true);
      expect(me.isAlive({ ...other, token: 'b'.repeat(24) })).toBe(false);
      touched();
      for (let i = 0; i < 3; i++) beat();
      expect(me.isAlive(other)).toBe(true);
      // Its number is another program's by now: nobody touches its file after the clock was set.
      jump(by);
      for (let i = 0; i < 4; i++) beat();
      expect(me.isAlive(other)).toBe(false);
    },
  );

  it('touches its file as it goes on, and takes it away at its end', () => {
    const one = mark();
    const { token } = one.own();
    const running = join(places.data, 'running');
    mkdirSync(running, { recursive: true });
    const old = put(running, '0'.repeat(24), '1');
    utimesSync(old, new Date(0), new Date(0));
    utimesSync(put(running, 'notes.txt', ''), new Date(0), new Date(0));
    const two = mark();
    two.own();
    expect(readdirSync(running).sort()).toEqual([token, two.own().token, 'notes.txt'].sort());
    one.close();
    two.close();
    expect(readdirSync(running)).toEqual(['notes.txt']);
  });
});
