/** May these parts be bonded: each verdict at its exact limit, through the door. */
import { describe, expect, it } from 'vitest';
import { convertLap } from '../../src/shared/convert-lap.ts';
import type { Bench, Joint, MeasuredSurface, Project } from '../../src/shared/project.ts';
import type { CheckReport } from '../../src/shared/reports.ts';
import type { GapLimitsReport, GapReport, GapVerdict } from '../../src/shared/reports-gap.ts';
import { expectClose } from '../support/close.ts';
import { type Made, partsOf, withReading } from '../support/parts.ts';
import { ask, curlew, value } from './asking.ts';

const exact = { name: 'Perfect', error: 0, repeatability: 0 };

async function project(id: string, bench: Bench = {}, change: Partial<Joint> = {}) {
  const document = await curlew();
  const joint = { ...document.joints.find((one) => one.id === id)!, bench, ...change } as Joint;
  return { document: { ...document, joints: [joint] } as Project, joint };
}
const verdict = (document: Project, measured: readonly MeasuredSurface[]) =>
  value<GapVerdict>('joint.gap-verdict', {
    document,
    jointId: document.joints[0]!.id,
    measured,
  });
/** The sleeve larger by so much in diameter than drawn. */
const wider =
  (by: number): Made =>
  (surface, drawn) =>
    surface === 'socket-inside' ? drawn + by : drawn;
/** Loads so low that no margin speaks: the geometry decides. */
const light = async (bench: Bench, change: Partial<Joint> = {}) => {
  const found = await project('boom-tip', bench, change);
  const [gust] = found.joint.loads as { case: string }[];
  const loads = [{ ...gust!, force: 10, moment: 0, torque: 0, shear: 0 }];
  const joint = { ...found.joint, loads } as Joint;
  return { joint, document: { ...found.document, joints: [joint] } };
};
const decided = ({ state, reasons }: GapVerdict) => `${state} ${reasons[0]!.code}`;

