/** Which result a question is about: the governing row, or the worst of a mode in one case. */
import { gapStates } from '../../model/joint/assembly.ts';
import type { ModelSettings } from '../../model/joint/types.ts';
import { allModes } from '../../model/margins/all-modes.ts';
import type { Mode } from '../../model/margins/asked.ts';
import { jointState } from '../../model/margins/state.ts';
import { refineStrength } from '../../model/margins/strength-clocking.ts';
import type { Focus } from '../../shared/contract.ts';
import type { Place } from '../../shared/reports.ts';
import type { Governing } from './margins.ts';
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
  { gapState }: Focus,
  there: readonly ResolvedCase[],
): Governing | null {
  const isThere = ({ loadCase, condition, result }: Governing): boolean =>
    there.some((one) => one.loadCase === loadCase && one.condition === condition) &&
    (gapState === undefined || result.gapState === gapState);
  const known = fitting(rows, about);
  const listed = known.find(isThere);
  if (listed) return listed;
  const found: Governing[] = [];
  for (const { loadCase, condition, input } of there) {
    for (const gap of gapStates(resolved.input)) {
      if (gapState !== undefined && gap !== gapState) continue;
      const state = jointState(resolved.input, resolved.adhesive, input, gap, settings);
      const only = onlyFor(about.mode);
      for (const result of allModes(state, resolved.adhesive, settings.factors, { only })) {
        found.push({ result, loadCase, condition, state });
      }
    }
  }
  const [worst] = fitting(found, about).sort((a, b) => a.result.margin - b.result.margin);
  return worst ? { ...worst, result: refineStrength(worst.state, worst.result) } : null;
}
