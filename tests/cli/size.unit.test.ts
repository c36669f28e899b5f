/** `size` and `sizes`: what a person reads, and the same figures as the app for a program. */
import { describe, expect, it } from 'vitest';
import type { SizesReport, SizingReport } from '../../src/shared/reports.ts';
import { answerOf, changed, file, lapwright, mastProject } from './lapwright.ts';

const project = mastProject();
const jointId = project.joints[0]!.id;
const question = { vary: 'overlap', from: 10, to: 40, step: 2 } as const;
const words = ['--joint', jointId, '--from', '10', '--to', '40', '--step', '2'];

describe('size', () => {
  it('prints as JSON what the app is answered, to the last digit', async () => {
    const { code, out, err } = await lapwright([
      'size',
      file('m.json', project),
      ...words,
      '--json',
    ]);
    const answer = await answerOf('joint.size', { document: project, jointId, ...question });
    expect([code, err]).toEqual([0, '']);
    expect(JSON.parse(out)).toEqual(JSON.parse(JSON.stringify(answer)));
  });

  it('prints the answer, its check and what was varied', async () => {
    const { code, out } = await lapwright(['size', file('m.json', project), ...words]);
    const report = (await answerOf('joint.size', {
      document: project,
      jointId,
      ...question,
    })) as SizingReport;
    expect(code).toBe(0);
    expect(out).toContain('reaches the target of');
    expect(out).toContain('Overlap in steps of 2 mm.');
    for (const { value } of report.found!.checks) expect(out).toContain(`${value.toFixed(1)} mm`);
    expect(out).toMatch(/reached/);
  });

  it('exits 1 when nothing reaches the target, and says what stops it', async () => {
    const argv = ['size', file('m.json', project), ...words, '--target', '19'];
    const { code, out } = await lapwright(argv);
    expect(code).toBe(1);
    expect(out).toMatch(/No overlap from 10\.0 mm to 40\.0 mm reaches the target of \+19\.00/);
    expect(out).toContain('Below target at');
  });

  it('refuses what cannot be asked', async () => {
    const path = file('m.json', project);
    const wrong = async (...more: string[]) => {
      const { code, err } = await lapwright(['size', path, ...more]);
      expect(code).toBe(2);
      return err;
    };
    expect(await wrong()).toContain('--joint ID is missing');
    expect(await wrong('--joint', jointId, '--vary', 'length')).toContain('is not one of overlap');
    expect(await wrong('--joint', jointId, '--step', '0')).toContain('out of range');
    expect(await wrong('--joint', `${jointId}x`)).toContain('There is no joint');
    const unloaded = file('u.json', changed({ loads: [] }));
    const { code, err } = await lapwright(['size', unloaded, '--joint', jointId]);
    expect([code, err]).toEqual([2, expect.stringContaining('No load acts')]);
  });
});

describe('sizes', () => {
  const sized = changed({
    sizes: [
      { id: 's', name: 'Small', loadFactor: 0.6 },
      { id: 'l', name: 'Large', loadFactor: 0.9 },
    ],
  });

  it.each([true, false])('prints as JSON what the app is answered, each: %s', async (each) => {
    const argv = ['sizes', file('m.json', sized), '--joint', jointId, '--json'];
    const { code, out } = await lapwright(each ? [...argv, '--each'] : argv);
    const answer = await answerOf('joint.sizes', { document: sized, jointId, each });
    expect(code).toBe(0);
    expect(JSON.parse(out)).toEqual(JSON.parse(JSON.stringify(answer)));
  });

  it('prints a row for each size, the worst marked, and one overlap for all', async () => {
    const { out } = await lapwright(['sizes', file('m.json', sized), '--joint', jointId]);
    const report = (await answerOf('joint.sizes', {
      document: sized,
      jointId,
      each: false,
    })) as SizesReport;
    expect(out).toMatch(/Small +\+\d/);
    expect(out).toMatch(/Large +\+\d.*worst/);
    expect(out).toContain(`${report.common!.overlap.toFixed(1)} mm for all reaches the target`);
  });

  it('is refused for a joint without sizes', async () => {
    const { code, err } = await lapwright(['sizes', file('m.json', project), '--joint', jointId]);
    expect([code, err]).toEqual([2, expect.stringContaining('has no frame sizes')]);
  });
});