describe('a verdict at its exact limit', () => {
  // Drawn 0.2; on wires of 0.1 the held gap is 0.1 to 2c − 0.1.
  const wire: Bench = { spacer: { form: 'wire', size: 0.1 } };

  it.each([
    ['accept inside', 0.2],
    ['reject above-range', 0.2002],
  ])('%s: the thick side against the last gap of the coupons', async (said, by) => {
    // c = 0.2 + by/2, so the thick side is 0.3 + by; coupons go to 0.5.
    const { document, joint } = await light(wire);
    const report = await verdict(document, partsOf(joint, wider(by), exact));
    expect(decided(report)).toBe(said);
    expectClose(report.gap.bonds[0]!.held.max.value, 0.3 + by, { absolute: 1e-9 }, 'thick side');
  });

  it.each([
    ['accept inside', 0.1],
    ['hold uncertain', 0.1002],
  ])('%s: the same with the limit set by the engineer, and an uncertainty', async (said, by) => {
    const limits = { bond: { from: 0.1, to: 0.45 } };
    const { document, joint } = await light({ ...wire, limits });
    // One shared error on the sleeve: U(thick side) = 2·2·½·a/√3 = 0.05 with this a.
    const parts = partsOf(joint, wider(by), exact).map((one) =>
      one.surface === 'socket-inside'
        ? { ...one, instrument: { ...exact, error: 0.025 * Math.sqrt(3) } }
        : one,
    );
    const report = await verdict(document, parts);
    expectClose(report.gap.bonds[0]!.held.max.uncertainty, 0.05, { absolute: 1e-9 }, 'U');
    expect(decided(report)).toBe(said);
  });

  it.each([
    ['accept inside', -0.2],
    ['reject below-spacer', -0.2002],
  ])('%s: room for the wire', async (said, by) => {
    const { document, joint } = await light(wire);
    expect(decided(await verdict(document, partsOf(joint, wider(by), exact)))).toBe(said);
  });

  it.each([
    ['accept inside', 0.1],
    ['reject below-range', 0.1001],
  ])('%s: the thin side in a jig against the first gap of the coupons', async (said, jigOffset) => {
    const { document, joint } = await light({ jigOffset });
    expect(decided(await verdict(document, partsOf(joint, undefined, exact)))).toBe(said);
  });

  it('holds where nothing holds the tube, rejects where it can be told', async () => {
    const { document, joint } = await light({});
    const report = await verdict(document, partsOf(joint, undefined, exact));
    expect(report.reasons.map(({ code }) => code)).toEqual(['below-range', 'not-held']);
    expect(report.measured).toBeNull();
    expect(report.gap.flags.map(({ code }) => code)).toContain('not-held');
  });

  it('compares the margin at the gap as measured with the target, to the last bit', async () => {
    const { document, joint } = await project('landing-leg', wire, { overlap: 30 });
    const parts = partsOf(joint, undefined, exact);
    const { measured } = await verdict(document, parts);
    const at = async (targetMargin: number) => {
      const settings = { ...document.settings, targetMargin };
      return verdict({ ...document, settings }, parts);
    };
    expect(decided(await at(measured!.margin))).toBe('accept inside');
    const above = await at(measured!.margin + 1e-6);
    expect(decided(above)).toBe('hold margin');
    expect(above.reasons[0]!.message).toMatch(
      /^At this gap the joint is not strong enough: its margin is/,
    );
  });

  it('never accepts a joint that carries no load: its strength is not known', async () => {
    const still = [{ case: 'gust', force: 0, moment: 0, torque: 0, shear: 0 }];
    for (const loads of [[], still]) {
      const { document, joint } = await project('boom-tip', wire, { loads } as Partial<Joint>);
      const report = await verdict(document, partsOf(joint, undefined, exact));
      expect(report.measured).toBeNull();
      expect(decided(report)).toBe('hold no-margin');
      expect(report.reasons[0]!.message).toMatch(/cannot be told: it carries no load\.$/);
    }
  });

  it('rejects a margin below zero', async () => {
    const { document, joint } = await project('landing-leg', wire);
    const report = await verdict(document, partsOf(joint, undefined, exact));
    expect(decided(report)).toBe('reject margin');
    expect(report.reasons[0]!.message).toMatch(
      /^At this gap the joint fails: its margin is −0\.\d\d/,
    );
  });

  it('holds while a reading is in doubt, and computes no margin for it', async () => {
    const { document, joint } = await light(wire);
    const parts = withReading(partsOf(joint, undefined, exact), 'tube-outside', [0, 0], 23);
    const report = await verdict(document, parts);
    expect(report.reasons.map(({ code }) => code)).toEqual(['reading']);
    expect(report.measured).toBeNull();
  });

  it('is not known until everything is measured', async () => {
    const { document, joint } = await light(wire);
    const parts = withReading(partsOf(joint), 'tube-outside', [0, 0], null);
    const report = await verdict(document, parts);
    expect(decided(report)).toBe('unknown not-measured');
    expect(report.reasons[0]!.message).toBe('One of 18 readings is still to be taken.');
    const none = await verdict(document, []);
    expect(none.reasons[0]!.message).toBe('18 of 18 readings are still to be taken.');
    const wrong = await verdict(
      document,
      partsOf(joint, () => 32.4),
    );
    expect(decided(wrong)).toBe('unknown reading');
  });
});

describe('margins at the gap as measured', () => {
  it('are those of the joint drawn with these gaps', async () => {
    const { document, joint } = await project('boom-tip', {
      spacer: { form: 'wire', size: 0.15 },
    });
    const report = await verdict(document, partsOf(joint, undefined, exact));
    const lowest = async (gap: number) => {
      const drawn = { ...joint, offset: 0, bond: { gap, tolerance: 0 } } as Joint;
      const check = await value<CheckReport>('project.check', {
        document: { ...document, joints: [drawn] },
      });
      return check.joints[0]!.lowest!.margin;
    };
    const ends = await Promise.all([0.15, 0.2, 0.25].map(lowest));
    expectClose(report.measured!.margin, Math.min(...ends), { relative: 1e-9 }, 'margin');
    expect(report.guarded!.margin).toBe(report.measured!.margin);
  });

  it('of a double lap look at one bond thin where the other is thick', async () => {
    const { document, joint } = await project('boom-root', {
      spacer: { form: 'wire', size: 0.12 },
    });
    const report = await verdict(document, partsOf(joint, undefined, exact));
    expect(decided(report)).toBe('accept inside');
    expect(report.gap.bonds.map(({ bond }) => bond)).toEqual(['inner bond', 'outer bond']);
    const lowest = async (inner: number, outer: number) => {
      const drawn = {
        ...joint,
        offset: 0,
        innerBond: { gap: inner, tolerance: 0 },
        outerBond: { gap: outer, tolerance: 0 },
      } as Joint;
      const check = await value<CheckReport>('project.check', {
        document: { ...document, joints: [drawn] },
      });
      return check.joints[0]!.lowest!.margin;
    };
    const crossed = await lowest(0.28, 0.12);
    expect(crossed).toBeLessThan(await lowest(0.2, 0.2));
    expectClose(report.measured!.margin, crossed, { relative: 1e-6 }, 'margin');
  });
});

