/** All margins of a joint: every case, every gap state, the worst of each mode and part kept. */

import type { GapState, ModelSettings } from '../../model/joint/types.ts';
import { STRIP_FACES, TUBE_FACES } from '../../model/laminate/symmetry.ts';
import type { Mode } from '../../model/margins/asked.ts';
import { WALL_MODES } from '../../model/margins/asked.ts';
import { damageAsked } from '../../model/margins/cyclic-damage.ts';
import { type GoverningRow, governingRows } from '../../model/margins/governing.ts';
import type { Question } from '../../model/margins/over-states.ts';
import type { ModeResult } from '../../model/margins/result.ts';
import type { JointState } from '../../model/margins/state.ts';
import { type Said, say } from '../../model/said.ts';
import type { BondMode, Condition, LoadCase } from '../../shared/project.ts';
import type { Margin } from '../../shared/reports.ts';
import { bareWords } from '../../shared/rests-on.ts';
import { signed } from '../../shared/words.ts';
import { foundationOf, type Surroundings } from './foundation.ts';
import { marginState, modeLabel } from './labels.ts';
import type { ResolvedAdhesive, ResolvedJoint } from './resolve.ts';
import { marginFlags } from './validity.ts';

export interface Governing {
  readonly result: ModeResult;
  readonly loadCase: LoadCase;
  readonly condition: Condition | null;
  readonly state: JointState;
}

/**
 * The worst of each mode and part, lowest margin first.
 * @param onlyLowest when just the first row matters: searches that cannot change it are left out
 * @param only the modes to compute; all when left out
 * @param solved told after each case in each gap state
 */
export const governingModes = (
  resolved: ResolvedJoint,
  settings: ModelSettings,
  onlyLowest = false,
  only?: ReadonlySet<Mode>,
  solved: () => void = () => undefined,
): Governing[] =>
  governingRows(questionOf(resolved, settings), {
    onlyLowest,
    ...(only ? { only } : {}),
    enough: () => {
      solved();
      return false;
    },
  }).map((row) => withCase(row, resolved));

/** What the model is asked about a joint of the project. */
export const questionOf = (
  { input: joint, adhesive, cases }: ResolvedJoint,
  settings: ModelSettings,
): Question => ({ joint, adhesive, cases: cases.map(({ input }) => input), settings });

export const withCase = (
  { result, state, caseIndex }: GoverningRow,
  { cases }: ResolvedJoint,
): Governing => {
  const { loadCase, condition } = cases[caseIndex]!;
  return { result, state, loadCase, condition };
};

export const degrees = (radians: number): number => (radians * 180) / Math.PI;
export const radians = (angle: number): number => (angle * Math.PI) / 180;

/** What each cyclic case takes of the life under the loads that are asked for. */
function damageRemark({ damage }: ModeResult, { cases }: ResolvedJoint): string {
  if (!damage) return '';
  const sum = damageAsked(damage);
  if (!sum) return 'a case is above yield';
  const parts = damage.map(
    ({ caseIndex }, i) => `${cases[caseIndex]!.loadCase.name} ${damageText(sum.shares[i]!)}`,
  );
  return `damage ${damageText(sum.sum)} at the asked loads: ${parts.join(', ')}`;
}

const damageText = (sum: number): string =>
  sum >= 1000 || (sum > 0 && sum < 0.001)
    ? sum.toExponential(1)
    : String(Number(sum.toPrecision(3)));

function remarkOf({ mode, shearFirst, end }: ModeResult): string {
  if (shearFirst) return 'the bond fails in shear before';
  if (end !== undefined) return 'at the reversed end of the cycle';
  switch (mode) {
    case 'adhesive-yield':
      return 'first yield of the bond';
    case 'peel-shear':
      return 'first yield with peel';
    case 'adhesive-peel':
    case 'interlaminar':
      return 'shear capped at yield';
    default:
      return '';
  }
}

