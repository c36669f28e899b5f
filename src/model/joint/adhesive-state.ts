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
  /** Stress across the bond at which it opens; undefined where the table does not say. */
  readonly peelStrength: number | undefined;
  /** Expansion, 1/K; 0 where it is not known. */
  readonly expansion: number;
  /** True when the temperature lies beyond the table. */
  readonly outsideTable: boolean;
}

/** Where a temperature lies in the table: between two rows, or at one, both of them then. */
export interface RowsAt {
  readonly below: AdhesiveRow;
  readonly above: AdhesiveRow;
  /** 0 at the row below, 1 at the row above. */
  readonly share: number;
  readonly outsideTable: boolean;
}

/** @throws ModelError naming `moisture` when the table has no row of that moisture */
export function rowsAt(
  adhesive: AdhesiveInput,
  temperature: number,
  moisture: 'dry' | 'wet',
): RowsAt {
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
  const pick = (
    below: AdhesiveRow,
    above: AdhesiveRow,
    share: number,
    outsideTable: boolean,
  ): RowsAt => ({ below, above, share, outsideTable });
  if (temperature <= first.temperature)
    return pick(first, first, 0, temperature < first.temperature);
  if (temperature >= last.temperature) return pick(last, last, 0, temperature > last.temperature);
  const above = rows.findIndex((row) => row.temperature >= temperature);
  const a = rows[above - 1]!;
  const b = rows[above]!;
  return pick(a, b, (temperature - a.temperature) / (b.temperature - a.temperature), false);
}

/** @throws ModelError naming `moisture` when the table has no row of that moisture */
export function adhesiveStateAt(
  adhesive: AdhesiveInput,
  temperature: number,
  moisture: 'dry' | 'wet',
): AdhesiveState {
  const { below, above, share, outsideTable } = rowsAt(adhesive, temperature, moisture);
  return { ...between(below, above, share), expansion: adhesive.expansion ?? 0, outsideTable };
}

function between(a: AdhesiveRow, b: AdhesiveRow, t: number) {
  const mix = (p: number, q: number): number => p + t * (q - p);
  // A strength given in only one of the two rows says nothing between them.
  const peel =
    a.peelStrength === undefined || b.peelStrength === undefined
      ? undefined
      : mix(a.peelStrength, b.peelStrength);
  return {
    shearModulus: mix(a.shearModulus, b.shearModulus),
    modulus: mix(a.modulus, b.modulus),
    shearYield: mix(a.shearYield, b.shearYield),
    plasticStrain: mix(a.plasticStrain, b.plasticStrain),
    peelStrength: peel,
  };
}
