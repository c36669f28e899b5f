/** Variants and comparisons: what is made equal is equal, and the reasons are in the figures. */
import { describe, expect, it, vi } from 'vitest';
import type { Joint, Project } from '../../src/shared/project.ts';
import type { Reply } from '../../src/shared/reply.ts';
import type { JointReport, StressReport } from '../../src/shared/reports.ts';
import type { CompareReport, Equal, VariantReport } from '../../src/shared/reports-compare.ts';
import type { SpringsReport } from '../../src/shared/reports-springs.ts';
import { expectClose } from '../support/close.ts';
import { ask, curlew, value } from './asking.ts';

vi.setConfig({ testTimeout: 600_000 });
const variant = (document: Project, jointId: string, lap: 'single' | 'double', equal: Equal) =>
  value<VariantReport>('joint.variant', { document, jointId, lap, equal });
const withVariant = (document: Project, { of, joint }: VariantReport): Project => ({
  ...document,
  variants: [{ of, joint }],
});
const lowest = async (document: Project, joint: Joint): Promise<number> => {
  const alone = { ...document, joints: [joint], variants: [] };
  const { margins } = await value<JointReport>('joint.analyse', {
    document: alone,
    jointId: joint.id,
    focus: {},
  });
  return margins[0]!.margin;
};

describe('the other lap', () => {
  it('at equal overlap keeps all but the wall that comes', async () => {
    const document = await curlew();
    const { joint, changed, equal } = await variant(document, 'landing-leg', 'double', 'overlap');
    const leg = document.joints.find(({ id }) => id === 'landing-leg')!;
    if (leg.type !== 'sleeve-single' || joint.type !== 'sleeve-double') throw new Error('laps');
    expect(joint.overlap).toBe(leg.overlap);
    expect(joint.spigot).toEqual(leg.sleeve);
    expect(joint.socket).toEqual(leg.sleeve);
    expect(joint.id).not.toBe(leg.id);
    expect(equal).toBeNull();
    expect(changed.map(({ message }) => message).join()).toContain('a socket outside the tube');
  });

  it('at equal mass weighs the same: walls scaled, overlap kept', async () => {
    const document = await curlew();
    for (const [id, lap] of [
      ['boom-root', 'single'],
      ['boom-tip', 'double'],
      ['tail-strut', 'single'],
    ] as const) {
      const made = await variant(document, id, lap, 'mass');
      const masses = await Promise.all(
        [
          { document, jointId: id },
          { document: { ...document, joints: [made.joint] }, jointId: made.joint.id },
        ].map(async (one) => (await value<SpringsReport>('joint.springs', one)).mass.added!),
      );
      expectClose(masses[1]!, masses[0]!, { relative: 3e-4 }, `${id} by the other handler`);
      expect(made.equal).toEqual({ what: 'mass', of: masses[0], variant: masses[1] });
      expect(made.joint.overlap).toBe(document.joints.find((joint) => joint.id === id)!.overlap);
    }
  });

  it('at equal margin is the shortest overlap of the step that reaches it', async () => {
    const document = await curlew();
    document.settings.steps = { overlap: 0.5, wall: 0.1, gap: 0.05 };
    const { joint, equal } = await variant(document, 'landing-leg', 'double', 'margin');
    const leg = document.joints.find(({ id }) => id === 'landing-leg')!;
    const target = await lowest(document, leg);
    expectClose(equal!.of, target, { absolute: 1e-9 }, 'margin of the joint');
    expect(joint.overlap / 0.5).toBe(Math.round(joint.overlap / 0.5));
    expect(joint.overlap).toBeLessThan(leg.overlap);
    expect(await lowest(document, joint)).toBeGreaterThanOrEqual(target);
    const shorter = { ...joint, overlap: joint.overlap - 0.5 };
    expect(await lowest(document, shorter)).toBeLessThan(target);
  });

  it('is refused with the reason where it cannot be had', async () => {
    const document = await curlew();
    const refused = async (jointId: string, lap: string, equal: Equal) => {
      const reply = (await ask('joint.variant', {
        document,
        jointId,
        lap,
        equal,
      })) as Reply<VariantReport>;
      return reply.ok ? null : reply.error;
    };
    expect(await refused('boom-root', 'double', 'overlap')).toMatchObject({
      field: 'joints.0.type',
      message: expect.stringContaining('is a double lap already'),
    });
    // What stops the single lap however long it is made is named.
    expect(await refused('tail-strut', 'single', 'margin')).toMatchObject({
      code: 'not-computable',
      message: expect.stringContaining('adhesive, peel with shear stops it'),
    });
    const tip = document.joints.find(({ id }) => id === 'boom-tip')!;
    if (tip.type !== 'sleeve-single') throw new Error('laps');
    tip.sleeve = { ...tip.sleeve, atRoot: 0.15, atMouth: 0.15 };
    expect(await refused('boom-tip', 'double', 'mass')).toMatchObject({
      message: expect.stringMatching(/its spigot would be 0\.0\d+ mm thick/),
    });
    tip.tube.wall = 15.8;
    expect(await refused('boom-tip', 'double', 'overlap')).toMatchObject({
      field: 'joints.1.type',
      message: expect.stringContaining('does not fit inside the tube'),
    });
    delete document.adhesives[0]!.density;
    expect(await refused('landing-leg', 'double', 'mass')).toMatchObject({
      message: expect.stringContaining('give a density to "Toughened epoxy paste"'),
    });
  });
});

