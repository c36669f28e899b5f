/**
 * Inputs that vary from joint to joint of one kind: how far, and what stands for a tolerance that the
 * project does not give.
 */
import type { Distribution } from './quantiles.ts';

export type VariedInput =
  | 'overlap'
  | 'gap'
  | 'offset'
  | 'tube-diameter'
  | 'tube-wall'
  | 'sleeve-wall'
  | 'tube-modulus'
  | 'sleeve-modulus'
  | 'adhesive-modulus'
  | 'shear-yield'
  | 'plastic-strain'
  | 'peel-strength'
  | 'interlaminar-strength'
  | 'laminate-strength'
  | 'metal-strength'
  | 'service-temperature'
  | 'stress-free-temperature'
  | 'load';

/** Spread: standard deviation (normal) or half-width; mm, °C, or a share of the value. */
export interface Tolerance {
  readonly input: VariedInput;
  readonly distribution: Distribution;
  readonly spread: number;
}

/**
 * The number of an input's stream of random numbers. Never change one, and give a new input a new one:
 * then a seed gives the others the same samples as before.
 */
export const streams: Readonly<Record<VariedInput, number>> = {
  overlap: 1,
  gap: 2,
  offset: 3,
  'tube-diameter': 4,
  'tube-wall': 5,
  'sleeve-wall': 6,
  'tube-modulus': 7,
  'sleeve-modulus': 8,
  'adhesive-modulus': 9,
  'shear-yield': 10,
  'plastic-strain': 11,
  'peel-strength': 12,
  'interlaminar-strength': 13,
  'laminate-strength': 14,
  'metal-strength': 15,
  'service-temperature': 16,
  'stress-free-temperature': 17,
  load: 18,
};

export const variedInputs = Object.keys(streams) as readonly VariedInput[];

/** Where an input's tolerance comes from. */
export type ToleranceOrigin = 'project' | 'joint' | 'typical';

const typical = (
  input: VariedInput,
  distribution: Distribution,
  spread: number,
): [VariedInput, Tolerance] => [input, { input, distribution, spread }];

/**
 * Typical, from memory, no source: what printed and reamed sleeves, drawn tubes and two-part paste
 * show from batch to batch. For a project that gives no tolerances. Gap and offset are not here: the
 * bond gives its own tolerance, the joint its offset.
 */
export const typicalTolerances: ReadonlyMap<VariedInput, Tolerance> = new Map([
  typical('overlap', 'uniform', 0.5),
  typical('tube-diameter', 'uniform', 0.05),
  typical('tube-wall', 'uniform', 0.1),
  typical('sleeve-wall', 'uniform', 0.1),
  typical('tube-modulus', 'normal', 0.03),
  typical('sleeve-modulus', 'normal', 0.02),
  typical('adhesive-modulus', 'normal', 0.08),
  typical('shear-yield', 'normal', 0.06),
  typical('plastic-strain', 'normal', 0.15),
  typical('peel-strength', 'normal', 0.1),
  typical('interlaminar-strength', 'normal', 0.1),
  typical('laminate-strength', 'normal', 0.07),
  typical('metal-strength', 'normal', 0.04),
  typical('service-temperature', 'uniform', 5),
  typical('stress-free-temperature', 'uniform', 5),
  typical('load', 'normal', 0.05),
]);
