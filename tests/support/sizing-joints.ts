/** A joint in which nothing fails, and the one change that makes each mode stop it. */
import type {
  AdhesiveInput,
  AdhesiveRow,
  CaseInput,
  CaseKind,
  IsotropicMaterial,
  JointInput,
  Material,
  OrthotropicMaterial,
} from '../../src/model/joint/types.ts';
import { laminateMaterial } from '../../src/model/laminate/material.ts';
import type { Mode } from '../../src/model/margins/asked.ts';
import type { Question } from '../../src/model/margins/over-states.ts';
import { typicalPly } from '../../src/renderer/size/stack/new-laminate.ts';
import { noLoads } from './section-12.ts';

const STRONG = 9000;

const titanium: IsotropicMaterial = {
  kind: 'isotropic',
  modulus: 114_000,
  poisson: 0.34,
  expansion: 8.6e-6,
  yieldStrength: STRONG,
  ultimateStrength: STRONG,
};
const carbon: OrthotropicMaterial = {
  kind: 'orthotropic',
  axialModulus: 70_000,
  hoopModulus: 30_000,
  shearModulus: 15_000,
  poisson: 0.3,
  axialExpansion: 1e-6,
  hoopExpansion: 6e-6,
  throughShearModulus: 4000,
  throughModulus: 9000,
  throughExpansion: 30e-6,
  tensileStrength: STRONG,
  compressiveStrength: STRONG,
  shearStrength: STRONG,
};
const row: AdhesiveRow = {
  temperature: 20,
  moisture: 'dry',
  modulus: 2400,
  shearModulus: 876,
  shearYield: 45,
  plasticStrain: 0.4,
};

export interface Weak {
  readonly row?: Partial<AdhesiveRow>;
  readonly adhesive?: Partial<AdhesiveInput>;
  readonly tube?: Material;
  readonly sleeve?: Partial<IsotropicMaterial>;
  readonly force?: number;
  readonly cycles?: number;
}

/** A socket on a tube of 32 × 1.6 mm, pulled, at the temperature at which it is free of stress. */
export function pulled(kind: CaseKind, weak: Weak = {}): Question & { readonly joint: JointInput } {
  const loadCase: CaseInput = {
    loads: { ...noLoads, force: weak.force ?? 6000 },
    kind,
    temperature: 20,
    moisture: 'dry',
    ...(kind === 'cyclic' ? { cycles: weak.cycles ?? 1000 } : {}),
  };
  const sleeve = { ...titanium, ...weak.sleeve };
  return {
    joint: {
      type: 'sleeve-single',
      side: 'socket',
      overlap: 30,
      tube: { material: weak.tube ?? carbon, outsideDiameter: 32, wall: 1.6 },
      sleeve: { material: sleeve, atRoot: 1.2, atMouth: 1.2 },
      bond: { gap: 0.2, tolerance: 0.05 },
      offset: 0,
    },
    adhesive: { stressFreeTemperature: 20, states: [{ ...row, ...weak.row }], ...weak.adhesive },
    cases: [loadCase],
    settings: {
      factors: { limit: 1, ultimate: 1, fitting: 1 },
      adherendShear: true,
    },
  };
}

const plies = (strength: number): Material => ({
  kind: 'laminate',
  ...laminateMaterial(
    {
      ...typicalPly,
      tensileStrength: strength,
      compressiveStrength: strength,
      transverseTensileStrength: strength,
      transverseCompressiveStrength: strength,
      shearStrength: strength,
      interlaminarTension: STRONG,
      interlaminarShear: STRONG,
    },
    [0, 45, -45, 0, 0, -45, 45, 0],
    1.6,
  ),
});

export interface Stopped {
  readonly mode: Mode;
  readonly question: ReturnType<typeof pulled>;
  /** The same with the weak strength made good: an overlap is found. */
  readonly sound: ReturnType<typeof pulled>;
  /** Overlaps looked between, mm. */
  readonly range: readonly [number, number];
}

const LONG = [10, 60] as const;
const weakened = (mode: Mode, kind: CaseKind, weak: Weak, sound: Weak = {}): Stopped => ({
  mode,
  question: pulled(kind, weak),
  sound: pulled(kind, sound),
  range: LONG,
});
const fatigue = { coefficient: 1, exponent: 0.1 };
const fracture = { modeI: 100, modeII: 100, exponent: 1 };
const laminar = { interlaminarTension: 1, interlaminarShear: STRONG };

/** For each mode, a joint that no overlap in the range brings to a margin of 0.2 because of it. */
export const stopped: readonly Stopped[] = [
  weakened('adhesive-yield', 'limit', { row: { shearYield: 8, plasticStrain: 4 } }),
  weakened('adhesive-strain', 'ultimate', { row: { shearYield: 6, plasticStrain: 0.001 } }),
  weakened('adhesive-peel', 'ultimate', { row: { peelStrength: 3 } }),
  // Each alone would hold.
  weakened('peel-shear', 'limit', {
    row: { peelStrength: 8, shearYield: 10, plasticStrain: 4 },
  }),
  weakened('interlaminar', 'ultimate', { tube: { ...carbon, ...laminar } }),
  weakened('first-ply', 'ultimate', { tube: plies(25) }, { tube: plies(STRONG) }),
  weakened('fracture', 'ultimate', { adhesive: { fracture: { ...fracture, modeII: 0.005 } } }),
  weakened('cyclic-shear', 'cyclic', { adhesive: { fatigue }, cycles: 1e9 }),
  weakened('metal-yield', 'limit', { sleeve: { yieldStrength: 30 } }),
  weakened('metal-ultimate', 'ultimate', { sleeve: { ultimateStrength: 30 } }),
  weakened('laminate-strength', 'ultimate', { tube: { ...carbon, tensileStrength: 30 } }),
  // A rule of length: what it wants is overlap, so a short range stops it.
  {
    mode: 'durability-trough',
    question: pulled('limit'),
    sound: pulled('limit'),
    range: [4, 9],
  },
];
