/** What the core is asked in the benchmark: fixed inputs, the same work each time. */
import { createAsk } from '../../src/main/ask.ts';
import curlew from '../../src/main/demo/curlew.lapwright.json' with { type: 'json' };
import { type ResolvedJoint, resolveJoint } from '../../src/main/handlers/resolve.ts';
import { layeredCurves } from '../../src/model/curves/layered-curves.ts';
import { stressCurves } from '../../src/model/curves/stress-curves.ts';
import { allModes } from '../../src/model/margins/all-modes.ts';
import { jointState } from '../../src/model/margins/state.ts';
import { solvePlastic } from '../../src/model/plastic/one-bond.ts';
import { capacityOf } from '../../src/model/plastic/one-bond-capacity.ts';
import type { Joint, Project } from '../../src/shared/project.ts';
import { readProject } from '../../src/shared/read-project.ts';
import { bondedJoint, jointInputOf } from '../verification/cases/bonded-joints.ts';

export interface Task {
  readonly name: string;
  /** Runs once; its answer is looked at, so that nothing of it can be left out. */
  readonly run: () => unknown;
}

function demoProject(): Project {
  const read = readProject(curlew);
  if (!read.ok) throw new Error(read.error.message);
  return read.value;
}
const demo = demoProject();
const ask = createAsk({ carrier: 'terminal' });

async function answer(name: Parameters<typeof ask>[0], input: unknown): Promise<unknown> {
  const reply = await ask(name, input);
  if (!reply.ok) throw new Error(`${name}: ${reply.error.message}`);
  return reply.value;
}

/** The landing leg, single and as a double lap, under the first of its cases or under its force alone. */
const single = demo.joints.find(({ id }) => id === 'landing-leg') as Extract<
  Joint,
  { type: 'sleeve-single' }
>;
const double: Joint = {
  id: single.id,
  name: single.name,
  type: 'sleeve-double',
  overlap: single.overlap,
  adhesive: single.adhesive,
  tube: single.tube,
  spigot: single.sleeve,
  socket: single.sleeve,
  innerBond: single.bond,
  outerBond: single.bond,
  offset: single.offset,
  loads: single.loads,
};
const underForce = (joint: Joint): Joint => ({
  ...joint,
  loads: joint.loads.map((loads) => ({ ...loads, moment: 0, torque: 0, shear: 0 })),
});
const resolved = (joint: Joint): ResolvedJoint => resolveJoint({ ...demo, joints: [joint] }, 0);

/**
 * One full analysis: one case in one gap state, every mode, and the curves of both models along the bond.
 * @returns the lowest margin and the number of places drawn
 */
function analyse({ input, adhesive, cases }: ResolvedJoint, stations: number) {
  const { settings } = demo;
  // A joint not seen before: what its other load cases would share is to be made as well.
  const joint = { ...input };
  const state = jointState(joint, adhesive, cases[0]!.input, 'nominal', settings);
  const modes = allModes(state, adhesive, settings.factors);
  const low = modes.reduce((a, b) => (b.margin < a.margin ? b : a));
  const { x } = stressCurves(state, low.theta, 1, settings.adherendShear, stations);
  return [low.margin, layeredCurves(state, low.theta, 1, x).length];
}

export const STATIONS = 400;
const leg = { single: resolved(single), double: resolved(double) };
const forced = { single: resolved(underForce(single)), double: resolved(underForce(double)) };
const boomRoot = resolveJoint(
  demo,
  demo.joints.findIndex(({ id }) => id === 'boom-root'),
);
/** The joint of the finite elements, with the adhesive and the case of the leg. */
const solid = bondedJoint('double-lap-sleeve');
const solidByShells: ResolvedJoint = {
  ...forced.double,
  input: jointInputOf(solid),
  cases: forced.double.cases.map((one) => ({
    ...one,
    input: { ...one.input, loads: { ...one.input.loads, force: solid.inputs.load } },
  })),
};

