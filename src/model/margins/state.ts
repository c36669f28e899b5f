/** One case in one gap state, ready to be solved at any clocking. */
import { type AdhesiveState, adhesiveStateAt } from '../joint/adhesive-state.ts';
import { type Assembly, assemble } from '../joint/assembly.ts';
import { bondLaws } from '../joint/bond-law.ts';
import { type LocalProblem, localProblem } from '../joint/local-problem.ts';
import type {
  AdhesiveInput,
  CaseInput,
  GapState,
  JointInput,
  ModelSettings,
} from '../joint/types.ts';
import type { BondLaw } from '../lap/problem.ts';

export interface JointState {
  readonly assembly: Assembly;
  readonly adhesive: AdhesiveState;
  readonly bonds: readonly BondLaw[];
  readonly deltaT: number;
  readonly gapState: GapState;
  readonly loadCase: CaseInput;
  /** The one-dimensional lap at a clocking, radians; at another temperature change if asked. */
  at(theta: number, deltaT?: number): LocalProblem;
}

/** @throws ModelError naming the input that does not fit */
export function jointState(
  joint: JointInput,
  adhesive: AdhesiveInput,
  loadCase: CaseInput,
  gapState: GapState,
  settings: ModelSettings,
): JointState {
  const assembly = assemble(joint, gapState);
  const state = adhesiveStateAt(adhesive, loadCase.temperature, loadCase.moisture);
  const bonds = bondLaws(assembly, state, settings.adherendShear);
  const deltaT = loadCase.temperature - adhesive.stressFreeTemperature;
  return {
    assembly,
    adhesive: state,
    bonds,
    deltaT,
    gapState,
    loadCase,
    at: (theta, change = deltaT) => localProblem(assembly, bonds, loadCase.loads, theta, change),
  };
}
