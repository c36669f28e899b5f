/** What reference/scatter.py wrote, and the joint that it sampled in the terms of the model. */
import type { ModelSettings } from '../../src/model/joint/types.ts';
import type { Tolerance, VariedInput } from '../../src/model/scatter/inputs.ts';
import type { ScatterProblem } from '../../src/model/scatter/problem.ts';
import type { Distribution } from '../../src/model/scatter/quantiles.ts';
import type { Study } from '../../src/model/scatter/varied.ts';
import { readFixture } from './fixtures.ts';

export interface ScatterFixture {
  readonly words: readonly {
    readonly counter: readonly number[];
    readonly key: readonly [number, number];
    readonly words: readonly number[];
  }[];
  readonly quantiles: readonly { readonly chance: number; readonly quantile: number }[];
  readonly limits: readonly {
    readonly found: number;
    readonly of: number;
    readonly confidence: number;
    readonly low: number;
    readonly high: number;
  }[];
  readonly ranks: readonly {
    readonly samples: number;
    readonly share: number;
    readonly low: number;
    readonly high: number;
  }[];
  readonly volkersen: {
    readonly joint: Readonly<
      Record<
        | 'width'
        | 'overlap'
        | 'strip'
        | 'plate'
        | 'gap'
        | 'modulus'
        | 'shearModulus'
        | 'shearYield'
        | 'force'
        | 'asked',
        number
      >
    >;
    readonly spreads: Readonly<
      Record<string, { readonly distribution: Distribution; readonly spread: number }>
    >;
    readonly samples: number;
    readonly mean: number;
    readonly deviation: number;
    readonly below: number;
    readonly percentiles: readonly {
      readonly share: number;
      readonly value: number;
      readonly error: number;
      readonly density: number;
    }[];
  };
}

export const scatterFixture = (): ScatterFixture => readFixture('scatter.json') as ScatterFixture;

/** The single lap of the reference: metal that never fails, an adhesive that only yields. */
export function volkersenStudy({ joint }: ScatterFixture['volkersen']): {
  readonly study: Study;
  readonly settings: ModelSettings;
} {
  const material = {
    kind: 'isotropic',
    modulus: joint.modulus,
    poisson: 0.3,
    expansion: 2e-5,
    yieldStrength: 9000,
    ultimateStrength: 9900,
  } as const;
  return {
    study: {
      joint: {
        type: 'flat-single',
        overlap: joint.overlap,
        width: joint.width,
        strip: { material, thickness: joint.strip },
        plate: { material, atRoot: joint.plate, atMouth: joint.plate },
        bond: { gap: joint.gap, tolerance: 0 },
      },
      adhesive: {
        stressFreeTemperature: 20,
        states: [
          {
            temperature: 20,
            moisture: 'dry',
            modulus: 2.7 * joint.shearModulus,
            shearModulus: joint.shearModulus,
            shearYield: joint.shearYield,
            plasticStrain: 5,
          },
        ],
      },
      cases: [
        {
          loads: { force: joint.force, moment: 0, torque: 0, shear: 0 },
          kind: 'limit',
          temperature: 20,
          moisture: 'dry',
        },
      ],
    },
    settings: {
      factors: { limit: joint.asked, ultimate: joint.asked, fitting: 1 },
      adherendShear: false,
    },
  };
}

export const volkersenTolerances = ({ spreads }: ScatterFixture['volkersen']): Tolerance[] =>
  Object.entries(spreads).map(([input, { distribution, spread }]) => ({
    input: input as VariedInput,
    distribution,
    spread,
  }));

/** A problem from plain functions: each row's ratio at the inputs z. */
export function problemOf(
  distributions: readonly Distribution[],
  rows: Readonly<Record<string, (z: ArrayLike<number>) => number>>,
): ScatterProblem & { readonly asked: () => number } {
  let asked = 0;
  const all = (z: Float64Array): [string, number][] => {
    asked += 1;
    return Object.entries(rows).map(([key, ratio]) => [key, ratio(z)]);
  };
  return {
    inputs: distributions.map((distribution, i) => ({ stream: i + 1, distribution })),
    hinges: [],
    lowest(z) {
      const [key, ratio] = all(z).reduce((low, row) => (row[1] < low[1] ? row : low));
      return { key, ratio };
    },
    rows(z, wanted) {
      const found = all(z);
      const low = Math.min(...found.map(([, ratio]) => ratio));
      return new Map(
        found.filter(([key, ratio]) =>
          typeof wanted === 'number' ? ratio <= wanted * low : wanted.has(key),
        ),
      );
    },
    asked: () => asked,
  };
}
