/** The ledger of allowables: what margins use is in it, with the same words, and what it rests on. */
import { describe, expect, it } from 'vitest';
import type { Adhesive, Joint, Project } from '../../src/shared/project.ts';
import type { JointReport, Margin, StressReport } from '../../src/shared/reports.ts';
import type {
  AdhesiveLedger,
  LedgerEnvironment,
  LedgerGap,
  LedgerReport,
} from '../../src/shared/reports-ledger.ts';
import { expectClose } from '../support/close.ts';
import { couponSet, withAllowables, withSets } from '../support/with-coupons.ts';
import { ask, curlew, value } from './asking.ts';

const ledgerOf = (document: Project) => value<LedgerReport>('project.ledger', { document });
const adhesiveOf = async (document: Project): Promise<AdhesiveLedger> =>
  (await ledgerOf(document)).adhesives[0]!;

function at(
  { environments }: AdhesiveLedger,
  temperature: number,
  moisture: 'dry' | 'wet',
): LedgerEnvironment {
  const found = environments.filter(
    (one) => one.temperature === temperature && one.moisture === moisture,
  );
  expect(found, `${temperature} ${moisture}`).toHaveLength(1);
  return found[0]!;
}
function atGap({ gaps }: LedgerEnvironment, gap: number): LedgerGap {
  const found = gaps.filter((one) => Math.abs(one.gap! - gap) < 1e-9);
  expect(found, `gap ${gap}`).toHaveLength(1);
  return found[0]!;
}
const paste = (document: Project, change: Partial<Adhesive>): Project => ({
  ...document,
  adhesives: document.adhesives.map((one, i) => (i === 0 ? { ...one, ...change } : one)),
});

/** Modes that say what they rest on. */
const isOfBond = ({ restsOn }: Margin): boolean => restsOn !== '';

/**
 * Each margin of the bonds of each joint has one row of the ledger: the same words, and the strengths
 * that its stresses are drawn against.
 */
async function expectEveryMargin(document: Project): Promise<number> {
  const ledger = await ledgerOf(document);
  let compared = 0;
  for (const joint of document.joints) {
    const input = { document, jointId: joint.id, focus: {} };
    const { margins } = await value<JointReport>('joint.analyse', input);
    const adhesive = ledger.adhesives.find(({ id }) => id === joint.adhesive)!;
    for (const margin of margins.filter(isOfBond)) {
      const { caseId, conditionId, gapState } = margin;
      const focus = { caseId, conditionId, gapState };
      const stress = await value<StressReport>('joint.stress', { ...input, focus });
      const place =
        document.conditions?.find(({ id }) => id === conditionId) ??
        document.loadCases.find(({ id }) => id === caseId)!;
      const environment = at(adhesive, place.temperature, place.moisture);
      const what = `${joint.id} ${margin.label} ${caseId} ${gapState}`;
      // A margin says beside it what else it hangs on: an S-N line, fracture energies, what coupons tell of.
      if (margin.mode === 'fracture') expect(margin.restsOn, what).toMatch(/^fracture energies: /);
      else expect(margin.restsOn, what).toContain(environment.restsOn);
      const use = environment.uses.find(({ jointId }) => jointId === joint.id);
      expect(
        use?.cases.some((one) => one.caseId === caseId && one.conditionId === conditionId),
        what,
      ).toBe(true);
      const bonds = stress.bonds.filter(
        ({ part }) => stress.bonds.length === 1 || part === margin.part,
      );
      expect(bonds.length, what).toBeGreaterThan(0);
      for (const bond of bonds) {
        const row = atGap(environment, bond.gap);
        const left = stress.ledgers.find(({ part }) => part === bond.part)!.strength;
        expect(row.joints, what).toContain(joint.id);
        expectClose(row.factors!.left, left, { relative: 1e-11 }, `${what}: left`);
        expectClose(row.strength!.shearYield, bond.shearYield, { relative: 1e-11 }, what);
        expectClose(row.strength!.peelStrength!, bond.layered.strength!, { relative: 1e-11 }, what);
        compared++;
      }
    }
  }
  return compared;
}

