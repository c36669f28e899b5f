/** Domains of the methods behind a margin, and which of them a result leaves. */
import type { Mode } from '../../model/margins/asked.ts';
import type { ModeResult } from '../../model/margins/result.ts';
import type { JointState } from '../../model/margins/state.ts';
import { type Domain, domainsOf } from '../../model/validity/domains.ts';
import type { Flag } from '../../shared/reports.ts';

const flagOf = ({ code, text, figures }: Domain): Flag => ({
  code,
  message: `Outside the domain, which asks that ${text}.`,
  ...(figures ? { figures } : {}),
});

export const marginFlags = (result: ModeResult, state: JointState): Flag[] =>
  domainsOf(result, state)
    .filter(({ inside }) => !inside)
    .map(flagOf);

/** A stress that no margin is asked of, and where it is read. */
export interface Figure {
  /** The mode whose method finds it. */
  readonly like: Mode;
  readonly x: number;
}

/** Domains that figures at a clocking leave, each once. */
export function figureFlags(state: JointState, theta: number, figures: readonly Figure[]): Flag[] {
  const flags = figures.flatMap(({ like, x }) => figureDomains(state, like, { theta, x }));
  const left = flags.filter(({ inside }) => !inside).map(flagOf);
  return [...new Map(left.map((flag) => [flag.message, flag])).values()];
}

/** As for a margin of that mode; a figure asks no factor and has no place of its own. */
export const figureDomains = (
  state: JointState,
  mode: Mode,
  at: { readonly theta: number; readonly x: number; readonly wholeBondFlows?: boolean },
): Domain[] =>
  domainsOf(
    {
      mode,
      part: '',
      reached: 1,
      asked: 1,
      margin: 0,
      place: 'within',
      gapState: state.gapState,
      wholeBondFlows: false,
      ...at,
    },
    state,
  );
