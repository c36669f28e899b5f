/** reference/laminates.json in the model's own terms. */
import type { Face, StrainComponent } from '../../src/model/laminate/first-ply.ts';
import type { Triple } from '../../src/model/laminate/plane.ts';
import type { Ply } from '../../src/model/laminate/ply.ts';
import type { LaminateStrain, Stack } from '../../src/model/laminate/stack.ts';
import { readFixture } from './fixtures.ts';
import { carbon } from './plies.ts';

interface FixturePly {
  readonly E1: number;
  readonly E2: number;
  readonly G12: number;
  readonly nu12: number;
  readonly G23: number;
  readonly alpha1: number;
  readonly alpha2: number;
  readonly Xt: number;
  readonly Xc: number;
  readonly Yt: number;
  readonly Yc: number;
  readonly S: number;
}

interface FixtureFailure {
  /** Null: no load of this kind reaches it. */
  readonly factor: number | null;
  readonly place: {
    readonly ply: number;
    readonly face: Face;
    readonly component?: StrainComponent;
  } | null;
}

export interface LaminateFixture {
  readonly name: string;
  readonly inputs: {
    readonly ply: FixturePly;
    readonly plies: readonly { readonly angle: number; readonly thickness: number }[];
    readonly deltaT: number;
    readonly force: Triple;
    readonly moment: Triple;
    readonly fixed: LaminateStrain;
    readonly perFactor: LaminateStrain;
  };
  readonly expected: {
    readonly a: readonly number[];
    readonly b: readonly number[];
    readonly d: readonly number[];
    readonly thermalForce: Triple;
    readonly thermalMoment: Triple;
    readonly freeStrain: Triple;
    readonly freeCurvature: Triple;
    readonly constants: Readonly<Record<LaminateConstant, number>>;
    readonly tsaiWu: FixtureFailure;
    readonly maximumStrain: FixtureFailure;
  };
}

export type LaminateConstant =
  | 'axialModulus'
  | 'hoopModulus'
  | 'shearModulus'
  | 'poisson'
  | 'axialExpansion'
  | 'hoopExpansion'
  | 'shearExpansion'
  | 'throughModulus'
  | 'throughExpansion'
  | 'throughShearModulus'
  | 'hoopThroughShearModulus'
  | 'bendingStiffness'
  | 'reducedBendingStiffness';

const plyOf = (ply: FixturePly): Ply => ({
  ...carbon,
  axialModulus: ply.E1,
  transverseModulus: ply.E2,
  shearModulus: ply.G12,
  poisson: ply.nu12,
  transverseShearModulus: ply.G23,
  axialExpansion: ply.alpha1,
  transverseExpansion: ply.alpha2,
  tensileStrength: ply.Xt,
  compressiveStrength: ply.Xc,
  transverseTensileStrength: ply.Yt,
  transverseCompressiveStrength: ply.Yc,
  shearStrength: ply.S,
});

export const laminateFixtures = (): readonly LaminateFixture[] =>
  (readFixture('laminates.json') as { readonly cases: readonly LaminateFixture[] }).cases;

export function stackOf({ inputs }: LaminateFixture): Stack {
  const ply = plyOf(inputs.ply);
  return { plies: inputs.plies.map(({ angle, thickness }) => ({ ply, angle, thickness })) };
}
