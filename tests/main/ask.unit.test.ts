/** The one door to the model: requests, replies, refusals. */
import { describe, expect, it } from 'vitest';
import type { Project } from '../../src/shared/project.ts';
import type {
  CheckReport,
  JointReport,
  StressReport,
  SweepReport,
} from '../../src/shared/reports.ts';
import { ask, curlew, value } from './asking.ts';

describe('Curlew', () => {
  it('shows all three states, the failing one first in need', async () => {
    const document = await curlew();
    const { joints, counts } = await value<CheckReport>('project.check', { document });
    expect(counts).toEqual({ fails: 1, low: 1, holds: 2 });
    const failing = joints.find(({ lowest }) => lowest?.state === 'fails')!;
    expect(failing.jointId).toBe('landing-leg');
    expect(failing.lowest!.typical).toBe(true);
  });

  it('gives each joint the same lowest margin in the table as on its own page', async () => {
    const document = await curlew();
    const { joints } = await value<CheckReport>('project.check', { document });
    for (const { jointId, lowest } of joints) {
      const { margins } = await value<JointReport>('joint.analyse', {
        document,
        jointId,
        focus: {},
      });
      expect(margins[0]!.margin).toBeCloseTo(lowest!.margin, 10);
      expect(margins[0]!.mode).toBe(lowest!.mode);
      const sorted = [...margins].sort((a, b) => a.margin - b.margin);
      expect(margins).toEqual(sorted);
    }
  });

  it('lists one margin for each mode and part, with both ends of the walls', async () => {
    const document = await curlew();
    const { margins } = await value<JointReport>('joint.analyse', {
      document,
      jointId: 'boom-root',
      focus: {},
    });
    expect(margins.map(({ label }) => label).sort()).toEqual([
      'adhesive, fracture energy',
      'adhesive, peel',
      'adhesive, peel with shear',
      'adhesive, ultimate strain',
      'adhesive, yield',
      'durability trough',
      'laminate, between plies',
      'socket, ultimate',
      'socket, yield',
      'spigot, ultimate',
      'spigot, yield',
      'tube, laminate strength',
    ]);
    expect(margins.find(({ part }) => part === 'tube')!.place).toBe('mouth');
    expect(margins.find(({ part }) => part === 'socket')!.place).toBe('root');
  });
});

