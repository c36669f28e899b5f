/**
 * What would help where no size reaches the target. Each change is put through the same sizing before
 * it is offered: the least amount of it that reaches the target, or else the one that comes nearest.
 */
import { ModelError } from '../../../model/errors.ts';
import { bare, type Said, type SaidFigure, say } from '../../../model/said.ts';
import { ALIKE, nearest, type Sized, type SizePlan, size } from '../../../model/sizing/size.ts';
import { convertLap, lapsFor } from '../../../shared/convert-lap.ts';
import type { Joint } from '../../../shared/project.ts';
import type { SizingSuggestion, SuggestionKind } from '../../../shared/reports-sizing.ts';
import { sizeText } from '../../../shared/sizing-words.ts';
import { stepOf } from '../../../shared/usual-steps.ts';
import {
  sleeveWalls,
  type Vary,
  variedValue,
  withMouth,
  withValue,
} from '../../../shared/vary-joint.ts';
import type { ResolvedJoint } from '../resolve.ts';
import { type JointJudge, judgeJoint, measureOf, type SizingContext } from './context.ts';
import { gapSpan } from './range.ts';

/** One amount of one change. */
interface Rung {
  readonly joint: Joint;
  readonly change: Said;
  /** How far it goes, as a factor: changes of different kinds are ranked by it. */
  readonly amount: number;
}

interface Ladder {
  readonly kind: SuggestionKind;
  /** Least change first. */
  readonly rungs: readonly Rung[];
}

const THICKER = [1.25, 1.5, 2];
const LONGER = [1.5, 2, 3];
const THINNER_GAP = [0.75, 0.5];
const THICKER_GAP = [1.5, 2, 2.5];
const MOUTH = [0.75, 0.5, 0.33];
/** Printed walls are seldom thinner, mm. Common practice, no source. */
const LEAST_MOUTH = 0.3;

const SMALL = 1e-9;

export interface Best {
  /** Highest lowest margin without any change. */
  readonly margin: number;
  readonly multiple: number;
}

/** Changes to a joint that can be tried besides the size that is sought. */
export function ladders(context: SizingContext, resolved: ResolvedJoint): Ladder[] {
  const { project, joint, vary } = context;
  const stepped = (what: Vary, factor: number): number => {
    const step = stepOf(project.settings, what);
    const exact = (variedValue(joint, what) * factor) / step;
    const whole = factor > 1 ? Math.ceil(exact - SMALL) : Math.floor(exact + SMALL);
    return Number((whole * step).toPrecision(12));
  };
  const scaled = (what: Vary, noun: string, factors: readonly number[]): Rung[] =>
    factors.flatMap((factor) => {
      const present = variedValue(joint, what);
      const value = stepped(what, factor);
      if (value <= 0 || (value - present) * (factor - 1) <= 0) return [];
      return {
        joint: withValue(joint, what, value),
        change: say`${noun} ${bare(sizeOf(what, present))} → ${sizeOf(what, value)}`,
        amount: Math.max(value / present, present / value),
      };
    });
  const part = partWords[joint.type];
  const all: readonly (Ladder & { readonly of?: Vary })[] = [
    { kind: 'overlap', of: 'overlap', rungs: scaled('overlap', 'overlap', LONGER) },
    { kind: 'sleeve-wall', of: 'sleeve-wall', rungs: scaled('sleeve-wall', part.sleeve, THICKER) },
    { kind: 'taper', rungs: tapers(joint, stepOf(project.settings, 'sleeve-wall')) },
    {
      kind: 'thinner-gap',
      of: 'gap',
      rungs: within(scaled('gap', 'gap', THINNER_GAP), joint, resolved),
    },
    {
      kind: 'thicker-gap',
      of: 'gap',
      rungs: within(scaled('gap', 'gap', THICKER_GAP), joint, resolved),
    },
    { kind: 'tube-wall', of: 'tube-wall', rungs: scaled('tube-wall', part.tube, THICKER) },
    { kind: 'double-lap', rungs: doubled(joint) },
  ];
  return all.filter(({ of, rungs }) => of !== vary && rungs.length > 0);
}

const partWords: Readonly<
  Record<Joint['type'], { readonly sleeve: string; readonly tube: string }>
> = {
  'sleeve-single': { sleeve: 'sleeve wall', tube: 'tube wall' },
  'sleeve-double': { sleeve: 'both sleeve walls', tube: 'tube wall' },
  'flat-single': { sleeve: 'plate', tube: 'strip' },
  'flat-double': { sleeve: 'both straps', tube: 'strip' },
};

/** As the fields of the joint have it. */
const sizeOf = (what: Vary, value: number): SaidFigure => ({
  as: sizeText(what, value),
  measure: measureOf(what),
  value,
});

