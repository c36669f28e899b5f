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
import { type LayeredState, layeredStates } from '../layered/of-state.ts';

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
  /** The one-dimensional lap at a clocking, radians. */
  at(theta: number): LocalProblem;
}

/** What load cases share that meet the joint in one gap state, at one temperature and moisture. */
interface Surroundings
  extends Pick<JointState, 'assembly' | 'adhesives' | 'ledgers' | 'bonds' | 'deltaT'> {
  readonly layered: () => LayeredState;
}

type Asked = readonly [joint: JointInput, adhesive: AdhesiveInput, settings: ModelSettings];

/** Surroundings of the joint that was asked for last: its load cases come one after the other. */
let known: { readonly asked: Asked; readonly surroundings: Map<string, Surroundings> } | null =
  null;

/** More surroundings than a joint has in practice are not kept at once. */
const MOST_KEPT = 40;

function surroundingsOf(
  asked: Asked,
  { temperature, moisture }: CaseInput,
  gapState: GapState,
): Surroundings {
  if (!known?.asked.every((one, i) => one === asked[i])) known = { asked, surroundings: new Map() };
  const { surroundings } = known;
  const key = `${gapState} ${temperature} ${moisture}`;
  let found = surroundings.get(key);
  if (!found) {
    found = makeSurroundings(asked, { temperature, moisture }, gapState);
    if (surroundings.size >= MOST_KEPT) surroundings.clear();
    surroundings.set(key, found);
  }
  return found;
}

/** Lets go of what the joint asked for last has left: some megabytes for each of its tapered laps. */
export function forgetSurroundings(): void {
  known = null;
}

function makeSurroundings(
  [joint, adhesive, settings]: Asked,
  at: Pick<CaseInput, 'temperature' | 'moisture'>,
  gapState: GapState,
): Surroundings {
  const assembly = assemble(joint, gapState);
  const gaps = assembly.bonds.map(({ gap }) => gap);
  const { ledgers, left: adhesives } = adhesiveInBonds(adhesive, gaps, at);
  const bonds = bondLaws(assembly, adhesives, settings.adherendShear);
  const deltaT = at.temperature - adhesive.stressFreeTemperature;
  const method = settings.edgeMoment ?? 'goland-reissner';
  const layered = layeredStates(assembly, adhesives, deltaT, method);
  return { assembly, adhesives, ledgers, bonds, deltaT, layered };
}

/** @throws ModelError naming the input that does not fit */
export function jointState(
  joint: JointInput,
  adhesive: AdhesiveInput,
  loadCase: CaseInput,
  gapState: GapState,
  settings: ModelSettings,
): JointState {
  const shared = surroundingsOf([joint, adhesive, settings], loadCase, gapState);
  const { assembly, bonds, deltaT } = shared;
  return {
    ...shared,
    gapState,
    loadCase,
    layered: shared.layered(),
    at: (theta) => localProblem(assembly, bonds, loadCase.loads, theta, deltaT),
  };
}
