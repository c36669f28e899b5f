import { describe, expect, it, vi } from 'vitest';
import { stressText } from '../../src/cli/report-stress.ts';
import type { StressReport, SweepReport } from '../../src/shared/reports.ts';
import { answerOf, changed, file, lapwright, linesOf, mastProject } from './lapwright.ts';

// A busy machine computes a joint in seconds, not in a tenth of one.
vi.setConfig({ testTimeout: 600_000 });

const mast = mastProject();
const stressOf = (focus: object): Promise<StressReport> =>
  answerOf('joint.stress', {
    document: mast,
    jointId: 'mast-foot',
    focus,
  }) as Promise<StressReport>;

const stress = (...more: string[]) =>
  lapwright([
    'stress',
    file('mast.json', mast),
    '--joint',
    'mast-foot',
    '--case',
    'wind-hot',
    ...more,
  ]);

/** The figures of a row, by the word it begins with. */
function row(out: string, start: string): string[] {
  const line = linesOf(out).find((text) => text.startsWith(`${start} `));
  return (line ?? '')
    .slice(start.length)
    .trim()
    .split(/\s{2,}/);
}
const near = (printed: string | undefined, value: number): void => {
  const shown = Number(printed?.replace('−', '-'));
  // Three significant figures: half a unit of the third.
  expect(Math.abs(shown - value)).toBeLessThanOrEqual(0.0051 * Math.abs(value) + 1e-5);
};

