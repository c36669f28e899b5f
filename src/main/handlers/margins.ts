/** All margins of a joint: every case, every gap state, the worst of each mode and part kept. */
import { gapStates } from '../../model/joint/assembly.ts';
import type { GapState, ModelSettings } from '../../model/joint/types.ts';
import { adhesiveModes, type ModeResult, wallModes } from '../../model/margins/modes.ts';
import { type JointState, jointState } from '../../model/margins/state.ts';
import { refineStrength } from '../../model/margins/strength-clocking.ts';
import type { LoadCase } from '../../shared/project.ts';
import type { Margin } from '../../shared/reports.ts';
import { marginState, modeLabel } from './labels.ts';
import type { ResolvedJoint } from './resolve.ts';

export interface Governing {
  readonly result: ModeResult;
  readonly loadCase: LoadCase;
  readonly state: JointState;
}

const isAdhesive = (result: ModeResult): boolean =>
  !result.mode.startsWith('metal') && result.mode !== 'laminate-strength';

const rowOf = (result: ModeResult): string =>
  isAdhesive(result) ? result.mode : `${result.mode} ${result.part}`;

/**
 * The worst of each mode and part, lowest margin first.
 * @param onlyLowest when just the first row matters: searches that cannot change it are left out
 */
export function governingModes(
  resolved: ResolvedJoint,
  settings: ModelSettings,
  onlyLowest = false,
): Governing[] {
  const rows = new Map<string, Governing>();
  let lowest = Number.POSITIVE_INFINITY;
  for (const { loadCase, input: loadCaseInput } of resolved.cases) {
    for (const gapState of gapStates(resolved.input)) {
      const state = jointState(
        resolved.input,
        resolved.adhesive,
        loadCaseInput,
        gapState,
        settings,
      );
      const walls = wallModes(state, settings.factors);
      for (const { margin } of walls) lowest = Math.min(lowest, margin);
      const results = [
        ...adhesiveModes(state, resolved.adhesive, settings.factors, {
          troughOfInterest: onlyLowest
            ? lowest
            : (rows.get('durability-trough')?.result.margin ?? Number.POSITIVE_INFINITY),
        }),
        ...walls,
      ];
      for (const result of results) {
        lowest = Math.min(lowest, result.margin);
        const row = rowOf(result);
        const worst = rows.get(row);
        // Equal to rounding: the nominal gap is the plainer name for it.
        const slack = gapState === 'nominal' ? 1e-9 : -1e-9;
        if (!worst || result.margin < worst.result.margin + slack) {
          rows.set(row, { result, loadCase, state });
        }
      }
    }
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

const remarks: Readonly<Partial<Record<ModeResult['mode'], string>>> = {
  'adhesive-yield': 'first yield of the bond',
};

export function toMargin(
  { result, loadCase }: Governing,
  resolved: ResolvedJoint,
  target: number,
  remark: string,
): Margin {
  const adhesive = isAdhesive(result);
  const short = result.margin < target ? ': too short' : '';
  const flows = result.wholeBondFlows ? `fails when the whole bond flows${short}` : '';
  return {
    mode: result.mode,
    label: modeLabel(result.mode, result.part),
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
    typical: adhesive ? resolved.typical.has('adhesive') : resolved.typical.has(result.part),
    remark: remark || flows || (remarks[result.mode] ?? ''),
  };
}