describe('what is answered beside the verdict', () => {
  it('has limits with whoever set them, the narrower counting', async () => {
    const limits = async (bench: Bench) => {
      const { document, joint } = await project('boom-tip', bench);
      const report = await value<GapReport>('joint.gap', {
        document,
        jointId: joint.id,
        measured: [],
      });
      return { ...report.limits[0]!, flags: report.flags.map(({ code }) => code) };
    };
    const coupons = { from: 0.1, to: 0.5, fromBy: 'coupons', toBy: 'coupons' };
    expect(await limits({ jigOffset: 0.03 })).toMatchObject({
      ...coupons,
      flags: ['typical-gaps', 'small-mix'],
    });
    expect(await limits({ spacer: { form: 'beads', size: 0.15 } })).toMatchObject({
      ...coupons,
      from: 0.15,
      fromBy: 'spacer',
    });
    const set = await limits({ limits: { bond: { from: 0.05, to: 0.4 } }, jigOffset: 0 });
    expect(set).toMatchObject({ from: 0.1, fromBy: 'coupons', to: 0.4, toBy: 'engineer' });
    expect(set.flags).toContain('limits-outside-coupons');
  });

  it('says what is set for another lap or a longer joint, and goes on without', async () => {
    const { document, joint } = await project(
      'boom-tip',
      {
        jigOffset: 0.03,
        limits: { bond: { from: 0.15, to: 0.3 } },
        stations: [4, 18, 31],
      },
      { overlap: 25 },
    );
    const double = convertLap(joint, 'sleeve-double');
    const report = await value<GapReport>('joint.gap', {
      document: { ...document, joints: [double] },
      jointId: joint.id,
      measured: [],
    });
    const messages = report.flags.map(({ message }) => message).join('\n');
    expect(messages).toMatch(/0\.15 to 0\.3 mm are set for the bond of another lap/);
    expect(messages).toMatch(/measured at 31 mm, beyond the overlap of 25 mm: left out/);
    expect(report.limits.map(({ fromBy, toBy }) => [fromBy, toBy])).toEqual([
      ['coupons', 'coupons'],
      ['coupons', 'coupons'],
    ]);
    // Of each surface, at the two stations that are left and three clockings.
    expect(report.missing.map(({ count }) => count)).toEqual([6, 6, 6, 6]);
    const back = convertLap(double, 'socket');
    expect(back.bench).toEqual(joint.bench);
  });

  it('holds where there are no coupons, unless the engineer has set limits', async () => {
    const { document, joint } = await light({ jigOffset: 0.03 });
    const adhesives = document.adhesives.map(({ knockdowns: _, ...one }) => one);
    const bare = { ...document, adhesives } as Project;
    const parts = partsOf(joint, undefined, exact);
    const report = await verdict(bare, parts);
    expect(decided(report)).toBe('hold no-range');
    expect(report.gap.flags.map(({ code }) => code)).toContain('no-coupons');
    const bench = { ...joint.bench, limits: { bond: { from: 0.1, to: 0.3 } } };
    const set = { ...bare, joints: [{ ...joint, bench } as Joint] };
    expect(decided(await verdict(set, parts))).toBe('accept inside');
  });

  it('has the adhesive to mix, worked by hand', async () => {
    const { document, joint } = await project('boom-tip', { jigOffset: 0.03, waste: 2 });
    const report = await value<GapReport>('joint.gap', {
      document,
      jointId: joint.id,
      measured: partsOf(joint, wider(0.2), exact),
    });
    // A ring from 16 to 16.3 mm, 35 mm long; 1180 kg/m³; 100 : 50 by mass.
    const volume = 35 * Math.PI * (16.3 ** 2 - 16 ** 2);
    expectClose(report.amounts.volume, volume, { relative: 1e-9 }, 'volume');
    expectClose(report.amounts.mixMass!, 2 * volume * 1180e-6, { relative: 1e-9 }, 'mass');
    expectClose(
      report.amounts.hardener! / report.amounts.mixMass!,
      1 / 3,
      { relative: 1e-12 },
      'mix',
    );
    const drawn = await value<GapReport>('joint.gap', {
      document,
      jointId: joint.id,
      measured: [],
    });
    expectClose(
      drawn.amounts.volume,
      35 * Math.PI * (16.2 ** 2 - 16 ** 2),
      { relative: 1e-9 },
      'drawn',
    );
  });

  it('says when ovals cannot be seen, ends are bare, the instrument is a guess', async () => {
    const { document, joint } = await project('boom-tip', {
      jigOffset: 0.03,
      clockings: [0, 90],
      stations: [10, 20],
    });
    const { instruments: _, ...rest } = document;
    const usual = { name: 'Caliper', error: 0.02, repeatability: 0.01 };
    const report = await value<GapReport>('joint.gap', {
      document: rest,
      jointId: joint.id,
      measured: partsOf(joint, undefined, usual),
    });
    const codes = report.flags.map(({ code }) => code);
    expect(codes).toEqual([
      'typical-gaps',
      'ovality-unseen',
      'ends-bare',
      'usual-instrument',
      'small-mix',
    ]);
  });

  it('is held where an oval or an end can lie between the readings', async () => {
    const one = { stations: [18], clockings: [0] };
    const { document, joint } = await light({ jigOffset: 0.03, ...one });
    const report = await verdict(document, partsOf(joint, undefined, exact));
    expect(decided(report)).toBe('hold unseen');
    expect(report.reasons[0]!.message).toMatch(/^Too little is measured to tell/);
  });

  it('is guarded by the samples too, where readings that scatter make an extreme of their own', async () => {
    // ± U alone would end below 0.33; samples of round parts reach 0.345.
    const caliper = { name: 'Caliper', error: 0.02, repeatability: 0.01 };
    const wire: Bench = { spacer: { form: 'wire', size: 0.12 } };
    const at = async (to: number) => {
      const { document, joint } = await light({ ...wire, limits: { bond: { from: 0.1, to } } });
      return verdict(document, partsOf(joint, undefined, caliper));
    };
    const report = await at(0.33);
    const [bond] = report.gap.bonds;
    expect(bond!.held.max.value + bond!.held.max.uncertainty).toBeLessThan(0.33);
    expect(report.scatter[0]!.max.high).toBeGreaterThan(0.335);
    expect(decided(report)).toBe('hold uncertain');
    expect(bond!.reach.to).toBe(report.scatter[0]!.max.high);
    expect(decided(await at(bond!.reach.to))).toBe('accept inside');
    expect(decided(await at(bond!.reach.to - 1e-6))).toBe('hold uncertain');
  });

  it('has the Monte Carlo beside the uncertainty', async () => {
    const { document, joint } = await light({ spacer: { form: 'wire', size: 0.1 } });
    const { gap, scatter } = await verdict(document, partsOf(joint));
    const { mean } = gap.bonds[0]!.held;
    const half = (scatter[0]!.mean.high - scatter[0]!.mean.low) / 2;
    expectClose(half, mean.uncertainty, { relative: 0.1 }, '95 % of the mean');
    expect(scatter[0]).toMatchObject({ samples: 2000, seed: 1 });
  });
});

