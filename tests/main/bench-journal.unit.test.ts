/** Measured parts kept on disk: whole or not at all, whatever happens and whatever projects are called. */
import { chmodSync, mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { createAsk } from '../../src/main/ask.ts';
import { dataFolder, makeBenchJournal } from '../../src/main/files/bench-journal.ts';
import type { GapCheck } from '../../src/shared/project.ts';
import { ok } from '../../src/shared/reply.ts';
import type { Kept } from '../../src/shared/reports-gap.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'lapwright-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const check = (id: string, by = 'AB'): GapCheck => ({
  id,
  joint: 'tip',
  started: '2026-03-01T08:00:00Z',
  by,
  tubeSerial: 'T1',
  sleeveSerial: 'S1',
  surfaces: [],
  done: [],
  cure: [],
});
let hour = 0;
const clock = (): Date => new Date(Date.UTC(2026, 2, 1, hour++));
const journalAt = (place = folder) => makeBenchJournal(place, clock);
const kept = (project = 'Curlew', place = folder) => {
  const reply = journalAt(place).kept(project);
  if (!reply.ok) throw new Error(reply.error.message);
  return reply.value.checks.map((one) => `${one.check.id} ${one.check.by}`);
};
/** Where the files of one project are. */
const onDisk = (): string[] => readdirSync(folder, { recursive: true }).map(String).sort();

describe('the journal', () => {
  it('gives back what was kept, the latest of each check, oldest first', () => {
    const journal = journalAt();
    expect(kept()).toEqual([]);
    journal.keep('Curlew', check('a', 'first'));
    journal.keep('Curlew', check('b'));
    journal.keep('Curlew', check('a', 'second'));
    expect(kept()).toEqual(['b AB', 'a second']);
  });

  it('keeps projects apart, whatever they are called', () => {
    const names = ['Curlew', 'curlew', '../../etc', 'a/b', 'con', 'Möwe ≥ 2', '', 'x'.repeat(120)];
    const journal = journalAt();
    names.forEach((name, i) => {
      expect(journal.keep(name, check('a', `n${i}`)).ok).toBe(true);
    });
    names.forEach((name, i) => {
      expect(kept(name)).toEqual([`a n${i}`]);
    });
    expect(
      onDisk().filter((name) => !/^bench([/\\][0-9a-f]{24}([/\\]a\.json)?)?$/.test(name)),
    ).toEqual([]);
  });

  it('puts away without deleting', () => {
    const journal = journalAt();
    journal.keep('Curlew', check('a'));
    expect(journal.drop('Curlew', 'a')).toEqual(ok({ dropped: true }));
    expect(journal.drop('Curlew', 'a')).toEqual(ok({ dropped: false }));
    expect(journal.drop('Curlew', '../a')).toEqual(ok({ dropped: false }));
    expect(kept()).toEqual([]);
    expect(onDisk().some((name) => name.endsWith('a.put-away.json'))).toBe(true);
  });

  it('passes over what a crash left half, and what is damaged', () => {
    const journal = journalAt();
    journal.keep('Curlew', check('a'));
    const place = join(folder, 'bench', readdirSync(join(folder, 'bench'))[0]!);
    writeFileSync(join(place, 'a.json.0f0f.part'), '{"project":"Cur');
    writeFileSync(join(place, 'b.json'), '{"project":"Curlew","at":"x","check":{"id":"b"}}');
    writeFileSync(join(place, 'c.json'), 'not at all');
    expect(kept()).toEqual(['a AB']);
    expect(onDisk().some((name) => name.endsWith('b.json'))).toBe(true);
  });

  it.skipIf(process.getuid?.() === 0 || process.platform === 'win32')(
    'says when it may not write',
    () => {
      chmodSync(folder, 0o500);
      const reply = journalAt().keep('Curlew', check('a'));
      chmodSync(folder, 0o700);
      expect(!reply.ok && reply.error.message).toMatch(/could not be kept: this user may not/);
    },
  );

  it('says when the place is no folder, and leaves nothing behind', () => {
    mkdirSync(join(folder, 'deep'));
    writeFileSync(join(folder, 'deep', 'bench'), 'a file');
    const reply = makeBenchJournal(join(folder, 'deep')).keep('Curlew', check('a'));
    expect(!reply.ok && reply.error.message).toMatch(/^The measurements could not be kept: /);
    expect(onDisk()).toEqual(['deep', join('deep', 'bench')]);
  });

  it('is asked through the door', async () => {
    const ask = createAsk({ carrier: 'loopback', journal: journalAt() });
    await ask('bench.keep', { project: 'Curlew', check: check('a') });
    const reply = (await ask('bench.kept', { project: 'Curlew' })) as { ok: true; value: Kept };
    expect(reply.value.checks.map((one) => one.project)).toEqual(['Curlew']);
    const wrong = await ask('bench.keep', { project: 'Curlew', check: { id: 'a' } });
    expect(wrong.ok).toBe(false);
  });
});

describe('the folder of this user', () => {
  it('is that of the platform, unless another is named', () => {
    expect(dataFolder({ LAPWRIGHT_DATA: '/x' }, 'linux', '/people/a')).toBe('/x');
    expect(dataFolder({}, 'linux', '/people/a')).toBe(
      join('/people/a', '.local', 'state', 'lapwright'),
    );
    expect(dataFolder({ XDG_STATE_HOME: '/s' }, 'linux', '/people/a')).toBe(
      join('/s', 'lapwright'),
    );
    expect(dataFolder({ LOCALAPPDATA: '/l' }, 'win32', '/u')).toBe(join('/l', 'Lapwright'));
    const mac = join('/u', 'Library', 'Application Support', 'Lapwright');
    expect(dataFolder({}, 'darwin', '/u')).toBe(mac);
  });
});
