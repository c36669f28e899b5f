/**
 * Whole joints against an independent implementation of docs/method.md in Python with scipy
 * (reference/joints.py): geometry, loads at a clocking, properties at temperature, every mode.
 */
import { describe, expect, it } from 'vitest';
import { resolveJoint } from '../../src/main/handlers/resolve.ts';
import { worstClockings } from '../../src/model/margins/clocking.ts';
import { adhesiveModes, wallModes } from '../../src/model/margins/modes.ts';
import { shearFactor } from '../../src/model/margins/shear-factor.ts';
import { jointState } from '../../src/model/margins/state.ts';
import { refineStrength } from '../../src/model/margins/strength-clocking.ts';
import type { Joint, Wall } from '../../src/shared/project.ts';
import { readProject } from '../../src/shared/read-project.ts';
import type { GapState } from '../../src/shared/reports.ts';
import { expectClose } from '../support/close.ts';
import { readFixture } from '../support/fixtures.ts';

interface Fixture {
  readonly cases: readonly {
    readonly name: string;
    readonly inputs: {
      readonly joint: string;
      readonly case: string;
      readonly gapState: GapState;
      readonly adherendShear: boolean;
    };
    readonly expected: {
      readonly bonds: readonly {
        readonly part: string;
        readonly gap: number;
        readonly radius: number;
        readonly stiffness: number;
        readonly shearYield: number;
        readonly slipAtFailure: number;
      }[];
      readonly peakElasticShear: readonly { readonly part: string; readonly value: number }[];
      readonly margins: readonly {
        readonly mode: string;
        readonly part: string;
        readonly reached: number;
        readonly asked: number;
        readonly margin: number;
        readonly place: string | null;
      }[];
    };
  }[];
}

const fixture = readFixture('joint-margins.json') as Fixture;
const read = readProject(readFixture('joints-project.json'));
if (!read.ok) throw new Error(`${read.error.field}: ${read.error.message}`);
const project = read.value;

/** Elastic modes are closed forms on both sides; the others meet in the chain's own accuracy. */
const tolerances: Readonly<Record<string, number>> = {
  'adhesive-yield': 2e-6,
  'cyclic-shear': 2e-6,
  'metal-yield': 2e-6,
  'metal-ultimate': 2e-6,
  'laminate-strength': 2e-6,
  'adhesive-strain': 1e-4,
  'durability-trough': 1e-3,
};

/**
 * A taper is solved on the chain; and in a double lap the reference takes each wall's share from the
 * one mixed problem at the clocking, where section 8 takes force, moment and temperature apart.
 */
function toleranceOf(mode: string, joint: Joint, id: string): number {
  const plain = tolerances[mode]!;
  if (walls.has(mode) && joint.type === 'sleeve-double') return 2e-2;
  return tapered.has(id) ? Math.max(plain, 5e-5) : plain;
}

const tapered = new Set(
  project.joints
    .filter((joint) => {
      const parts = Object.values(joint).filter(
        (part): part is Wall => typeof part === 'object' && 'atRoot' in part,
      );
      return parts.some(({ atRoot, atMouth }) => atRoot !== atMouth);
    })
    .map(({ id }) => id),
);

const walls = new Set(['metal-yield', 'metal-ultimate', 'laminate-strength']);

function stateOf({
  joint,
  case: caseId,
  gapState,
  adherendShear,
}: Fixture['cases'][number]['inputs']) {
  const index = project.joints.findIndex(({ id }) => id === joint);
  const resolved = resolveJoint(project, index);
  const { input } = resolved.cases.find(({ loadCase }) => loadCase.id === caseId)!;
  const settings = { ...project.settings, adherendShear };
  return {
    resolved,
    state: jointState(resolved.input, resolved.adhesive, input, gapState, settings),
  };
}

describe.each(fixture.cases)('$name', ({ inputs, expected }) => {
  const { resolved, state } = stateOf(inputs);

  it('has the same bonds', () => {
    expected.bonds.forEach((bond, j) => {
      const { name, gap, radius } = state.assembly.bonds[j]!;
      expect(name).toBe(bond.part);
      expectClose(gap, bond.gap, { relative: 1e-9 }, 'gap');
      expectClose(radius, bond.radius, { relative: 1e-9 }, 'radius');
      const law = state.bonds[j]!;
      for (const property of ['stiffness', 'shearYield', 'slipAtFailure'] as const) {
        expectClose(law[property], bond[property], { relative: 1e-9 }, property);
      }
    });
  });

  it('reaches every mode at the same factor, and no other', () => {
    const { factors } = project.settings;
    const results = [
      ...adhesiveModes(state, resolved.adhesive, factors).map((mode) =>
        refineStrength(state, mode),
      ),
      ...wallModes(state, factors),
    ];
    const key = (mode: string, part: string): string =>
      walls.has(mode) ? `${mode} ${part}` : mode;
    expect(results.map(({ mode, part }) => key(mode, part)).sort()).toEqual(
      expected.margins.map(({ mode, part }) => key(mode, part)).sort(),
    );
    for (const row of expected.margins) {
      const result = results.find(({ mode, part }) => key(mode, part) === key(row.mode, row.part))!;
      const what = `${row.mode} of ${row.part}`;
      const tolerance = { relative: toleranceOf(row.mode, resolved.joint, inputs.joint) };
      expectClose(result.reached, row.reached, tolerance, what, inputs);
      expectClose(result.asked, row.asked, { relative: 1e-9 }, `${what}, asked`, inputs);
      if (row.place !== null && row.reached > 0) {
        expect(`${what}: ${result.place}`).toBe(`${what}: ${row.place}`);
      }
    }
  });

  it('has the same elastic peaks', () => {
    expected.peakElasticShear.forEach(({ value, part }, j) => {
      const { loads } = state.loadCase;
      // Far above any stress, so that the factor to it is the limit over the peak, nearly.
      const alone = state.bonds.map((_bond, i) => (i === j ? value : Number.MAX_VALUE));
      const [worst] = worstClockings(
        state.assembly.flat,
        loads,
        (theta) => shearFactor(state.at(theta), alone).factor,
      );
      expectClose(worst!.factor, 1, { relative: 1e-4 }, `peak of ${part}`, inputs);
    });
  });
});
