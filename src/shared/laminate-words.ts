/** The engineering constants of a laminate as they are written, in the units of the screen. */
import type { QuantityName } from './quantities.ts';
import type { LaminatePlane } from './reports.ts';
import type { SaidFigure } from './said.ts';
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

/** Of those that have a unit. */
const measures = {
  axialModulus: 'modulus',
  hoopModulus: 'modulus',
  shearModulus: 'modulus',
  axialExpansion: 'expansion',
  hoopExpansion: 'expansion',
} as const satisfies Partial<Record<ConstantName, SaidFigure['measure']>>;

interface WrittenFigure extends SaidFigure {
  readonly measure: (typeof measures)[keyof typeof measures];
}

function written(
  name: ConstantName,
  value: number,
): { readonly as: string; readonly figures: readonly WrittenFigure[] } {
  const quantity = constantQuantities[name];
  const { symbol } = displayUnit(quantity);
  const text = figure(inDisplayUnit(quantity, value));
  const as = symbol === '' ? text : `${text} ${symbol}`;
  return { as, figures: name === 'poisson' ? [] : [{ as, measure: measures[name], value }] };
}

/**
 * `Ex 71.9 GPa against 35.1 GPa free to bend and twist, νxθ 0.31 against 0.10`; empty where nothing
 * differs.
 */
export function heldAgainstFree(
  held: LaminatePlane,
  free: Partial<LaminatePlane>,
  flat: boolean,
): { readonly message: string; readonly figures: readonly WrittenFigure[] } {
  const symbols = constantSymbols(acrossOf(flat));
  const pairs = (Object.keys(symbols) as ConstantName[]).flatMap((name) => {
    const value = free[name];
    if (value === undefined) return [];
    const [one, other] = [written(name, held[name]), written(name, value)];
    return {
      text: `${symbols[name]} ${one.as} against ${other.as}`,
      figures: [...one.figures, ...other.figures],
    };
  });
  return {
    message: pairs
      .map(({ text }, i) => (i === 0 ? `${text} free to bend and twist` : text))
      .join(', '),
    figures: pairs.flatMap(({ figures }) => figures),
  };
}
