/** Requests about one joint: its margins and curves, one state's curves, its overlap sweep. */
import { layeredCurves } from '../../model/curves/layered-curves.ts';
import { stressCurves } from '../../model/curves/stress-curves.ts';
import { gapStates } from '../../model/joint/assembly.ts';
import { jointState } from '../../model/margins/state.ts';
import {
  findPlateau,
  LONGEST_OVERLAP,
  SHORTEST_OVERLAP,
  strengthAt,
} from '../../model/sweep/overlap-sweep.ts';
import { MODEL_VERSION } from '../../model/version.ts';
import type { Focus } from '../../shared/contract.ts';
import type { Project } from '../../shared/project.ts';
import { ok, type Reply, refuse } from '../../shared/reply.ts';
import type {
  GapState,
  JointReport,
  Margin,
  StressReport,
  SweepPoint,
  SweepReport,
} from '../../shared/reports.ts';
import { caseText, troughText } from '../../shared/words.ts';
import { type JobContext, unwatched } from '../jobs/progress.ts';
import { drawnRow, isCaseOf } from './drawn-row.ts';
import { jointFlags } from './flags.ts';
import { casesInFocus } from './focus.ts';
import { describeJoint, modeLabel } from './labels.ts';
import { degrees, type Governing, governingModes, radians, toMargin } from './margins.ts';
import type { ResolvedCase, ResolvedJoint } from './resolve.ts';
import { edgeMomentOf, ledgersOf, mapOf } from './stress-extras.ts';
import { figureFlags } from './validity.ts';

export const STATIONS = 161;

/** As a list of gap states is read: from thin to thick, then the sides. */
const IN_ORDER: readonly GapState[] = ['min', 'nominal', 'max', 'thin-side', 'thick-side'];

const nameOf = (one: ResolvedCase | undefined): string =>
  one ? caseText(one.loadCase.name, one.condition?.name ?? null) : '';

/** @param rows the governing rows of the joint; asked for only where the focus names no case */
export function stressOf(
  project: Project,
  resolved: ResolvedJoint,
  focus: Focus,
  rows: () => readonly Governing[],
): Reply<StressReport | null> {
  const { cases, input, adhesive, joint } = resolved;
  if (cases.length === 0 && focus.caseId === undefined) return ok(null);
  const there = casesInFocus(project, resolved, focus);
  if (!there.ok) return there;
  const { settings } = project;
  const row = drawnRow(resolved, settings, focus, there.value, rows);
  const found = there.value.find((one) => row && isCaseOf(one, row)) ?? there.value[0]!;
  const states = gapStates(input);
  const wanted = focus.gapState ?? row?.result.gapState ?? 'nominal';
  const gapState = states.includes(wanted) ? wanted : 'nominal';
  const theta = focus.theta === undefined ? (row?.result.theta ?? 0) : radians(focus.theta);
  const loadFactor = focus.loadFactor ?? 1;
  const state = jointState(input, adhesive, found.input, gapState, settings);
  const curves = stressCurves(
    state,
    theta,
    loadFactor,
    settings.adherendShear,
    focus.stations ?? STATIONS,
  );
  const layered = layeredCurves(state, theta, loadFactor, curves.x);
  const flags = figureFlags(state, theta, [
    ...curves.bonds.map(({ peak }) => ({ like: 'adhesive-yield' as const, x: peak.x })),
    ...layered.map(({ peak }) => ({ like: 'adhesive-peel' as const, x: peak.x })),
  ]);
  if (!curves.carried) {
    flags.push({
      code: 'not-carried',
      message:
        curves.capacity <= 0
          ? 'Temperature alone takes the bond to its ultimate strain: the curve shows it without load.'
          : `The bond carries ${curves.capacity.toFixed(3)} times this load, not ${loadFactor}: the curve shows the most it carries.`,
    });
  }
  return ok({
    jointId: joint.id,
    caseId: found.loadCase.id,
    conditionId: found.condition?.id ?? null,
    conditionName: found.condition?.name ?? null,
    gapState,
    gapStates: IN_ORDER.filter((one) => states.includes(one)),
    temperature: found.input.temperature,
    moisture: found.input.moisture,
    theta: degrees(theta),
    loadFactor,
    carried: curves.carried,
    // Without load there is no factor; JSON has no infinity.
    capacity: Number.isFinite(curves.capacity) ? curves.capacity : 0,
    x: curves.x,
    bonds: curves.bonds.map((bond, j) => ({ ...bond, layered: layered[j]! })),
    adherends: curves.walls,
    trough: curves.trough,
    ledgers: ledgersOf(state, settings.factors.fitting),
    edgeMoment: edgeMomentOf(state, settings, loadFactor),
    map: focus.map === undefined ? null : mapOf(state, loadFactor, focus.map),
    flags,
  });
}

