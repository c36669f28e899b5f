/** Random projects anywhere in the declared ranges of the project file, extremes included. */
import fc from 'fast-check';
import type { Joint, Project } from '../../src/shared/project.ts';
import { type QuantityName, quantities } from '../../src/shared/quantities.ts';

/** A value of the quantity: its ends, or in between, by the logarithm where the range is wide. */
export function anyValue(name: QuantityName): fc.Arbitrary<number> {
  const { min, max } = quantities[name];
  const even = fc.double({ min, max, noNaN: true });
  const wide =
    min > 0 && max / min > 100
      ? fc
          .double({ min: Math.log(min), max: Math.log(max), noNaN: true })
          .map((x) => Math.min(Math.max(Math.exp(x), min), max))
      : even;
  const powers = fc
    .tuple(fc.double({ min: -6, max: 0, noNaN: true }), fc.constantFrom(-1, 1))
    .map(([power, sign]) => Math.min(Math.max(sign * max * 10 ** power, min), max));
  return min < 0
    ? fc.oneof(even, powers, fc.constantFrom(min, max, 0))
    : fc.oneof({ weight: 6, arbitrary: wide }, { weight: 1, arbitrary: fc.constantFrom(min, max) });
}

/** Sizes of an ordinary frame, so that most random joints can be put together. */
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const source = fc.constant({ kind: 'typical' as const, text: 'random' });

const orthotropicKeys = [
  'id',
  'name',
  'kind',
  'axialModulus',
  'hoopModulus',
  'shearModulus',
  'poisson',
  'axialExpansion',
  'hoopExpansion',
  'throughShearModulus',
  'tensileStrength',
  'compressiveStrength',
  'shearStrength',
  'source',
] as const;

const adherend = fc.oneof(
  fc.record({
    id: fc.constant('a'),
    name: fc.constant('a'),
    kind: fc.constant('isotropic' as const),
    modulus: anyValue('modulus'),
    poisson: anyValue('poisson'),
    expansion: anyValue('expansion'),
    yieldStrength: anyValue('strength'),
    ultimateStrength: fc.constant(quantities.strength.max),
    source,
  }),
  fc
    .record(
      {
        id: fc.constant('a'),
        name: fc.constant('a'),
        kind: fc.constant('orthotropic' as const),
        axialModulus: anyValue('modulus'),
        hoopModulus: anyValue('modulus'),
        shearModulus: anyValue('shearModulus'),
        poisson: anyValue('laminatePoisson'),
        axialExpansion: anyValue('expansion'),
        hoopExpansion: anyValue('expansion'),
        throughShearModulus: anyValue('shearModulus'),
        throughModulus: anyValue('modulus'),
        throughExpansion: anyValue('expansion'),
        interlaminarTension: anyValue('interlaminarStrength'),
        interlaminarShear: anyValue('interlaminarStrength'),
        tensileStrength: anyValue('strength'),
        compressiveStrength: anyValue('strength'),
        shearStrength: anyValue('strength'),
        source,
      },
      { requiredKeys: [...orthotropicKeys] },
    )
    // No solid has a Poisson ratio beyond this.
    .filter(
      ({ poisson, axialModulus, hoopModulus }) =>
        poisson * poisson * hoopModulus < 0.999 * axialModulus,
    ),
  fc.record({
    id: fc.constant('a'),
    name: fc.constant('a'),
    kind: fc.constant('laminate' as const),
    ply: fc.constant('ply'),
    stack: fc.constantFrom(
      '[0]',
      '[0/90]s',
      '[0/±45/90]s',
      '[30/-30]',
      '[0/45]',
      '[±45]2s',
      '[90]',
    ),
    source,
  }),
);

/** A ply of usual proportions: its own rules are tested where plies are. */
const ply = fc.record({
  id: fc.constant('ply'),
  name: fc.constant('ply'),
  axialModulus: between(30_000, 500_000),
  transverseModulus: between(3_000, 20_000),
  shearModulus: between(2_000, 10_000),
  poisson: between(0.1, 0.4),
  transverseShearModulus: between(7_000, 10_000),
  axialExpansion: anyValue('expansion'),
  transverseExpansion: anyValue('expansion'),
  thickness: between(0.05, 1),
  tensileStrength: anyValue('strength'),
  compressiveStrength: anyValue('strength'),
  transverseTensileStrength: anyValue('strength'),
  transverseCompressiveStrength: anyValue('strength'),
  shearStrength: anyValue('strength'),
  interlaminarTension: anyValue('interlaminarStrength'),
  interlaminarShear: anyValue('interlaminarStrength'),
  source,
});

