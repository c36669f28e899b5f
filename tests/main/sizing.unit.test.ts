/** The requests joint.size and joint.sizes: answers that the analysis of the joint confirms. */
import { describe, expect, it } from 'vitest';
import { atSize } from '../../src/shared/frame-sizes.ts';
import type { Joint, Project } from '../../src/shared/project.ts';
import { readProject } from '../../src/shared/read-project.ts';
import type { JointReport, Opened, SizesReport, SizingReport } from '../../src/shared/reports.ts';
import { noHelpText, sizesAnswer, sizingAnswer } from '../../src/shared/sizing-words.ts';
import { withValue } from '../../src/shared/vary-joint.ts';
import { ask, value } from './asking.ts';

const { document: curlew } = await value<Opened>('project.demo', {});
const jointOf = (id: string): Joint => structuredClone(curlew.joints.find((one) => one.id === id)!);
const withJoint = (joint: Joint): Project => ({ ...structuredClone(curlew), joints: [joint] });

/** The lowest margin of a joint by the request that its own page makes. */
async function lowest(joint: Joint): Promise<number> {
  const document = withJoint(joint);
  const { margins } = await value<JointReport>('joint.analyse', {
    document,
    jointId: joint.id,
    focus: {},
  });
  return margins[0]!.margin;
}
const sized = (joint: Joint, question: object): Promise<SizingReport> =>
  value('joint.size', { document: withJoint(joint), jointId: joint.id, ...question });

describe('a joint that fails', () => {
  it('gets the shortest overlap, confirmed by its own page and by one step less', async () => {
    const leg = jointOf('landing-leg');
    const report = await sized(leg, { vary: 'overlap' });
    const found = report.found!;
    expect(report).toMatchObject({ target: 0.25, step: 1, stop: null, suggestions: [] });
    expect(report.present.margin.margin).toBeCloseTo(await lowest(leg), 9);
    expect(found.joint).toEqual({ ...leg, overlap: found.value });
    expect(await lowest(found.joint)).toBeCloseTo(found.margin.margin, 9);
    expect(await lowest({ ...leg, overlap: found.value - 1 })).toBeLessThan(0.25);
    expect(found.checks.map(({ value: at, reached }) => [at, reached])).toEqual([
      [found.value - 1, false],
      [found.value, true],
    ]);
    expect(sizingAnswer(report)).toMatch(
      /^24\.0 mm is the shortest overlap that reaches the target of \+0\.25 in every mode, case and gap: the lowest margin is \+0\.28/,
    );
  });

  it('is asked in the steps and for the target of the question before those of the project', async () => {
    const leg = jointOf('landing-leg');
    const report = await sized(leg, { vary: 'overlap', step: 2.5, target: 0.1, from: 10, to: 40 });
    expect(report).toMatchObject({ step: 2.5, target: 0.1, from: 10, to: 40 });
    const at = report.found!.value;
    expect(at % 2.5).toBe(0);
    expect(await lowest({ ...leg, overlap: at })).toBeGreaterThanOrEqual(0.1);
    expect(await lowest({ ...leg, overlap: at - 2.5 })).toBeLessThan(0.1);
  });
});

describe('a joint that no overlap helps', () => {
  it('names the mode that stops it, and offers only what the same sizing confirms', async () => {
    // In its cyclic case and nominal gap alone, so that much can be tried.
    const whole = jointOf('boom-tip');
    const loads = whole.loads.slice(2);
    const tip = { ...whole, loads, bond: { gap: 0.2, tolerance: 0 }, offset: 0 } as Joint;
    const question = { vary: 'overlap', from: 10, to: 45, step: 5, target: 0.5 };
    const report = await sized(tip, question);
    expect(report.found).toBeNull();
    const stop = report.stop!;
    expect(stop.atBest.map(({ mode }) => mode)).toEqual(['cyclic-shear']);
    expect(stop.margin).toMatchObject({ mode: 'cyclic-shear', caseName: 'Rotor vibration' });
    expect(sizingAnswer(report)).toMatch(
      /^No overlap from 10\.0 mm to 45\.0 mm reaches the target of \+0\.50; the best is \+0\.\d\d at .* Cyclic shear at the mouth stops it: past \d+\.0 mm more overlap does not raise it\.$/,
    );
    const kinds = report.suggestions.map(({ kind }) => kind);
    expect(kinds.length).toBeGreaterThan(1);
    expect([...kinds, ...report.noHelp].sort()).toEqual(
      ['sleeve-wall', 'taper', 'thinner-gap', 'thicker-gap', 'tube-wall', 'double-lap'].sort(),
    );
    expect(noHelpText(report)).toMatch(/^Tried and of no help: /);
    // Those that reach the target stand first.
    const reached = report.suggestions.map((one) => one.reached);
    expect(reached).toEqual([...reached].sort((a, b) => Number(b) - Number(a)));
    expect(reached[0]).toBe(true);
    for (const suggestion of report.suggestions) {
      const { joint, margin, gain, reached: reaches } = suggestion;
      expect(await lowest(joint)).toBeCloseTo(margin, 4);
      expect(reaches).toBe(margin >= 0.5);
      expect(gain).toBeCloseTo(margin - stop.margin.margin, 9);
      expect(gain).toBeGreaterThan(0.004);
      expect(joint).not.toEqual({ ...tip, overlap: suggestion.value });
      if (reaches) {
        expect(await lowest({ ...joint, overlap: suggestion.value - 5 })).toBeLessThan(0.5);
      }
      expect(readProject(withJoint(joint)).ok).toBe(true);
    }
  });
});

