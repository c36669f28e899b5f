/** Every joint under every load case: the lowest margin over gap states and surroundings. */
import type { ModelSettings } from '../../model/joint/types.ts';
import { damageRow } from '../../model/margins/cyclic-damage.ts';
import type { GoverningRow } from '../../model/margins/governing.ts';
import { byCorner, cornerOf, lowerOf, lowestCorner } from '../../model/margins/lowest.ts';
import { type Question, statesOf } from '../../model/margins/over-states.ts';
import { severestFirst } from '../../model/margins/severest-first.ts';
import { MODEL_VERSION } from '../../model/version.ts';
import { isFlat } from '../../shared/convert-lap.ts';
import type { Joint, Project } from '../../shared/project.ts';
import { ok, type Reply } from '../../shared/reply.ts';
import type {
  CornerCell,
  CornerMargin,
  CornersReport,
  JointCorners,
} from '../../shared/reports.ts';
import { type JobContext, unwatched } from '../jobs/progress.ts';
import { mergeShares } from '../jobs/shares.ts';
import { guarded } from './guarded.ts';
import { countStates, describeJoint } from './labels.ts';
import { type Governing, questionOf, toMargin, withCase } from './margins.ts';
import { type ResolvedJoint, resolveJoint } from './resolve.ts';

/**
 * The lowest margin of a joint over all its corners: the lowest of its cells, and found sooner.
 * @param judged told after each corner how many are judged, of how many
 */
export function lowestOfJoint(
  resolved: ResolvedJoint,
  settings: ModelSettings,
  judged?: (corners: number, of: number) => void,
): Governing | null {
  const question = questionOf(resolved, settings);
  const lowest = lowestCorner(question, statesOf(question), {
    groupOf: (caseIndex) => resolved.cases[caseIndex]!.loadCase,
    ...(judged ? { judged } : {}),
  });
  const row = lowerOfAll(lowest, question);
  return row && withCase(row, resolved);
}

/** The damage of all cyclic cases together is of no corner, but can be the lowest of the joint. */
function lowerOfAll(lowest: GoverningRow | null, question: Question): GoverningRow | null {
  const damage = damageRow(question);
  return damage && (!lowest || damage.result.margin < lowest.result.margin) ? damage : lowest;
}

interface Computed {
  readonly cells: readonly CornerCell[];
  readonly lowest: CornerMargin | null;
  readonly states: number;
  readonly corners: readonly CornerMargin[] | null;
}

/**
 * @param list whether every corner is asked for, not only the lowest of each cell
 * @param told how many cells are done, with the part of the one that is at work, and its load case
 */
function cellsOf(
  resolved: ResolvedJoint,
  { settings }: Project,
  list: boolean,
  told: (cells: number, caseName: string) => void,
): Computed {
  const question = questionOf(resolved, settings);
  const brief = (row: GoverningRow): CornerMargin =>
    briefly(toMargin(withCase(row, resolved), resolved, settings.targetMargin, ''));
  const corners: GoverningRow[] = [];
  const cells = resolved.joint.loads.map(({ case: caseId }, i): CornerCell => {
    const names = statesOf(question).filter(
      ({ caseIndex }) => resolved.cases[caseIndex]!.loadCase.id === caseId,
    );
    const { name: caseName } = resolved.cases[names[0]!.caseIndex]!.loadCase;
    const judged = (done: number): void => told(i + done / names.length, caseName);
    judged(0);
    let lowest: GoverningRow | null = null;
    if (list) {
      for (const [k, name] of severestFirst(question, names).entries()) {
        const corner = cornerOf(question, name);
        judged(k + 1);
        if (!corner) continue;
        corners.push(corner);
        lowest = lowest ? lowerOf(lowest, corner) : corner;
      }
    } else {
      lowest = lowestCorner(question, names, { judged });
    }
    return { caseId, lowest: lowest && brief(lowest), states: names.length };
  });
  const damage = damageRow(question);
  const lowest = cells.reduce<CornerMargin | null>(
    (low, cell) => (cell.lowest && (!low || cell.lowest.margin < low.margin) ? cell.lowest : low),
    null,
  );
  const ofAll = damage && brief(damage);
  return {
    cells,
    lowest: ofAll && (!lowest || ofAll.margin < lowest.margin) ? ofAll : lowest,
    states: cells.reduce((sum, cell) => sum + cell.states, 0),
    corners: list ? corners.sort(byCorner).map(brief) : null,
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

export interface CornersQuestion {
  /** This joint alone, and all its corners. */
  readonly jointId?: string | undefined;
}

/** Progress counts cells; a joint without a load case is a step too. */
const stepsOf = ({ loads }: Joint): number => Math.max(1, loads.length);

const countLooks = (joints: readonly JointCorners[]): number =>
  joints.reduce((sum, { states }) => sum + states, 0);

/**
 * @param jointId must be one of the project's
 * @param context with a `share`, only every so manyth joint is judged: `mergeCorners` puts them together
 */
export function corners(
  project: Project,
  { jointId }: CornersQuestion,
  context: JobContext = unwatched,
): CornersReport {
  const { progress, share = { part: 0, of: 1 } } = context;
  const wanted = [...project.joints.entries()].filter(
    ([, { id }]) => jointId === undefined || id === jointId,
  );
  const total = wanted.reduce((sum, [, joint]) => sum + stepsOf(joint), 0);
  let done = 0;
  let listed: readonly CornerMargin[] | null = null;
  const joints: JointCorners[] = [];
  for (const [place, [index, joint]] of wanted.entries()) {
    if (place % share.of !== share.part) continue;
    const told = (cells: number, caseName: string): void =>
      progress(done + cells, total, `${joint.name}, ${caseName}`);
    const reply = guarded(index, () =>
      ok(cellsOf(resolveJoint(project, index), project, jointId !== undefined, told)),
    );
    done += stepsOf(joint);
    progress(done, total, joint.name);
    const computed = reply.ok ? reply.value : { cells: [], lowest: null, states: 0, corners: null };
    listed = computed.corners;
    joints.push({
      jointId: joint.id,
      name: joint.name,
      description: describeJoint(joint),
      flat: isFlat(joint),
      cells: computed.cells,
      lowest: computed.lowest,
      states: computed.states,
      refused: reply.ok ? null : reply.error,
    });
  }
  const acting = new Set(wanted.flatMap(([, { loads }]) => loads.map((load) => load.case)));
  return {
    project: project.name,
    targetMargin: project.settings.targetMargin,
    cases: project.loadCases.flatMap(({ id, name }) =>
      acting.has(id) ? [{ caseId: id, name }] : [],
    ),
    joints,
    counts: countStates(joints),
    states: countLooks(joints),
    corners: listed,
    modelVersion: MODEL_VERSION,
  };
}

/** The report of the whole project from those of its shares, in their order. */
export const mergeCorners = (replies: readonly Reply<CornersReport>[]): Reply<CornersReport> =>
  mergeShares(replies, (joints: readonly JointCorners[]) => ({
    counts: countStates(joints),
    states: countLooks(joints),
  }));
