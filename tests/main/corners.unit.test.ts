/** The table of corners: its lowest are those of the check, its list the states themselves. */
import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { createAsk } from '../../src/main/ask.ts';
import { openDemo } from '../../src/main/demo/demo.ts';
import type { Answers, RequestName } from '../../src/shared/contract.ts';
import type { Condition, LoadCase, Project } from '../../src/shared/project.ts';
import type { Reply } from '../../src/shared/reply.ts';
import type { CornerMargin, CornersReport } from '../../src/shared/reports.ts';
import { projects } from '../support/random-projects.ts';

vi.setConfig({ testTimeout: 180_000 });

const ask = createAsk({ carrier: 'terminal' });
async function value<N extends RequestName>(name: N, input: object): Promise<Answers[N]> {
  const reply = (await ask(name, input)) as Reply<Answers[N]>;
  if (!reply.ok) throw new Error(`${name}: ${reply.error.field} ${reply.error.message}`);
  return reply.value;
}

const demo = openDemo();
if (!demo.ok) throw new Error(demo.error.message);
const curlew = (): Project => structuredClone(demo.value.document) as Project;

const conditions: Condition[] = [
  { id: 'cold', name: 'Cold soak', temperature: -20, moisture: 'dry' },
  { id: 'hot', name: 'Hot deck, wet', temperature: 60, moisture: 'wet' },
];
/** Each case of the frame in each of its conditions too. */
function inEveryCondition(project: Project): Project {
  const loadCases = project.loadCases.map((one) => ({ ...one, everyCondition: true }));
  return { ...project, conditions, loadCases };
}

async function expectAsChecked(document: Project): Promise<CornersReport> {
  const table = await value('project.corners', { document });
  const { joints, counts } = await value('project.check', { document });
  expect(table.joints.map(({ jointId }) => jointId)).toEqual(joints.map(({ jointId }) => jointId));
  for (const [i, { lowest, refused }] of joints.entries()) {
    const own = table.joints[i]!;
    expect(own.refused).toEqual(refused);
    const cells = own.cells.flatMap((cell) => (cell.lowest ? [cell.lowest.margin] : []));
    // To the last bit: both are the same figures, none is computed a second way.
    expect(cells.length === 0 ? null : Math.min(...cells)).toBe(lowest?.margin ?? null);
    expect(own.lowest).toEqual(
      lowest === null ? null : expect.objectContaining(stateOf(own.lowest!)),
    );
    if (lowest) expect(stateOf(own.lowest!)).toEqual(stateOf(lowest));
  }
  expect(table.counts).toEqual(counts);
  return table;
}
const stateOf = ({
  mode,
  part,
  x,
  theta,
  caseId,
  conditionId,
  gapState,
  margin,
}: CornerMargin) => ({
  mode,
  part,
  x,
  theta,
  caseId,
  conditionId,
  gapState,
  margin,
});

