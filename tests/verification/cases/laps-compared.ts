/** The trade's fact: at equal overlap a double-lap sleeve carries clearly more than a single-lap one. */
import type {
  AdhesiveInput,
  JointInput,
  Material,
  ModelSettings,
} from '../../../src/model/joint/types.ts';
import { allModes } from '../../../src/model/margins/all-modes.ts';
import { jointState } from '../../../src/model/margins/state.ts';
import { readFixture } from '../../support/fixtures.ts';
import { type Case, group, lazy, same, type Topic, value } from '../case.ts';

type Lap = 'single' | 'double';
interface Strength {
  readonly strength: number;
  readonly wholeBondFlows: boolean;
}
interface Fixture {
  readonly materials: {
    readonly adhesive: { shearModulus: number; shearYield: number; plasticStrain: number };
    readonly tube: { modulus: number; throughShearModulus: number; expansion: number };
    readonly walls: { modulus: number; poisson: number; expansion: number };
  };
  readonly cases: readonly {
    readonly name: string;
    readonly inputs: {
      readonly diameter: number;
      readonly tube: number;
      readonly wall: number;
      readonly gap: number;
      readonly overlap: number;
      readonly temperatureChange: number;
    };
    readonly expected: Readonly<Record<Lap, Strength>> & { readonly ratio: number };
  }[];
}

const settings: ModelSettings = {
  factors: { limit: 1, ultimate: 1, fitting: 1 },
  adherendShear: true,
};
const LOAD = 1000;

function strengthOf(
  { materials }: Fixture,
  inputs: Fixture['cases'][number]['inputs'],
  lap: Lap,
): Strength {
  const { adhesive, tube, walls } = materials;
  const carbon: Material = {
    kind: 'orthotropic',
    axialModulus: tube.modulus,
    hoopModulus: tube.modulus,
    shearModulus: 15_000,
    poisson: 0.3,
    axialExpansion: tube.expansion,
    hoopExpansion: tube.expansion,
    throughShearModulus: tube.throughShearModulus,
    tensileStrength: 1,
    compressiveStrength: 1,
    shearStrength: 1,
  };
  const wall = {
    material: { kind: 'isotropic', ...walls, yieldStrength: 1, ultimateStrength: 1 } as const,
    atRoot: inputs.wall,
    atMouth: inputs.wall,
  };
  const bond = { gap: inputs.gap, tolerance: 0 };
  const common = {
    overlap: inputs.overlap,
    offset: 0,
    tube: { material: carbon, outsideDiameter: inputs.diameter, wall: inputs.tube },
  };
  const joint: JointInput =
    lap === 'single'
      ? { ...common, type: 'sleeve-single', side: 'socket', sleeve: wall, bond }
      : {
          ...common,
          type: 'sleeve-double',
          spigot: wall,
          socket: wall,
          innerBond: bond,
          outerBond: bond,
        };
  const input: AdhesiveInput = {
    stressFreeTemperature: 0,
    states: [
      {
        temperature: 0,
        moisture: 'dry',
        modulus: 2.7 * adhesive.shearModulus,
        ...adhesive,
      },
    ],
  };
  const loads = { force: LOAD, moment: 0, torque: 0, shear: 0 };
  const loadCase = {
    loads,
    kind: 'ultimate',
    temperature: inputs.temperatureChange,
    moisture: 'dry',
  } as const;
  const state = jointState(joint, input, loadCase, 'nominal', settings);
  const [found] = allModes(state, input, settings.factors, { only: new Set(['adhesive-strain']) });
  return { strength: LOAD * found!.reached, wholeBondFlows: found!.wholeBondFlows };
}

const solved = lazy(() => {
  const fixture = readFixture('laps-compared.json') as Fixture;
  return fixture.cases.map(({ name, inputs, expected }) => ({
    name,
    inputs,
    expected,
    single: strengthOf(fixture, inputs, 'single'),
    double: strengthOf(fixture, inputs, 'double'),
  }));
});

const why = 'eight digits are printed; the chain of cells moves its nodes onto the yield fronts';
const ratioOf = (name: string) => {
  const found = () => solved().find((one) => one.name === name)!;
  const printed = (readFixture('laps-compared.json') as Fixture).cases.find(
    (one) => one.name === name,
  )!.expected.ratio;
  return value({
    name: `double over single, ${name}`,
    unit: '',
    expected: printed,
    computed: () => found().double.strength / found().single.strength,
    tolerance: { relative: 1e-6 },
    why,
  });
};

