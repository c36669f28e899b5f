/**
 * A joint with the other lap, made equal to it in overlap, in added mass or in its lowest margin.
 *
 * Equal mass keeps the overlap and scales the sleeve walls, which is what a designer would change. Equal
 * margin keeps the walls and finds the overlap: the shortest, in steps, that reaches the margin.
 */
import { ModelError } from '../../model/errors.ts';
import { findRoot } from '../../model/numerics/root.ts';
import {
  bare,
  millimetres,
  type Said,
  type SaidFigure,
  saidTogether,
  say,
} from '../../model/said.ts';
import { LONGEST_OVERLAP } from '../../model/sweep/overlap-sweep.ts';
import {
  conversionWords,
  named,
  type Plies,
  pliesOf,
  scaleWalls,
  wallOutOfRange,
  withLap,
} from '../../shared/lap-variant.ts';
import type { Joint, Project } from '../../shared/project.ts';
import { quantities } from '../../shared/quantities.ts';
import { ok, type Reply, refuse } from '../../shared/reply.ts';
import type { Equal, VariantReport } from '../../shared/reports-compare.ts';
import { stepOf } from '../../shared/usual-steps.ts';
import { namedWalls } from '../../shared/vary-joint.ts';
import { figure, lengthText, signed } from '../../shared/words.ts';
import { type JobContext, unwatched } from '../jobs/progress.ts';
import { modeLabel } from './labels.ts';
import { governingModes } from './margins.ts';
import { massOf } from './mass.ts';
import { type ResolvedJoint, resolveAlone } from './resolve.ts';
import { judgeJoint } from './sizing/context.ts';
import { rangeOf } from './sizing/range.ts';
import { shortestOverlap } from './sizing/size-joint.ts';

export function variant(
  project: Project,
  resolved: ResolvedJoint,
  { lap, equal }: { readonly lap: Plies; readonly equal: Equal },
  seen: JobContext = unwatched,
): Reply<VariantReport> {
  const { joint, index } = resolved;
  if (pliesOf(joint) === lap) {
    return refuse(
      'bad-input',
      `joints.${index}.type`,
      `The joint "${joint.name}" is a ${lap} lap already: compare it with the other one.`,
    );
  }
  const plain = named(
    withLap(joint, lap),
    `${joint.id.slice(0, 44)}-${lap}-${equal}`,
    `${joint.name}, ${lap} lap at equal ${equal}`,
  );
  const changed: Said[] = [{ message: conversionWords(joint) }];
  // What cannot be assembled at all is refused before anything is searched.
  try {
    massOf(project, resolveAlone(project, plain));
  } catch (error) {
    if (!(error instanceof ModelError)) throw error;
    // The wall that does not fit is not there yet: the lap is what was asked for.
    return refuse('bad-input', `joints.${index}.type`, error.said);
  }
  switch (equal) {
    case 'overlap':
      return ok({ of: joint.id, joint: plain, changed, equal: null });
    case 'mass':
      return atEqualMass(project, resolved, plain, changed);
    case 'margin':
      return atEqualMargin(project, resolved, plain, changed, seen);
  }
}

const thicknessWords = (joint: Joint): Said =>
  saidTogether(
    namedWalls(joint).map(([key, { atRoot, atMouth }]) => {
      const name = key.replace('Strap', ' strap');
      const mouth = millimetres(atMouth);
      return atRoot === atMouth
        ? say`${name} ${mouth}`
        : say`${name} ${bare(millimetres(atRoot))} to ${mouth}`;
    }),
    ', ',
  );

const grams = (value: number): SaidFigure => ({
  as: `${figure(value)} g`,
  measure: 'mass',
  value,
});
const length = (value: number): SaidFigure => ({
  as: lengthText(value),
  measure: 'length',
  value,
});

