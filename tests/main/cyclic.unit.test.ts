/** Load ratios and several cyclic cases, as a project has them and a reader is told of them. */
import { beforeAll, describe, expect, it } from 'vitest';
import type { Project } from '../../src/shared/project.ts';
import {
  type CheckReport,
  type CornersReport,
  isLowestOf,
  type JointReport,
  type Margin,
  type SweepReport,
  type Working,
} from '../../src/shared/reports.ts';
import { expectClose } from '../support/close.ts';
import { ask, curlew, value } from './asking.ts';

let document: Project;

/** The demonstration's boom tip under its rotor and a second cyclic case, at one pair of ratios. */
async function tip(ratios: { line?: number; rotor?: number } = {}): Promise<Project> {
  const project = await curlew();
  const joint = project.joints.find(({ id }) => id === 'boom-tip')!;
  const rotor = project.loadCases.find(({ id }) => id === 'rotor')!;
  const [adhesive] = project.adhesives;
  const loads = joint.loads.find((load) => load.case === 'rotor')!;
  return {
    ...project,
    adhesives: [
      {
        ...adhesive!,
        fatigue: {
          ...adhesive!.fatigue!,
          ...(ratios.line === undefined ? {} : { ratio: ratios.line }),
        },
      },
    ],
    loadCases: [
      { ...rotor, ...(ratios.rotor === undefined ? {} : { ratio: ratios.rotor }) } as never,
      { ...rotor, id: 'starts', name: 'Starts', cycles: 500_000 } as never,
    ],
    joints: [{ ...joint, loads: [loads, { ...loads, case: 'starts', moment: 24_000 }] } as never],
  };
}

const analyse = (of: Project): Promise<JointReport> =>
  value<JointReport>('joint.analyse', { document: of, jointId: 'boom-tip', focus: {} });
const rowOf = ({ margins }: JointReport, mode: Margin['mode']): Margin =>
  margins.find((one) => one.mode === mode)!;

beforeAll(async () => {
  document = await tip();
});

describe('two cyclic cases on one joint', () => {
  it('have a margin together, below that of each, which names both parts', async () => {
    const report = await analyse(document);
    const [all, one] = [rowOf(report, 'cyclic-damage'), rowOf(report, 'cyclic-shear')];
    expect(all.label).toBe('adhesive, all cycles together');
    expect(all.margin).toBeLessThan(one.margin - 0.01);
    const said =
      /^damage ([\d.]+) at the asked loads: Rotor vibration ([\d.]+), Starts ([\d.]+)$/.exec(
        all.remark,
      )!;
    expect(said, all.remark).not.toBeNull();
    const [sum, rotor, starts] = said.slice(1).map(Number);
    expectClose(rotor! + starts!, sum!, { relative: 0.01 }, 'sum of the parts');
    expect(sum! < 1).toBe(all.margin > 0);
    expect(all.restsOn).toBe(one.restsOn);
  });

  it('decide the joint in check and in corners, where they are the lowest', async () => {
    const { adhesives, ...rest } = document;
    const [adhesive] = adhesives;
    const steep = { coefficient: 0.9, exponent: 0.14, source: adhesive!.fatigue!.source };
    const worn = { ...rest, adhesives: [{ ...adhesive!, fatigue: steep }] };
    const { joints } = await value<CheckReport>('project.check', { document: worn });
    expect(joints[0]!.lowest!.mode).toBe('cyclic-damage');
    const row = rowOf(await analyse(worn), 'cyclic-damage');
    expect(joints[0]!.lowest!.margin).toBe(row.margin);
    const corners = await value<CornersReport>('project.corners', { document: worn });
    expect(corners.joints[0]!.lowest!.mode).toBe('cyclic-damage');
    expect(corners.joints[0]!.lowest!.margin).toBe(row.margin);
    expect(isLowestOf(corners.joints[0]!, 'rotor')).toBe(false);
    expect(corners.joints[0]!.cells.every(({ lowest }) => lowest!.mode !== 'cyclic-damage')).toBe(
      true,
    );
  });

  it('have a working that ends on their margin', async () => {
    const working = await value<Working>('joint.explain', {
      document,
      jointId: 'boom-tip',
      subject: 'cyclic-damage',
      focus: {},
    });
    const row = rowOf(await analyse(document), 'cyclic-damage');
    expect(working.margin!.margin).toBe(row.margin);
    expect(working.cards.map(({ title }) => title)).toContain('Life under starts alone');
    const alone = await ask('joint.explain', {
      document,
      jointId: 'boom-tip',
      subject: 'cyclic-damage',
      focus: { caseId: 'starts' },
    });
    expect(JSON.stringify(alone)).toContain('without naming a case');
  });

  it('are in the sweep and in what a scatter calls the own margin of the joint', async () => {
    const { adhesives, ...rest } = document;
    const [adhesive] = adhesives;
    const steep = { coefficient: 0.9, exponent: 0.14, source: adhesive!.fatigue!.source };
    const worn = { ...rest, adhesives: [{ ...adhesive!, fatigue: steep }] };
    const row = rowOf(await analyse(worn), 'cyclic-damage');
    const { points } = await value<SweepReport>('joint.sweep', {
      document: worn,
      jointId: 'boom-tip',
      from: 35,
      to: 36,
      points: 2,
    });
    expectClose(points[0]!.all, 1 + row.margin, { relative: 1e-9 }, 'sweep');
    expect(points[0]!.mode).toBe(row.label);
    const { own } = await value<{ own: { margin: number; label: string } }>('joint.matters', {
      document: worn,
      jointId: 'boom-tip',
    });
    expect(own.margin).toBe(row.margin);
    expect(own.label).toBe(row.label);
  });

  it('are one margin where the joint has but one of them', async () => {
    const [joint] = document.joints;
    const one = { ...document, joints: [{ ...joint!, loads: [joint!.loads[0]] } as never] };
    expect(rowOf(await analyse(one), 'cyclic-damage')).toBeUndefined();
  });
});

