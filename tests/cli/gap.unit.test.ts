/** `gap`: what a person reads, and the same figures as the app for a program. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import demo from '../../src/main/demo/curlew.lapwright.json' with { type: 'json' };
import { writeMeasuredCsv } from '../../src/shared/measured-text.ts';
import type { Project } from '../../src/shared/project.ts';
import type { GapVerdict } from '../../src/shared/reports-gap.ts';
import { partsOf } from '../support/parts.ts';
import { answerOf, folder, lapwright } from './lapwright.ts';

const project = demo as unknown as Project;
const tip = project.joints[1]!;
const leg = project.joints[2]!;

function bench(parts: string): (words: readonly string[]) => ReturnType<typeof lapwright> {
  const cwd = folder();
  writeFileSync(join(cwd, 'c.json'), JSON.stringify(project));
  writeFileSync(join(cwd, 'parts.csv'), parts);
  return (words) => lapwright(['gap', 'c.json', ...words], { cwd });
}
const caliper = project.instruments![0]!;
const measured = partsOf(tip, (_, drawn) => drawn, {
  name: caliper.name,
  error: caliper.error,
  repeatability: caliper.repeatability,
});
const given = ['--joint', tip.id, '--measured', 'parts.csv'];

describe('gap', () => {
  it('prints as JSON what the app is answered, to the last digit', async () => {
    const { code, out, err } = await bench(writeMeasuredCsv(measured))([...given, '--json']);
    const answer = await answerOf('joint.gap-verdict', {
      document: project,
      jointId: tip.id,
      measured,
    });
    const { at: _, ...printed } = JSON.parse(out) as GapVerdict;
    const { at: __, ...answered } = JSON.parse(JSON.stringify(answer)) as GapVerdict;
    expect([code, err]).toEqual([1, '']);
    expect(printed).toEqual(answered);
  });

  it('prints the verdict with its reason first, then what stands behind it', async () => {
    const { code, out } = await bench(writeMeasuredCsv(measured))(given);
    expect(code).toBe(1);
    expect(out).toMatch(/^Boom tip to motor mount: ◐ Hold for engineering\nAt this gap the joint/);
    expect(out).toMatch(/as held +0\.120 ± 0\.000 .* 0\.200 ± 0\.\d+ +0\.280 ± 0\.\d+/);
    expect(out).toContain('Limits of the bond: 0.12 mm (spacers) to 0.5 mm (coupons).');
    expect(out).toContain('By Monte Carlo (2000 samples, seed 1)');
    expect(out).toContain('g of hardener');
    expect(out).toMatch(/Confirm by coupon and joint tests/);
  });

  it('exits 0 when the parts are accepted', async () => {
    const long = { ...leg, overlap: 30 };
    const parts = partsOf(long);
    const cwd = folder();
    const joints = project.joints.map((joint) => (joint.id === leg.id ? long : joint));
    writeFileSync(join(cwd, 'c.json'), JSON.stringify({ ...project, joints }));
    writeFileSync(join(cwd, 'p.csv'), writeMeasuredCsv(parts));
    const argv = ['gap', 'c.json', '--joint', leg.id, '--measured', 'p.csv'];
    const { code, out } = await lapwright(argv, { cwd });
    expect(out).toMatch(/^Landing leg: ● Accept\n/);
    expect(code).toBe(0);
  });

  it('prints a form that it reads, and says what is still to be taken', async () => {
    const form = await bench('')(['--joint', tip.id, '--template']);
    expect(form.code).toBe(0);
    expect(form.out.split(/\r?\n/)[1]).toBe('tube-outside,4,0,,Caliper,');
    const { code, out } = await bench(form.out)(given);
    expect(code).toBe(1);
    expect(out).toContain('Not yet known\n18 of 18 readings are still to be taken.');
  });

  it('shows what looks wrong, with its place', async () => {
    const text = writeMeasuredCsv(measured).replace('tube-outside,4,0,32,', 'tube-outside,4,0,23,');
    const { code, out } = await bench(text)(given);
    expect(code).toBe(1);
    expect(out.replace(/\s+/g, ' ')).toContain(
      '? tube, outside, station 1, clocking 1: 23: are two digits exchanged: 32 mm? (confirm it',
    );
  });

  it('prints the range of gaps', async () => {
    const { code, out } = await bench('')(['--joint', leg.id, '--limits']);
    expect(code).toBe(0);
    expect(out).toContain('By the model: none');
    expect(out).toContain('By coupons: 0.1 to 0.5 mm (typical)');
    expect(out).toContain('At the drawn gap of 0.2 mm the margin is');
  });

  it.each([
    [['--joint', 'boom-tip'], 'lapwright: --measured: it is needed'],
    [
      ['--joint', 'boom-top', '--measured', 'parts.csv'],
      'lapwright: c.json: --joint: There is no joint',
    ],
    [['--joint', 'tail-strut', '--measured', 'parts.csv'], 'is a flat joint: it has no diameters'],
    [
      ['--joint', 'boom-tip', '--measured', 'none.csv'],
      'lapwright: none.csv: there is no such file.',
    ],
    [given, 'lapwright: parts.csv: line 2: there is no surface “foo” in this joint'],
  ])('refuses %j', async (words, message) => {
    const parts = 'surface,station_mm,clocking_deg,diameter_mm\nfoo,1,1,1\n';
    const { code, out, err } = await bench(parts)(words);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(message);
  });
});