export const analyses: readonly Task[] = [
  { name: 'analysis, single-lap sleeve under force', run: () => analyse(forced.single, STATIONS) },
  { name: 'analysis, double-lap sleeve under force', run: () => analyse(forced.double, STATIONS) },
  {
    name: 'analysis, double-lap sleeve of the finite elements',
    run: () => analyse(solidByShells, STATIONS),
  },
  {
    name: 'analysis, single-lap sleeve, force and bending',
    run: () => analyse(leg.single, STATIONS),
  },
  {
    name: 'analysis, double-lap sleeve, force and bending',
    run: () => analyse(leg.double, STATIONS),
  },
  {
    name: 'analysis, double-lap sleeve, force, bending and torque',
    run: () => analyse(boomRoot, STATIONS),
  },
];

export const requests: readonly Task[] = [
  {
    name: 'sweep of 200 overlaps',
    run: () => answer('joint.sweep', { document: demo, jointId: 'landing-leg', points: 200 }),
  },
  {
    name: 'all corners of a joint',
    run: () => answer('joint.analyse', { document: demo, jointId: 'landing-leg', focus: {} }),
  },
  { name: 'the Curlew project', run: () => answer('project.check', { document: demo }) },
];

export const scatter = (samples: number): Task => ({
  name: `scatter of ${samples}`,
  run: () => answer('joint.scatter', { document: demo, jointId: 'landing-leg', samples }),
});

/** The same analysis with more of something, for how time grows with it. */
export const growths: readonly {
  readonly name: string;
  readonly sizes: readonly number[];
  readonly task: (size: number) => () => unknown;
}[] = [
  {
    name: 'stations',
    sizes: [100, 200, 400, 800, 1600],
    task: (size) => () => analyse(leg.double, size),
  },
  {
    name: 'joints',
    sizes: [1, 2, 4, 8, 16],
    task: (size) => {
      const joints = Array.from({ length: size }, (_one, i) => ({ ...single, id: `leg-${i}` }));
      return () => answer('project.check', { document: { ...demo, joints } });
    },
  },
  {
    name: 'load cases',
    sizes: [1, 2, 4, 8, 16],
    task: (size) => {
      const [one] = demo.loadCases;
      const loadCases = Array.from({ length: size }, (_one, i) => ({ ...one!, id: `case-${i}` }));
      const loads = loadCases.map(({ id }, i) => ({
        ...single.loads[0]!,
        force: 4000 + i,
        case: id,
      }));
      const joints = [{ ...single, loads }];
      return () => answer('project.check', { document: { ...demo, loadCases, joints } });
    },
  },
];

/** One bond, elastic and flowing: what scipy's boundary-value solver is given as well. */
export const oneBond = {
  length: 30,
  width: 78.5,
  stiffness: 4000,
  shearYield: 32,
  slipAtFailure: 0.13,
  tube: 4.4e6,
  outer: 9.4e6,
  /** N: both ends flow. */
  load: 42_000,
};
const law = {
  width: oneBond.width,
  stiffness: oneBond.stiffness,
  shearYield: oneBond.shearYield,
  slipAtFailure: oneBond.slipAtFailure,
};
const channel = {
  load: oneBond.load,
  tube: { stiffness: oneBond.tube, thermalStrain: 0 },
  outers: [{ stiffness: oneBond.outer, thermalStrain: 0 }],
  levers: [1],
};
const places = Array.from({ length: STATIONS }, (_one, i) => (oneBond.length * i) / (STATIONS - 1));
/** Shear at every station. */
export const shearAlong = (): number[] => {
  const state = solvePlastic(channel, law, oneBond.length);
  return places.map((x) => state.shear(x));
};
export const plastic: Task = {
  name: 'elastic-plastic shear lag of one bond, 400 stations',
  run: shearAlong,
};

const OVERLAPS = Array.from({ length: 200 }, (_one, i) => 5 + (i * oneBond.length) / 100);
/** What is left of a sweep where one bond, one load and the adhesive's strain are all that is asked about. */
export const strengths: Task = {
  name: 'sweep of 200 overlaps, strength of one bond alone',
  run: () => OVERLAPS.reduce((sum, overlap) => sum + capacityOf(channel, law, overlap).factor, 0),
};

/** The floor: as many exponentials and nothing else. */
export const exponentials: Task = {
  name: '400 exponentials alone',
  run: () => {
    let sum = 0;
    for (const x of places) sum += Math.exp(-x);
    return sum;
  },
};