/** For the trough's margin: how much of the bond stays elastic and at rest at the asked load. */
function troughOf(row: Governing, adherendShear: boolean): Pick<Margin, 'remark' | 'trough'> {
  const { state, result } = row;
  const { trough, carried } = stressCurves(state, result.theta, result.asked, adherendShear, 2);
  if (!carried) return { remark: 'the bond fails before this load' };
  const { elasticLength: elastic, restLength } = trough;
  const made = { elastic, rest: restLength };
  return { remark: troughText(made), trough: made };
}

export function analyse(
  project: Project,
  resolved: ResolvedJoint,
  focus: Focus,
  { progress }: JobContext = unwatched,
): Reply<JointReport> {
  const { settings } = project;
  const total = resolved.cases.length * gapStates(resolved.input).length;
  let done = 0;
  const rows = governingModes(resolved, settings, false, undefined, () => progress(++done, total));
  const stress = stressOf(project, resolved, focus, () => rows);
  if (!stress.ok) return stress;
  return ok({
    jointId: resolved.joint.id,
    description: describeJoint(resolved.joint),
    targetMargin: settings.targetMargin,
    margins: rows.map((row) => {
      const told =
        row.result.mode === 'durability-trough' ? troughOf(row, settings.adherendShear) : null;
      const margin = toMargin(row, resolved, settings.targetMargin, told?.remark ?? '');
      // Where another remark weighs more, that of the trough is not told.
      return told?.trough && margin.remark === told.remark
        ? { ...margin, trough: told.trough }
        : margin;
    }),
    stress: stress.value,
    flags: jointFlags(resolved),
    modelVersion: MODEL_VERSION,
  });
}

/** Even steps; with a plateau inside, two thirds of them up to a little past it, where the curve bends. */
function spread(from: number, to: number, count: number, plateau: number | null): number[] {
  const bend = plateau === null ? to : plateau * 1.25;
  const even = (a: number, b: number, steps: number): number[] =>
    Array.from({ length: steps }, (_v, i) => a + ((b - a) * i) / steps);
  if (bend <= from || bend >= to || count < 6) return [...even(from, to, count - 1), to];
  const dense = Math.round((count - 1) * (2 / 3));
  return [...even(from, bend, dense), ...even(bend, to, count - 1 - dense), to];
}

export interface SweepRange {
  readonly from?: number | undefined;
  readonly to?: number | undefined;
  readonly points?: number | undefined;
}

/** Overlaps that the search for the plateau looks at, about: for the progress alone. */
const PLATEAU_STEPS = 16;

export function sweep(
  project: Project,
  resolved: ResolvedJoint,
  range: SweepRange,
  { progress }: JobContext = unwatched,
): Reply<SweepReport> {
  const { input: joint, adhesive } = resolved;
  const question = {
    joint,
    adhesive,
    cases: resolved.cases.map(({ input }) => input),
    settings: project.settings,
  };
  if (question.cases.length === 0) {
    return refuse(
      'bad-input',
      `joints.${resolved.index}.loads`,
      `The joint "${resolved.joint.name}" has no load case: give it one to sweep its overlap.`,
    );
  }
  const count = range.points ?? 33;
  const total = PLATEAU_STEPS + count;
  let looked = 0;
  progress(0, total, 'plateau');
  const plateau = findPlateau(question, () => {
    looked = Math.min(looked + 1, PLATEAU_STEPS);
    progress(looked, total, 'plateau');
  });
  const reach = Math.max(plateau.overlap ?? 0, joint.overlap);
  const from = range.from ?? SHORTEST_OVERLAP + 1;
  const to = range.to ?? Math.min(LONGEST_OVERLAP, Math.ceil((reach * 1.6) / 10) * 10);
  if (to <= from) return refuse('bad-request', '', 'A sweep must end beyond where it starts.');
  const points: SweepPoint[] = [];
  for (const [i, overlap] of spread(from, to, count, plateau.overlap).entries()) {
    progress(PLATEAU_STEPS + i, total, `overlap ${overlap.toFixed(1)} mm`);
    const { bond, all } = strengthAt(question, overlap);
    if (!Number.isFinite(bond) || !Number.isFinite(all.ratio)) continue;
    const mode = all.mode ? modeLabel(all.mode.mode, all.mode.part) : '';
    points.push({ overlap, bond, all: all.ratio, mode });
  }
  return ok({
    jointId: resolved.joint.id,
    points,
    plateau: plateau.overlap,
    plateauStrength: Number.isFinite(plateau.strength.ratio) ? plateau.strength.ratio : 0,
    caseName: nameOf(resolved.cases[plateau.strength.caseIndex]),
    flags: [],
  });
}
