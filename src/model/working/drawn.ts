/** Figures of the drawn state: largest shear, largest peel, strength of the bond at the clocking. */
import { type Step, step } from '../card.ts';
import { countedPeel } from '../curves/layered-curves.ts';
import { linearShear, shearOfSlip } from '../curves/stress-curves.card.ts';
import { isDrawnElastic, stateToDraw, stressCurves } from '../curves/stress-curves.ts';
import { hasExactPlastic } from '../joint/lap-state.ts';
import { partOf } from '../layered/fields.ts';
import { drawnPeel } from '../margins/bond-fields.card.ts';
import { coverAt, pullAt, pullOfPeel } from '../margins/bond-fields.ts';
import { shareOfStrength } from '../margins/capped-factor.card.ts';
import { bondSteps } from './bond.ts';
import type { Given } from './context.ts';
import { elasticSteps, loadSteps } from './lap.ts';
import { estimateSteps, peelStrengthStep, pullStep } from './layer.ts';
import { layerSteps } from './peel.ts';
import { strengthAt, yieldAt } from './strength.ts';

export interface Drawn {
  readonly theta: number;
  readonly loadFactor: number;
  /** Stations of the curve, as drawn. */
  readonly stations: number;
}

export interface DrawnWorking {
  readonly steps: Step[];
  /** Where along the overlap the figure is read. */
  readonly x: number;
}

/** @param j bond */
export function peakShearWorking(given: Given, drawn: Drawn, j: number): DrawnWorking {
  const { state, settings } = given;
  const { theta, loadFactor } = drawn;
  const curves = stressCurves(state, theta, loadFactor, settings.adherendShear, drawn.stations);
  const { peak, shearYield } = curves.bonds[j]!;
  const problem = state.at(theta);
  const atYield = yieldAt(problem);
  const strength = strengthAt(problem);
  const below = strength?.wholeBondFlows ? 1 - 1e-6 : 1;
  const factor = Math.min(loadFactor, curves.capacity * below);
  const lap = stateToDraw(problem, factor, atYield.factor, curves.carried ? null : strength);
  const before = bondSteps(given, j);
  // As the drawing has it: at first yield itself only the exact solution is past elastic.
  const isElastic =
    !(strength?.failed && !curves.carried) &&
    isDrawnElastic(factor, atYield.factor) &&
    !(factor === atYield.factor && hasExactPlastic(problem));
  if (isElastic) {
    const { steps, shear } = elasticSteps(given, problem, j, peak.x, theta);
    const values = {
      tau_T: shear.thermal,
      lambda: factor,
      tau_1: shear.along,
      tau_theta: shear.around,
    };
    const last = step(linearShear, values, Math.abs(peak.value));
    return { steps: [...before, ...steps, last], x: peak.x };
  }
  const slip = Math.hypot(...problem.channels.map((_c, q) => lap.slip(q, j, peak.x)));
  const values = { tau_p: shearYield, k: state.bonds[j]!.stiffness, s: slip };
  return {
    steps: [
      ...before,
      ...loadSteps(given, problem, theta),
      step(shearOfSlip, values, Math.abs(peak.value)),
    ],
    x: peak.x,
  };
}

/** Largest peel of the curve that counts: the capped one where the bond yields. */
export function peakPeelWorking(
  given: Given,
  { theta, loadFactor }: Drawn,
  j: number,
): DrawnWorking {
  const { state } = given;
  const { layered, loadCase, adhesives } = state;
  const { dense: x, elastic, capped, place } = countedPeel(state, theta, loadFactor);
  const { peel } = capped
    ? partOf(capped.solution, layered.order, x, capped.load, 1).bonds[j]!
    : elastic.bonds[j]!;
  let at = 0;
  peel.forEach((value, i) => {
    if (value > peel[at]!) at = i;
  });
  const counted = capped?.solution ?? layered.solution(loadFactor * loadCase.loads.force);
  const of = (newtons: number, share: number): number =>
    counted.at(x[at]!, newtons, share).stresses.peel[j]!;
  const spot = { bond: j, x: x[at]! };
  const pull = capped
    ? pullOfPeel(state, theta, place.bond, place.x)
    : pullAt(state, theta, coverAt(state, 'peel', j, spot.x));
  const sigma = peel[at]!;
  const strength = adhesives[j]!.peelStrength;
  return {
    steps: [
      ...layerSteps(given, j),
      ...estimateSteps(given, j),
      pullStep(given, theta, 'peel', capped ? place : spot, capped !== null),
      ...(strength === undefined
        ? []
        : [
            peelStrengthStep(given, j),
            step(shareOfStrength, { sigma, sigma_p: strength }, sigma / strength),
          ]),
      step(
        drawnPeel(capped !== null),
        {
          sigma_f: of(0, 1),
          lambda: loadFactor,
          P: pull,
          sigma_1: of(1, 0),
        },
        sigma,
      ),
    ],
    x: x[at]!,
  };
}
