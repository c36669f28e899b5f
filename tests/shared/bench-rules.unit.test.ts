/** What must hold between the fields of the bench. */
import { describe, expect, it } from 'vitest';
import demo from '../../src/main/demo/curlew.lapwright.json' with { type: 'json' };
import type { GapCheck, Project } from '../../src/shared/project.ts';
import { readProject } from '../../src/shared/read-project.ts';
import { partsOf } from '../support/parts.ts';

const project = demo as unknown as Project;
const said = (document: unknown): string => {
  const reply = readProject(document);
  return reply.ok ? 'read' : `${reply.error.field}: ${reply.error.message}`;
};
/** The project with a bench on its joint of this place. */
const withBench = (index: number, bench: unknown): unknown => ({
  ...project,
  joints: project.joints.map((joint, i) => (i === index ? { ...joint, bench } : joint)),
});
const check: GapCheck = {
  id: 'one',
  joint: 'gone',
  started: '2026-03-01T08:00:00Z',
  by: '',
  tubeSerial: '',
  sleeveSerial: '',
  surfaces: partsOf(project.joints[1]!, () => 1000),
  done: [],
  cure: [],
};

describe('the bench of a joint', () => {
  it.each([
    [1, { stations: [4, 4] }, 'joints.1.bench.stations.1: The stations must rise'],
    [1, { clockings: [0, 90, 45] }, 'joints.1.bench.clockings.2: The clockings must rise'],
    [
      1,
      { limits: { bond: { from: 0.3, to: 0.3 } } },
      'joints.1.bench.limits.bond.from: The limits',
    ],
    [
      1,
      { clockings: [0, 180] },
      'joints.1.bench.clockings.1: Clocking must be a number from 0 to 179.999',
    ],
  ])('of joint %d: %j', (index, bench, message) => {
    expect(said(withBench(index, bench))).toContain(message);
  });

  it('keeps what was set for another lap or a longer joint, for the way back', () => {
    expect(said(withBench(1, { stations: [4, 36] }))).toBe('read');
    expect(said(withBench(1, { limits: { innerBond: { from: 0.1, to: 0.3 } } }))).toBe('read');
    expect(said(withBench(3, { limits: { bond: { from: 0.1, to: 0.3 } } }))).toBe('read');
  });

  it('may leave everything out, or give all', () => {
    expect(said(withBench(1, {}))).toBe('read');
    const all = {
      limits: { bond: { from: 0.1, to: 0.3 } },
      spacer: { form: 'beads', size: 0.12 },
      jigOffset: 0.05,
      stations: [0, 35],
      clockings: [0, 60, 120],
      waste: 1.5,
      checklist: ['Degrease'],
    };
    expect(said(withBench(1, all))).toBe('read');
    expect(said(withBench(3, { checklist: [], waste: 2 }))).toBe('read');
  });
});

describe('the record of measured parts', () => {
  const withCheck = (change: Partial<GapCheck>) =>
    said({ ...project, gapChecks: [{ ...check, ...change }] });
  const [tube, socket] = check.surfaces;

  it('is read with readings that are wrong, for a joint that is gone', () => {
    expect(withCheck({})).toBe('read');
  });

  it.each([
    [{ surfaces: [tube!, tube!] }, 'gapChecks.0.surfaces.1.surface: "tube-outside" stands twice'],
    [
      { surfaces: [tube!, { ...socket!, stations: [4, 18] }] },
      'gapChecks.0.surfaces.1.diameters: 2 stations and 3 clockings need as many rows',
    ],
    [{ started: 'yesterday' }, 'gapChecks.0.started: A time is written like'],
  ])('is refused with %#', (change, message) => {
    expect(withCheck(change)).toContain(message);
  });

  it('has each check once, as instruments', () => {
    expect(said({ ...project, gapChecks: [check, check] })).toMatch(
      /^gapChecks\.1\.id: The id "one"/,
    );
    const [one] = project.instruments!;
    expect(said({ ...project, instruments: [one, one] })).toMatch(/^instruments\.1\.id: /);
  });
});
