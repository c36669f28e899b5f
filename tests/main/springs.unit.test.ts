/** The joint as springs, its mass and its print, through the door. */
import { describe, expect, it } from 'vitest';
import { createAsk } from '../../src/main/ask.ts';
import type { Project } from '../../src/shared/project.ts';
import type { Reply } from '../../src/shared/reply.ts';
import type { Opened } from '../../src/shared/reports.ts';
import type { SpringsReport } from '../../src/shared/reports-springs.ts';
import { springsCsv } from '../../src/shared/springs-text.ts';
import { expectClose } from '../support/close.ts';

const ask = createAsk({ carrier: 'terminal' });

async function curlew(): Promise<Project> {
  const reply = (await ask('project.demo', {})) as Reply<Opened>;
  if (!reply.ok) throw new Error(reply.error.message);
  const document = structuredClone(reply.value.document);
  // Each test says itself which conditions there are.
  delete document.conditions;
  return document;
}
const springs = (document: Project, jointId: string, caseId?: string) =>
  ask('joint.springs', { document, jointId, ...(caseId ? { caseId } : {}) }) as Promise<
    Reply<SpringsReport>
  >;
async function value(...args: Parameters<typeof springs>): Promise<SpringsReport> {
  const reply = await springs(...args);
  if (!reply.ok) throw new Error(reply.error.message);
  return reply.value;
}

describe('springs of a joint', () => {
  it('stand once for each temperature and moisture of its cases', async () => {
    const { states } = await value(await curlew(), 'boom-root');
    expect(
      states.map(({ temperature, moisture, names }) => [temperature, moisture, names]),
    ).toEqual([
      [-20, 'dry', ['Gust, cold soak']],
      [20, 'dry', ['Gust']],
      [60, 'wet', ['Gust, hot deck', 'Hard landing']],
    ]);
    // A warm, wet adhesive is softer: so is the joint, in every way.
    const [cold, , hot] = states;
    for (const [i, { stiffness }] of hot!.springs.entries()) {
      expect(stiffness).toBeLessThan(cold!.springs[i]!.stiffness);
    }
    expect(hot!.shear).toBe(cold!.shear);
  });

  it('are those of one case where one is named, and of conditions where a case asks for them', async () => {
    const document = await curlew();
    const one = await value(document, 'boom-root', 'hard-landing');
    expect(one.states.map(({ names }) => names)).toEqual([['Hard landing']]);
    document.conditions = [
      { id: 'arctic', name: 'Arctic', temperature: -35, moisture: 'dry' },
      { id: 'wet-deck', name: 'Wet deck', temperature: 60, moisture: 'wet' },
    ];
    document.loadCases[0]!.everyCondition = true;
    const all = await value(document, 'boom-tip');
    expect(all.states.map(({ names }) => names)).toEqual([
      ['Arctic'],
      ['Gust, cold soak'],
      ['Gust'],
      ['Rotor vibration', 'Wet deck'],
    ]);
  });

  it('are those of the adhesive’s rows where the joint has no case', async () => {
    const document = await curlew();
    document.joints[0]!.loads = [];
    const { states } = await value(document, 'boom-root');
    expect(states.map(({ temperature, moisture }) => `${temperature} ${moisture}`)).toEqual([
      '-40 dry',
      '23 dry',
      '60 dry',
      '23 wet',
      '60 wet',
    ]);
    expect(states.every(({ names }) => names.length === 0)).toBe(true);
  });

  it('follow the setting of the walls’ own shear', async () => {
    const document = await curlew();
    const soft = await value(document, 'boom-tip', 'gust');
    document.settings.adherendShear = false;
    const stiff = await value(document, 'boom-tip', 'gust');
    for (const [i, { stiffness }] of soft.states[0]!.springs.entries()) {
      expect(stiff.states[0]!.springs[i]!.stiffness).toBeGreaterThan(stiffness);
    }
  });

  it('say what they leave out and where the table ends', async () => {
    const document = await curlew();
    document.loadCases[0]!.temperature = 90;
    const { flags } = await value(document, 'boom-tip', 'gust');
    expect(flags.map(({ code }) => code)).toEqual(['outside-table']);
    const strut = document.joints.find(({ id }) => id === 'tail-strut')!;
    if (strut.type !== 'flat-double') throw new Error('the strut is no flat double lap');
    const { lowerStrap, upperStrap: _u, lowerBond, upperBond: _b, ...kept } = strut;
    document.joints.push({
      ...kept,
      id: 'lug',
      type: 'flat-single',
      plate: lowerStrap,
      bond: lowerBond,
    });
    const single = await value(document, 'lug', 'gust-cold');
    expect(single.flags.map(({ code }) => code)).toEqual(['lap-turns']);
    expect(single.states[0]!.springs.map(({ kind }) => kind)).toEqual(['axial', 'bending']);
  });

  it('refuse a case that the joint does not carry', async () => {
    const reply = await springs(await curlew(), 'boom-tip', 'hard-landing');
    expect(reply).toMatchObject({
      ok: false,
      error: { code: 'not-found', field: 'joints.1.loads' },
    });
  });
});

