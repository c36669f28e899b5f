/** Which result a question is about: the governing row, or the worst of a mode in one case. */
import type { ModelSettings } from '../../model/joint/types.ts';
import type { Mode } from '../../model/margins/asked.ts';
import { overStates } from '../../model/margins/over-states.ts';
import { refineStrength } from '../../model/margins/strength-clocking.ts';
import type { Focus } from '../../shared/contract.ts';
import type { Place } from '../../shared/reports.ts';
import { isCaseOf } from './drawn-row.ts';
import { statesInFocus } from './focus.ts';
import { type Governing, questionOf, withCase } from './margins.ts';
import type { ResolvedCase, ResolvedJoint } from './resolve.ts';

export interface About {
  readonly mode: Mode;
  readonly part?: string | undefined;
  readonly place?: Place | undefined;
}

/** What the search for a mode takes from others, in their order: its last digits depend on it. */
const needs: Readonly<Partial<Record<Mode, readonly Mode[]>>> = {
  'adhesive-peel': ['adhesive-strain'],
  interlaminar: ['adhesive-strain', 'adhesive-peel'],
};
export const onlyFor = (mode: Mode): ReadonlySet<Mode> => new Set([mode, ...(needs[mode] ?? [])]);

/** Rows of a mode that a part and a place leave; a place only where there are several. */
export function fitting(rows: readonly Governing[], { mode, part, place }: About): Governing[] {
  const same = rows.filter(
    ({ result }) => result.mode === mode && (part === undefined || result.part === part),
  );
  const there = same.filter(({ result }) => result.place === place);
  return place !== undefined && there.length > 0 ? there : same;
}

/**
 * @param rows the governing rows of the mode
 * @param there the cases in the focus
 * @returns the row itself where it lies in the focus, else the worst of the mode in the focus
 */
export function rowInFocus(
  resolved: ResolvedJoint,
  settings: ModelSettings,
  rows: readonly Governing[],
  about: About,
  focus: Focus,
  there: readonly ResolvedCase[],
): Governing | null {
  const { gapState } = focus;
  const isThere = (row: Governing): boolean =>
    there.some((one) => isCaseOf(one, row)) &&
    (gapState === undefined || row.result.gapState === gapState);
  const listed = fitting(rows, about).find(isThere);
  if (listed) return listed;
  const asked = { ...resolved, cases: there };
  const question = questionOf(asked, settings);
  const states = overStates(
    question,
    { only: onlyFor(about.mode) },
    statesInFocus(question, focus),
  );
  const found = [...states].flatMap(({ caseIndex, state, modes }) =>
    modes.map((result) => withCase({ result, caseIndex, state }, asked)),
  );
  const [worst] = fitting(found, about).sort((a, b) => a.result.margin - b.result.margin);
  return worst ? { ...worst, result: refineStrength(worst.state, worst.result) } : null;
}
