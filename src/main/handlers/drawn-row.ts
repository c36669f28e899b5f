/** Which governing row a drawing or a figure follows in what its focus leaves open. */
import { BOND_MODES } from '../../model/margins/asked.ts';
import { governingRows } from '../../model/margins/governing.ts';
import { statesOf } from '../../model/margins/over-states.ts';
import type { Focus } from '../../shared/contract.ts';
import type { Settings } from '../../shared/project.ts';
import { statesInFocus } from './focus.ts';
import { type Governing, questionOf, withCase } from './margins.ts';
import type { ResolvedCase, ResolvedJoint } from './resolve.ts';

export const isCaseOf = (one: ResolvedCase, { loadCase, condition }: Governing): boolean =>
  one.loadCase === loadCase && one.condition === condition;

/**
 * The row of the bonds with the lowest margin in the focus. A case that is named has a worst state of
 * its own, whichever other cases the joint carries.
 * @param there the cases in the focus
 * @param rows the governing rows of the joint; asked for only where no case is named
 */
export function drawnRow(
  resolved: ResolvedJoint,
  settings: Settings,
  focus: Focus,
  there: readonly ResolvedCase[],
  rows: () => readonly Governing[],
): Governing | undefined {
  const { caseId, gapState } = focus;
  if (caseId === undefined) {
    const fitting = rows().filter(
      (row) =>
        there.some((one) => isCaseOf(one, row)) &&
        (gapState === undefined || row.result.gapState === gapState),
    );
    return fitting.find(({ result }) => BOND_MODES.has(result.mode)) ?? fitting[0];
  }
  // All is said: nothing is left open.
  if (there.length === 1 && gapState !== undefined && focus.theta !== undefined) return undefined;
  const asked = { ...resolved, cases: there };
  const question = questionOf(asked, settings);
  const wanted = statesInFocus(question, focus);
  const states = wanted.length > 0 ? wanted : statesOf(question);
  const [lowest] = governingRows(question, { onlyLowest: true, only: BOND_MODES, states });
  return lowest && withCase(lowest, asked);
}
