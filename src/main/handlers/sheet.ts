/** The printed sheet of one joint: the same answers that the pages get, put together in one. */
import type { Project } from '../../shared/project.ts';
import { ok, type Reply, type RequestError, refuse } from '../../shared/reply.ts';
import type { Margin } from '../../shared/reports.ts';
import type { JointSheet, SheetWorking } from '../../shared/reports-sheet.ts';
import { type JobContext, unwatched } from '../jobs/progress.ts';
import { couponFlags } from './check.ts';
import { explain } from './explain.ts';
import { guarded } from './guarded.ts';
import { analyse, sweep } from './joint.ts';
import type { ResolvedJoint } from './resolve.ts';
import { tolerancesOf } from './tolerances.ts';

/** As many as the Size page draws. */
const STATIONS = 241;
/** Shares of the work, about: for the progress alone. */
const ANALYSIS = 2;
const SWEEP = 8;

/** A refusal is told in its place on the sheet; the rest of the sheet stands. */
const parted = <T>(reply: Reply<T>): { value: T | null; refused: RequestError | null } =>
  reply.ok ? { value: reply.value, refused: null } : { value: null, refused: reply.error };

function workingOf(project: Project, resolved: ResolvedJoint, margin: Margin): SheetWorking {
  const { mode, part, place, caseId, conditionId, gapState, theta } = margin;
  const focus = { caseId, conditionId, gapState, theta };
  const { value, refused } = parted(
    guarded(resolved.index, () =>
      explain(project, resolved, { subject: mode, part, place, focus }),
    ),
  );
  return { margin, working: value, refused };
}

export interface SheetWanted {
  /** Of how many margins, from the lowest on. */
  readonly workings: number;
  readonly sweep: boolean;
}

export function jointSheet(
  project: Project,
  resolved: ResolvedJoint,
  { workings, sweep: wantsSweep }: SheetWanted,
  { progress }: JobContext = unwatched,
): Reply<JointSheet> {
  const { joint } = resolved;
  const first = ANALYSIS + (wantsSweep ? SWEEP : 0);
  const total = (margins: number): number => first + margins;
  progress(0, total(workings), joint.name);
  const analysis = analyse(project, resolved, { stations: STATIONS });
  if (!analysis.ok) return analysis;
  const chosen = analysis.value.margins.slice(0, workings);
  const all = total(chosen.length);
  const swept = (done: number, of: number): void =>
    progress(ANALYSIS + (SWEEP * done) / of, all, `${joint.name}, overlap`);
  const isSwept = wantsSweep && resolved.cases.length > 0;
  const sweepReply = isSwept
    ? parted(guarded(resolved.index, () => sweep(project, resolved, {}, { progress: swept })))
    : { value: null, refused: null };
  const explained = chosen.map((margin, i) => {
    progress(first + i, all, `${joint.name}, ${margin.label}`);
    return workingOf(project, resolved, margin);
  });
  return ok({
    jointId: joint.id,
    report: analysis.value,
    sweep: sweepReply.value,
    sweepRefused: sweepReply.refused,
    workings: explained,
    tolerances: tolerancesOf(project, resolved),
    couponFlags: couponFlags(project, resolved),
  });
}

/** A browser, a terminal and a script have no window of ours to print. */
export const noPdfHere = (): Reply<never> =>
  refuse(
    'not-found',
    '',
    'Only the window of Lapwright’s own program saves a PDF by itself. Print the sheet, and choose PDF there.',
  );
