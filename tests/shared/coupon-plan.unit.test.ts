/** The test matrix as sets of a project that the core accepts. */
import { describe, expect, it } from 'vitest';
import demo from '../../src/main/demo/curlew.lapwright.json' with { type: 'json' };
import {
  couponSetName,
  freeId,
  type Matrix,
  planCoupons,
  usualEnvironments,
  usualGaps,
} from '../../src/shared/coupon-plan.ts';
import type { Project } from '../../src/shared/project.ts';
import { readProject } from '../../src/shared/read-project.ts';

const project = structuredClone(demo) as unknown as Project;
const matrix: Matrix = {
  adhesive: 'toughened-paste',
  pieces: [
    { kind: 'standard', id: 'd1002', adherend: 'titanium-printed' },
    { kind: 'sleeve', joint: 'boom-tip' },
  ],
  environments: [
    { temperature: 23, moisture: 'dry' },
    { temperature: -20, moisture: 'dry' },
    { temperature: 60, moisture: 'wet' },
  ],
  gaps: [0.15, 0.2],
  planned: { batches: 3, each: 6 },
};
const withCoupons = (change: Partial<Matrix> = {}, from: Project = project): Project => ({
  ...from,
  coupons: planCoupons(from, { ...matrix, ...change }).coupons,
});

describe('the matrix', () => {
  it('has a set for every specimen, environment and gap, with ids of their own', () => {
    const { coupons, added, already } = planCoupons(project, matrix);
    expect([added.length, already]).toEqual([12, 0]);
    expect(new Set(coupons.sets.map(({ id }) => id)).size).toBe(12);
    expect(coupons.specimens.map(({ standard }) => standard)).toEqual(['ASTM D1002', '']);
    expect(added[0]).toEqual({
      id: 'd1002-23dry-0-15',
      name: 'Lap shear, thin metal, 23 °C dry, gap 0.15',
      specimen: 'd1002',
      adhesive: 'toughened-paste',
      temperature: 23,
      moisture: 'dry',
      gap: 0.15,
      planned: { batches: 3, each: 6 },
      results: [],
    });
    expect(added.map(({ name }) => name)).toContain(
      `Tube in sleeve, as ${project.joints[1]!.name}, 60 °C wet, gap 0.2`,
    );
    expect(readProject(withCoupons())).toMatchObject({ ok: true });
  });

  it('does not make again what is there', () => {
    const once = withCoupons();
    const twice = planCoupons(once, { ...matrix, gaps: [0.2, 0.25] });
    expect([twice.added.length, twice.already]).toEqual([6, 6]);
    expect(twice.coupons.specimens).toEqual(once.coupons!.specimens);
    expect(readProject({ ...once, coupons: twice.coupons })).toMatchObject({ ok: true });
  });

  it('keeps results, and lives, as they are', () => {
    const once = withCoupons();
    once.coupons!.sets[0]!.results.push({ coupon: '1', batch: 'A', load: 4000 });
    once.coupons!.life = [];
    const { coupons } = planCoupons(once, { ...matrix, gaps: [0.3] });
    expect(coupons.sets[0]!.results).toHaveLength(1);
    expect(coupons.life).toEqual([]);
  });

  it('tells pieces of other material by name and id', () => {
    const other = [{ kind: 'standard', id: 'd1002', adherend: 'carbon-strip' }] as const;
    const { specimens } = withCoupons({ pieces: other }, withCoupons()).coupons!;
    expect(specimens.map(({ id }) => id)).toEqual(['d1002', 'tube-boom-tip', 'd1002-2']);
    expect(specimens[2]!.name).toBe('Lap shear, thin metal, of Carbon strip, quasi-isotropic');
  });

  it('leaves out pieces that there are not', () => {
    const pieces = [
      { kind: 'standard', id: 'd1002', adherend: 'nothing' },
      { kind: 'own', id: 'nothing' },
      { kind: 'sleeve', joint: 'tail-strut' },
    ] as const;
    expect(planCoupons(project, { ...matrix, pieces }).added).toEqual([]);
  });

  it('ends where the project file does', () => {
    const gaps = Array.from({ length: 450 }, (_, i) => (i + 1) / 100);
    const many = withCoupons({ gaps });
    expect(many.coupons!.sets).toHaveLength(400);
    expect(readProject(many)).toMatchObject({ ok: true });
  });
});

describe('names and ids', () => {
  it('are as the project file takes them', () => {
    const name = couponSetName({ name: 'x'.repeat(120) }, matrix.environments[1]!, 0.2);
    expect(name).toHaveLength(120);
    expect(name.endsWith(', −20 °C dry, gap 0.2')).toBe(true);
    expect(freeId('Größe 3', ['gro-e-3'])).toBe('gro-e-3-2');
    expect(freeId('–', [])).toBe('set');
  });
});

describe('what is offered', () => {
  it('is where the joints are judged, and their gaps', () => {
    expect(usualEnvironments(project)).toEqual([
      { name: 'room', temperature: 23, moisture: 'dry' },
      { name: 'cold', temperature: -20, moisture: 'dry' },
      { name: 'hot', temperature: 60, moisture: 'dry' },
      { name: 'wet', temperature: 60, moisture: 'wet' },
    ]);
    expect(usualGaps(project, 'toughened-paste')).toEqual([0.15, 0.2, 0.25]);
    expect(usualGaps(project, 'none')).toEqual([0.1, 0.2, 0.3]);
  });
});