describe('gaps and walls', () => {
  it('the gaps that reach the target, with both ends, as every multiple has them', async () => {
    const tip = jointOf('boom-tip');
    const report = await sized(tip, { vary: 'gap', target: 0.25 });
    // The table of strength against gap goes from 0.1 to 0.5, tolerance and offset take 0.08.
    expect([report.from, report.to]).toEqual([0.2, 0.4]);
    const gaps = [0.2, 0.25, 0.3, 0.35, 0.4];
    const reaching: number[] = [];
    for (const gap of gaps) {
      if ((await lowest(withValue(tip, 'gap', gap))) >= 0.25) reaching.push(gap);
    }
    const found = report.found!;
    expect([found.low, found.high]).toEqual([reaching[0], reaching.at(-1)]);
    expect(found.value).toBe(found.high);
    expect(found).toMatchObject({ lowBounded: true, highBounded: false });
    expect(sizingAnswer(report)).toMatch(/^Gaps from 0\.30 mm to 0\.40 mm of those that were/);
  });

  it('the thinnest strap of a flat joint, both of them together', async () => {
    const strut = jointOf('tail-strut');
    const report = await sized(strut, { vary: 'sleeve-wall', from: 0.3, to: 1.2 });
    const found = report.found!;
    expect(found.joint).toMatchObject({
      lowerStrap: { atRoot: found.value, atMouth: found.value },
      upperStrap: { atRoot: found.value, atMouth: found.value },
    });
    expect(await lowest(found.joint)).toBeGreaterThanOrEqual(0.25);
    expect(
      await lowest(withValue(strut, 'sleeve-wall', Number((found.value - 0.1).toFixed(6)))),
    ).toBeLessThan(0.25);
    expect(sizingAnswer(report)).toContain('is the thinnest strap that reaches');
  });

  it('a wall of plies is made of the same plies at every thickness', async () => {
    const strut = jointOf('tail-strut');
    const report = await sized(strut, { vary: 'tube-wall', from: 2, to: 4, step: 0.5 });
    expect(report.found!.joint).toMatchObject({ strip: { adherend: 'carbon-strip' } });
    expect(await lowest(report.found!.joint)).toBeCloseTo(report.found!.margin.margin, 9);
  });
});

describe('what cannot be sized', () => {
  const refused = async (joint: Joint, question: object) => {
    const reply = await ask('joint.size', {
      document: withJoint(joint),
      jointId: joint.id,
      vary: 'overlap',
      ...question,
    });
    return reply.ok ? null : reply.error;
  };

  it('has no load, a range without two steps, or values that no joint has', async () => {
    const leg = jointOf('landing-leg');
    expect(await refused({ ...leg, loads: [] }, {})).toMatchObject({
      code: 'bad-input',
      field: 'joints.0.loads',
    });
    expect((await refused(leg, { from: 10, to: 10.5 }))?.message).toContain('widen the range');
    expect((await refused(leg, { from: 0.5, to: 20 }))?.field).toBe('from');
    expect(await refused(leg, { step: 0 })).toMatchObject({ code: 'bad-request' });
    expect(await refused(leg, { target: 99 })).toMatchObject({ code: 'bad-request' });
  });

  it('fits together nowhere: the message names what is in the way', async () => {
    const leg = jointOf('landing-leg');
    const error = await refused(leg, { vary: 'sleeve-wall', from: 12, to: 14 });
    expect(error?.message).toContain('does not fit inside the tube');
  });
});

