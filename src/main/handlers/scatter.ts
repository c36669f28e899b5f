/** What a joint's tolerances do to its lowest margin: input by input, and all at once. */
import { gapStates } from '../../model/joint/assembly.ts';
import { damageRow } from '../../model/margins/cyclic-damage.ts';
import { CONFIDENCE } from '../../model/scatter/binomial.ts';
import { lowestRow, type Row } from '../../model/scatter/joint-rows.ts';
import { ENDS, tornadoOf } from '../../model/scatter/matters.ts';
import type { Strength } from '../../model/scatter/problem.ts';
import {
  type ScatterOptions,
  type ScatterOutcome,
  scatterOf,
} from '../../model/scatter/scatter.ts';
import { summaryOf } from '../../model/scatter/summary.ts';
import {
  type JointScatter,
  jointScatter,
  studyOf,
  variationsOf,
} from '../../model/scatter/variation.ts';
import type { Study } from '../../model/scatter/varied.ts';
import type { Project } from '../../shared/project.ts';
import { ok, type Reply, refuse } from '../../shared/reply.ts';
import type { Flag } from '../../shared/reports.ts';
import type { LowestMargin, MattersReport, ScatterReport } from '../../shared/reports-scatter.ts';
import { caseText } from '../../shared/words.ts';
import type { JobContext } from '../jobs/progress.ts';
import { modeLabel } from './labels.ts';
import { questionOf } from './margins.ts';
import type { ResolvedCase, ResolvedJoint } from './resolve.ts';
import { limitFlags } from './scatter-limits.ts';
import { inputLabel, reported, studyOfJoint } from './tolerances.ts';

const caseNameOf = ({ loadCase, condition }: ResolvedCase): string =>
  caseText(loadCase.name, condition?.name ?? null);

/** A joint ready to be sampled, and what both reports say of it. */
interface Prepared {
  readonly problem: JointScatter;
  readonly common: Pick<
    ScatterReport,
    'jointId' | 'targetMargin' | 'tolerances' | 'middle' | 'own' | 'flags'
  >;
  named(strength: Strength): LowestMargin;
  /** `adhesive, yield in Gust`. */
  words(key: string): string;
}

function prepare(project: Project, resolved: ResolvedJoint): Reply<Prepared> {
  const { joint, index, cases } = resolved;
  const refused = (why: string): Reply<never> =>
    refuse('bad-input', `joints.${index}.loads`, `The joint "${joint.name}" ${why}`);
  if (cases.length === 0) return refused('has no load case: give it one to see what scatters.');
  const own = studyOfJoint(resolved);
  const { settings } = project;
  const lowest = lowestRow(own, settings, gapStates(own.joint));
  if (!lowest) return refused('carries no load: give a case a load to see what scatters.');
  const variations = variationsOf(own, settings.tolerances ?? null);
  if (variations.length === 0) {
    const why = 'Nothing varies in this joint: give an input a spread above 0.';
    return refuse('bad-input', 'settings.tolerances', why);
  }
  const study = studyOf(own, variations);
  const problem = jointScatter(study, settings, variations);
  const caseName = ({ caseIndex }: Row): string => caseNameOf(cases[caseIndex]!);
  const label = ({ mode, wall, atRoot }: Row): string => modeLabel(mode, wall, atRoot);
  const marginOf = (row: Row, ratio: number): LowestMargin => ({
    margin: ratio - 1,
    label: label(row),
    caseName: caseName(row),
  });
  const named = ({ key, ratio }: Strength): LowestMargin =>
    marginOf(problem.known.get(key)!, ratio);
  /** All cycles together are in no row that is sampled, but can be what the joint itself is held by. */
  const ownOf = (): LowestMargin => {
    const sum = damageRow(questionOf(resolved, settings));
    if (!sum || 1 + sum.result.margin >= lowest.ratio) return marginOf(lowest.row, lowest.ratio);
    const { mode, part, margin } = sum.result;
    return { margin, label: modeLabel(mode, part), caseName: caseNameOf(cases[sum.caseIndex]!) };
  };
  return ok({
    problem,
    named,
    words: (key) => {
      const row = problem.known.get(key)!;
      return `${label(row)} in ${caseName(row)}`;
    },
    common: {
      jointId: joint.id,
      targetMargin: settings.targetMargin,
      tolerances: variations.map((variation) => reported(variation, joint)),
      middle: named(problem.lowest(new Float64Array(variations.length))),
      own: ownOf(),
      flags: flagsOf(own, study, problem),
    },
  });
}

