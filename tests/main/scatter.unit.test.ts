/** Tolerances, what matters and scatter, through the door. */
import { describe, expect, it, vi } from 'vitest';
import type { Project } from '../../src/shared/project.ts';
import type { Reply } from '../../src/shared/reply.ts';
import type {
  InputTolerance,
  MattersReport,
  ScatterReport,
} from '../../src/shared/reports-scatter.ts';
import { ask, curlew } from './asking.ts';

vi.setConfig({ testTimeout: 180_000 });

async function value<T>(name: string, input: unknown, context = {}): Promise<T> {
  const reply = (await ask(name, input, context)) as Reply<T>;
  if (!reply.ok) throw new Error(`${reply.error.field}: ${reply.error.message}`);
  return reply.value;
}
const jointId = 'landing-leg';
const few = [
  { input: 'shear-yield', distribution: 'normal', spread: 0.06 },
  { input: 'load', distribution: 'triangular', spread: 0.1 },
] as const;

describe('tolerances', () => {
  it('are listed for every input that the joint has, with their origin', async () => {
    const document = await curlew();
    const typical = await value<InputTolerance[]>('joint.tolerances', { document, jointId });
    expect(typical).toHaveLength(18);
    expect(typical.find(({ input }) => input === 'gap')!.origin).toBe('joint');
    document.settings.tolerances = [...few];
    const given = await value<InputTolerance[]>('joint.tolerances', { document, jointId });
    expect(given.filter(({ origin, spread }) => origin === 'project' && spread > 0)).toHaveLength(
      2,
    );
    // The others are there to be given a spread.
    expect(given.find(({ input }) => input === 'overlap')).toMatchObject({ spread: 0, unit: 'mm' });
    const strip = { document, jointId: 'tail-strut' };
    const flat = await value<InputTolerance[]>('joint.tolerances', strip);
    expect(flat.map(({ input }) => input)).not.toContain('offset');
    expect(flat.find(({ input }) => input === 'tube-wall')!.label).toBe('strip thickness');
  });
});

describe('limits within the reach of the tolerances', () => {
  const flagsOf = async (tolerances: Project['settings']['tolerances']): Promise<string[]> => {
    const document = await curlew();
    document.settings.tolerances = tolerances;
    const { flags } = await value<MattersReport>('joint.matters', { document, jointId });
    return flags.map(({ code }) => code);
  };

  it('are told: the table of temperatures, gaps and loads that are held', async () => {
    // Hard landing is wet at 60 °C, where the table of wet properties ends.
    expect(
      await flagsOf([{ input: 'service-temperature', distribution: 'uniform', spread: 5 }]),
    ).toContain('outside-table');
    expect(await flagsOf([{ input: 'gap', distribution: 'normal', spread: 0.1 }])).toContain(
      'held-at-limit',
    );
    // Two standard deviations take all of the load away: it is computed at a twentieth.
    expect(await flagsOf([{ input: 'load', distribution: 'normal', spread: 0.5 }])).toContain(
      'held-at-limit',
    );
  });

  it('are not told where none is reached', async () => {
    const codes = await flagsOf([...few]);
    expect(codes).not.toContain('outside-table');
    expect(codes).not.toContain('held-at-limit');
  });
});

describe('what matters', () => {
  it('starts from the middle, names the joint’s own margin, and tells how far it is', async () => {
    const document = await curlew();
    document.settings.tolerances = [...few];
    const told: number[] = [];
    const progress = (done: number, total: number) => told.push(done / total);
    const { bars, middle, own, flags } = await value<MattersReport>(
      'joint.matters',
      { document, jointId },
      { progress },
    );
    expect(bars.map(({ input }) => input).sort()).toEqual(['gap', 'load', 'offset', 'shear-yield']);
    for (const [i, bar] of bars.entries()) {
      if (i > 0) expect(bar.swing).toBeLessThanOrEqual(bars[i - 1]!.swing);
    }
    const load = bars.find(({ input }) => input === 'load')!;
    expect([load.from, load.to]).toEqual([-0.1, 0.1]);
    // More load, less margin; in between lies the middle.
    expect(load.high.margin).toBeLessThan(middle.margin);
    expect(load.low.margin).toBeGreaterThan(middle.margin);
    expect(own.margin).toBeLessThan(middle.margin);
    expect(flags.map(({ code }) => code)).toEqual(['assumed-distributions', 'scatter-knockdown']);
    expect(told.at(-1)).toBe(1);
    expect([...told]).toEqual([...told].sort((a, b) => a - b));
  });
});

describe('scatter', () => {
  it('answers the same for a seed, counts every sample, and bounds its share', async () => {
    const document = await curlew();
    document.settings.tolerances = [...few];
    // Long enough that some hold and some do not.
    document.joints[2]!.overlap = 18;
    const input = { document, jointId, samples: 3000, seed: 5 };
    const told: [number, number][] = [];
    const progress = (done: number, total: number) => told.push([done, total]);
    const report = await value<ScatterReport>('joint.scatter', input, { progress });
    expect(await value('joint.scatter', input)).toEqual(report);
    expect(report.method).toBe('fitted');
    const { counts } = report.histogram;
    expect(counts.reduce((sum, n) => sum + n, 0)).toBe(3000);
    expect(report.governs.reduce((sum, { count }) => sum + count, 0)).toBe(3000);
    expect(report.below.low).toBeLessThan(report.below.share);
    expect(report.below.high).toBeGreaterThan(report.below.share);
    expect(report.check!.checked).toBe(200);
    expect(told.every(([done, total]) => done <= total)).toBe(true);
    expect(told.at(-1)![0]).toBe(told.at(-1)![1]);
  });

  it('computes each sample where few are asked for, and others for another seed', async () => {
    const document = await curlew();
    document.settings.tolerances = [...few];
    const input = { document, jointId, samples: 100, method: 'each' };
    const { check, exact, mean } = await value<ScatterReport>('joint.scatter', input);
    expect([check, exact]).toEqual([null, 100]);
    const other = await value<ScatterReport>('joint.scatter', { ...input, seed: 6 });
    expect(other.mean).not.toBe(mean);
  });

  it.each([
    ['loads', (document: Project) => document.joints[2]!.loads.splice(0), 'has no load case'],
    [
      'tolerances',
      (document: Project) => {
        const still = ['gap', 'offset'] as const;
        document.settings.tolerances = still.map((input) => ({
          input,
          distribution: 'normal',
          spread: 0,
        }));
      },
      'Nothing varies',
    ],
  ])('refuses a joint without %s', async (field, change, message) => {
    const document = await curlew();
    change(document);
    const reply = (await ask('joint.scatter', { document, jointId })) as Reply<ScatterReport>;
    if (reply.ok) throw new Error('was not refused');
    expect(reply.error.code).toBe('bad-input');
    expect(reply.error.field).toContain(field);
    expect(reply.error.message).toContain(message);
  });
});
