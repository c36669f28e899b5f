/**
 * A program that is killed (SIGKILL) at any moment while it keeps and saves: the file is the old or the new one,
 * whole, so is the copy beside it, and the newest change is in the file or offered again.
 *
 * `LAPWRIGHT_KILLS=n` kills n times.
 */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdirSync, mkdtempSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { build } from 'vite';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { root } from '../../../src/launch/root.mjs';
import { makeProjectFiles } from '../../../src/main/files/project-files.ts';
import { stampOf } from '../../../src/main/files/stamp.ts';
import { content, demo, names, text, told } from './places.ts';

const KILLS = Number(process.env.LAPWRIGHT_KILLS ?? 500);
/** Side by side, each with folders of its own. */
const LANES = 2;
/** Longest time from the first word to the kill, ms: some dozens of savings. */
const LONGEST = 25;

let top: string;
let writer: string;
beforeAll(async () => {
  top = realpathSync.native(mkdtempSync(join(tmpdir(), 'lapwright-')));
  await build({
    configFile: false,
    root,
    logLevel: 'error',
    build: {
      ssr: join(import.meta.dirname, 'tireless-writer.ts'),
      outDir: top,
      emptyOutDir: false,
      minify: true,
      rolldownOptions: { output: { entryFileNames: 'writer.mjs' } },
    },
    ssr: { noExternal: true },
  });
  writer = join(top, 'writer.mjs');
});
afterAll(() => rmSync(top, { recursive: true, force: true, maxRetries: 5 }));

const nameOf = (number: number): string => `Change ${number}`;
const textOf = (number: number): string => text({ ...demo, name: nameOf(number) });
const numberOf = (name: string): number => Number(name.replace('Change ', ''));

/** What a writer said before it died: the last number of each thing that it had done. */
async function runAndKill(data: string, path: string, first: number, keeps: number) {
  const child = spawn(process.execPath, [writer, data, path, String(first), String(keeps)], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  let said = '';
  child.stdout.setEncoding('utf8').on('data', (part: string) => {
    said += part;
  });
  const gone = once(child, 'close');
  await Promise.race([once(child.stdout, 'data'), gone]);
  await pause(Math.random() * LONGEST);
  child.kill('SIGKILL');
  await gone;
  expect([child.signalCode, child.exitCode]).toEqual(['SIGKILL', null]);
  const last = (what: string): number =>
    Number([...said.matchAll(new RegExp(`^${what} (\\d+)$`, 'gm'))].at(-1)?.[1] ?? 0);
  return { kept: last('kept'), saved: last('saved') };
}

/** What the kills met. */
const met = { inPart: 0, savedUnsaid: 0, offered: 0 };

async function lane(number: number, kills: number): Promise<void> {
  const data = join(top, `data-${number}`);
  const work = join(top, `work-${number}`);
  for (const folder of [data, work]) mkdirSync(folder);
  const path = join(work, 'curlew.lapwright');
  writeFileSync(path, textOf(0));
  let stands = 0;
  for (let kill = 0; kill < kills; kill += 1) {
    const keeps = 1 + (kill % 4);
    const first = stands + keeps - (stands % keeps);
    const done = await runAndKill(data, path, first, keeps);

    // The old or the new one, whole.
    const now = content(path);
    const file = numberOf((JSON.parse(now) as { name: string }).name);
    expect(now).toBe(textOf(file));
    expect([done.saved || stands, (done.saved || first - keeps) + keeps]).toContain(file);
    if (names(work).includes('curlew.lapwright.previous')) {
      const before = content(`${path}.previous`);
      const copy = numberOf((JSON.parse(before) as { name: string }).name);
      expect(before).toBe(textOf(copy));
      expect(copy).toBeLessThanOrEqual(file);
    }

    // As the next start finds it.
    const next = makeProjectFiles({ data, dialogs: false, silence: null });
    told(next.giveFolder(work));
    const { kept } = told(next.recovery.kept([], 'next'));
    expect(kept.length).toBeLessThanOrEqual(1);
    const offered = kept[0] ? told(next.recovery.open(kept[0].recovery)).document : null;
    const newest = Math.max(file, offered ? numberOf(offered.name) : 0);
    expect(newest).toBeGreaterThanOrEqual(done.kept);
    if (offered) {
      expect(text(offered)).toBe(textOf(numberOf(offered.name)));
      expect(numberOf(offered.name)).toBeGreaterThanOrEqual(done.kept);
    } else {
      // Only what is saved is not offered.
      expect(file).toBeGreaterThanOrEqual(done.kept);
    }

    // And goes on: what a kill left is in nobody's way.
    const parts = names(work).filter((name) => name.endsWith('.part'));
    // The new text, the copy, and the lock.
    expect(parts.length).toBeLessThanOrEqual(3);
    for (const part of parts) rmSync(join(work, part));
    met.inPart += parts.length > 0 ? 1 : 0;
    met.savedUnsaid += file > (done.saved || stands) ? 1 : 0;
    met.offered += offered ? 1 : 0;
    stands = newest + 1;
    told(
      next.save(
        path,
        { ...demo, name: nameOf(stands) },
        { expect: stampOf(Buffer.from(now)), over: false },
      ),
    );
    if (offered) told(next.recovery.drop('the-document'));
    next.close();
  }
}

describe('a program that is killed while it saves', () => {
  it(`loses nothing, ${KILLS} times`, async () => {
    const each = Math.ceil(KILLS / LANES);
    await Promise.all(Array.from({ length: LANES }, (_one, number) => lane(number, each)));
    console.info(`killed ${each * LANES} times: ${JSON.stringify(met)}`);
    // The kills fell into the writing itself, and into what is between.
    expect(met.inPart).toBeGreaterThan(KILLS / 50);
    expect(met.offered).toBeGreaterThan(KILLS / 50);
  }, 900_000);
});
