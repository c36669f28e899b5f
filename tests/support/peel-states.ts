/** Joints with every strength given, for the modes that the layered model finds. */
import type {
  AdhesiveInput,
  CaseInput,
  GapState,
  JointInput,
  Loads,
  Material,
} from '../../src/model/joint/types.ts';
import { allModes } from '../../src/model/margins/all-modes.ts';
import type { Mode } from '../../src/model/margins/asked.ts';
import type { ModeResult } from '../../src/model/margins/result.ts';
import { type JointState, jointState } from '../../src/model/margins/state.ts';
import { doubleLap, noLoads, singleLap } from './section-12.ts';

export const factors = { limit: 1, ultimate: 1.5, fitting: 1.15 };

export const strongGlue = (more: Partial<AdhesiveInput> = {}, row = {}): AdhesiveInput => ({
  stressFreeTemperature: 20,
  states: [
    {
      temperature: 20,
      moisture: 'dry',
      modulus: 2400,
      shearModulus: 876,
      shearYield: 30,
      plasticStrain: 0.6,
      peelStrength: 45,
      ...row,
    },
  ],
  expansion: 55e-6,
  fracture: { modeI: 0.6, modeII: 2.5, exponent: 1.3 },
  ...more,
});

/** Interlaminar strengths on the carbon of a joint of the specification's table. */
export function layered<T extends JointInput>(joint: T, tension = 40, shear = 60): T {
  const { tube } = joint as Extract<JointInput, { tube: unknown }>;
  const material = {
    ...tube.material,
    interlaminarTension: tension,
    interlaminarShear: shear,
  } as Material;
  return { ...joint, tube: { ...tube, material } };
}

export const socket = layered(singleLap);
export const sleeve = layered(doubleLap);

export const flatSingle: JointInput = {
  type: 'flat-single',
  overlap: 25,
  width: 25,
  strip: { material: (socket as { tube: { material: Material } }).tube.material, thickness: 1.6 },
  plate: (socket as Extract<JointInput, { sleeve: unknown }>).sleeve,
  bond: { gap: 0.2, tolerance: 0 },
};

export interface Asked {
  readonly joint?: JointInput;
  readonly adhesive?: AdhesiveInput;
  readonly loads?: Partial<Loads>;
  readonly temperature?: number;
  readonly kind?: CaseInput['kind'];
  readonly edge?: 'goland-reissner' | 'hart-smith';
  readonly gap?: GapState;
}

export function stateOf({
  joint = socket,
  adhesive = strongGlue(),
  loads = { force: 1e4 },
  temperature = 20,
  kind = 'limit',
  edge = 'goland-reissner',
  gap = 'nominal',
}: Asked): JointState {
  const one: CaseInput = { loads: { ...noLoads, ...loads }, kind, temperature, moisture: 'dry' };
  return jointState(joint, adhesive, one, gap, { factors, adherendShear: true, edgeMoment: edge });
}

export const modesOf = (asked: Asked, only?: readonly Mode[]): ModeResult[] =>
  allModes(stateOf(asked), asked.adhesive ?? strongGlue(), factors, {
    ...(only ? { only: new Set<Mode>([...only, 'adhesive-strain']) } : {}),
  });

export const find = (results: readonly ModeResult[], mode: Mode): ModeResult | undefined =>
  results.find((one) => one.mode === mode);

export const reached = (asked: Asked, mode: Mode): number =>
  find(modesOf(asked, [mode]), mode)?.reached ?? Number.POSITIVE_INFINITY;
