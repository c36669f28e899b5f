/** Figures of a laminate as they are read: rounded to three places, in the units of the screen. */
import { type QuantityName, quantities } from '../../../shared/quantities.ts';
import type { LaminateReport } from '../../../shared/reports.ts';
import { displayUnit, inDisplayUnit } from '../../../shared/units.ts';
import { figure } from '../../../shared/words.ts';

export interface Reading {
  readonly symbol: string;
  readonly value: string;
  readonly unit: string;
  readonly help: string;
}

export const rounded = (name: QuantityName, value: number): string =>
  figure(inDisplayUnit(name, value));

const reading = (symbol: string, name: QuantityName, value: number, help: string): Reading => ({
  symbol,
  value: rounded(name, value),
  unit: quantities[name].unit === '1' ? '' : displayUnit(name).symbol,
  help,
});

/** @param across θ for a tube, y for a strip */
export function readings({ plane, through }: LaminateReport, across: string): Reading[] {
  return [
    reading('Ex', 'modulus', plane.axialModulus, 'Young’s modulus along the axis'),
    reading(`E${across}`, 'modulus', plane.hoopModulus, 'Young’s modulus across the axis'),
    reading(`Gx${across}`, 'shearModulus', plane.shearModulus, 'Shear modulus in the wall'),
    reading(
      `νx${across}`,
      'laminatePoisson',
      plane.poisson,
      'Contraction across over extension along',
    ),
    reading('αx', 'expansion', plane.axialExpansion, 'Thermal expansion along the axis'),
    reading(`α${across}`, 'expansion', plane.hoopExpansion, 'Thermal expansion across the axis'),
    reading('E3', 'modulus', through.modulus, 'Young’s modulus through the thickness'),
    reading('G13', 'shearModulus', through.shearModulus, 'Shear modulus through the thickness'),
  ];
}

export function bendingReadings({ bending }: LaminateReport, across: string): Reading[] {
  return [
    reading(
      'Ex, bending',
      'modulus',
      bending.axialModulus,
      'Young’s modulus along the axis, in bending',
    ),
    reading(
      `E${across}, bending`,
      'modulus',
      bending.hoopModulus,
      'Young’s modulus across the axis, in bending',
    ),
  ];
}

export interface Matrix {
  readonly name: 'A' | 'B' | 'D';
  readonly unit: string;
  readonly help: string;
  readonly rows: readonly (readonly string[])[];
}

/** N/mm, N and N·mm are large figures: thousands of them are shown. */
export function matrices({ a, b, d }: LaminateReport): Matrix[] {
  const thousands = (rows: LaminateReport['a']): string[][] =>
    rows.map((row) => row.map((value) => figure(value / 1000)));
  return [
    { name: 'A', unit: 'kN/mm', help: 'stretching', rows: thousands(a) },
    { name: 'B', unit: 'kN', help: 'coupling of stretching and bending', rows: thousands(b) },
    { name: 'D', unit: 'N·m', help: 'bending', rows: thousands(d) },
  ];
}