describe('a gap that leaves no joint', () => {
  /** A tube of 4 mm bore: with a gap of 0.6 mm its spigot would be too slender for the wall. */
  const slender = async (bench: Bench = {}) => {
    const found = await project('landing-leg', bench);
    const { joint } = found;
    if (joint.type !== 'sleeve-single') throw new Error('a spigot');
    const { tube, sleeve } = joint;
    const small = {
      ...joint,
      tube: { ...tube, outsideDiameter: 4 + 2 * tube.wall },
      sleeve: { ...sleeve, atRoot: 1.55, atMouth: 1.55 },
      loads: [{ ...joint.loads[0]!, force: 5, moment: 0, torque: 0, shear: 0 }],
    };
    return { joint: small as Joint, document: { ...found.document, joints: [small as Joint] } };
  };

  it('ends the range that is found', async () => {
    const { document, joint } = await slender();
    const settings = { ...document.settings, targetMargin: -0.5 };
    const report = await value<GapLimitsReport>('joint.gap-limits', {
      document: { ...document, settings },
      jointId: joint.id,
    });
    const [bond] = report.bonds;
    // Half of the bore less the wall: 2 − 1.55.
    expect(bond!.model!.to).toBeLessThan(0.45);
    expect(bond!.model!.to).toBeGreaterThan(0.44);
    expect(bond!.open.to).toBe(false);
  });

  it('is never accepted, whatever the limits say', async () => {
    const { document, joint } = await slender({
      jigOffset: 0.01,
      limits: { bond: { from: 0.02, to: 1 } },
    });
    const adhesives = document.adhesives.map(({ knockdowns: _, ...one }) => one);
    const parts = partsOf(
      joint,
      (surface, drawn) => (surface === 'tube-inside' ? drawn + 0.52 : drawn),
      exact,
    ).map((one) => ({
      ...one,
      confirmed: [0, 1, 2].flatMap((i) => [0, 1, 2].map((j): [number, number] => [i, j])),
    }));
    const report = await verdict({ ...document, adhesives } as Project, parts);
    expect(decided(report)).toBe('hold no-margin');
    expect(report.reasons[0]!.message).toMatch(/cannot be told: /);
  });
});