describe('the ledger of the demonstration project', () => {
  it('has what every margin uses, and says of none of it that it is an allowable', async () => {
    const document = await curlew();
    expect(await expectEveryMargin(document)).toBeGreaterThan(20);
    const { environments } = await adhesiveOf(document);
    expect(new Set(environments.map(({ basis }) => basis))).toEqual(new Set(['typical']));
    expect(new Set(environments.map(({ restsOn }) => restsOn))).toEqual(
      new Set(['typical values, no allowable']),
    );
  });

  it('has its rows, cases and conditions as environments, each once', async () => {
    const { environments } = await adhesiveOf(await curlew());
    expect(environments.map((one) => [one.temperature, one.moisture, one.rows])).toEqual([
      [-40, 'dry', 'at'],
      [-20, 'dry', 'between'],
      [20, 'dry', 'between'],
      [23, 'dry', 'at'],
      [60, 'dry', 'at'],
      [23, 'wet', 'at'],
      [60, 'wet', 'at'],
    ]);
    expect(environments[1]).toMatchObject({
      names: ['Gust, cold soak', 'Cold soak'],
      rowsAt: [-40, 23],
    });
    expect(environments.map(({ names }) => names.length)).toEqual([0, 2, 1, 0, 0, 0, 4]);
  });

  it('takes knockdowns off in figures worked by hand', async () => {
    const hot = at(await adhesiveOf(await curlew()), 60, 'wet');
    expect(hot.table).toEqual({ shearYield: 20, plasticStrain: 0.7, peelStrength: 30 });
    const thick = atGap(hot, 0.5);
    expect(thick.factors).toMatchObject({ environment: 1, ageing: 0.95, scatter: 0.95, gap: 0.85 });
    expectClose(thick.strength!.shearYield, 20 * 0.95 * 0.95 * 0.85, { relative: 1e-12 }, 'yield');
    expectClose(thick.strength!.peelStrength!, 30 * 0.767125, { relative: 1e-12 }, 'peel');
    // Between two rows: 48 and 38 MPa at −40 and 23 °C.
    const cold = at(await adhesiveOf(await curlew()), -20, 'dry');
    expectClose(cold.table!.shearYield, 48 - (20 / 63) * 10, { relative: 1e-12 }, 'between');
  });

  it('has the gaps of bonds in every state and of the table, with the joints that have them', async () => {
    const adhesive = await adhesiveOf(await curlew());
    const hot = at(adhesive, 60, 'wet');
    expect(hot.gaps.map(({ gap, of }) => [gap, ...of])).toEqual([
      [0.1, 'table'],
      [0.12, 'joints'],
      [0.15, 'joints'],
      [0.17, 'joints'],
      [0.2, 'joints'],
      [0.23, 'joints'],
      [0.25, 'joints'],
      [0.28, 'joints'],
      [0.3, 'table'],
      [0.5, 'table'],
    ]);
    // Tolerance without offset: the flat joint alone.
    expect(atGap(hot, 0.15).joints).toEqual(['tail-strut']);
    expect(atGap(hot, 0.12).joints).toEqual(['boom-root', 'boom-tip', 'landing-leg']);
    // Nothing brings the tip to the room's temperature of the rows; the leg never meets the gust at 20 °C.
    expect(at(adhesive, 23, 'dry').uses).toEqual([]);
    expect(at(adhesive, 20, 'dry').uses.map(({ jointId }) => jointId)).toEqual([
      'boom-root',
      'boom-tip',
      'tail-strut',
    ]);
    expect(hot.uses.find(({ jointId }) => jointId === 'landing-leg')!.cases).toEqual([
      {
        caseId: 'hard-landing',
        caseName: 'Hard landing',
        conditionId: null,
        conditionName: null,
      },
    ]);
  });

  it('gives S-N line, fracture and knockdowns with sources of their own', async () => {
    const { fatigue, fracture, knockdowns, source, joints } = await adhesiveOf(await curlew());
    expect(fatigue).toMatchObject({ coefficient: 1.71, source: { kind: 'published' } });
    expect(fracture).toMatchObject({ modeI: 1.2, source: { kind: 'typical' } });
    expect(knockdowns!.gap).toHaveLength(3);
    expect([source.kind, joints]).toEqual(['typical', 4]);
  });
});