describe('joints side by side', () => {
  it('show that a double lap carries clearly more at equal overlap, and why', async () => {
    const document = await curlew();
    for (const [id, least] of [
      ['landing-leg', 1.8],
      ['boom-tip', 1.15],
    ] as const) {
      const made = await variant(document, id, 'double', 'overlap');
      const { columns, sentences } = await value<CompareReport>('project.compare', {
        document: withVariant(document, made),
        columns: [{ joint: id }, { variant: made.joint.id }],
      });
      const [single, double] = columns;
      const ratio = double!.carried!.shear / single!.carried!.shear;
      expect(ratio).toBeGreaterThan(least);
      // The reasons: two bonds that share, more area, no more shear than before.
      expect(single!.bonds).toHaveLength(1);
      expect(double!.bonds).toHaveLength(2);
      const shares = double!.bonds.map(({ share }) => share);
      expectClose(shares[0]! + shares[1]!, 1, { absolute: 1e-9 }, 'shares');
      expect(Math.min(...shares)).toBeGreaterThan(0.3);
      const area = (column: typeof single): number =>
        column!.bonds.reduce((sum, bond) => sum + bond.area, 0);
      expect(area(double) / area(single)).toBeGreaterThan(1.8);
      expect(Math.abs(double!.bonds[1]!.strain)).toBeLessThan(Math.abs(single!.bonds[0]!.strain));
      const sentence = sentences[0]?.message;
      const whole = Math.round(shares[0]! * 100);
      // What helps stands behind the colon, not behind an "although".
      expect(sentence).toContain(
        `carries ${ratio.toFixed(2)} times the load of the single lap before its bond fails in shear: two bonds share the load ${whole} to ${100 - whole} %, the bonded area is ${(area(double) / area(single)).toFixed(2)} times as large`,
      );
    }
  });

  it('have the figures that each has by itself', async () => {
    const document = await curlew();
    const { columns, caseId } = await value<CompareReport>('project.compare', {
      document,
      columns: [{ joint: 'landing-leg' }, { joint: 'boom-tip' }],
      caseId: 'gust-cold',
    });
    expect(caseId).toBe('gust-cold');
    const theta = columns[0]!.stress!.theta;
    for (const column of columns) {
      const input = { document, jointId: column.id };
      const { margins } = await value<JointReport>('joint.analyse', { ...input, focus: {} });
      const bare = margins.map(({ remark: _remark, trough: _trough, ...margin }) => margin);
      expect(
        column.margins.map(({ remark: _remark, trough: _trough, ...margin }) => margin),
      ).toEqual(bare);
      expect(column.lowest!.margin).toBe(margins[0]!.margin);
      const focus = { caseId: 'gust-cold', gapState: 'nominal', theta };
      const stress = await value<StressReport>('joint.stress', { ...input, focus });
      expect(column.stress).toEqual(stress);
      const springs = await value<SpringsReport>('joint.springs', {
        ...input,
        caseId: 'gust-cold',
      });
      expect(column.stiffness).toEqual(springs.states[0]);
      expect(column.mass).toEqual(springs.mass);
      expect(column.print).toEqual(springs.print);
    }
  });

  it('say that a factor on other loads is no ratio of strength', async () => {
    const { sentences } = await value<CompareReport>('project.compare', {
      document: await curlew(),
      columns: [{ joint: 'landing-leg' }, { joint: 'boom-tip' }],
    });
    expect(sentences).toHaveLength(1);
    expect(sentences[0]?.message).toContain('the loads differ');
    expect(sentences[0]?.message).not.toContain('times the load of');
  });

  it('mark what differs and nothing else, the lap’s parts under one name', async () => {
    const document = await curlew();
    const made = await variant(document, 'boom-tip', 'double', 'mass');
    const { differences } = await value<CompareReport>('project.compare', {
      document: withVariant(document, made),
      columns: [{ joint: 'boom-tip' }, { variant: made.joint.id }],
    });
    const fields = differences.map(({ field }) => field);
    expect(fields).toContain('socket.atRoot');
    expect(fields).toContain('spigot.atRoot');
    // The socket is the sleeve of before: its material and gap are the same.
    expect(fields).not.toContain('socket.adherend');
    expect(fields).not.toContain('outerBond.gap');
    expect(fields.some((field) => field.startsWith('loads') || field.startsWith('tube'))).toBe(
      false,
    );
    const spigot = differences.find(({ field }) => field === 'spigot.atRoot')!;
    expect(spigot.values[0]).toBeNull();
    expect(spigot.unit).toBe('mm');
    for (const { values } of differences) expect(new Set(values).size).toBeGreaterThan(1);
  });

  it('keep a column that cannot be computed, with its reason at its place', async () => {
    const document = await curlew();
    const made = await variant(document, 'boom-tip', 'double', 'overlap');
    if (made.joint.type !== 'sleeve-double') throw new Error('laps');
    made.joint.spigot = { ...made.joint.spigot, atRoot: 40, atMouth: 40 };
    const { columns, sentences } = await value<CompareReport>('project.compare', {
      document: withVariant(document, made),
      columns: [{ joint: 'boom-tip' }, { variant: made.joint.id }],
    });
    expect(columns[1]!.refused).toMatchObject({ field: 'variants.0.joint.spigot.atRoot' });
    expect(columns[1]!.margins).toEqual([]);
    expect(columns[0]!.refused).toBeNull();
    expect(columns[0]!.carried).not.toBeNull();
    expect(sentences).toEqual([]);
  });

  it('are refused where there is no such joint, twice the same, or a case not carried', async () => {
    const document = await curlew();
    const refused = async (input: object) => {
      const reply = (await ask('project.compare', { document, ...input })) as Reply<CompareReport>;
      return reply.ok ? null : reply.error;
    };
    const leg = { joint: 'landing-leg' };
    expect(await refused({ columns: [leg, { variant: 'boom-tip' }] })).toMatchObject({
      code: 'not-found',
      field: 'variants',
    });
    expect(await refused({ columns: [leg, leg] })).toMatchObject({ code: 'bad-request' });
    expect(await refused({ columns: [leg] })).toMatchObject({ code: 'bad-request' });
    expect(await refused({ columns: [leg, { joint: 'boom-tip' }], caseId: 'rotor' })).toMatchObject(
      { code: 'not-found', field: 'joints.2.loads' },
    );
  });
});