describe('the range of gaps of a joint', () => {
  it('reaches the target at its ends, by the full check, and not past them', async () => {
    const { document, joint } = await project('boom-tip', {
      limits: { bond: { from: 0.2, to: 0.3 } },
    });
    const told: number[] = [];
    const report = await value<GapLimitsReport>(
      'joint.gap-limits',
      { document, jointId: joint.id },
      { progress: (done) => told.push(done) },
    );
    const [bond] = report.bonds;
    const margin = async (gap: number) => {
      const drawn = { ...joint, offset: 0, bond: { gap, tolerance: 0 } } as Joint;
      const check = await value<CheckReport>('project.check', {
        document: { ...document, joints: [drawn] },
      });
      return check.joints[0]!.lowest!.margin;
    };
    expect(await margin(bond!.model!.from)).toBeGreaterThanOrEqual(0.25 - 1e-9);
    expect(await margin(bond!.model!.from - 0.001)).toBeLessThan(0.25);
    expect(bond).toMatchObject({
      drawn: 0.2,
      open: { from: false, to: true },
      coupons: { from: 0.1, to: 0.5, source: { kind: 'typical' } },
      narrower: { from: bond!.model!.from, to: 0.5 },
      set: { from: 0.2, to: 0.3 },
    });
    expect(told.length).toBeGreaterThan(20);
  });

  it('is not there where the drawn gap misses the target, and says by how much', async () => {
    const { document, joint } = await project('landing-leg');
    const report = await value<GapLimitsReport>('joint.gap-limits', {
      document,
      jointId: joint.id,
    });
    expect(report.bonds[0]).toMatchObject({ model: null, narrower: null });
    expect(report.bonds[0]!.flags[0]!.message).toMatch(
      /^At the drawn gap of 0.2 mm the margin is −0/,
    );
  });
});

describe('what is refused', () => {
  const refusal = async (name: string, input: unknown) => {
    const reply = await ask(name, input);
    if (reply.ok) throw new Error('it was answered');
    return reply.error;
  };
  it('names a flat joint, a strange surface, one that is there twice', async () => {
    const document = await curlew();
    const flat = { document, jointId: 'tail-strut', measured: [] };
    for (const name of ['joint.gap', 'joint.gap-verdict']) {
      expect((await refusal(name, flat)).message).toMatch(/is a flat joint: it has no diameters/);
    }
    const [tube, socket] = partsOf(document.joints[1]!);
    const tip = { document, jointId: 'boom-tip' };
    const strange = { ...tip, measured: [{ ...tube!, surface: 'tube-inside' }] };
    expect(await refusal('joint.gap', strange)).toMatchObject({
      field: 'measured.0.surface',
      message: 'This joint has no surface “tube, inside”: it has tube, outside; socket, inside.',
    });
    const twice = { ...tip, measured: [tube!, socket!, tube!] };
    expect((await refusal('joint.gap', twice)).field).toBe('measured.2.surface');
    expect((await refusal('bench.kept', { project: 'Curlew' })).message).toMatch(/Nothing is kept/);
  });
});
