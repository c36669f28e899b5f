/** What stands on the disk, looked at: an answer counts for the file that was asked about, and never while it is written. */
import { createRoot, createSignal } from 'solid-js';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { createWatch, EVERY, type Watch } from '../../src/renderer/state/files/watch.ts';
import type { Bridge } from '../../src/shared/contract.ts';
import { ok, type Reply, refuse } from '../../src/shared/reply.ts';
import type { FileOnDisk, FileStamp } from '../../src/shared/reports-files.ts';

const AT = '2026-03-01T09:00:00.000Z';
const fileAt = (name: string, stamp: string): FileOnDisk => ({
  path: `/disk/mira/${name}`,
  name,
  folder: '/disk/mira',
  stamp,
  at: AT,
  writable: true,
});
const mine = fileAt('mast.lapwright.json', 'as-opened');
const others = ok<FileStamp>({ stamp: 'by-another', at: AT });

/** Questions that wait for their answers. */
let asked: { readonly path: string; answer(reply: Reply<FileStamp>): Promise<void> }[];
const bridge = {
  ask: (_name: string, { path }: { path: string }) =>
    new Promise((done) => {
      const answer = async (reply: Reply<FileStamp>): Promise<void> => {
        done(reply);
        await Promise.resolve().then(() => undefined);
      };
      asked.push({ path, answer });
    }),
} as unknown as Bridge;

const [file, setFile] = createSignal<FileOnDisk | null>(mine);
const [busy, setBusy] = createSignal(false);
let watch: Watch;
let dispose = (): void => {};
beforeEach(() => {
  asked = [];
  setFile(mine);
  setBusy(false);
  vi.useFakeTimers();
  dispose = createRoot((end) => {
    watch = createWatch(bridge, file, busy);
    return end;
  });
});
afterEach(() => {
  dispose();
  vi.useRealTimers();
});

describe('an answer about the file', () => {
  it('says what another program did to it, and that it is back', async () => {
    const looking = watch.look();
    await asked[0]!.answer(others);
    await looking;
    expect(watch.outside()).toEqual({ kind: 'changed', stamp: 'by-another', at: AT });
    const again = watch.look();
    await asked[1]!.answer(ok({ stamp: null, at: null }));
    await again;
    expect(watch.outside()).toEqual({ kind: 'gone', stamp: null });
    const last = watch.look();
    await asked[2]!.answer(ok({ stamp: 'as-opened', at: AT }));
    await last;
    expect(watch.outside()).toBeNull();
  });

  it('is nothing to another file that was opened meanwhile', async () => {
    const looking = watch.look();
    setFile(fileAt('heron.lapwright.json', 'heron'));
    await asked[0]!.answer(others);
    await looking;
    expect(watch.outside()).toBeNull();
  });

  it('is nothing once the page has written it: what was asked about stands there no more', async () => {
    const looking = watch.look();
    setBusy(true);
    setFile({ ...mine, stamp: 'as-saved' });
    setBusy(false);
    // The disk was looked at in the middle of it.
    await asked[0]!.answer(ok({ stamp: 'as-saved', at: AT }));
    await looking;
    expect(watch.outside()).toBeNull();
  });

  it('is nothing while the page writes it', async () => {
    const looking = watch.look();
    setBusy(true);
    await asked[0]!.answer(ok({ stamp: 'half-written', at: AT }));
    await looking;
    expect(watch.outside()).toBeNull();
    // Nor is it asked about then.
    await watch.look();
    expect(asked).toHaveLength(1);
  });

  it('that is a refusal changes nothing, and the next look asks again', async () => {
    const looking = watch.look();
    await asked[0]!.answer(refuse('internal', '', 'The disk does not answer.'));
    await looking;
    expect(watch.outside()).toBeNull();
    vi.advanceTimersByTime(EVERY);
    expect(asked.map(({ path }) => path)).toEqual([mine.path, mine.path]);
    // One at a time: that one is still on its way.
    vi.advanceTimersByTime(3 * EVERY);
    expect(asked).toHaveLength(2);
  });
});
