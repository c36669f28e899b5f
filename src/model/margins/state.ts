/** One case in one gap state, ready to be solved at any clocking. */
import { adhesiveInBonds } from '../joint/adhesive-in-bond.ts';
import type { AdhesiveState } from '../joint/adhesive-state.ts';
import { type Assembly, assemble } from '../joint/assembly.ts';
import { bondLaws } from '../joint/bond-law.ts';
import type { Ledger } from '../joint/knockdown.ts';
import { type LocalProblem, localProblem } from '../joint/local-problem.ts';
import type {
  AdhesiveInput,
  CaseInput,
  GapState,
  JointInput,
  ModelSettings,
} from '../joint/types.ts';
import type { BondLaw } from '../lap/problem.ts';
import { type LayeredState, layeredState } from '../layered/of-state.ts';

export interface JointState {
  readonly assembly: Assembly;
  /** State of the adhesive in each bond, knockdowns taken off; they differ where the gaps do. */
  readonly adhesives: readonly AdhesiveState[];
  readonly ledgers: readonly Ledger[];
  readonly bonds: readonly BondLaw[];
  readonly deltaT: number;
  readonly gapState: GapState;
  readonly loadCase: CaseInput;
  readonly layered: LayeredState;
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
  const gaps = assembly.bonds.map(({ gap }) => gap);
  const { ledgers, left: adhesives } = adhesiveInBonds(adhesive, gaps, loadCase);
  const bonds = bondLaws(assembly, adhesives, settings.adherendShear);
  const deltaT = loadCase.temperature - adhesive.stressFreeTemperature;
  const method = settings.edgeMoment ?? 'goland-reissner';
  return {
    assembly,
    adhesives,
    ledgers,
    bonds,
    deltaT,
    gapState,
    loadCase,
    layered: layeredState(assembly, adhesives, deltaT, method),
    at: (theta, change = deltaT) => localProblem(assembly, bonds, loadCase.loads, theta, change),
  };
}