/** Which ply fails first, and what both criteria say. */
function plyRemark({ plies, asked }: ModeResult, flat: boolean): string {
  if (!plies) return '';
  const margin = (factor: number): string =>
    Number.isFinite(factor) ? signed(factor / asked - 1) : 'none';
  const [first] = flat ? STRIP_FACES : TUBE_FACES;
  const angle = `${plies.angle}°`.replace('-', '−');
  return `ply ${plies.ply + 1} from the ${first}, ${angle}: Tsai-Wu ${margin(plies.tsaiWu)}, maximum strain ${margin(plies.maximumStrain)}`;
}

/** Between plies the laminate's strength stands behind the figure; elsewhere the part's own. */
function typicalBehind({ mode, part }: ModeResult, { typical }: ResolvedJoint): boolean {
  if (WALL_MODES.has(mode)) return typical.has(part);
  return typical.has('adhesive') || (mode === 'interlaminar' && typical.size > 0);
}

const PEEL: ReadonlySet<Mode> = new Set<Mode>(['adhesive-peel', 'peel-shear', 'fracture']);
/** What coupons tell of, by the mode in which the model has them fail. */
const toldBy = (mode: BondMode | undefined): 'shear' | 'peel' | undefined =>
  mode && (mode === 'adhesive-strain' ? 'shear' : 'peel');

/** What the strength of the bond rests on in these surroundings; nothing is said of walls. */
export function restsOnOf(
  { mode }: Pick<ModeResult, 'mode'>,
  resolved: ResolvedAdhesive,
  surroundings: Surroundings,
): Said {
  if (WALL_MODES.has(mode) || mode === 'interlaminar' || mode === 'durability-trough') {
    return { message: '' };
  }
  const { words, allowables } = foundationOf(resolved, surroundings);
  const { fatigue, fracture } = resolved.sources;
  // What the margin hangs on beside the strength of the bond has a source of its own.
  if ((mode === 'cyclic-shear' || mode === 'cyclic-damage') && fatigue) {
    return say`yield: ${words}; S-N line: ${bareWords[fatigue.kind]}`;
  }
  if (mode === 'fracture' && fracture) {
    const own = `fracture energies: ${bareWords[fracture.kind]}`;
    return allowables.length > 0 ? say`${own}; knocked down by ${words}` : { message: own };
  }
  const [told] = allowables.map(({ mode: tested }) => toldBy(tested));
  const own = PEEL.has(mode) ? 'peel' : 'shear';
  return told === undefined || told === own
    ? words
    : say`${words}, of coupons that tell of ${told}`;
}

export function toMargin(
  { result, loadCase, condition, state }: Governing,
  resolved: ResolvedJoint,
  target: number,
  remark: string,
): Margin {
  const short = result.margin < target ? ': too short' : '';
  const rests = restsOnOf(result, resolved, state.loadCase);
  const flows = result.wholeBondFlows ? `fails when the whole bond flows${short}` : '';
  return {
    mode: result.mode,
    label: modeLabel(result.mode, result.part, result.x < resolved.input.overlap / 2),
    margin: result.margin,
    state: marginState(result.margin, target),
    reached: result.reached,
    asked: result.asked,
    caseId: loadCase.id,
    caseName: loadCase.name,
    conditionId: condition?.id ?? null,
    conditionName: condition?.name ?? null,
    gapState: result.gapState satisfies GapState,
    place: result.place,
    x: result.x,
    theta: degrees(result.theta),
    part: result.part,
    typical: typicalBehind(result, resolved),
    restsOn: rests.message,
    ...(rests.figures ? { restsOnFigures: rests.figures } : {}),
    remark:
      result.reached <= 0
        ? 'reached by temperature alone, before any load'
        : remark ||
          flows ||
          plyRemark(result, state.assembly.flat) ||
          damageRemark(result, resolved) ||
          remarkOf(result),
    flags: marginFlags(result, state),
  };
}
