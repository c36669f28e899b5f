/** The working of every margin and figure of random joints of all types. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type ResolvedJoint, resolveJoint } from '../../src/main/handlers/resolve.ts';
import type { Step } from '../../src/model/card.ts';
import { ModelError } from '../../src/model/errors.ts';
import { gapStates } from '../../src/model/joint/assembly.ts';
import type { AdhesiveInput } from '../../src/model/joint/types.ts';
import { isFlatSingle } from '../../src/model/layered/edge-loads.ts';
import { allModes } from '../../src/model/margins/all-modes.ts';
import { jointState } from '../../src/model/margins/state.ts';
import type { GivenMode } from '../../src/model/working/context.ts';
import { peakPeelWorking, peakShearWorking } from '../../src/model/working/drawn.ts';
import { edgeMomentWorking } from '../../src/model/working/edge.ts';
import { marginWorking } from '../../src/model/working/modes.ts';
import { strengthAt, strengthSteps } from '../../src/model/working/strength.ts';
import type { Project } from '../../src/shared/project.ts';
import { expectCard } from '../support/cards.ts';
import { projects } from '../support/random-projects.ts';

/** With everything that a mode may need, so that every mode is judged. */
function full(adhesive: AdhesiveInput): AdhesiveInput {
  return {
    ...adhesive,
    states: adhesive.states.map((row) => ({ ...row, peelStrength: 0.8 * row.shearYield + 5 })),
    expansion: 5e-5,
    fracture: { modeI: 0.9, modeII: 3, exponent: 1.5 },
    knockdowns: {
      environment: 0.95,
      ageing: 0.9,
      scatter: 0.85,
      gap: [
        { gap: 0.1, factor: 1 },
        { gap: 0.4, factor: 0.8 },
      ],
    },
  };
}

/** Null where the joint itself is refused or cannot be computed: that is told elsewhere. */
function computed<T>(compute: () => T): T | null {
  try {
    return compute();
  } catch (error) {
    if (error instanceof ModelError || error instanceof RangeError) return null;
    throw error;
  }
}

type Given = Omit<GivenMode, 'result'>;

function figuresOf(given: Given, theta: number): Step[] {
  const { state } = given;
  return (
    computed(() => {
      const steps: Step[] = [];
      for (const loadFactor of [0.5, 1]) {
        const drawn = { theta, loadFactor, stations: 31 };
        state.bonds.forEach((_bond, j) => {
          steps.push(...peakShearWorking(given, drawn, j).steps);
          steps.push(...peakPeelWorking(given, drawn, j).steps);
        });
        if (isFlatSingle(state.assembly)) steps.push(...edgeMomentWorking(given, loadFactor));
      }
      if (strengthAt(state.at(theta))) steps.push(...strengthSteps(given, theta));
      return steps;
    }) ?? []
  );
}

const seen = new Set<string>();

function checkJoint({ input, adhesive: bare, cases }: ResolvedJoint, project: Project): void {
  const adhesive = full(bare);
  const { settings } = project;
  for (const gap of gapStates(input)) {
    const state = computed(() => jointState(input, adhesive, cases[0]!.input, gap, settings));
    const results = state && computed(() => allModes(state, adhesive, settings.factors));
    if (!state || !results) return;
    const given = { state, adhesive, settings };
    for (const result of results) {
      const steps = marginWorking({ ...given, result });
      const where = `${input.type} ${gap} ${result.mode} ${result.part} at ${result.x}`;
      for (const step of steps) {
        expectCard(step, where);
        seen.add(step.equation.id);
      }
      expect(steps[steps.length - 1]!.result, where).toBe(result.margin);
    }
    for (const step of figuresOf(given, 0.3)) {
      expectCard(step, `${input.type} ${gap}`);
      seen.add(step.equation.id);
    }
  }
}

describe('random joints of all types', () => {
  it('every formula gives what its function gives', () => {
    const drawn = fc.sample(projects, { numRuns: 30, seed: 4 });
    drawn.forEach((project, i) => {
      try {
        checkJoint(resolveJoint(project, 0), project);
      } catch (error) {
        throw new Error(`random project ${i}: ${String(error)}`, { cause: error });
      }
    });
    // Among them are plies, torsion, thermal failure, two bonds and single laps.
    for (const id of [
      'edge-moment',
      'reached-cold',
      'shared-load',
      'shear-first',
      'tsai-wu',
      'wall-torsion-t',
    ]) {
      expect([...seen]).toContain(id);
    }
  });
});
