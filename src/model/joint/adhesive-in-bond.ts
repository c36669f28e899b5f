/**
 * The adhesive as the bonds of a joint have it: the properties of its rows at a temperature and moisture,
 * and what the knockdowns leave of them at each gap. Margins and the ledger of allowables both take it
 * from here.
 */
import { type AdhesiveState, adhesiveStateAt } from './adhesive-state.ts';
import { knockedDown, type Ledger, ledgerAt } from './knockdown.ts';
import type { AdhesiveInput, CaseInput } from './types.ts';

export interface AdhesiveInBonds {
  /** Before anything is taken off. */
  readonly table: AdhesiveState;
  /** One for each gap, in their order. */
  readonly ledgers: readonly Ledger[];
  /** What is left, in the same order. */
  readonly left: readonly AdhesiveState[];
}

/** @throws ModelError naming `moisture` when the table has no row of that moisture */
export function adhesiveInBonds(
  adhesive: AdhesiveInput,
  gaps: readonly number[],
  surroundings: Pick<CaseInput, 'temperature' | 'moisture'>,
): AdhesiveInBonds {
  const table = adhesiveStateAt(adhesive, surroundings.temperature, surroundings.moisture);
  const ledgers = gaps.map((gap) => ledgerAt(adhesive, gap, surroundings));
  return { table, ledgers, left: ledgers.map(({ left }) => knockedDown(table, left)) };
}