/** Gaps for which the adhesive's strength is known. */
function within(rungs: readonly Rung[], joint: Joint, resolved: ResolvedJoint): Rung[] {
  const [least, most] = gapSpan(joint, resolved);
  return rungs.filter((rung) => {
    const gap = variedValue(rung.joint, 'gap');
    return gap >= least - SMALL && gap <= most + SMALL;
  });
}

function tapers(joint: Joint, step: number): Rung[] {
  const { atMouth } = sleeveWalls(joint)[0]!;
  return MOUTH.flatMap((factor) => {
    const mouth = Number((Math.floor((atMouth * factor) / step + SMALL) * step).toPrecision(12));
    if (mouth < LEAST_MOUTH || mouth >= atMouth) return [];
    const change = say`${partWords[joint.type].sleeve} at the mouth ${bare(sizeOf('sleeve-wall', atMouth))} → ${sizeOf('sleeve-wall', mouth)}`;
    return { joint: withMouth(joint, mouth / atMouth), change, amount: atMouth / mouth };
  });
}

/** A second sleeve is the largest change of all. */
function doubled(joint: Joint): Rung[] {
  const lap = lapsFor(joint).find((name) => name === 'sleeve-double' || name === 'flat-double');
  const double = lap ? convertLap(joint, lap) : joint;
  if (double === joint) return [];
  const word = joint.type === 'flat-single' ? 'a second strap' : 'a second sleeve wall';
  const change = { message: `double lap in place of single: ${word} like the first` };
  return [{ joint: double, change, amount: Number.POSITIVE_INFINITY }];
}

export interface Suggested {
  readonly suggestions: readonly SizingSuggestion[];
  readonly noHelp: readonly SuggestionKind[];
}

export function suggest(
  context: SizingContext,
  all: readonly Ladder[],
  plan: SizePlan,
  best: Best,
  onLadder: (kind: SuggestionKind) => void,
): Suggested {
  const own = { ...plan, drawn: false, guess: best.multiple };
  const offered: Offer[] = [];
  const noHelp: SuggestionKind[] = [];
  for (const { kind, rungs } of all) {
    onLadder(kind);
    const top = climb(context, rungs, own);
    const suggestion = top && suggestionOf(kind, top, best);
    if (suggestion && (suggestion.reached || suggestion.gain >= ALIKE)) {
      offered.push({ suggestion, amount: top.rung.amount });
    } else noHelp.push(kind);
  }
  offered.sort((a, b) => {
    const [one, other] = [a.suggestion, b.suggestion];
    if (one.reached !== other.reached) return one.reached ? -1 : 1;
    return one.reached ? a.amount - b.amount : other.gain - one.gain;
  });
  return { suggestions: offered.map(({ suggestion }) => suggestion), noHelp };
}

interface Offer {
  readonly suggestion: SizingSuggestion;
  readonly amount: number;
}

interface Trial {
  readonly rung: Rung;
  readonly judge: JointJudge;
  readonly sized: Sized;
}

/** The first rung that reaches the target; else the one that comes nearest, looked at more closely. */
function climb(context: SizingContext, rungs: readonly Rung[], plan: SizePlan): Trial | null {
  let top: Trial | null = null;
  for (const rung of rungs) {
    const judge = judgeJoint({ ...context, joint: rung.joint });
    const sized = orNull(() => size(judge, plan));
    if (!sized) continue;
    if (sized.found) return { rung, judge, sized };
    if (!top || marginOf(sized) > marginOf(top.sized)) top = { rung, judge, sized };
  }
  if (!top) return null;
  const { judge } = top;
  return { ...top, sized: orNull(() => nearest(judge, plan)) ?? top.sized };
}

const marginOf = ({ best }: Sized): number => best.row.result.margin;

/** With some changes a joint fits together nowhere: then there is nothing to offer. */
function orNull<T>(compute: () => T): T | null {
  try {
    return compute();
  } catch (error) {
    if (error instanceof ModelError || error instanceof RangeError) return null;
    throw error;
  }
}

function suggestionOf(
  kind: SuggestionKind,
  { rung, judge, sized: { found, best: top } }: Trial,
  best: Best,
): SizingSuggestion {
  const multiple = found ? (found.high ?? found.low) : top.multiple;
  const margin = judge.margin(judge.lowest(multiple) ?? top.row, multiple);
  return {
    kind,
    change: rung.change.message,
    ...(rung.change.figures ? { changeFigures: rung.change.figures } : {}),
    reached: found !== null,
    value: judge.value(multiple),
    margin: margin.margin,
    label: margin.label,
    gain: margin.margin - best.margin,
    joint: judge.joint(multiple),
  };
}
