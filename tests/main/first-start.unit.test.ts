import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { createAsk } from '../../src/main/ask.ts';
import { isFirstStart } from '../../src/main/files/first-start.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'lapwright-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

it('is told once to each user', async () => {
  const data = join(folder, 'not', 'there', 'yet');
  const ask = createAsk({ carrier: 'loopback', firstStart: () => isFirstStart(data) });
  expect(await ask('app.first-start', {})).toEqual({ ok: true, value: { first: true } });
  expect(await ask('app.first-start', {})).toEqual({ ok: true, value: { first: false } });
  expect(isFirstStart(join(folder, 'another'))).toBe(true);
});

it('is always so where nothing can be kept', async () => {
  const file = join(folder, 'file');
  writeFileSync(file, '');
  expect([isFirstStart(file), isFirstStart(join(file, 'in'))]).toEqual([true, true]);
  expect(await createAsk({ carrier: 'terminal' })('app.first-start', {})).toMatchObject({
    value: { first: true },
  });
});