describe('the ledger of a project with allowables', () => {
  const taken = async (): Promise<Project> => {
    const sets = [
      couponSet('hot', 150),
      couponSet('room', 210, { temperature: 23, moisture: 'dry', gap: 0.3 }),
      couponSet('cold', 240, { temperature: -40, moisture: 'dry' }),
    ];
    return withAllowables(ask, withSets(await curlew(), ...sets), 'hot', 'room', 'cold');
  };

  it('has what every margin uses, tested there and not', async () => {
    const document = await taken();
    expect(await expectEveryMargin(document)).toBeGreaterThan(20);
    const { environments } = await adhesiveOf(document);
    expect(environments.map(({ restsOn }) => restsOn)).toEqual([
      'B-basis, 18 coupons, −40 °C dry',
      expect.stringMatching(/^B-basis, 18 coupons, (−40|23) °C dry, not tested at −20 °C dry$/),
      expect.stringMatching(/^B-basis, 18 coupons, (−40|23) °C dry, not tested at 20 °C dry$/),
      'B-basis, 18 coupons, 23 °C dry',
      expect.stringMatching(/not tested at 60 °C dry$|^typical values, no allowable$/),
      expect.stringMatching(/not tested at 23 °C wet$|^typical values, no allowable$/),
      'B-basis, 18 coupons, 60 °C wet',
    ]);
  });

  it('names the set, when it was tested and taken, and what it stands in place of', async () => {
    const document = await taken();
    const [allowable] = document.adhesives[0]!.allowables!;
    const hot = at(await adhesiveOf(document), 60, 'wet');
    expect(hot).toMatchObject({ basis: 'B', source: 'Set hot', testedHere: true });
    expect(hot.allowables).toEqual([{ taken: allowable, tested: '2026-02-03', set: 'as-taken' }]);
    const row = atGap(hot, 0.2);
    expect(row.factors!.scatter).toBe(allowable!.factor);
    expect(row.otherGap).toBe(false);
    expect(atGap(hot, 0.28).otherGap).toBe(true);
    const between = at(await adhesiveOf(document), 20, 'dry');
    const factors = between.allowables.map((one) => one.taken.factor);
    expect(factors).toHaveLength(2);
    expect(atGap(between, 0.2).factors!.scatter).toBe(Math.min(...factors));
    expect(factors[0]).toBe(Math.min(...factors));
    expect(between.source).toBe(between.allowables[0]!.taken.setName);
  });

  it('says of no gap that it was not tested where a set has results that count', async () => {
    const document = await taken();
    const other = couponSet('other', 150, { gap: 0.28 });
    const tested = withSets(document, ...document.coupons!.sets, other);
    const hotOf = async (one: Project) => at(await adhesiveOf(one), 60, 'wet');
    expect(atGap(await hotOf(document), 0.28).otherGap).toBe(true);
    expect(atGap(await hotOf(tested), 0.28).otherGap).toBe(false);
    expect(atGap(await hotOf(tested), 0.2).otherGap).toBe(false);
    // Elsewhere than there, and with nothing that counts, it was not.
    expect(atGap(at(await adhesiveOf(tested), 23, 'dry'), 0.28).otherGap).toBe(true);
    const apart = { ...other, results: other.results.map((one) => ({ ...one, apart: 'slipped' })) };
    const none = withSets(document, ...document.coupons!.sets, apart);
    expect(atGap(await hotOf(none), 0.28).otherGap).toBe(true);
  });

  it.each<[LedgerEnvironment['allowables'][number]['set'], string, (document: Project) => void]>([
    [
      'as-taken',
      'its name alone',
      ({ coupons }) => Object.assign(coupons!.sets[0]!, { name: 'x' }),
    ],
    ['gone', 'the set', ({ coupons }) => coupons!.sets.shift()],
    [
      'changed',
      'a load',
      ({ coupons }) => Object.assign(coupons!.sets[0]!.results[4]!, { load: 1 }),
    ],
    [
      'changed',
      'a width',
      ({ coupons }) => Object.assign(coupons!.sets[0]!.results[4]!, { width: 20 }),
    ],
    [
      'changed',
      'a result kept apart',
      ({ coupons }) => Object.assign(coupons!.sets[0]!.results[4]!, { apart: 'slipped' }),
    ],
    [
      'changed',
      'a batch',
      ({ coupons }) => Object.assign(coupons!.sets[0]!.results[4]!, { batch: 'new' }),
    ],
    [
      'changed',
      'its temperature',
      ({ coupons }) => Object.assign(coupons!.sets[0]!, { temperature: 70 }),
    ],
    ['changed', 'its gap', ({ coupons }) => Object.assign(coupons!.sets[0]!, { gap: 0.25 })],
  ])('says %s when there is another: %s', async (set, _what, change) => {
    const document = structuredClone(await taken());
    change(document);
    const hot = at(await adhesiveOf(document), 60, 'wet');
    expect(hot.allowables.map((one) => one.set)).toEqual([set]);
    expect(hot.restsOn).toBe('B-basis, 18 coupons, 60 °C wet');
  });

  it('tells coupons that nothing was taken from, and why nothing can be', async () => {
    const sets = [
      couponSet('hot', 150),
      couponSet('more', 150, { gap: 0.4 }),
      couponSet('lap', 30, { specimen: 'd1002' }),
      couponSet('planned', 150, { results: [] }),
      couponSet('off', 150, {
        results: [
          { coupon: '1', batch: 'a', load: 9000, modes: { adhesion: 100 } },
          { coupon: '2', batch: 'a', load: 15000 },
        ],
      }),
      couponSet('warm', 150, { temperature: 45 }),
    ];
    const document = await withAllowables(ask, withSets(await curlew(), ...sets), 'hot');
    const adhesive = await adhesiveOf(document);
    const { offers, basis } = at(adhesive, 60, 'wet');
    expect(basis).toBe('B');
    expect(
      offers.map(({ setId, gap, counted, results }) => [setId, gap, counted, results]),
    ).toEqual([
      ['more', 0.4, 18, 18],
      ['lap', 0.2, 18, 18],
      ['off', 0.2, 1, 2],
    ]);
    expect(offers.map(({ barred }) => barred)).toEqual([
      '',
      expect.stringMatching(/^A small single lap is no design allowable/),
      expect.stringMatching(/^Coupons came off a surface/),
    ]);
    // Coupons alone make an environment and a gap to be asked about.
    expect(at(adhesive, 45, 'wet').offers.map(({ setId }) => setId)).toEqual(['warm']);
    expect(atGap(at(adhesive, 60, 'wet'), 0.4).of).toEqual(['coupons']);
  });
});

