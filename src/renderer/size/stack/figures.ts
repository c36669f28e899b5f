/** Figures of a laminate as they are read: rounded to three places, in the units of the screen. */
import type { Measure } from '../../../shared/display-units.ts';
import {
  type ConstantName,
  constantQuantities,
  constantSymbols,
} from '../../../shared/laminate-words.ts';
import { figure, figureOf, symbolOf } from '../../../shared/measures.ts';
import { type QuantityName, quantities } from '../../../shared/quantities.ts';
import type { LaminateReport } from '../../../shared/reports.ts';
import { displayUnit, inDisplayUnit, isInSi } from '../../../shared/units.ts';

export interface Reading {
  readonly symbol: string;
  readonly value: string;
  readonly unit: string;
  readonly help: string;
}

export const rounded = (name: QuantityName, value: number): string =>
  figure(inDisplayUnit(name, value), isInSi(name) ? 2 : 4);

const reading = (symbol: string, name: QuantityName, value: number, help: string): Reading => ({
  symbol,
  value: rounded(name, value),
  unit: quantities[name].unit === '1' ? '' : displayUnit(name).symbol,
  help,
});

const planeHelp: Readonly<Record<ConstantName, string>> = {
  axialModulus: 'Young’s modulus along the axis',
  hoopModulus: 'Young’s modulus across the axis',
  shearModulus: 'Shear modulus in the wall',
  poisson: 'Contraction across over extension along',
  axialExpansion: 'Thermal expansion along the axis',
  hoopExpansion: 'Thermal expansion across the axis',
};

/** Each constant from A and, where it differs, that of the wall free to bend and twist after it. */
function planeReadings(report: LaminateReport, across: string): Reading[] {
  const { plane, free, curvatureHeld } = report;
  const symbols = constantSymbols(across);
  return (Object.keys(planeHelp) as ConstantName[]).flatMap((name) => {
    const [symbol, quantity, help] = [symbols[name], constantQuantities[name], planeHelp[name]];
    const held = curvatureHeld ? `${help}, the curvature suppressed` : help;
    const own = reading(symbol, quantity, plane[name], held);
    const other = free[name];
    return other === undefined
      ? [own]
      : [own, reading(`${symbol}, free`, quantity, other, `${help}, free to bend and twist`)];
  });
}

/** @param across θ for a tube, y for a strip */
export function readings(report: LaminateReport, across: string): Reading[] {
  const { through } = report;
  return [
    ...planeReadings(report, across),
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

/** Of the stiffness of a stack, in units as large as its figures. */
export function matrices({ a, b, d }: LaminateReport): Matrix[] {
  const matrix = (
    name: Matrix['name'],
    measure: Measure,
    help: string,
    rows: LaminateReport['a'],
  ): Matrix => ({
    name,
    unit: symbolOf(measure),
    help,
    rows: rows.map((row) => row.map((value) => figureOf(measure, value))),
  });
  return [
    matrix('A', 'stiffness', 'stretching', a),
    matrix('B', 'force', 'coupling of stretching and bending', b),
    matrix('D', 'moment', 'bending', d),
  ];
}
