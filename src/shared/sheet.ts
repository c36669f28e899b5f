/**
 * A table of figures as it leaves the program: numbers as they are stored (N, mm, MPa, °C, degrees), every
 * digit of them, whatever units the screen shows; the unit stands in the head of its column.
 */
import { writeCsv } from './csv.ts';

export type SheetCell = string | number | null;

export interface Sheet {
  readonly head: readonly string[];
  readonly rows: readonly (readonly SheetCell[])[];
}

/** ASCII: a spreadsheet guesses the encoding of a file, and guesses wrong. */
const plainUnits: Readonly<Record<string, string>> = {
  '°C': 'deg C',
  '°': 'deg',
  N·mm: 'N*mm',
  'N·mm/rad': 'N*mm/rad',
  'N·mm²': 'N*mm^2',
  'mm²': 'mm^2',
  'mm³': 'mm^3',
  'kg/m³': 'kg/m^3',
  '1': '',
};

/** The head of a column, `shear stress, MPa`: the one place that puts a unit to a name. */
export function column(name: string, unit = ''): string {
  const plain = plainUnits[unit] ?? unit;
  return plain === '' ? name : `${name}, ${plain}`;
}

export const sheetCsv = ({ head, rows }: Sheet): string => writeCsv([head, ...rows]);
