/** A joint as a question about one of its sizes. */
import { ModelError } from '../../../model/errors.ts';
import type { GoverningRow } from '../../../model/margins/governing.ts';
import { millimetres, say } from '../../../model/said.ts';
import { type Judge, makeJudge } from '../../../model/sizing/judge.ts';
import type { Joint, Project } from '../../../shared/project.ts';
import { type QuantityName, quantities } from '../../../shared/quantities.ts';
import type { Margin } from '../../../shared/reports.ts';
import { sleeveWalls, type Vary, variedValue, withValue } from '../../../shared/vary-joint.ts';
import { questionOf, toMargin, withCase } from '../margins.ts';
import { type ResolvedJoint, resolveAlone } from '../resolve.ts';

export const quantityOf: Readonly<Record<Vary, QuantityName>> = {
  overlap: 'overlap',
  'sleeve-wall': 'wall',
  'tube-wall': 'wall',
  gap: 'gap',
};

/** Gaps are read in smaller units. */
export const measureOf = (vary: Vary): 'length' | 'small' => (vary === 'gap' ? 'small' : 'length');

/** What is asked of one joint: which of its sizes, how much margin, in which steps. */
export interface SizingContext {
  readonly project: Project;
  readonly joint: Joint;
  /** Place of the joint in the project, for what is refused about it. */
  readonly index: number;
  readonly vary: Vary;
  readonly target: number;
  readonly step: number;
  readonly onAnalysis?: () => void;
}

export interface JointJudge extends Judge {
  joint(multiple: number): Joint;
  margin(row: GoverningRow, multiple: number): Margin;
}

export function judgeJoint(context: SizingContext): JointJudge {
  const { project, joint, index, vary, target, step, onAnalysis } = context;
  const resolved = (value: number): ResolvedJoint =>
    resolveAlone(project, varied(joint, vary, value), index);
  const judge = makeJudge({
    at: (value) => questionOf(resolved(value), project.settings),
    target,
    step,
    ...(onAnalysis ? { onAnalysis } : {}),
  });
  return {
    ...judge,
    joint: (multiple) => varied(joint, vary, judge.value(multiple)),
    margin(row, multiple) {
      const at = resolved(judge.value(multiple));
      return toMargin(withCase(row, at), at, target, '');
    },
  };
}

/** @throws ModelError where the joint would leave what a project file may hold */
function varied(joint: Joint, vary: Vary, value: number): Joint {
  const changed = withValue(joint, vary, value);
  const { min, max } = quantities[quantityOf[vary]];
  const walls = sleeveWalls(changed).flatMap(({ atRoot, atMouth }) => [atRoot, atMouth]);
  const { wall } = quantities;
  const fits =
    variedValue(changed, vary) >= min &&
    variedValue(changed, vary) <= max &&
    walls.every((size) => size >= wall.min && size <= wall.max);
  if (fits) return changed;
  throw new ModelError(
    '',
    say`With ${millimetres(value, undefined, measureOf(vary))} a size of the joint leaves what a project may hold: change the range that is looked at.`,
  );
}
