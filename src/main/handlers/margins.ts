/** All margins of a joint: every case, every gap state, the worst of each mode and part kept. */
import { gapStates } from '../../model/joint/assembly.ts';
import type { GapState, ModelSettings } from '../../model/joint/types.ts';
import { STRIP_FACES, TUBE_FACES } from '../../model/laminate/symmetry.ts';
import { allModes } from '../../model/margins/all-modes.ts';
import type { Mode } from '../../model/margins/asked.ts';
import { WALL_MODES } from '../../model/margins/asked.ts';
import type { ModeResult } from '../../model/margins/result.ts';
import { type JointState, jointState } from '../../model/margins/state.ts';
import { refineStrength } from '../../model/margins/strength-clocking.ts';
import type { LoadCase } from '../../shared/project.ts';
import type { Margin } from '../../shared/reports.ts';
import { signed } from '../../shared/words.ts';
import { marginState, modeLabel } from './labels.ts';
import type { ResolvedJoint } from './resolve.ts';
import { marginFlags } from './validity.ts';

export interface Governing {
  readonly result: ModeResult;
  readonly loadCase: LoadCase;
  readonly state: JointState;
}

/** Rows of the margin list: one for each mode of the bonds, one for each mode and wall. */
const rowOf = ({ mode, part, x }: ModeResult, overlap: number): string => {
  if (!WALL_MODES.has(mode)) return mode;
  // First ply has a row at each end of the tube.
  const half = mode === 'first-ply' && x < overlap / 2 ? 'root' : '';
  return `${mode} ${part} ${half}`;
};

/**
 * The worst of each mode and part, lowest margin first.
 * @param onlyLowest when just the first row matters: searches that cannot change it are left out
 * @param only the modes to compute; all when left out
 * @param judged told after each case how many are judged, of how many
 */
export function governingModes(
  resolved: ResolvedJoint,
  settings: ModelSettings,
  onlyLowest = false,
  only?: ReadonlySet<Mode>,
  judged?: (cases: number, of: number) => void,
): Governing[] {
  const rows = new Map<string, Governing>();
  let lowest = Number.POSITIVE_INFINITY;
  for (const [index, { loadCase, input: loadCaseInput }] of resolved.cases.entries()) {
    for (const gapState of gapStates(resolved.input)) {
      const state = jointState(
        resolved.input,
        resolved.adhesive,
        loadCaseInput,
        gapState,
        settings,
      );
      const results = allModes(state, resolved.adhesive, settings.factors, {
        ...(only ? { only } : {}),
        ofInterest: (mode, known) =>
          onlyLowest
            ? Math.min(lowest, known)
            : (rows.get(mode)?.result.margin ?? Number.POSITIVE_INFINITY),
      });
      for (const result of results) {
        lowest = Math.min(lowest, result.margin);
        const row = rowOf(result, resolved.input.overlap);
        const worst = rows.get(row);
        // Equal to rounding: the nominal gap is the plainer name for it.
        const slack = gapState === 'nominal' ? 1e-9 : -1e-9;
        if (!worst || result.margin < worst.result.margin + slack) {
          rows.set(row, { result, loadCase, state });
        }
      }
    }
    judged?.(index + 1, resolved.cases.length);
  }
  const strain = rows.get('adhesive-strain');
  if (strain) {
    const result = refineStrength(strain.state, strain.result);
    rows.set('adhesive-strain', { ...strain, result });
  }
  return [...rows.values()].sort((a, b) => a.result.margin - b.result.margin);
}

export const degrees = (radians: number): number => (radians * 180) / Math.PI;
export const radians = (angle: number): number => (angle * Math.PI) / 180;

function remarkOf({ mode, shearFirst }: ModeResult): string {
  if (shearFirst) return 'the bond fails in shear before';
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

export function toMargin(
  { result, loadCase, state }: Governing,
  resolved: ResolvedJoint,
  target: number,
  remark: string,
): Margin {
  const short = result.margin < target ? ': too short' : '';
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
    gapState: result.gapState satisfies GapState,
    place: result.place,
    x: result.x,
    theta: degrees(result.theta),
    part: result.part,
    typical: typicalBehind(result, resolved),
    remark: remark || flows || plyRemark(result, state.assembly.flat) || remarkOf(result),
    flags: marginFlags(result, state),
  };
}