describe('what is not known', () => {
  it('is said where the adhesive has no properties', async () => {
    const document = { ...(await curlew()), joints: [] };
    const states = document.adhesives[0]!.states.filter(({ moisture }) => moisture === 'dry');
    const hot = at(await adhesiveOf(paste(document, { states })), 60, 'wet');
    expect(hot).toMatchObject({ table: null, basis: null, restsOn: '', rows: 'none' });
    expect(hot.why).toMatch(/has no wet properties/);
    expect(hot.gaps.every(({ strength, factors }) => strength === null && factors === null)).toBe(
      true,
    );
    expect(hot.gaps).toHaveLength(3);
  });

  it('is told of temperatures beyond the rows and gaps beyond the table', async () => {
    const document = await curlew();
    const [first, ...others] = document.loadCases;
    const frozen = { ...document, loadCases: [{ ...first!, temperature: -55 }, ...others] };
    const cold = at(await adhesiveOf(frozen), -55, 'dry');
    expect([cold.rows, cold.rowsAt]).toEqual(['beyond', [-40]]);
    const { knockdowns } = document.adhesives[0]!;
    const gap = knockdowns!.gap.slice(1);
    const hot = at(
      await adhesiveOf(paste(document, { knockdowns: { ...knockdowns!, gap } })),
      60,
      'wet',
    );
    expect(hot.gaps.filter(({ outsideTable }) => outsideTable).map((one) => one.gap)).toEqual([
      0.12, 0.15, 0.17, 0.2, 0.23, 0.25, 0.28,
    ]);
  });

  it('leaves a joint out whose gap closes, and says so', async () => {
    const document = await curlew();
    document.joints = document.joints.map((joint) =>
      joint.type === 'flat-double' ? { ...joint, lowerBond: { gap: 0.2, tolerance: 0.2 } } : joint,
    );
    const { refused, adhesives } = await ledgerOf(document);
    expect(refused).toMatchObject([
      { jointId: 'tail-strut', error: { field: 'joints.3.lowerBond.tolerance' } },
    ]);
    expect(at(adhesives[0]!, 20, 'dry').uses.map(({ jointId }) => jointId)).toEqual([
      'boom-root',
      'boom-tip',
    ]);
  });

  it('has one line without a gap where nothing names one', async () => {
    const document = { ...(await curlew()), joints: [] };
    const { knockdowns: _, ...bare } = document.adhesives[0]!;
    const { environments } = await adhesiveOf({ ...document, adhesives: [bare] });
    for (const { gaps, table } of environments) {
      expect(gaps).toMatchObject([{ gap: null, of: [], strength: table, joints: [] }]);
    }
  });
});

