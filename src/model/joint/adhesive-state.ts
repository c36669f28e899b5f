/**
 * Adhesive properties at a service temperature: linear between the rows of the same moisture, the
 * nearest row (and a flag) beyond them. Never extrapolated.
 */
import { ModelError } from '../errors.ts';
import type { AdhesiveInput, AdhesiveRow } from './types.ts';

export interface AdhesiveState {
  readonly shearModulus: number;
  readonly modulus: number;
  readonly shearYield: number;
  readonly plasticStrain: number;
  /** True when the temperature lies beyond the table. */
  readonly outsideTable: boolean;
}

/** @throws ModelError naming `moisture` when the table has no row of that moisture */
export function adhesiveStateAt(
  adhesive: AdhesiveInput,
  temperature: number,
  moisture: 'dry' | 'wet',
): AdhesiveState {
  const rows = adhesive.states
    .filter((row) => row.moisture === moisture)
    .sort((a, b) => a.temperature - b.temperature);
  const first = rows[0];
  const last = rows[rows.length - 1];
  if (!first || !last) {
    throw new ModelError(
      'moisture',
      `The adhesive has no ${moisture} properties: add a ${moisture} row to its table, or change the moisture of the load case.`,
    );
  }
  if (temperature <= first.temperature)
    return pick(first, first, 0, temperature < first.temperature);
  if (temperature >= last.temperature) return pick(last, last, 0, temperature > last.temperature);
  const above = rows.findIndex((row) => row.temperature >= temperature);
  const a = rows[above - 1]!;
  const b = rows[above]!;
  return pick(a, b, (temperature - a.temperature) / (b.temperature - a.temperature), false);
}

function pick(a: AdhesiveRow, b: AdhesiveRow, t: number, outsideTable: boolean): AdhesiveState {
  const between = (name: 'shearModulus' | 'modulus' | 'shearYield' | 'plasticStrain'): number =>
    a[name] + t * (b[name] - a[name]);
  return {
    shearModulus: between('shearModulus'),
    modulus: between('modulus'),
    shearYield: between('shearYield'),
    plasticStrain: between('plasticStrain'),
    outsideTable,
  };
}
