/** The working of every margin of the demonstration project, in every case and gap. */
import { describe, expect, it } from 'vitest';
import { openDemo } from '../../src/main/demo/demo.ts';
import { resolveJoint } from '../../src/main/handlers/resolve.ts';
import { gapStates } from '../../src/model/joint/assembly.ts';
import { allModes } from '../../src/model/margins/all-modes.ts';
import { jointState } from '../../src/model/margins/state.ts';
import { marginWorking } from '../../src/model/working/modes.ts';
import { expectCard } from '../support/cards.ts';

const demo = openDemo();
if (!demo.ok) throw new Error(demo.error.message);
const project = demo.value.document;
const { settings } = project;
const seen = new Set<string>();

describe.each(project.joints.map(({ id }, index) => [id, index] as const))('%s', (id, index) => {
  const resolved = resolveJoint(project, index);
  it.each(resolved.cases.map((one) => [one.loadCase.id, one.input] as const))(
    'in %s',
    (caseId, input) => {
      for (const gap of gapStates(resolved.input)) {
        const state = jointState(resolved.input, resolved.adhesive, input, gap, settings);
        const results = allModes(state, resolved.adhesive, settings.factors);
        expect(results.length).toBeGreaterThan(4);
        for (const result of results) {
          const given = { state, adhesive: resolved.adhesive, settings, result };
          const steps = marginWorking(given);
          const where = `${id} ${caseId} ${gap} ${result.mode} ${result.part}`;
          for (const step of steps) {
            expectCard(step, where);
            seen.add(step.equation.id);
          }
          const last = steps[steps.length - 1]!;
          expect(last.equation.id).toBe('margin');
          expect(last.result).toBe(result.margin);
        }
      }
    },
  );
});

it('every way to a margin was among them', () => {
  for (const id of ['flow-load', 'end-slip', 'slip-use', 'peel-use', 'fracture-use', 'tsai-wu']) {
    expect([...seen]).toContain(id);
  }
});