describe('the state that is drawn', () => {
  it('is the governing one unless asked otherwise', async () => {
    const document = await curlew();
    const input = { document, jointId: 'boom-tip', focus: {} };
    const { stress, margins } = await value<JointReport>('joint.analyse', input);
    const first = margins.find(
      ({ part, mode }) => part === 'bond' && mode !== 'durability-trough',
    )!;
    expect(stress).toMatchObject({ caseId: first.caseId, gapState: first.gapState });
    const other = await value<StressReport>('joint.stress', {
      document,
      jointId: 'boom-tip',
      focus: { caseId: 'gust', gapState: 'max', theta: 90, loadFactor: 2, stations: 11 },
    });
    expect(other).toMatchObject({ caseId: 'gust', gapState: 'max', theta: 90, loadFactor: 2 });
    expect(other.x).toHaveLength(11);
    expect(other.x[0]).toBe(0);
    expect(other.x[10]).toBe(35);
  });

  it('draws a case that is named at its own worst state, whichever other cases there are', async () => {
    const document = await curlew();
    for (const { id: jointId, loads } of document.joints) {
      for (const { case: caseId } of loads) {
        const drawn = (project: Project): Promise<StressReport> =>
          value('joint.stress', { document: project, jointId, focus: { caseId, stations: 2 } });
        const alone = structuredClone(document);
        const joint = alone.joints.find(({ id }) => id === jointId)!;
        joint.loads = joint.loads.filter((load) => load.case === caseId) as typeof joint.loads;
        const [one, other] = [await drawn(document), await drawn(alone)];
        expect([one.gapState, one.theta, one.conditionId]).toEqual([
          other.gapState,
          other.theta,
          other.conditionId,
        ]);
        const { margins } = await value<JointReport>('joint.analyse', {
          document: alone,
          jointId,
          focus: {},
        });
        const ofBond = margins.find(
          ({ mode, part }) => mode !== 'durability-trough' && / ?bond$/.test(part),
        )!;
        expect(one.gapState).toBe(ofBond.gapState);
        expect(one.theta).toBeCloseTo(ofBond.theta, 6);
      }
    }
  });

  it('flags what the drawn figures leave of their domains, and nothing where they leave none', async () => {
    const document = await curlew();
    const asked = { jointId: 'boom-tip', focus: { caseId: 'gust' } };
    const inside = await value<StressReport>('joint.stress', { document, ...asked });
    expect(inside.flags).toEqual([]);
    document.loadCases.find(({ id }) => id === 'gust')!.temperature = -120;
    const cold = await value<StressReport>('joint.stress', { document, ...asked });
    expect(cold.flags.map(({ code }) => code)).toContain('outside-table');
    // Each once, though shear and peel both leave it.
    expect(new Set(cold.flags.map(({ message }) => message)).size).toBe(cold.flags.length);
  });

  it('shows the most the bond carries where it cannot carry the load, and says so', async () => {
    const document = await curlew();
    const stress = await value<StressReport>('joint.stress', {
      document,
      jointId: 'landing-leg',
      focus: { caseId: 'hard-landing', gapState: 'max', loadFactor: 1.15 },
    });
    expect(stress.carried).toBe(false);
    expect(stress.capacity).toBeLessThan(1.15);
    expect(stress.flags.map(({ code }) => code)).toContain('not-carried');
    const [bond] = stress.bonds;
    expect(Math.max(...bond!.shear.map(Math.abs))).toBeLessThanOrEqual(
      bond!.shearYield * (1 + 1e-9),
    );
  });

  it('draws a bond that temperature alone fails with its yielding, and without load', async () => {
    const document = await curlew();
    const [adhesive] = document.adhesives;
    adhesive!.stressFreeTemperature = 390;
    for (const state of adhesive!.states) state.plasticStrain = 0.02;
    for (const jointId of ['boom-root', 'boom-tip']) {
      const { margins, stress } = await value<JointReport>('joint.analyse', {
        document,
        jointId,
        focus: {},
      });
      expect(margins[0]).toMatchObject({ margin: -1, reached: 0 });
      expect(stress!.capacity).toBe(0);
      expect(stress!.flags.map(({ message }) => message)).toContain(
        'Temperature alone takes the bond to its ultimate strain: the curve shows it without load.',
      );
      for (const bond of stress!.bonds) {
        expect(Math.max(...bond.shear.map(Math.abs))).toBeLessThanOrEqual(
          bond.shearYield * (1 + 1e-9),
        );
      }
      const worst = Math.max(...stress!.bonds.map((bond) => bond.strain - bond.strainAllowed));
      expect(worst).toBeGreaterThan(0);
    }
  });

  it('carries the load: the bonds forces add up to the line load at the clocking', async () => {
    const document = await curlew();
    const stress = await value<StressReport>('joint.stress', {
      document,
      jointId: 'tail-strut',
      focus: { caseId: 'gust', gapState: 'nominal' },
    });
    expect(stress.bonds.reduce((sum, { force }) => sum + force, 0)).toBeCloseTo(5000, 3);
    const [strip] = stress.adherends;
    expect(strip!.force[0]).toBeCloseTo(0, 3);
    expect(strip!.force.at(-1)).toBeCloseTo(5000, 3);
    expect(strip!.stressAtMouth).toBeCloseTo(5000 / 75, 6);
  });
});

describe('the sweep', () => {
  it('passes the present overlap at the margins of the analysis', async () => {
    const document = await curlew();
    const joint = document.joints.find(({ id }) => id === 'landing-leg')!;
    const sweep = await value<SweepReport>('joint.sweep', {
      document,
      jointId: joint.id,
      from: joint.overlap,
      to: 60,
      points: 4,
    });
    const { margins } = await value<JointReport>('joint.analyse', {
      document,
      jointId: joint.id,
      focus: {},
    });
    const strain = margins.find(({ mode }) => mode === 'adhesive-strain')!;
    expect(sweep.points[0]!.bond).toBeCloseTo(1 + strain.margin, 9);
    expect(sweep.points[0]!.all).toBeCloseTo(1 + margins[0]!.margin, 9);
    expect(sweep.plateau).toBeGreaterThan(joint.overlap);
    expect(sweep.caseName).toBe('Hard landing');
  });
});