const adhesive = fc
  .record(
    {
      expansion: anyValue('expansion'),
      fracture: fc.record({
        modeI: anyValue('fractureEnergy'),
        modeII: anyValue('fractureEnergy'),
        exponent: anyValue('fractureExponent'),
        source,
      }),
      knockdowns: fc.record({
        environment: anyValue('knockdown'),
        ageing: anyValue('knockdown'),
        scatter: anyValue('knockdown'),
        gap: fc.uniqueArray(fc.record({ gap: anyValue('gap'), factor: anyValue('knockdown') }), {
          maxLength: 3,
          selector: ({ gap }) => gap,
        }),
        source,
      }),
      stressFreeTemperature: anyValue('temperature'),
      states: fc.uniqueArray(
        fc.record({
          temperature: fc.integer({ min: -60, max: 120 }),
          moisture: fc.constant('dry' as const),
          modulus: anyValue('adhesiveModulus'),
          shearModulus: anyValue('adhesiveShearModulus'),
          shearYield: anyValue('shearYield'),
          plasticStrain: anyValue('plasticStrain'),
          peelStrength: anyValue('peelStrength'),
        }),
        { minLength: 1, maxLength: 3, selector: ({ temperature }) => temperature },
      ),
      fatigue: fc.record({
        coefficient: anyValue('fatigueCoefficient'),
        exponent: anyValue('fatigueExponent'),
        source,
      }),
    },
    { requiredKeys: ['stressFreeTemperature', 'states'] },
  )
  .map((rest) => ({
    id: 'glue',
    name: 'glue',
    source: { kind: 'memory' as const, text: '' },
    ...rest,
  }));

const loads = fc.record({
  force: anyValue('force'),
  moment: anyValue('moment'),
  torque: anyValue('torque'),
  shear: anyValue('shear'),
});
const zeroed = loads.chain((all) =>
  fc
    .record({
      force: fc.boolean(),
      moment: fc.boolean(),
      torque: fc.boolean(),
      shear: fc.boolean(),
    })
    .map((keep) => ({
      force: keep.force ? all.force : 0,
      moment: keep.moment ? all.moment : 0,
      torque: keep.torque ? all.torque : 0,
      shear: keep.shear ? all.shear : 0,
    })),
);

const wall = fc.record({
  adherend: fc.constantFrom('a', 'b'),
  atRoot: between(0.1, 8),
  atMouth: between(0.1, 8),
});
const straight = wall.map((one) => ({ ...one, atMouth: one.atRoot }));
const anyWall = fc.oneof({ weight: 4, arbitrary: straight }, { weight: 1, arbitrary: wall });
const bond = anyValue('gap').chain((gap) =>
  fc.record({ gap: fc.constant(gap), tolerance: between(0, gap * 0.6) }),
);
const offset = fc.constantFrom(0, 0, 0.005, 0.05);
const common = {
  id: fc.constant('j'),
  name: fc.constant('j'),
  overlap: anyValue('overlap'),
  adhesive: fc.constant('glue'),
};
const tube = fc.record({
  adherend: fc.constantFrom('a', 'b'),
  outsideDiameter: between(8, 200),
  wall: between(0.1, 5),
});
const strip = fc.record({ adherend: fc.constantFrom('a', 'b'), thickness: between(0.1, 10) });
const caseLoads = zeroed.map((one) => [{ case: 'c', ...one }]);
const flatLoads = anyValue('force').map((force) => [{ case: 'c', force }]);

const joint: fc.Arbitrary<Joint> = fc.oneof(
  fc.record({
    ...common,
    type: fc.constant('sleeve-single' as const),
    side: fc.constantFrom('socket' as const, 'spigot' as const),
    tube,
    sleeve: anyWall,
    bond,
    offset,
    loads: caseLoads,
  }),
  fc.record({
    ...common,
    type: fc.constant('sleeve-double' as const),
    tube,
    spigot: anyWall,
    socket: anyWall,
    innerBond: bond,
    outerBond: bond,
    offset,
    loads: caseLoads,
  }),
  fc.record({
    ...common,
    type: fc.constant('flat-single' as const),
    width: anyValue('width'),
    strip,
    plate: anyWall,
    bond,
    loads: flatLoads,
  }),
  fc.record({
    ...common,
    type: fc.constant('flat-double' as const),
    width: anyValue('width'),
    strip,
    lowerStrap: anyWall,
    upperStrap: anyWall,
    lowerBond: bond,
    upperBond: bond,
    loads: flatLoads,
  }),
);

const loadCase = fc.oneof(
  fc.record({
    id: fc.constant('c'),
    name: fc.constant('c'),
    kind: fc.constantFrom('limit' as const, 'ultimate' as const),
    temperature: anyValue('temperature'),
    moisture: fc.constant('dry' as const),
  }),
  fc.record({
    id: fc.constant('c'),
    name: fc.constant('c'),
    kind: fc.constant('cyclic' as const),
    temperature: anyValue('temperature'),
    moisture: fc.constant('dry' as const),
    cycles: anyValue('cycles'),
  }),
);

export const projects: fc.Arbitrary<Project> = fc
  .record({
    targetMargin: anyValue('targetMargin'),
    factors: fc.record({
      limit: anyValue('factor'),
      ultimate: anyValue('factor'),
      fitting: anyValue('factor'),
    }),
    adherendShear: fc.boolean(),
    first: adherend,
    second: adherend,
    ply,
    edgeMoment: fc.constantFrom('goland-reissner' as const, 'hart-smith' as const),
    glue: adhesive,
    loadCase,
    joint,
  })
  .map(
    ({
      targetMargin,
      factors,
      adherendShear,
      first,
      second,
      ply: onePly,
      edgeMoment,
      glue,
      loadCase: one,
      joint: only,
    }) => ({
      format: 'lapwright-project' as const,
      version: 1 as const,
      name: 'random',
      settings: { targetMargin, factors, adherendShear, edgeMoment },
      plies: [onePly],
      adherends: [first, { ...second, id: 'b' }],
      adhesives: [glue],
      loadCases: [one],
      joints: [only],
    }),
  );
