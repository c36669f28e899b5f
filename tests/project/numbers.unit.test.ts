import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import curlew from '../../src/main/demo/curlew.lapwright.json' with { type: 'json' };
import type { Ply, Project } from '../../src/shared/project.ts';
import { quantities } from '../../src/shared/quantities.ts';
import { readProject, readProjectText } from '../../src/shared/read-project.ts';
import { projects } from '../support/random-projects.ts';
import { type NumberAt, numbersOf, pathsOfNumbers, valueAt, withAt } from './numbers.ts';

const demo = curlew as Project;
const ply: Ply = {
  id: 'one-ply',
  name: 'One ply',
  axialModulus: 130_000,
  transverseModulus: 9000,
  shearModulus: 4800,
  poisson: 0.3,
  transverseShearModulus: 3200,
  axialExpansion: -3e-7,
  transverseExpansion: 3e-5,
  thickness: 0.2,
  tensileStrength: 2000,
  compressiveStrength: 1200,
  transverseTensileStrength: 50,
  transverseCompressiveStrength: 180,
  shearStrength: 80,
  interlaminarTension: 45,
  interlaminarShear: 75,
  source: { kind: 'typical', text: 'invented' },
};

/** The demonstration with everything in it that a project may leave out. */
const full: Project = {
  ...demo,
  settings: {
    ...demo.settings,
    printing: { layerThickness: 0.06, base: 5 },
    steps: { overlap: 1, wall: 0.1, gap: 0.05 },
    tolerances: [
      { input: 'gap', distribution: 'uniform', spread: 0.05 },
      { input: 'service-temperature', distribution: 'triangular', spread: 5 },
      { input: 'shear-yield', distribution: 'normal', spread: 0.05 },
    ],
  },
  conditions: [{ id: 'cold', name: 'Cold', temperature: -20, moisture: 'dry' }],
  variants: [
    { of: 'boom-tip', joint: { ...structuredClone(demo.joints[1]!), id: 'boom-tip-other' } },
  ],
  plies: [...(demo.plies ?? []), { ...ply, density: 1550 }],
  adherends: [
    ...demo.adherends.map((adherend) =>
      adherend.kind === 'orthotropic'
        ? {
            ...adherend,
            density: 1550,
            throughModulus: 9000,
            throughExpansion: 3e-5,
            interlaminarTension: 45,
            interlaminarShear: 75,
          }
        : adherend,
    ),
    {
      id: 'of-plies',
      name: 'Of plies',
      kind: 'laminate',
      ply: ply.id,
      stack: '[0/90]s',
      source: ply.source,
    },
  ],
  adhesives: demo.adhesives.map((adhesive) => ({
    ...adhesive,
    density: 1150,
    states: adhesive.states.map((state) => ({ ...state, peelStrength: 45 })),
    expansion: 5e-5,
    fracture: { modeI: 1, modeII: 3, exponent: 1, source: ply.source },
    knockdowns: {
      environment: 0.95,
      ageing: 0.9,
      scatter: 0.85,
      gap: [{ gap: 0.2, factor: 1 }],
      source: ply.source,
    },
  })),
  joints: demo.joints.map((joint) => {
    const loads = structuredClone(joint.loads.slice(0, 1));
    const common = { id: 'large', name: 'Large', wallFactor: 1.2, loadFactor: 1.5 };
    return (
      'width' in joint
        ? { ...joint, sizes: [{ ...common, width: 30, thickness: 3.5, loads }] }
        : { ...joint, sizes: [{ ...common, outsideDiameter: 50, tubeWall: 2.5, loads }] }
    ) as typeof joint;
  }),
};

const fullNumbers = numbersOf(full);

/** What is no number, or a number outside the range. */
const outside = ({ quantity }: NumberAt): fc.Arbitrary<unknown> => {
  const { min, max } = quantities[quantity];
  const by = fc.double({ min: 1e-9, max: 1e6, noNaN: true });
  return fc.oneof(
    by.map((x) => min - Math.max(Math.abs(min), 1e-6) * x).filter((x) => x < min),
    by.map((x) => max + Math.max(Math.abs(max), 1e-6) * x).filter((x) => x > max),
    fc.constantFrom(
      Number.NaN,
      Number.POSITIVE_INFINITY,
      Number.NEGATIVE_INFINITY,
      null,
      '1',
      true,
      [1],
      {},
    ),
  );
};

describe('numbers of a project', () => {
  it('are all known to this test', () => {
    const known = fullNumbers.map(({ path }) => path.join('.')).sort();
    const all = pathsOfNumbers(full).map((path) => path.join('.'));
    expect(known).toEqual(all.filter((path) => path !== 'version').sort());
  });

  it('survive the way through a file unchanged', () => {
    fc.assert(
      fc.property(projects, fc.constantFrom(undefined, 2), (project, indent) => {
        const text = JSON.stringify(project, null, indent);
        const read = readProjectText(text);
        // Compared as parsed: JSON writes −0 as 0, and what no number may become it turns into null.
        expect(read).toEqual({ ok: true, value: JSON.parse(text) });
        const written = read.ok && JSON.stringify(read.value);
        expect(JSON.parse(String(written))).toEqual(JSON.parse(text));
        expect(
          numbersOf(project).every(
            ({ path }) => valueAt(project, path) === valueAt(JSON.parse(text), path),
          ),
        ).toBe(true);
      }),
      { numRuns: 200, seed: 20261 },
    );
  });

  it('are refused outside their range, at exactly their place', () => {
    fc.assert(
      fc.property(
        projects.chain((project) =>
          fc
            .constantFrom(...numbersOf(project))
            .chain((number) =>
              fc.tuple(fc.constant(project), fc.constant(number), outside(number)),
            ),
        ),
        ([project, { path, quantity }, value]) => {
          const read = readProject(withAt(project, path, value));
          expect(read.ok).toBe(false);
          if (read.ok) return;
          const { label, min, max } = quantities[quantity];
          expect(read.error.field).toBe(path.join('.'));
          expect(read.error.message.toLowerCase()).toContain(label.toLowerCase());
          expect(read.error.message).toContain(`from ${min} to ${max}`);
        },
      ),
      { numRuns: 600, seed: 20262 },
    );
  });

  it.each(
    fullNumbers
      // The same field of another item reads the same schema.
      .filter(({ path }) => !path.slice(0, -1).includes(1))
      .map((number) => [number.path.join('.'), number] as const),
  )('%s may stand at either end of its range and not beyond', (field, { path, quantity }) => {
    const { min, max } = quantities[quantity];
    for (const value of [min, max]) {
      const read = readProject(withAt(full, path, value));
      // Rules between fields may refuse it, elsewhere or with another reason; the range does not.
      if (!read.ok) expect(read.error.message).not.toContain('must be a number from');
    }
    for (const value of [min - Math.abs(min) * 1e-9 - 1e-12, max * (1 + 1e-9)]) {
      expect(readProject(withAt(full, path, value))).toMatchObject({ ok: false, error: { field } });
    }
  });

  it('may be missing only where the project file says so', () => {
    for (const { path } of fullNumbers.filter(({ optional }) => optional)) {
      expect(readProject(withAt(full, path, undefined))).toMatchObject({ ok: true });
    }
  });

  it('may not be missing otherwise', () => {
    for (const { path } of fullNumbers.filter(({ optional }) => !optional)) {
      const read = readProject(withAt(full, path, undefined));
      expect(read).toMatchObject({ ok: false, error: { field: path.join('.') } });
      expect(!read.ok && read.error.message).toMatch(/^Missing: .* must be a number from/);
    }
  });
});
