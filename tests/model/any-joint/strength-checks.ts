/** Strength of any lap: how it goes with load and overlap, by whichever solution finds it. */
import { ModelError } from '../../../src/model/errors.ts';
import { hasExactPlastic, plasticState } from '../../../src/model/joint/lap-state.ts';
import { type LocalProblem, localProblem } from '../../../src/model/joint/local-problem.ts';
import { isTapered } from '../../../src/model/lap/problem.ts';
import { bondStrength } from '../../../src/model/margins/bond-strength.ts';
import { shearFactor } from '../../../src/model/margins/shear-factor.ts';
import type { JointState } from '../../../src/model/margins/state.ts';
import type { Note } from './try-joint.ts';

/** The exact solution of one bond, or the chain: of one bond or two, one channel or two, tapered. */
type Kind = string;

export function strengthOf(problem: LocalProblem): { kind: Kind; factor: number } {
  const yields = problem.bonds.map(({ shearYield }) => shearYield);
  const factor = bondStrength(problem, shearFactor(problem, yields))?.factor ?? Number.NaN;
  return { kind: kindOf(problem), factor };
}

function kindOf(problem: LocalProblem): Kind {
  if (hasExactPlastic(problem)) return 'exact';
  const taper = problem.channels.some(isTapered) ? ', tapered' : '';
  return `${problem.bonds.length} bonds, ${problem.channels.length} channels${taper}`;
}

const scaled = (problem: LocalProblem, factor: number): LocalProblem => ({
  ...problem,
  channels: problem.channels.map((channel) => ({ ...channel, load: factor * channel.load })),
});

/** Half the load may grow twice as far. */
export function halfLoad(problem: LocalProblem, factor: number, note: Note): string | null {
  const half = strengthOf(scaled(problem, 0.5)).factor;
  const off = factor === 0 ? half : Math.abs(half / (2 * factor) - 1);
  note(`half the load, ${kindOf(problem)}`, off);
  return off <= 1e-3 ? null : `half the load: ${half} for ${factor}`;
}

/** Largest slip of an end over its slip at failure. */
function used(problem: LocalProblem, factor: number): number {
  const state = plasticState(problem, factor);
  return Math.max(
    ...problem.bonds.flatMap((bond, j) =>
      [0, problem.length].map(
        (x) =>
          Math.hypot(...problem.channels.map((_c, q) => state.slip(q, j, x))) / bond.slipAtFailure,
      ),
    ),
  );
}

/** No end has failed before the load is there. */
export function onTheWay(problem: LocalProblem, factor: number, note: Note): string | null {
  if (factor === 0) return null;
  let before = 0;
  for (const share of [0.5, 0.95]) {
    const now = used(problem, share * factor);
    if (!(now <= 1)) return `at ${share} of its strength an end has slipped ${now}`;
    const cold = problem.channels.every(
      ({ tube, outers }) =>
        tube.thermalStrain === 0 && outers.every(({ thermalStrain }) => thermalStrain === 0),
    );
    if (cold && !(now >= before * (1 - 1e-6))) return `slip falls from ${before} to ${now}`;
    before = now;
  }
  note('slip at 0.95 of strength', before);
  return null;
}

/**
 * A longer overlap carries no less, in plain shear. Two unlike bonds share the load otherwise as they grow longer:
 * what the weaker one carries may then fall a little, as an independent solution confirms.
 */
export function growth(state: JointState, note: Note): string | null {
  const { assembly, bonds, loadCase } = state;
  const short = localProblem(assembly, bonds, loadCase.loads, 0, 0);
  if (short.channels.some(isTapered)) return null;
  const kind = kindOf(short);
  const alike = short.bonds.length === 1;
  try {
    const [a, b] = [short, { ...short, length: 1.3 * short.length }].map(
      (problem) => strengthOf(problem).factor,
    );
    const fall = 1 - b! / a!;
    note(`fall with the overlap, ${kind}`, fall);
    const allowed = kind === 'exact' ? 1e-9 : alike ? 1e-6 : 0.05;
    return fall <= allowed ? null : `1.3 times the overlap carries ${b} of ${a} before`;
  } catch (error) {
    if (error instanceof ModelError) return null;
    throw error;
  }
}
