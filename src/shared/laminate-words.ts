/** The engineering constants of a laminate as they are written, in the units of the screen. */
import type { QuantityName } from './quantities.ts';
import type { LaminatePlane } from './reports.ts';
import { displayUnit, inDisplayUnit } from './units.ts';
import { figure } from './words.ts';

export type ConstantName = keyof LaminatePlane;

export const constantQuantities: Readonly<Record<ConstantName, QuantityName>> = {
  axialModulus: 'modulus',
  hoopModulus: 'modulus',
  shearModulus: 'shearModulus',
  poisson: 'laminatePoisson',
  axialExpansion: 'expansion',
  hoopExpansion: 'expansion',
};

/** @param across θ for a tube, y for a strip */
export const constantSymbols = (across: string): Readonly<Record<ConstantName, string>> => ({
  axialModulus: 'Ex',
  hoopModulus: `E${across}`,
  shearModulus: `Gx${across}`,
  poisson: `νx${across}`,
  axialExpansion: 'αx',
  hoopExpansion: `α${across}`,
});

export const acrossOf = (flat: boolean): string => (flat ? 'y' : 'θ');

/** Which assumption stands behind the constants of a stack with B ≠ 0. */
export const CURVATURE_HELD =
  'The constants hold the curvature suppressed (membrane constants, from A)';

function written(name: ConstantName, value: number): string {
  const quantity = constantQuantities[name];
  const { symbol } = displayUnit(quantity);
  const text = figure(inDisplayUnit(quantity, value));
  return symbol === '' ? text : `${text} ${symbol}`;
}

/**
 * `Ex 71.9 GPa against 35.1 GPa free to bend and twist, νxθ 0.31 against 0.10`; empty where nothing
 * differs.
 */
export function heldAgainstFree(
  held: LaminatePlane,
  free: Partial<LaminatePlane>,
  flat: boolean,
): string {
  const symbols = constantSymbols(acrossOf(flat));
  return (Object.keys(symbols) as ConstantName[])
    .flatMap((name) => {
      const value = free[name];
      if (value === undefined) return [];
      return `${symbols[name]} ${written(name, held[name])} against ${written(name, value)}`;
    })
    .map((text, i) => (i === 0 ? `${text} free to bend and twist` : text))
    .join(', ');
}