describe('the table of Curlew', () => {
  it('has the figures of the check, also with every case in every condition', async () => {
    await expectAsChecked(curlew());
    const table = await expectAsChecked(inEveryCondition(curlew()));
    // Own surroundings and two conditions, less those that are the case's own already.
    const [root] = table.joints;
    expect(root!.cells.map(({ states }) => states)).toEqual([15, 10, 10, 10]);
    expect(root!.states).toBe(45);
    expect(table.states).toBe(table.joints.reduce((sum, { states }) => sum + states, 0));
    const conditioned = table.joints.flatMap(({ cells }) =>
      cells.flatMap(({ lowest }) => (lowest?.conditionId ? [lowest.conditionId] : [])),
    );
    expect(conditioned).toContain('hot');
  });

  it('has a cell for each load of each joint, its own worst state in it', async () => {
    const document = curlew();
    const table = await value('project.corners', { document });
    expect(table.cases.map(({ caseId }) => caseId)).toEqual(document.loadCases.map(({ id }) => id));
    for (const [i, { cells, flat, corners }] of table.joints
      .map((joint) => ({ ...joint, corners: null }))
      .entries()) {
      const joint = document.joints[i]!;
      expect(cells.map(({ caseId }) => caseId)).toEqual(joint.loads.map((load) => load.case));
      expect(flat).toBe(joint.type.startsWith('flat'));
      expect(corners).toBeNull();
      for (const { caseId, lowest } of cells) {
        expect(lowest!.caseId).toBe(caseId);
        // The same joint under this case alone has no other lowest margin.
        const alone = {
          ...document,
          joints: [
            { ...joint, loads: joint.loads.filter((load) => load.case === caseId) },
          ] as Project['joints'],
        };
        const check = await value('project.check', { document: alone });
        expect(check.joints[0]!.lowest!.margin).toBe(lowest!.margin);
      }
    }
  });

  it('lists every corner of one joint, lowest first', async () => {
    const document = inEveryCondition(curlew());
    const { joints, corners, cases } = await value('project.corners', {
      document,
      jointId: 'boom-tip',
    });
    expect(joints.map(({ jointId }) => jointId)).toEqual(['boom-tip']);
    expect(cases.map(({ caseId }) => caseId)).toEqual(['gust', 'gust-cold', 'rotor']);
    const [tip] = joints;
    expect(corners).toHaveLength(tip!.states);
    expect(corners![0]).toEqual(tip!.lowest);
    const margins = corners!.map(({ margin }) => margin);
    expect(margins).toEqual(margins.toSorted((a, b) => a - b));
    const names = corners!.map(
      ({ caseId, conditionId, gapState }) => `${caseId} ${conditionId} ${gapState}`,
    );
    expect(new Set(names).size).toBe(names.length);
    expect(names).toContain('gust hot thin-side');
    expect(names).not.toContain('rotor hot min');
    // The cells of the table without the list are the same.
    const table = await value('project.corners', { document });
    expect(table.joints.find(({ jointId }) => jointId === 'boom-tip')).toEqual(tip);
    for (const { caseId, lowest } of tip!.cells) {
      const own = corners!.filter((corner) => corner.caseId === caseId);
      expect(Math.min(...own.map(({ margin }) => margin))).toBe(lowest!.margin);
    }
  });

  it('leaves a joint that cannot be computed, and one that nothing loads, to be seen', async () => {
    const document = curlew();
    const [root, tip, leg] = document.joints;
    if (leg?.type !== 'sleeve-single') throw new Error('Curlew has changed.');
    leg.sleeve.atRoot = 12;
    root!.loads = [];
    if (tip?.type !== 'sleeve-single') throw new Error('Curlew has changed.');
    tip.loads[0] = { case: 'gust', force: 0, moment: 0, torque: 0, shear: 0 };
    const table = await expectAsChecked(document);
    expect(table.joints[2]!.refused?.field).toBe('joints.2.sleeve.atRoot');
    expect(table.joints[0]).toMatchObject({ cells: [], lowest: null, refused: null });
    expect(table.joints[1]!.cells[0]).toMatchObject({ caseId: 'gust', lowest: null });
  });

  it('names the joint that is not there', async () => {
    const reply = await ask('project.corners', { document: curlew(), jointId: 'boom' });
    expect(reply).toMatchObject({ ok: false, error: { code: 'not-found' } });
  });

  it('tells each joint and case, and never goes back', async () => {
    const ticks: [number, number, string | undefined][] = [];
    const document = curlew();
    await ask(
      'project.corners',
      { document },
      { progress: (done, total, what) => ticks.push([done, total, what]) },
    );
    const cells = document.joints.reduce((sum, { loads }) => sum + loads.length, 0);
    expect(ticks.at(-1)!.slice(0, 2)).toEqual([cells, cells]);
    expect(ticks.every(([done], i) => i === 0 || done >= ticks[i - 1]![0])).toBe(true);
    expect(new Set(ticks.map(([, , what]) => what))).toContain('Landing leg, Hard landing');
  });
});

/** Several cases of one random joint, each in conditions of its own. */
const frames = fc
  .tuple(
    projects,
    fc.array(
      fc.record({ temperature: fc.integer({ min: -50, max: 100 }), share: between(0.2, 2) }),
      {
        minLength: 1,
        maxLength: 1,
      },
    ),
    fc.array(fc.integer({ min: -50, max: 100 }), { maxLength: 1 }),
    fc.boolean(),
  )
  .map(([project, others, temperatures, every]) => {
    const [first] = project.loadCases;
    const [joint] = project.joints;
    const loadCases: LoadCase[] = [
      { ...first!, ...(every ? { everyCondition: true } : {}) },
      ...others.map(({ temperature }, i) => ({
        ...first!,
        id: `c${i}`,
        temperature,
        everyCondition: !every,
      })),
    ];
    const scaled = others.map(({ share }, i) =>
      Object.fromEntries(
        Object.entries(joint!.loads[0]!).map(([key, load]) => [
          key,
          typeof load === 'number' ? load * share : `c${i}`,
        ]),
      ),
    );
    return {
      ...project,
      conditions: temperatures.map((temperature, i) => ({
        id: `t${i}`,
        name: `t${i}`,
        temperature,
        moisture: 'dry' as const,
      })),
      loadCases,
      joints: [{ ...joint!, loads: [joint!.loads[0]!, ...scaled] }],
    } as Project;
  });

function between(min: number, max: number) {
  return fc.double({ min, max, noNaN: true });
}

it('of any project has the figures of the check, to the last bit', async () => {
  let judged = 0;
  await fc.assert(
    fc.asyncProperty(frames, async (document) => {
      const reply = await ask('project.check', { document });
      // Loads times a share may leave their range; that is the reader's to refuse.
      fc.pre(reply.ok);
      const table = await expectAsChecked(document);
      if (table.joints[0]!.lowest) judged++;
      const { joints, corners } = await value('project.corners', { document, jointId: 'j' });
      expect(joints).toEqual(table.joints);
      expect(corners?.[0]?.margin ?? null).toBe(table.joints[0]!.lowest?.margin ?? null);
    }),
    { numRuns: 20, seed: 20267, endOnFailure: true },
  );
  expect(judged).toBeGreaterThan(10);
});
