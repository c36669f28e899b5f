import { describe, expect, it, vi } from 'vitest';
import type { CompareReport, VariantReport } from '../../src/shared/reports-compare.ts';
import type { SpringsReport } from '../../src/shared/reports-springs.ts';
import { springsCsv, stiffnessFigure } from '../../src/shared/springs-text.ts';
import { answerOf, changed, file, lapwright, mastProject } from './lapwright.ts';

vi.setConfig({ testTimeout: 600_000 });

const mast = mastProject();
const jointId = 'mast-foot';

describe('springs', () => {
  const springs = (...more: string[]) =>
    lapwright(['springs', file('mast.json', mast), '--joint', jointId, ...more]);
  const answer = () =>
    answerOf('joint.springs', { document: mast, jointId }) as Promise<SpringsReport>;

  it('prints with --json exactly what the handler answers', async () => {
    expect(await springs('--json')).toEqual({
      code: 0,
      out: `${JSON.stringify(await answer())}\n`,
      err: '',
    });
  });

  it('prints with --csv the file that the app saves', async () => {
    const { out } = await springs('--csv');
    expect(out).toBe(`${springsCsv(await answer()).trimEnd()}\n`);
  });

  it('shows every spring with its unit, and the signs', async () => {
    const { code, out } = await springs();
    expect(code).toBe(0);
    for (const state of (await answer()).states) {
      for (const { stiffness } of state.springs) expect(out).toContain(stiffnessFigure(stiffness));
    }
    expect(out).toContain('N·mm/rad');
    expect(out).toMatch(/moment and rotation by the\s+right\s+hand/);
  });

  it('takes one case, and names those that the joint has for one that it has not', async () => {
    const { out } = await springs('--case', 'wind-hot', '--json');
    expect((JSON.parse(out) as SpringsReport).states).toHaveLength(1);
    const { code, err } = await springs('--case', 'wind-hott');
    expect(code).toBe(2);
    expect(err).toContain('Did you mean "wind-hot"?');
  });
});

describe('compare', () => {
  const two = changed({}, (joint) => [{ ...joint, id: 'mast-top', overlap: joint.overlap + 5 }]);
  const compare = (...more: string[]) =>
    lapwright(['compare', file('mast.json', two), '--joint', jointId, ...more]);

  it('prints with --json exactly what the handlers answer', async () => {
    const { out, code } = await compare('--with', 'mast-top', '--json');
    const value = await answerOf('project.compare', {
      document: two,
      columns: [{ joint: jointId }, { joint: 'mast-top' }],
    });
    expect({ out, code }).toEqual({ out: `${JSON.stringify(value)}\n`, code: 0 });
  });

  it('sets the joint beside its other lap, made equal as asked', async () => {
    const { out } = await compare('--lap', 'double', '--equal', 'overlap', '--json');
    const { joint } = (await answerOf('joint.variant', {
      document: two,
      jointId,
      lap: 'double',
      equal: 'overlap',
    })) as VariantReport;
    const value = await answerOf('project.compare', {
      document: { ...two, variants: [{ of: jointId, joint }] },
      columns: [{ joint: jointId }, { variant: joint.id }],
    });
    expect(out).toBe(`${JSON.stringify(value)}\n`);
    // Equal overlap is what is meant when nothing is said.
    expect((await compare('--lap', 'double', '--json')).out).toBe(out);
  });

  it('shows figures, margins, differences and the reason', async () => {
    const { out, code } = await compare('--with', 'mast-top', '--lap', 'double');
    expect(code).toBe(0);
    const { sentences, columns } = JSON.parse(
      (await compare('--with', 'mast-top', '--lap', 'double', '--json')).out,
    ) as CompareReport;
    expect(columns).toHaveLength(3);
    const flat = out.replace(/\s+/g, ' ');
    for (const { message } of sentences) expect(flat).toContain(message);
    expect(out).toMatch(/^overlap, mm +\d+ +\d+ +\d+$/m);
    expect(out).toMatch(/^lowest margin /m);
  });

  it('says what is missing or wrong', async () => {
    expect(await compare()).toMatchObject({
      code: 2,
      err: expect.stringContaining('two to four joints can be compared'),
    });
    expect((await compare('--equal', 'mass')).err).toContain('--equal needs --lap');
    expect((await compare('--with', 'mast-topp')).err).toContain('Did you mean "mast-top"?');
    expect((await compare('--with', 'a,b,c,d')).err).toContain('one to three ids');
    expect((await compare('--lap', 'triple')).err).toContain('single, double');
    expect((await compare('--lap', 'single')).err).toContain('is a single lap already');
  });
});
