/** What long requests tell while they work; the answer is the same whoever follows. */
import { describe, expect, it } from 'vitest';
import { mergeChecks } from '../../src/main/handlers/check.ts';
import type { Share } from '../../src/main/jobs/progress.ts';
import type { Reply } from '../../src/shared/reply.ts';
import type { CheckReport, JointSummary } from '../../src/shared/reports.ts';
import { ask, curlew, value } from './asking.ts';

describe('long requests', () => {
  /** Asks, and gives back every step that was told. */
  async function followed(name: string, input: unknown) {
    const ticks: [done: number, total: number, what?: string | undefined][] = [];
    const reply = await ask(name, input, { progress: (...tick) => ticks.push([...tick]) });
    expect(reply).toMatchObject({ ok: true });
    return ticks;
  }
  const grows = (ticks: readonly [number, number, unknown?][]): boolean =>
    ticks.every(([done], i) => i === 0 || done >= ticks[i - 1]![0]);

  it('tell each joint that is checked, and more often than once a case, up to the last', async () => {
    const document = await curlew();
    const ticks = await followed('project.check', { document });
    const cases = document.joints.reduce((sum, { loads }) => sum + loads.length, 0);
    expect(new Set(ticks.map(([, total]) => total)).size).toBe(1);
    const names = ticks.map(([, , what]) => what);
    // The quickest first.
    expect(names.filter((name, i) => name !== names[i - 1])).toEqual([
      'Tail strut lug',
      'Landing leg',
      'Boom tip to motor mount',
      'Boom root',
    ]);
    expect(new Set(ticks.map(([done]) => done)).size).toBeGreaterThan(cases);
    // The last takes half of the time.
    const [begun] = ticks.find(([, , what]) => what === 'Boom root')!;
    expect(begun / ticks[0]![1]).toBeCloseTo(0.5, 1);
    expect(grows(ticks)).toBe(true);
    const [done, total] = ticks.at(-1)!;
    expect(done).toBe(total);
  });

  it('show each joint of a check as the report will hold it, in the project’s own order there', async () => {
    const document = await curlew();
    const found: JointSummary[] = [];
    const reply = await ask('project.check', { document }, { found: (one) => found.push(one) });
    const { joints } = (reply as { value: CheckReport }).value;
    expect(joints.map(({ jointId }) => jointId)).toEqual(document.joints.map(({ id }) => id));
    expect(found).toHaveLength(joints.length);
    expect(found[0]!.name).toBe('Tail strut lug');
    for (const one of found) {
      expect(one).toEqual(joints.find(({ jointId }) => jointId === one.jointId));
    }
  });

  it('count a joint that cannot be computed, or has no load, as one that is done', async () => {
    const document = await curlew();
    const [, , leg] = document.joints;
    if (leg?.type !== 'sleeve-single') throw new Error('The leg is a sleeve.');
    const thick = { ...leg, id: 'thick', sleeve: { ...leg.sleeve, atRoot: 12 } };
    const joints = [{ ...leg, loads: [] }, thick];
    const input = { document: { ...document, joints } };
    const { joints: judged } = await value<CheckReport>('project.check', input);
    expect(judged.map(({ refused }) => refused === null)).toEqual([true, false]);
    const ticks = await followed('project.check', input);
    const [done, total] = ticks.at(-1)!;
    expect(done).toBe(total);
    expect(grows(ticks)).toBe(true);
  });

  it('tell the overlaps of a sweep', async () => {
    const document = await curlew();
    const ticks = await followed('joint.sweep', { document, jointId: 'boom-tip', points: 5 });
    expect(grows(ticks)).toBe(true);
    expect(ticks.filter(([, , what]) => what?.startsWith('overlap '))).toHaveLength(5);
    expect(ticks.every(([done, total]) => done < total)).toBe(true);
    expect(new Set(ticks.map(([, total]) => total)).size).toBe(1);
  });

  it('answer the same, followed or not, with an id or without', async () => {
    const document = await curlew();
    document.joints.splice(1);
    const plain = await ask('project.check', { document });
    const input = { document, job: 'check-1' };
    expect(await ask('project.check', input, { progress: () => undefined })).toEqual(plain);
  });
});

describe('a check in shares', () => {
  const part = (document: unknown, share: Share) =>
    ask('project.check', { document }, { share }) as Promise<Reply<CheckReport>>;
  const parts = (document: unknown, of: number) =>
    Promise.all(Array.from({ length: of }, (_part, i) => part(document, { part: i, of })));

  it.each([2, 3])('of %d is the same, in the same order', async (of) => {
    const document = await curlew();
    const replies = await parts(document, of);
    expect(mergeChecks(replies)).toEqual(await ask('project.check', { document }));
    const [first] = replies;
    expect(first!.ok && first!.value.joints).toHaveLength(2);
  });

  it('says what is wrong with the project, once', async () => {
    const document = { ...(await curlew()), name: '' };
    expect(mergeChecks(await parts(document, 2))).toEqual(await ask('project.check', { document }));
  });

  it('steps together through as many steps as the whole', async () => {
    const document = await curlew();
    const last = await Promise.all(
      [0, 1, 2].map(async (i) => {
        let tick: number[] = [];
        const progress = (done: number, total: number) => {
          tick = [done, total];
        };
        await ask('project.check', { document }, { progress, share: { part: i, of: 3 } });
        return tick;
      }),
    );
    const [, total] = last[0]!;
    expect(last.reduce((sum, [done = 0]) => sum + done, 0)).toBe(total);
    expect(last.every(([, all]) => all === total)).toBe(true);
  });
});