describe('in large', () => {
  it('counts the cases of frame sizes', async () => {
    const document = await curlew();
    const leg = document.joints.find(({ id }) => id === 'landing-leg')!;
    const load = { case: 'gust', force: 100, moment: 0, torque: 0, shear: 0 };
    const sized = { ...leg, sizes: [{ id: 'b', name: 'B', loads: [load] }] } as Joint;
    const joints = document.joints.map((one) => (one.id === leg.id ? sized : one));
    const room = at(await adhesiveOf({ ...document, joints }), 20, 'dry');
    expect(room.uses.map(({ jointId }) => jointId)).toContain('landing-leg');
  });

  it('leaves out only lines that no joint uses, and counts them', async () => {
    const document = await curlew();
    const { knockdowns, states } = document.adhesives[0]!;
    const gap = Array.from({ length: 40 }, (_, i) => ({ gap: 0.3 + 0.01 * i, factor: 1 }));
    const more = Array.from({ length: 30 }, (_, i) => ({ ...states[0]!, temperature: 61 + i }));
    const wide = paste(document, {
      knockdowns: { ...knockdowns!, gap },
      states: [...states, ...more],
    });
    const adhesive = await adhesiveOf(wide);
    const lines = adhesive.environments.flatMap(({ gaps }) => gaps);
    expect(lines.length).toBeGreaterThan(0);
    expect(lines.every(({ joints }) => joints.length > 0)).toBe(true);
    expect(lines.length + adhesive.leftOut).toBe(37 * 47);
    expect((await adhesiveOf(document)).leftOut).toBe(0);
  });

  it('tells how far it is, joint by joint', async () => {
    const document = await curlew();
    const ticks: [number, number, string | undefined][] = [];
    await ask(
      'project.ledger',
      { document },
      { progress: (...tick) => ticks.push([...tick] as never) },
    );
    expect(ticks.map(([done, of]) => [done, of])).toEqual([1, 2, 3, 4, 5].map((n) => [n, 5]));
    expect(ticks.at(-1)![2]).toBe('Toughened epoxy paste');
  });
});
