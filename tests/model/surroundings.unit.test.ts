/** What load cases in the same surroundings share, and that nothing of an answer hangs on it. */
import { beforeEach, describe, expect, it } from 'vitest';
import { createAsk } from '../../src/main/ask.ts';
import type { CaseInput, GapState, JointInput } from '../../src/model/joint/types.ts';
import { elasticZones, solveLayered } from '../../src/model/layered/lap.ts';
import { allModes } from '../../src/model/margins/all-modes.ts';
import { forgetSurroundings, type JointState, jointState } from '../../src/model/margins/state.ts';
import { expectClose } from '../support/close.ts';
import { factors, flatSingle, sleeve, socket, strongGlue } from '../support/peel-states.ts';
import { noLoads } from '../support/section-12.ts';

const adhesive = strongGlue();
const settings = { factors, adherendShear: true };
const pull = (force: number, temperature = 20): CaseInput => ({
  loads: { ...noLoads, force, moment: 20 * force },
  kind: 'ultimate',
  temperature,
  moisture: 'dry',
});
const stateAt = (
  joint: JointInput,
  loadCase: CaseInput,
  gap: GapState = 'nominal',
  glue = adhesive,
): JointState => jointState(joint, glue, loadCase, gap, settings);

const tapered: JointInput = {
  ...(sleeve as Extract<JointInput, { socket: unknown }>),
  socket: { ...(sleeve as Extract<JointInput, { socket: unknown }>).socket, atMouth: 0.6 },
};

const loose: JointInput = {
  ...(socket as Extract<JointInput, { sleeve: unknown }>),
  bond: { gap: 0.2, tolerance: 0.05 },
};

beforeEach(forgetSurroundings);

describe('load cases of a joint', () => {
  it('share the elastic lap where temperature, moisture and gap are the same', () => {
    const [one, other] = [stateAt(socket, pull(9000)), stateAt(socket, pull(-4000))];
    expect(other.assembly).toBe(one.assembly);
    expect(other.layered.fields(-4000)).toBe(one.layered.fields(9000));
  });

  it.each([
    ['temperature', () => stateAt(loose, pull(9000, 45))],
    ['gap', () => stateAt(loose, pull(9000), 'max')],
    ['adhesive', () => stateAt(loose, pull(9000), 'nominal', strongGlue({}, { modulus: 2000 }))],
    ['joint', () => stateAt({ ...loose, overlap: 31 }, pull(9000))],
  ])('share nothing where the %s is another', (_what, make) => {
    const one = stateAt(loose, pull(9000)).layered.fields(1);
    const other = make().layered.fields(1);
    expect(other).not.toBe(one);
    expect([...other.unit.bonds[0]!.peel, ...other.thermal.bonds[0]!.peel]).not.toEqual([
      ...one.unit.bonds[0]!.peel,
      ...one.thermal.bonds[0]!.peel,
    ]);
  });

  it('take nothing from an adhesive or from settings that are equal but not the same', () => {
    const one = stateAt(socket, pull(9000));
    expect(stateAt(socket, pull(9000), 'nominal', strongGlue()).assembly).not.toBe(one.assembly);
    const shearless = { ...settings, adherendShear: false };
    const other = jointState(socket, adhesive, pull(9000), 'nominal', shearless);
    expect(other.bonds[0]!.stiffness).toBeGreaterThan(stateAt(socket, pull(1)).bonds[0]!.stiffness);
  });

  it.each([
    ['a socket', socket],
    ['a double lap', sleeve],
    ['a tapered double lap', tapered],
    ['a flat single lap', flatSingle],
  ])('have the same margins of %s to the last bit, whatever was asked before', (_name, joint) => {
    const marginsOf = (loadCase: CaseInput) =>
      allModes(stateAt(joint, loadCase), adhesive, factors).map(({ mode, margin, x }) => [
        mode,
        margin,
        x,
      ]);
    const alone = marginsOf(pull(16_000));
    forgetSurroundings();
    for (const force of [30_000, -9000, 15_000]) marginsOf(pull(force));
    expect(marginsOf(pull(16_000))).toEqual(alone);
  });
});

it('an answered question leaves nothing behind', async () => {
  const one = stateAt(socket, pull(9000));
  expect(stateAt(socket, pull(8000)).assembly).toBe(one.assembly);
  await createAsk({ carrier: 'terminal' })('app.about', {});
  expect(stateAt(socket, pull(8000)).assembly).not.toBe(one.assembly);
});

it('the fields of a flat single lap at a load are those of the lap under its own edge loads', () => {
  const { layered } = stateAt(flatSingle, pull(9000, -30));
  for (const load of [200, 5000, 40_000, -3000]) {
    const { x, unit, thermal } = layered.fields(load);
    const solved = solveLayered(
      layered.solution(load).lap,
      elasticZones(layered.solution(load).lap),
    );
    const byLoad = solved.columns(x, 1, 0, true);
    const byTemperature = solved.columns(x, 0, 1, true);
    for (const [part, columns] of [
      [unit, byLoad],
      [thermal, byTemperature],
    ] as const) {
      const { peel } = columns.bonds[0]!;
      const most = Math.max(...peel.map(Math.abs));
      part.bonds[0]!.peel.forEach((value, i) => {
        expectClose(value, peel[i]!, { relative: 1e-9, absolute: 1e-9 * most }, `peel ${i}`);
      });
      const moments = [columns.walls[0]!.moment, columns.walls[1]!.moment];
      const sharp = Math.max(...moments.flatMap((moment) => [...moment].map(Math.abs)));
      layered.order.layers.forEach((layer, k) => {
        part.walls[k]!.moment.forEach((value, i) => {
          const { absolute } = { absolute: 1e-9 * sharp };
          expectClose(value, moments[layer]![i]!, { relative: 1e-9, absolute }, `moment ${i}`);
        });
      });
    }
  }
});