function flagsOf(own: Study, study: Study, { variations }: JointScatter): Flag[] {
  const flags: Flag[] = [
    {
      code: 'assumed-distributions',
      message:
        'The tolerances are assumptions, their tails above all: a small share rests on values that no coupon has shown.',
    },
  ];
  const typical = variations.filter(({ origin }) => origin === 'typical').length;
  if (typical > 0) {
    flags.push({
      code: 'typical-tolerances',
      message: `The project gives no tolerances: ${typical} of ${variations.length} inputs have typical ones, from memory.`,
    });
  }
  const [before, now] = [own.adhesive.knockdowns?.scatter, study.adhesive.knockdowns?.scatter];
  if (before !== undefined && before !== now) {
    flags.push({
      code: 'scatter-knockdown',
      message: `The knockdown for scatter, ${before}, is taken as 1 here: the adhesive's strength has a tolerance of its own.`,
    });
  }
  return [...flags, ...limitFlags(study, variations)];
}

export function matters(
  project: Project,
  resolved: ResolvedJoint,
  { progress }: Pick<JobContext, 'progress'>,
): Reply<MattersReport> {
  const ready = prepare(project, resolved);
  if (!ready.ok) return ready;
  const { problem, common, named } = ready.value;
  const { bars } = tornadoOf(problem, progress);
  return ok({
    ...common,
    bars: bars.map(({ input: place, low, high, swing }) => {
      const { input, distribution, spread, middle } = problem.variations[place]!;
      const reach = ENDS[distribution] * spread;
      return {
        input,
        label: inputLabel(input, resolved.joint),
        low: named(low),
        high: named(high),
        from: middle - reach,
        to: middle + reach,
        swing,
      };
    }),
  });
}

export function scatter(
  project: Project,
  resolved: ResolvedJoint,
  options: Pick<ScatterOptions, 'samples' | 'seed' | 'method'>,
  { progress }: Pick<JobContext, 'progress'>,
): Reply<ScatterReport> {
  const ready = prepare(project, resolved);
  if (!ready.ok) return ready;
  const { problem, common, words } = ready.value;
  let outcome: ScatterOutcome;
  try {
    outcome = scatterOf(problem, { ...options, progress });
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return refuse(
      'not-computable',
      'settings.tolerances',
      `Over tolerances this wide ${error.message}. Narrow them, or have each sample computed by the full model.`,
    );
  }
  const { below, share, exact, check } = outcome;
  return ok({
    ...common,
    ...options,
    below: { count: below, share: below / options.samples, ...share },
    confidence: CONFIDENCE,
    ...summaryOf(outcome),
    governs: governsOf(outcome, problem, resolved),
    exact,
    check: check && { ...check, left: [...new Set(check.left.map(words))] },
  });
}

/** Gap states of a mode are one line: what is told is mode and case. */
function governsOf(
  { rows, keys }: ScatterOutcome,
  { known }: JointScatter,
  { cases }: ResolvedJoint,
): ScatterReport['governs'] {
  const lines = new Map<string, { label: string; caseName: string; count: number }>();
  const ofKey = keys.map((key) => {
    const { mode, wall, atRoot, caseIndex } = known.get(key)!;
    const label = modeLabel(mode, wall, atRoot);
    const name = `${label} ${caseIndex}`;
    const line = lines.get(name) ?? { label, caseName: caseNameOf(cases[caseIndex]!), count: 0 };
    lines.set(name, line);
    return line;
  });
  for (const row of rows) ofKey[row]!.count += 1;
  return [...lines.values()]
    .filter(({ count }) => count > 0)
    .sort((a, b) => b.count - a.count || (a.label < b.label ? -1 : 1));
}