describe('progress', () => {
  it('grows up to the end of the search, and through what is tried after it', async () => {
    const tip = { ...jointOf('boom-tip'), loads: jointOf('boom-tip').loads.slice(2) } as Joint;
    const ticks: [number, number, string | undefined][] = [];
    const document = withJoint(tip);
    const input = { document, jointId: tip.id, vary: 'gap', target: 3 };
    const reply = await ask('joint.size', input, {
      progress: (...tick) => ticks.push([tick[0], tick[1], tick[2]]),
    });
    expect(reply.ok).toBe(true);
    expect(ticks.every(([done], i) => i === 0 || done >= ticks[i - 1]![0])).toBe(true);
    expect(ticks.every(([done, total]) => done <= total)).toBe(true);
    expect(new Set(ticks.map(([, , what]) => what)).size).toBeGreaterThan(3);
  });
});

describe('frame sizes', () => {
  const leg = jointOf('landing-leg');
  const withSizes: Joint = {
    ...leg,
    sizes: [
      { id: 'small', name: 'Small', outsideDiameter: 22, loadFactor: 0.8 },
      { id: 'large', name: 'Large', outsideDiameter: 30, tubeWall: 1.8, loadFactor: 1.4 },
      {
        id: 'own',
        name: 'Own loads',
        loads: [{ case: 'gust-cold', force: -2000, moment: 5000, torque: 0, shear: 0 }],
      },
    ],
  } as Joint;
  const analysed = (each: boolean, joint = withSizes): Promise<SizesReport> =>
    value('joint.sizes', { document: withJoint(joint), jointId: joint.id, each });

  it('each is judged as the joint it stands for, the worst is named', async () => {
    const report = await analysed(true);
    expect(report.common).toBeNull();
    const margins = [];
    for (const [i, size] of withSizes.sizes!.entries()) {
      const joint = atSize(withSizes, size);
      const margin = await lowest(joint);
      margins.push(margin);
      expect(report.sizes[i]!.lowest!.margin).toBeCloseTo(margin, 9);
      const overlap = report.sizes[i]!.overlap!;
      expect(await lowest({ ...joint, overlap })).toBeGreaterThanOrEqual(0.25);
      expect(await lowest({ ...joint, overlap: overlap - 1 })).toBeLessThan(0.25);
    }
    const worst = margins.indexOf(Math.min(...margins));
    expect(report.worst).toBe(withSizes.sizes![worst]!.id);
  });

  it('one overlap for all is that of the size that needs most, checked in every size', async () => {
    const report = await analysed(false);
    const needs = report.sizes.map(({ overlap }) => overlap!);
    expect(report.common!.overlap).toBe(Math.max(...needs));
    expect(report.common!.by).toBe(report.sizes[needs.indexOf(Math.max(...needs))]!.sizeId);
    expect(report.common!.checks.map(({ sizeId }) => sizeId)).toEqual(['small', 'large', 'own']);
    for (const { margin } of report.common!.checks) {
      expect(margin.margin).toBeGreaterThanOrEqual(0.25);
    }
    expect(sizesAnswer(report)).toContain('for all reaches the target of +0.25 in every size');
  });

  it('a size that cannot be made is refused by itself', async () => {
    const broken = {
      ...withSizes,
      sizes: [...withSizes.sizes!.slice(0, 1), { id: 'no', name: 'No bore', tubeWall: 20 }],
    } as Joint;
    const report = await analysed(false, broken);
    expect(report.sizes[0]!.lowest).not.toBeNull();
    expect(report.sizes[1]!.refused?.message).toContain('leaves no bore');
    expect(report.sizes[1]!.refused?.field).toMatch(/^joints\.\d+\.sizes\.1$/);
    expect(report.common).toBeNull();
    expect(sizesAnswer(report)).toBe('Not computed: No bore.');
  });

  it('multiplies the loads of a size too by its load factor', () => {
    const [, , own] = withSizes.sizes!;
    const once = atSize(withSizes, own!).loads;
    const twice = atSize(withSizes, { ...own!, loadFactor: 2 }).loads;
    expect(twice.map(({ force }) => force)).toEqual(once.map(({ force }) => 2 * force));
  });

  it('are asked for where there are none', async () => {
    const reply = await ask('joint.sizes', {
      document: withJoint(leg),
      jointId: leg.id,
      each: false,
    });
    expect(reply).toMatchObject({ ok: false, error: { field: 'joints.0.sizes' } });
  });
});