/** P² = 2·c·Γ·K_t(K_t + K_s)/K_s, Γ the area under τ over slip up to failure. */
function longByEnergy(): number {
  const { adhesive, tube, walls } = (readFixture('laps-compared.json') as Fixture).materials;
  const ring = (inner: number, outer: number): number => Math.PI * (outer ** 2 - inner ** 2);
  const [gap, thickness] = [0.2, 1.2];
  const [kt, ks] = [tube.modulus * ring(18, 20), walls.modulus * ring(20.2, 20.2 + thickness)];
  const through = walls.modulus / (2 * (1 + walls.poisson));
  const flexibility =
    gap / adhesive.shearModulus + 2 / 3 / tube.throughShearModulus + thickness / 3 / through;
  const { shearYield, plasticStrain } = adhesive;
  const area = shearYield * ((shearYield * flexibility) / 2 + gap * plasticStrain);
  const width = 2 * Math.PI * (20 + gap / 2);
  return Math.sqrt((2 * width * area * kt * (kt + ks)) / ks);
}

const sleeves: Case = {
  id: 'laps-compared',
  title: 'The same tube, overlap, walls and gaps, in a socket and between spigot and socket',
  source: 'reference/laps_compared.py: strength of the bond by collocation, elastic-plastic',
  tag: 'independent',
  inputs: [
    'tubes 40 × 2, 32 × 1.6 and 25 × 1.5 mm, Ex = 70 GPa; walls 1.2 to 1.5 mm, E = 114 GPa; gap 0.2 mm',
    'adhesive G = 876 MPa, τp = 38 MPa, γp = 0.4; overlaps 8 to 120 mm; stress-free and 40 K below; pulled',
  ],
  checks: [
    group({
      name: 'strength of the bond, single lap',
      compare: () =>
        solved().map(({ name, expected, single }) => ({
          what: name,
          expected: expected.single.strength,
          computed: single.strength,
        })),
      tolerance: 1e-6,
      scale: 'of the value',
      why,
    }),
    group({
      name: 'strength of the bond, double lap',
      compare: () =>
        solved().map(({ name, expected, double }) => ({
          what: name,
          expected: expected.double.strength,
          computed: double.strength,
        })),
      tolerance: 1e-6,
      scale: 'of the value',
      why,
    }),
    same({
      name: 'whether the whole bond flows',
      compare: () =>
        solved().flatMap(({ name, expected, ...found }) =>
          (['single', 'double'] as const).map((lap) => ({
            what: `${name}, ${lap}`,
            expected: String(expected[lap].wholeBondFlows),
            computed: String(found[lap].wholeBondFlows),
          })),
        ),
    }),
    ...[8, 25, 45, 120].map((overlap) =>
      ratioOf(`tube 40 x 2, walls 1.2, overlap ${overlap}, -40 K`),
    ),
    value({
      name: 'single lap of 120 mm by its energy at the mouth, tube 40 x 2, stress-free',
      unit: 'N',
      expected: longByEnergy(),
      computed: () =>
        solved().find(({ name }) => name === 'tube 40 x 2, walls 1.2, overlap 120, 0 K')!.single
          .strength,
      tolerance: { relative: 1e-7 },
      why: 'at 120 mm the other end is out of reach',
      tag: 'independent',
    }),
    same({
      name: 'the double lap carries at least a sixth more in all of them',
      compare: () =>
        solved().map(({ name, single, double }) => ({
          what: name,
          expected: 'yes',
          computed: double.strength / single.strength > 7 / 6 ? 'yes' : 'no',
        })),
    }),
  ],
  remarks: [
    'A short bond flows from end to end: it gains what the second bond adds in area. A long one fails at an end, where the energy that the load brings decides: past its plateau the gain is about √(Σc/c₁ · (K_t + ΣK)·K₁/((K_t + K₁)·ΣK)), between a fifth and a quarter here, and more overlap buys neither of them anything.',
  ],
};

export const lapsCompared: Topic = {
  title: 'Single against double lap',
  intro:
    'That a double lap carries clearly more at the same overlap is common knowledge of the trade (common practice, no source). How much more, and why, are figures.',
  cases: [sleeves],
};