describe('stress', () => {
  it('prints with --json exactly what the handler answers', async () => {
    const value = await stressOf({ caseId: 'wind-hot' });
    expect(await stress('--json')).toEqual({ code: 0, out: `${JSON.stringify(value)}\n`, err: '' });
  });

  it('passes gap, clocking, factor and stations on', async () => {
    const given = ['--gap', 'max', '--theta', '-90', '--factor', '1.5', '--stations', '9'];
    const { out } = await stress(...given, '--json');
    const focus = {
      caseId: 'wind-hot',
      gapState: 'max',
      theta: -90,
      loadFactor: 1.5,
      stations: 9,
    };
    expect(out).toBe(`${JSON.stringify(await stressOf(focus))}\n`);
    expect(JSON.parse(out)).toMatchObject({ gapState: 'max', loadFactor: 1.5 });
    expect(JSON.parse(out).theta).toBeCloseTo(-90);
  });

  it('shows what the handler answers: bond, walls, state', async () => {
    const value = await stressOf({ caseId: 'wind-hot', gapState: 'max' });
    const { code, out, err } = await stress('--gap', 'max');
    expect({ code, err }).toEqual({ code: 0, err: '' });
    const [bond] = value.bonds;
    const [gap, peak, at, yields, zones, strain, allowed, force] = row(out, 'bond');
    near(gap, bond!.gap);
    near(peak, bond!.peak.value);
    expect(at).toBe(bond!.peak.x.toFixed(1));
    near(yields, bond!.shearYield);
    expect(zones).toBe('none');
    near(strain, bond!.strain);
    near(allowed, bond!.strainAllowed);
    near(force, bond!.force);
    for (const wall of value.adherends) {
      const [root, mouth] = row(out, wall.part);
      near(root, wall.stressAtRoot);
      near(mouth, wall.stressAtMouth);
    }
    expect(out).toContain('Storm wind, summer (limit), 50 °C wet, gap max');
    expect(out).toContain('loads × 1.');
    expect(out).toContain('The bond carries these loads');
  });

  it('shows the yielded stretches and says when the bond does not carry the load', async () => {
    const value = await stressOf({ caseId: 'wind-hot', loadFactor: 3 });
    const [, , , , zones] = row((await stress('--factor', '3')).out, 'bond');
    expect(value.bonds[0]!.plastic.length).toBeGreaterThan(0);
    const { from, to } = value.bonds[0]!.plastic[0]!;
    expect(zones).toContain(`${from.toFixed(1)}–${to.toFixed(1)}`);
    const far = await stress('--factor', '50');
    expect(far.code).toBe(0);
    expect(far.out).toContain('The bond does not carry these loads.');
    expect(far.out).toMatch(/^! The bond carries/m);
  });

  it('writes what rounding leaves of a force or a stress as 0, without a sign', async () => {
    const value = await stressOf({ caseId: 'wind-hot' });
    const joint = mast.joints[0]!;
    const loadCase = mast.loadCases.find(({ id }) => id === 'wind-hot')!;
    const largest = Math.max(...value.adherends.flatMap(({ force }) => force.map(Math.abs)));
    const noisy: StressReport = {
      ...value,
      bonds: value.bonds.map((bond) => ({ ...bond, force: -3e-7 * largest })),
      adherends: value.adherends.map((wall) => ({
        ...wall,
        force: [-7e-7 * largest, ...wall.force.slice(1, -1), largest],
        stressAtRoot: -7e-7 * wall.stressAtMouth - 1e-5,
        stressAtMouth: 100,
      })),
    };
    const out = stressText(noisy, joint, loadCase, false, { width: 100, colour: false });
    expect(row(out, 'bond').at(-1)).toBe('0');
    for (const { part } of noisy.adherends) {
      const [root, mouth, rootForce, mouthForce] = row(out, part);
      expect([root, rootForce]).toEqual(['0', '0']);
      expect(mouth).toBe('100');
      near(mouthForce, largest);
    }
  });

  it('lists the curve only when stations are asked for', async () => {
    expect((await stress()).out).not.toContain('x mm');
    const { out } = await stress('--stations', '7');
    const lines = linesOf(out);
    const start = lines.findIndex((line) => /^ *x mm +bond MPa +peel MPa$/.test(line));
    const listed = lines.slice(start + 2, lines.indexOf('', start));
    expect(listed).toHaveLength(7);
    expect(listed[0]).toMatch(/^ *0\.00 /);
    expect(listed[6]).toMatch(/^ *50\.00 /);
  });

  it('shows peel, its strength, and the elastic peak beside the one that counts', async () => {
    const value = await stressOf({ caseId: 'wind-hot', gapState: 'max' });
    const { out } = await stress('--gap', 'max');
    const lines = linesOf(out);
    const at = lines.findIndex((line) => line.startsWith('Peel '));
    const [, peak, x, elastic] = lines[at + 2]!.trim().split(/\s{2,}/);
    const { layered } = value.bonds[0]!;
    near(peak, layered.peak.value);
    expect(x).toBe(layered.peak.x.toFixed(1));
    near(elastic, layered.capped ? Math.max(...layered.peel) : layered.peak.value);
    expect(lines[at + 2]).toMatch(layered.capped ? /capped at yield$/ : /elastic$/);
  });

  it('lists the curve with capped peel where the bond yields', async () => {
    const given = ['--factor', '3', '--stations', '5'];
    const value = await stressOf({ caseId: 'wind-hot', loadFactor: 3, stations: 5 });
    const { capped, peel } = value.bonds[0]!.layered;
    expect(capped).not.toBeNull();
    const lines = linesOf((await stress(...given)).out);
    const start = lines.findIndex((line) => /^ *x mm /.test(line));
    expect(lines[start]).toMatch(/peel MPa +peel, capped$/);
    const last = lines[start + 6]!.trim().split(/\s{2,}/);
    near(last[2], peel[4]!);
    near(last[3], capped!.peel[4]!);
  });

  it('answers with a map of the bond where it is asked for', async () => {
    const { out } = await stress('--map', '8', '--json');
    const { map } = JSON.parse(out) as StressReport;
    expect(map!.theta).toHaveLength(8);
    expect(map!.bonds[0]!.peel).toHaveLength(8);
    expect(map!.bonds[0]!.peel[0]).toHaveLength(map!.x.length);
    expect(JSON.parse((await stress('--json')).out).map).toBeNull();
  });

  it('says that a map needs --json rather than leave it out', async () => {
    const { code, out, err } = await stress('--map', '8');
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toBe(
      'lapwright: --map needs --json: what it adds is printed as data only. "lapwright help stress" explains it.\n',
    );
  });

  it('says of a case without load that only thermal stress is there', async () => {
    const still = { case: 'wind-cold', force: 0, moment: 0, torque: 0, shear: 0 };
    const path = file('mast.json', changed({ loads: [still] }));
    const ran = await lapwright(['stress', path, '--joint', 'mast-foot', '--case', 'wind-cold']);
    expect(ran.code).toBe(0);
    expect(ran.out).toContain('what is here is thermal stress');
  });

  it('suggests the joint and the load case that were meant', async () => {
    const path = file('mast.json', mast);
    const joint = await lapwright(['stress', path, '--joint', 'mast-fot', '--case', 'wind-hot']);
    expect(joint.code).toBe(2);
    expect(joint.out).toBe('');
    expect(joint.err).toMatch(
      /^lapwright: .*mast\.json: .*"mast-fot".* Did you mean "mast-foot"\?\n$/,
    );
    const named = await lapwright(['stress', path, '--joint', 'Mast foot', '--case', 'wind-hot']);
    expect(named.err).toContain('Did you mean "mast-foot"?');
    const loadCase = await lapwright(['stress', path, '--joint', 'mast-foot', '--case', 'windhot']);
    expect(loadCase.code).toBe(2);
    expect(loadCase.err).toContain('mast.json: --case: ');
    expect(loadCase.err).toContain('Did you mean "wind-hot"?');
    const nothing = await lapwright(['stress', path, '--joint', 'xyz', '--case', 'wind-hot']);
    expect(nothing.err).toContain('It has: mast-foot.');
    expect(nothing.err).not.toContain('Did you mean');
  });

  it('answers an unknown joint with --json as the handler does', async () => {
    const path = file('mast.json', mast);
    const argv = ['stress', path, '--joint', 'no', '--case', 'wind-hot', '--json'];
    const { code, out, err } = await lapwright(argv);
    expect({ code, err }).toEqual({ code: 2, err: '' });
    expect(JSON.parse(out)).toEqual({
      error: { code: 'not-found', field: 'joints', message: expect.stringContaining('"no"') },
    });
  });
});

