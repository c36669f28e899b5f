/** Every joint under every load case: the lowest margin over gap states and surroundings. */
import type { ModelSettings } from '../../model/joint/types.ts';
import type { GoverningRow } from '../../model/margins/governing.ts';
import { cornerOf, lowerOf, lowestCorner } from '../../model/margins/lowest.ts';
import { type StateName, statesOf } from '../../model/margins/over-states.ts';
import { MODEL_VERSION } from '../../model/version.ts';
import { isFlat } from '../../shared/convert-lap.ts';
import type { Project } from '../../shared/project.ts';
import { ok, type Reply, refuse } from '../../shared/reply.ts';
import type {
  CornerCell,
  CornerMargin,
  CornersReport,
  JointCorners,
  MarginState,
} from '../../shared/reports.ts';
import { guarded } from './guarded.ts';
import { describeJoint } from './labels.ts';
import { type Governing, questionOf, toMargin, withCase } from './margins.ts';
import { type ResolvedJoint, resolveJoint, surroundingsOf } from './resolve.ts';

/**
 * The lowest margin of a joint over all its corners: the lowest of its cells, and found sooner.
 * @param look called before each corner
 */
export function lowestOfJoint(
  resolved: ResolvedJoint,
  settings: ModelSettings,
  look?: () => void,
): Governing | null {
  const question = questionOf(resolved, settings);
  const lowest = lowestCorner(question, statesOf(question), {
    groupOf: (caseIndex) => resolved.cases[caseIndex]!.loadCase,
    ...(look ? { look } : {}),
  });
  return lowest && withCase(lowest, resolved);
}

/** Tells how far a long list of corners is, and where. */
type Look = (resolved: ResolvedJoint, name: StateName) => void;

interface Computed {
  readonly cells: readonly CornerCell[];
  readonly lowest: CornerMargin | null;
  readonly states: number;
  readonly corners: readonly CornerMargin[] | null;
}

/** @param list whether every corner is asked for, not only the lowest of each cell */
function cellsOf(
  resolved: ResolvedJoint,
  { settings }: Project,
  list: boolean,
  look: Look,
): Computed {
  const question = questionOf(resolved, settings);
  const brief = (row: GoverningRow): CornerMargin =>
    briefly(toMargin(withCase(row, resolved), resolved, settings.targetMargin, ''));
  const corners: CornerMargin[] = [];
  const cells = resolved.joint.loads.map(({ case: caseId }): CornerCell => {
    const names = statesOf(question).filter(
      ({ caseIndex }) => resolved.cases[caseIndex]!.loadCase.id === caseId,
    );
    let lowest: GoverningRow | null = null;
    if (list) {
      for (const name of names) {
        look(resolved, name);
        const corner = cornerOf(question, name);
        if (!corner) continue;
        corners.push(brief(corner));
        lowest = lowest ? lowerOf(lowest, corner) : corner;
      }
    } else {
      lowest = lowestCorner(question, names, { look: (name) => look(resolved, name) });
    }
    return { caseId, lowest: lowest && brief(lowest), states: names.length };
  });
  const lowest = cells.reduce<CornerMargin | null>(
    (low, cell) => (cell.lowest && (!low || cell.lowest.margin < low.margin) ? cell.lowest : low),
    null,
  );
  return {
    cells,
    lowest,
    states: cells.reduce((sum, cell) => sum + cell.states, 0),
    corners: list ? corners.sort((a, b) => a.margin - b.margin) : null,
  };
}

/** Only what a table shows: a long project has ten thousand cells. */
const briefly = ({
  reached: _reached,
  asked: _asked,
  remark: _remark,
  flags: _flags,
  ...rest
}: ReturnType<typeof toMargin>): CornerMargin => rest;

/** Corners of a joint, without resolving it; gap states are counted when it is. */
const casesOf = (project: Project, index: number): number =>
  project.joints[index]!.loads.reduce((sum, load) => {
    const loadCase = project.loadCases.find(({ id }) => id === load.case)!;
    return sum + surroundingsOf(project, loadCase).length;
  }, 0);

export interface CornersQuestion {
  /** This joint alone, and all its corners. */
  readonly jointId?: string | undefined;
}

export function corners(
  project: Project,
  { jointId }: CornersQuestion,
  { progress }: JobContext = unwatched,
): Reply<CornersReport> {
  const indices = project.joints.flatMap(({ id }, i) =>
    jointId === undefined || id === jointId ? [i] : [],
  );
  if (jointId !== undefined && indices.length === 0) {
    return refuse('not-found', 'joints', noSuchJoint(project, jointId));
  }
  const total = indices.reduce((sum, i) => sum + casesOf(project, i), 0);
  let before = 0;
  let listed: readonly CornerMargin[] | null = null;
  const joints = indices.map((index): JointCorners => {
    const joint = project.joints[index]!;
    const common = {
      jointId: joint.id,
      name: joint.name,
      description: describeJoint(joint),
      flat: isFlat(joint),
    };
    const look: Look = ({ cases }, { caseIndex }) =>
      progress(before + caseIndex, total, `${joint.name}, ${cases[caseIndex]!.loadCase.name}`);
    const reply = guarded(index, () =>
      ok(cellsOf(resolveJoint(project, index), project, jointId !== undefined, look)),
    );
    before += casesOf(project, index);
    progress(before, total, joint.name);
    if (!reply.ok) return { ...common, cells: [], lowest: null, states: 0, refused: reply.error };
    const { corners: all, ...computed } = reply.value;
    listed = all;
    return { ...common, ...computed, refused: null };
  });
  const counts: Record<MarginState, number> = { fails: 0, low: 0, holds: 0 };
  for (const { lowest } of joints) if (lowest) counts[lowest.state]++;
  const acting = new Set(indices.flatMap((i) => project.joints[i]!.loads.map((load) => load.case)));
  return ok({
    project: project.name,
    targetMargin: project.settings.targetMargin,
    cases: project.loadCases.flatMap(({ id, name }) =>
      acting.has(id) ? [{ caseId: id, name }] : [],
    ),
    joints,
    counts,
    states: joints.reduce((sum, { states }) => sum + states, 0),
    corners: listed,
    modelVersion: MODEL_VERSION,
  });
}
