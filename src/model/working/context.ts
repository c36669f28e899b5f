/** What a working is put together from. */
import type { Step } from '../card.ts';
import { step } from '../card.ts';
import type { AdhesiveInput, ModelSettings } from '../joint/types.ts';
import { asked, margin } from '../margins/asked.card.ts';
import { askedFactor } from '../margins/asked.ts';
import type { ModeResult } from '../margins/result.ts';
import type { JointState } from '../margins/state.ts';

export interface Given {
  readonly state: JointState;
  readonly adhesive: AdhesiveInput;
  readonly settings: ModelSettings;
}

export interface GivenMode extends Given {
  readonly result: ModeResult;
}

/** Index of a bond by its name. */
export function bondIndex({ assembly }: JointState, part: string): number {
  return Math.max(
    0,
    assembly.bonds.findIndex(({ name }) => name === part),
  );
}

/** The factor asked for and the margin: the last two cards of every mode. */
export function marginSteps({ state, settings, result }: GivenMode): Step[] {
  const { factors } = settings;
  const own = askedFactor(result.mode, state.loadCase.kind, { ...factors, fitting: 1 });
  return [
    step(asked, { f: own ?? 1, f_fit: factors.fitting }, result.asked),
    step(margin, { lambda: result.reached, asked: result.asked }, result.margin),
  ];
}