describe('the load ratio', () => {
  const codes = async (of: Project): Promise<string[]> =>
    (await analyse(of)).flags.flatMap(({ code }) => (code.startsWith('ratio') ? [code] : []));

  it('is said to be unknown, carried over, or nothing where both are the same', async () => {
    expect(await codes(document)).toEqual(['ratio-unknown', 'ratio-unknown']);
    expect(await codes(await tip({ line: 0.1, rotor: -1 }))).toEqual([
      'ratio-carried',
      'ratio-unknown',
    ]);
    expect(await codes(await tip({ line: 0.1, rotor: 0.1 }))).toEqual(['ratio-unknown']);
  });

  it('of a load that reverses lowers the margin', async () => {
    const margins: number[] = [];
    for (const rotor of [undefined, 0.1, 0.5, -1]) {
      const of = await tip({ line: 0.1, ...(rotor === undefined ? {} : { rotor }) });
      const alone = {
        ...of,
        joints: [{ ...of.joints[0]!, loads: [of.joints[0]!.loads[0]] } as never],
      };
      margins.push(rowOf(await analyse(alone), 'cyclic-shear').margin);
    }
    const [bare, same, pulsing, reversed] = margins as [number, number, number, number];
    expect(same).toBe(bare);
    expect(pulsing).toBeGreaterThan(same);
    expect(reversed).toBeLessThan(same);
  });
});

describe('a scatter of a joint with two cyclic cases', () => {
  it('says that their damage is not added up in it', async () => {
    const codesOf = async (of: Project): Promise<string[]> => {
      const { flags } = await value<{ flags: { code: string }[] }>('joint.matters', {
        document: of,
        jointId: 'boom-tip',
      });
      return flags.map(({ code }) => code);
    };
    expect(await codesOf(document)).toContain('cycles-apart');
    const [joint] = document.joints;
    const one = { ...document, joints: [{ ...joint!, loads: [joint!.loads[0]] } as never] };
    expect(await codesOf(one)).not.toContain('cycles-apart');
  });
});
