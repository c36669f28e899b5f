/** Rows of results kept on disk while no project file has them. */
import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { createAsk } from '../../src/main/ask.ts';
import { makeRowJournal } from '../../src/main/files/row-journal.ts';
import type { KeptRow, KeptSets } from '../../src/shared/kept-rows.ts';
import { ok, type Reply } from '../../src/shared/reply.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'lapwright-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const row = (coupon: string): KeptRow => ({ text: { coupon, load_n: '' }, good: null });
const journal = () => makeRowJournal(folder, () => new Date('2026-03-01T08:00:00Z'));
const coupons = (reply: Reply<KeptSets>): Record<string, string[]> => {
  if (!reply.ok) throw new Error(reply.error.message);
  return Object.fromEntries(
    reply.value.sets.map(({ setId, rows }) => [setId, rows.map(({ text }) => text.coupon!)]),
  );
};
const onDisk = (): string[] =>
  readdirSync(folder, { recursive: true })
    .map(String)
    .filter((name) => name.endsWith('.json'));

describe('the journal of rows', () => {
  it('gives back the last of each set, by project, also to a program that starts anew', () => {
    journal().keep('Curlew', 'd1002', [row('1')]);
    journal().keep('Curlew', 'd1002', [row('1'), row('2')]);
    journal().keep('Curlew', 'tube', [row('7')]);
    journal().keep('Heron', 'd1002', [row('9')]);
    expect(coupons(journal().kept('Curlew'))).toEqual({ d1002: ['1', '2'], tube: ['7'] });
    expect(coupons(journal().kept('Heron'))).toEqual({ d1002: ['9'] });
    expect(coupons(journal().kept('Plover'))).toEqual({});
  });

  it('leaves no file where there is no row any more', () => {
    journal().keep('Curlew', 'd1002', [row('1')]);
    expect(onDisk()).toHaveLength(1);
    expect(journal().keep('Curlew', 'd1002', [])).toEqual(ok({ at: null }));
    expect(onDisk()).toEqual([]);
    expect(journal().keep('Curlew', 'd1002', [])).toEqual(ok({ at: null }));
  });

  it('puts away without deleting', () => {
    journal().keep('Curlew', 'd1002', [row('1')]);
    expect(journal().drop('Curlew', 'd1002')).toEqual(ok({ dropped: true }));
    writeFileSync(join(folder, 'coupons', 'other.json'), '{}');
    expect(journal().drop('Curlew', '../other')).toEqual(ok({ dropped: false }));
    rmSync(join(folder, 'coupons', 'other.json'));
    expect(coupons(journal().kept('Curlew'))).toEqual({});
    expect(onDisk().map((name) => name.endsWith('d1002.put-away.json'))).toEqual([true]);
  });

  it('passes over what is damaged or of another shape', () => {
    journal().keep('Curlew', 'd1002', [row('1')]);
    const place = join(folder, 'coupons', readdirSync(join(folder, 'coupons'))[0]!);
    writeFileSync(join(place, 'a.json'), '{"project":"Cur');
    const odd = {
      project: 'Curlew',
      at: '2026-03-01',
      setId: 'b',
      rows: [{ text: { coupon: 1 } }],
    };
    writeFileSync(join(place, 'b.json'), JSON.stringify(odd));
    expect(coupons(journal().kept('Curlew'))).toEqual({ d1002: ['1'] });
  });

  it('is asked through the door, and is not there in a terminal', async () => {
    const ask = createAsk({ carrier: 'loopback', rowJournal: journal() });
    const asked = { project: 'Curlew', setId: 'd1002', rows: [row('1')] };
    expect(await ask('rows.keep', asked)).toEqual(ok({ at: '2026-03-01T08:00:00.000Z' }));
    const reply = (await ask('rows.kept', { project: 'Curlew' })) as Reply<KeptSets>;
    expect(coupons(reply)).toEqual({ d1002: ['1'] });
    // No path leads out of the folder.
    expect((await ask('rows.keep', { ...asked, setId: '../x' })).ok).toBe(false);
    expect(await ask('rows.drop', { project: 'Curlew', setId: 'd1002' })).toEqual(
      ok({ dropped: true }),
    );
    const terminal = createAsk({ carrier: 'terminal' });
    expect(await terminal('rows.keep', asked)).toMatchObject({
      ok: false,
      error: { code: 'bad-request' },
    });
  });
});
