/** Domains of the methods behind a margin, and which of them a result leaves. */
import type { ModeResult } from '../../model/margins/result.ts';
import type { JointState } from '../../model/margins/state.ts';
import { domainsOf } from '../../model/validity/domains.ts';
import type { Flag } from '../../shared/reports.ts';

export const marginFlags = (result: ModeResult, state: JointState): Flag[] =>
  domainsOf(result, state)
    .filter(({ inside }) => !inside)
    .map(({ code, text }) => ({ code, message: `Outside the domain, which asks that ${text}.` }));