describe('mass and print', () => {
  it('come with the springs, the laminate by its plies', async () => {
    const document = await curlew();
    const { mass, print } = await value(document, 'tail-strut');
    const walls = 2 * 25 * 40 * 1.2;
    const adhesive = 2 * 25 * 40 * 0.2;
    expectClose(mass.adhesiveVolume, adhesive, { relative: 1e-12 }, 'volume');
    expectClose(mass.added!, (walls * 4430 + adhesive * 1180) / 1e6, { relative: 1e-12 }, 'mass');
    expectClose(mass.tube.mass!, (25 * 3 * 40 * 1550) / 1e6, { relative: 1e-12 }, 'strip');
    expect(print).toEqual({ layerThickness: 0.06, height: 40, layers: 667 });
  });

  it('name what has no density, and print as the project says', async () => {
    const document = await curlew();
    delete document.adhesives[0]!.density;
    for (const adherend of document.adherends) if ('density' in adherend) delete adherend.density;
    document.settings.printing = { layerThickness: 0.03, base: 120 };
    const { mass, print, flags } = await value(document, 'boom-root');
    expect(mass.added).toBeNull();
    expect(mass.without).toEqual([
      'Carbon tube, mostly axial plies',
      'Titanium 6Al-4V, printed and stress-relieved',
      'Toughened epoxy paste',
    ]);
    expect(print).toEqual({ layerThickness: 0.03, height: 165, layers: 5500 });
    expect(flags.map(({ code }) => code)).toContain('tall-print');
  });
});

describe('the same as comma-separated values', () => {
  it('has a row for each spring and for the walls across, in full digits', async () => {
    const report = await value(await curlew(), 'boom-root');
    const rows = springsCsv(report).trimEnd().split('\r\n');
    expect(rows).toHaveLength(1 + 3 * 4);
    const width = rows[0]!.split(',').length;
    // The names of two cases hold commas: they stand in quotes.
    expect(rows[9]).toContain('"Gust, hot deck; Hard landing"');
    const axial = rows[5]!.split(',');
    expect(axial).toHaveLength(width);
    expect(axial.slice(0, 5)).toEqual(['boom-root', '20', 'dry', 'Gust', 'axial']);
    const { stiffness, tube, tubeLength } = report.states[1]!.springs[0]!;
    expectClose(Number(axial[5]), stiffness, { relative: 1e-7 }, 'stiffness');
    expect(axial[6]).toBe('N/mm');
    expect(axial[7]).toBe('');
    expectClose(Number(axial[8]), tubeLength, { relative: 1e-7 }, 'length');
    expectClose(Number(axial[9]), tube, { relative: 1e-7 }, 'tube');
  });
});