function atEqualMass(
  project: Project,
  resolved: ResolvedJoint,
  plain: Joint,
  changed: readonly Said[],
): Reply<VariantReport> {
  const { joint, index } = resolved;
  const own = massOf(project, resolved);
  const other = massOf(project, resolveAlone(project, plain));
  if (own.added === null || other.added === null) {
    const names = [...new Set([...own.without, ...other.without])].join('", "');
    return refuse(
      'bad-input',
      'adherends',
      `The mass is not known: give a density to "${names}", or compare at equal overlap.`,
    );
  }
  const target = own.added;
  const adhesive = other.bonds.reduce((sum, { mass }) => sum + (mass ?? 0), 0);
  const tooMuch = (what: Said): Reply<never> =>
    refuse(
      'bad-input',
      `joints.${index}`,
      say`A ${pliesOf(plain)} lap of ${grams(target)} at this overlap is not to be had: ${what}.`,
    );
  if (adhesive >= target) {
    return tooMuch(say`its adhesive alone weighs ${grams(adhesive)}`);
  }
  const weighed = (factor: number): number =>
    massOf(project, resolveAlone(project, scaleWalls(plain, factor))).added! - target;
  // The walls of a spigot grow inward and may fill the bore before they weigh enough.
  let heavy = 1;
  try {
    while (weighed(heavy) < 0) heavy *= 1.5;
  } catch (error) {
    if (error instanceof ModelError) return tooMuch(error.said);
    throw error;
  }
  const factor = findRoot(weighed, 0, heavy, 1e-7);
  const made = scaleWalls(plain, factor);
  const wrong = wallOutOfRange(made);
  if (wrong) {
    const { min, max } = quantities.wall;
    return tooMuch(
      say`its ${wrong.key.split('.')[0]!} would be ${millimetres(wrong.value, 3)} thick, and a wall is ${bare(millimetres(min))} to ${millimetres(max)}`,
    );
  }
  const added = massOf(project, resolveAlone(project, made)).added!;
  return ok({
    of: joint.id,
    joint: made,
    changed: [
      ...changed,
      say`walls × ${Number(factor.toPrecision(4))}, so that walls and adhesive weigh the same ${grams(target)}: ${thicknessWords(made)}`,
      { message: 'the overlap is kept' },
    ],
    equal: { what: 'mass', of: target, variant: added },
  });
}

function atEqualMargin(
  project: Project,
  resolved: ResolvedJoint,
  plain: Joint,
  changed: readonly Said[],
  seen: JobContext,
): Reply<VariantReport> {
  const { joint, index } = resolved;
  const { settings } = project;
  const [own] = governingModes(resolved, settings, true);
  if (!own) {
    return refuse(
      'bad-input',
      `joints.${index}.loads`,
      `The joint "${joint.name}" has no margin to be equal to: give it a load case.`,
    );
  }
  const target = own.result.margin;
  const step = stepOf(project.settings, 'overlap');
  const range = rangeOf(project, resolveAlone(project, plain, index), 'overlap', step, {});
  if (!range.ok) return range;
  let looked = 0;
  const judge = judgeJoint({
    project,
    joint: plain,
    index,
    vary: 'overlap',
    target,
    step,
    onAnalysis: () => seen.progress(Math.min(looked++, LOOKS - 1), LOOKS, 'overlaps'),
  });
  const { sized } = shortestOverlap(judge, range.value);
  if (!sized.found) {
    const { result } = sized.best.row;
    return refuse(
      'not-computable',
      `joints.${index}.overlap`,
      say`No overlap of the ${pliesOf(plain)} lap up to ${millimetres(LONGEST_OVERLAP)} reaches the margin ${signed(target)} of the joint as it is: ${modeLabel(result.mode, result.part)} stops it at ${signed(result.margin)}, whatever the overlap.`,
    );
  }
  const { low } = sized.found;
  const overlap = judge.value(low);
  const { result } = judge.lowest(low)!;
  return ok({
    of: joint.id,
    joint: { ...plain, overlap },
    changed: [
      ...changed,
      say`overlap ${length(overlap)} instead of ${length(joint.overlap)}: the shortest, in steps of ${millimetres(step)}, whose lowest margin ${signed(result.margin)} reaches ${signed(target)}`,
      { message: 'the walls are kept' },
    ],
    equal: { what: 'margin', of: target, variant: result.margin },
  });
}

/** About as many overlaps as a search looks at. */
const LOOKS = 16;
