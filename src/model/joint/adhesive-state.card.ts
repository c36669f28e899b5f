/** Properties of the adhesive at the service temperature. */
import { COMMON_PRACTICE, type Equation, equation, type Named } from '../card.ts';

export interface Property {
  /** Of the property itself; rows carry 1 and 2. */
  readonly symbol: string;
  readonly label: string;
  readonly unit: string;
  /** True for strengths, which the knockdowns take from. */
  readonly knocked: boolean;
}

export const SHEAR_MODULUS: Property = {
  symbol: 'G',
  label: 'shear modulus of the adhesive',
  unit: 'MPa',
  knocked: false,
};
export const MODULUS: Property = {
  symbol: 'E',
  label: 'modulus of the adhesive',
  unit: 'MPa',
  knocked: false,
};
export const SHEAR_YIELD: Property = {
  symbol: 'tau_p',
  label: 'yield shear of the adhesive',
  unit: 'MPa',
  knocked: true,
};
export const PLASTIC_STRAIN: Property = {
  symbol: 'gamma_p',
  label: 'plastic shear strain of the adhesive',
  unit: '',
  knocked: true,
};
export const PEEL_STRENGTH: Property = {
  symbol: 'sigma_p',
  label: 'peel strength of the adhesive',
  unit: 'MPa',
  knocked: true,
};

export const rowSymbol = (symbol: string, row: 1 | 2): string =>
  symbol.includes('_') ? `${symbol}${row}` : `${symbol}_${row}`;

const LEFT: Named = ['left of the strength', ''];

function common({ symbol, label, unit, knocked }: Property) {
  const left = knocked ? ' What the knockdowns leave of it counts.' : '';
  return {
    id: `property-${symbol}`,
    title: label.charAt(0).toUpperCase() + label.slice(1),
    result: [symbol, knocked ? `${label}, knockdowns taken off` : label, unit] as const,
    source: COMMON_PRACTICE,
    domains: ['outside-table'],
    left,
  };
}

/** Between two rows of the same moisture. */
export function betweenRows(property: Property): Equation<string> {
  const { symbol, label, unit, knocked } = property;
  const [low, high] = [rowSymbol(symbol, 1), rowSymbol(symbol, 2)];
  const { left, ...rest } = common(property);
  const mixed = `${low} + (T - T_1)/(T_2 - T_1)*(${high} - ${low})`;
  return equation<string>({
    ...rest,
    statement: `On the straight line between the two rows of this moisture that hold the service temperature.${left}`,
    formula: knocked ? `(${mixed})*K` : mixed,
    symbols: {
      T: ['service temperature', '°C'],
      T_1: ['temperature of the row below', '°C'],
      T_2: ['temperature of the row above', '°C'],
      [low]: [`${label}, row below`, unit],
      [high]: [`${label}, row above`, unit],
      ...(knocked ? { K: LEFT } : {}),
    },
  });
}

/** At a row, or beyond the table. */
export function nearestRow(property: Property): Equation<string> {
  const { symbol, label, unit, knocked } = property;
  const { left, ...rest } = common(property);
  const row = rowSymbol(symbol, 1);
  return equation<string>({
    ...rest,
    statement: `Of the row of this moisture at the service temperature, or of the nearest one: nothing is extrapolated.${left}`,
    formula: knocked ? `${row}*K` : row,
    symbols: {
      [row]: [`${label}, nearest row`, unit],
      ...(knocked ? { K: LEFT } : {}),
    },
  });
}
