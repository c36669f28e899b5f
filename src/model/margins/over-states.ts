/** The modes of a joint in all its states: every load case in every gap state. */
import { gapStates } from '../joint/assembly.ts';
import type {
  AdhesiveInput,
  CaseInput,
  GapState,
  JointInput,
  ModelSettings,
} from '../joint/types.ts';
import { type AllOptions, allModes } from './all-modes.ts';
import type { ModeResult } from './result.ts';
import { type JointState, jointState } from './state.ts';

/** Everything that the margins of a joint depend on. */
export interface Question {
  readonly joint: JointInput;
  readonly adhesive: AdhesiveInput;
  readonly cases: readonly CaseInput[];
  readonly settings: ModelSettings;
}

/** One state of a question, by name. */
export interface StateName {
  readonly caseIndex: number;
  readonly gapState: GapState;
}

export interface StateModes extends StateName {
  readonly state: JointState;
  readonly modes: readonly ModeResult[];
}

/** Case by case, and in each case gap by gap. */
export const statesOf = ({ joint, cases }: Question): StateName[] =>
  cases.flatMap((_case, caseIndex) =>
    gapStates(joint).map((gapState) => ({ caseIndex, gapState })),
  );

/**
 * Solves one state after another: whoever has heard enough stops listening, and the rest is spared.
 * @param states in the order in which they are to be solved; all of them when left out
 * @throws ModelError naming the input that does not fit
 */
export function* overStates(
  { joint, adhesive, cases, settings }: Question,
  options: AllOptions,
  states?: readonly StateName[],
): Generator<StateModes> {
  for (const name of states ?? statesOf({ joint, adhesive, cases, settings })) {
    const state = jointState(joint, adhesive, cases[name.caseIndex]!, name.gapState, settings);
    yield { ...name, state, modes: allModes(state, adhesive, settings.factors, options) };
  }
}