describe('sweep', () => {
  const sweep = (...more: string[]) =>
    lapwright(['sweep', file('mast.json', mast), '--joint', 'mast-foot', ...more]);

  it('prints with --json exactly what the handler answers', async () => {
    const input = { document: mast, jointId: 'mast-foot', from: 10, to: 60, points: 3 };
    const value = await answerOf('joint.sweep', input);
    const ran = await sweep('--from', '10', '--to', '60', '--points', '3', '--json');
    expect(ran).toEqual({ code: 0, out: `${JSON.stringify(value)}\n`, err: '' });
  });

  it('shows a row for each overlap and where more of it stops paying', async () => {
    const input = { document: mast, jointId: 'mast-foot', from: 10, to: 60, points: 3 };
    const value = (await answerOf('joint.sweep', input)) as SweepReport;
    const { code, out } = await sweep('--from', '10', '--to', '60', '--points', '3');
    expect(code).toBe(0);
    for (const point of value.points) {
      const line = linesOf(out).find((text) => text.trim().startsWith(point.overlap.toFixed(1)));
      const [, bond, all] = line!.trim().split(/\s{2,}/);
      near(bond, point.bond);
      near(all, point.all);
      expect(line!.endsWith(point.mode)).toBe(true);
    }
    expect(out).toContain(
      `Past ${value.plateau!.toFixed(1)} mm more overlap buys the bond under 2 %`,
    );
    expect(out).toContain('overlap now 50.0 mm');
  });

  it('refuses a range that ends before it starts', async () => {
    const ran = await sweep('--from', '60', '--to', '10');
    expect(ran.code).toBe(2);
    expect(ran.err).toContain('must end beyond where it starts');
  });

  it('refuses a joint without load case, naming the place', async () => {
    const path = file('mast.json', changed({ loads: [] }));
    const ran = await lapwright(['sweep', path, '--joint', 'mast-foot']);
    expect(ran.code).toBe(2);
    expect(ran.err).toMatch(/mast\.json: joints\.0\.loads: .* no load case/);
  });

  it('has no strength ratio to show when no load acts', async () => {
    const still = { case: 'wind-cold', force: 0, moment: 0, torque: 0, shear: 0 };
    const path = file('mast.json', changed({ loads: [still] }));
    const ran = await lapwright(['sweep', path, '--joint', 'mast-foot', '--points', '2']);
    expect(ran.code).toBe(0);
    expect(ran.out).toContain('No load acts on this joint');
  });
});