describe('the walls', () => {
  it('carry the whole load at the mouth, whatever the overlap', async () => {
    const document = await curlew();
    const joint = document.joints.find(({ id }) => id === 'landing-leg')!;
    joint.loads = joint.loads.filter((load) => load.case === 'hard-landing') as typeof joint.loads;
    delete document.conditions;
    const input = { document, jointId: joint.id, from: 40, to: 77.3, points: 160 };
    const { points } = await value<SweepReport>('joint.sweep', input);
    const tube = points.filter(({ mode }) => mode === 'tube, laminate strength');
    expect(tube.length).toBeGreaterThan(100);
    // The bending of the wall at the mouth still feels the root a little.
    for (const { all } of tube) expect(all).toBeCloseTo(tube[0]!.all, 3);
    // Beyond the crossing the tube sets every one: no overlap stands out.
    expect(points.slice(points.indexOf(tube[0]!)).length).toBe(tube.length);
  });
});

describe('refusals', () => {
  const refused = async (name: unknown, input: unknown) => {
    const reply = await ask(name, input);
    if (reply.ok) throw new Error('It was answered.');
    return reply.error;
  };

  it('of requests that do not exist or are malformed', async () => {
    expect(await refused('constructor', {})).toMatchObject({ code: 'bad-request' });
    expect(await refused(7, {})).toMatchObject({ code: 'bad-request' });
    expect(await refused('joint.analyse', { document: {}, jointId: 3, focus: {} })).toMatchObject({
      code: 'bad-request',
      field: 'jointId',
    });
    expect(await refused('app.about', { more: 1 })).toMatchObject({ code: 'bad-request' });
  });

  it('name a joint or case that is not there, and those that are', async () => {
    const document = await curlew();
    const joint = await refused('joint.analyse', { document, jointId: 'boom', focus: {} });
    expect(joint.code).toBe('not-found');
    expect(joint.message).toMatch(/boom-root/);
    const missing = await refused('joint.stress', {
      document,
      jointId: 'boom-tip',
      focus: { caseId: 'storm' },
    });
    expect(missing.code).toBe('not-found');
    expect(missing.message).toMatch(/gust-cold/);
  });

  it('name the place of a size that does not fit, and let the other joints be', async () => {
    const document = await curlew();
    const joint = document.joints[2]!;
    if (joint.type !== 'sleeve-single') throw new Error('Curlew has changed.');
    joint.sleeve.atRoot = 12;
    const error = await refused('joint.analyse', { document, jointId: joint.id, focus: {} });
    expect(error).toMatchObject({ code: 'bad-input', field: 'joints.2.sleeve.atRoot' });
    const { joints } = await value<CheckReport>('project.check', { document });
    expect(joints[2]!.refused?.field).toBe('joints.2.sleeve.atRoot');
    expect(joints[1]!.lowest).not.toBeNull();
  });

  it('name the place of a number outside its range', async () => {
    const document = await curlew();
    document.joints[1]!.overlap = 700;
    const error = await refused('joint.analyse', { document, jointId: 'boom-tip', focus: {} });
    expect(error).toMatchObject({ code: 'bad-input', field: 'joints.1.overlap' });
    expect(error.message).toBe('Overlap must be a number from 1 to 500 mm; it is 700.');
  });
});

describe('flags', () => {
  it('tell of temperature beyond the table, idle cases, thick walls and unusual gaps', async () => {
    const document = await curlew();
    document.loadCases[1]!.temperature = -60;
    const joint = document.joints[1]!;
    if (joint.type !== 'sleeve-single') throw new Error('Curlew has changed.');
    joint.tube.wall = 4;
    joint.bond.gap = 0.8;
    joint.loads[0] = { case: 'gust', force: 0, moment: 0, torque: 0, shear: 0 };
    const [adhesive] = document.adhesives;
    delete adhesive!.fatigue;
    delete adhesive!.fracture;
    delete adhesive!.expansion;
    delete adhesive!.states[0]!.peelStrength;
    const tube = document.adherends.find(({ id }) => id === joint.tube.adherend)!;
    if (tube.kind !== 'orthotropic') throw new Error('Curlew has changed.');
    delete tube.interlaminarShear;
    delete tube.throughExpansion;
    const { flags } = await value<JointReport>('joint.analyse', {
      document,
      jointId: joint.id,
      focus: {},
    });
    const codes = flags.map(({ code }) => code);
    expect(codes).toEqual(
      expect.arrayContaining([
        'no-peel-strength',
        'no-expansion',
        'no-fracture',
        'no-interlaminar',
        'no-through-thickness',
        'outside-table',
        'no-load',
        'thick-wall',
        'unusual-gap',
        'no-fatigue',
      ]),
    );
    expect(flags.find(({ code }) => code === 'outside-table')!.message).toMatch(/−60|-60/);
  });
});
