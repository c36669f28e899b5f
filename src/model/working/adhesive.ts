/** The adhesive behind a bond: knockdowns and its properties at temperature. */
import { type Step, step } from '../card.ts';
import { betweenRows, nearestRow, type Property, rowSymbol } from '../joint/adhesive-state.card.ts';
import type { AdhesiveState } from '../joint/adhesive-state.ts';
import { rowsAt } from '../joint/adhesive-state.ts';
import { gapBesideTested, gapBetween, ledger } from '../joint/knockdown.card.ts';
import { gapFactor, gapRows, scatterAt } from '../joint/knockdown.ts';
import type { AdhesiveRow } from '../joint/types.ts';
import type { Given } from './context.ts';

export function knockdownSteps({ state, adhesive }: Given, j: number): Step[] {
  const { knockdowns } = adhesive;
  if (!knockdowns) return [];
  const own = state.ledgers[j]!;
  const { gap } = state.assembly.bonds[j]!;
  const rows = gapRows(knockdowns.gap, gap);
  const ofTable = gapFactor(knockdowns.gap, gap).factor;
  const steps: Step[] = [];
  if (rows) {
    const [below, above] = rows;
    steps.push(
      step(
        gapBetween,
        { h: gap, h_1: below.gap, h_2: above.gap, k_1: below.factor, k_2: above.factor },
        ofTable,
      ),
    );
  }
  const { tested } = scatterAt(knockdowns, state.loadCase);
  if (tested.length > 0) {
    const theirs = tested.map((place) => knockdowns.tested![place]!.gap);
    const most = Math.max(...theirs.map((at) => gapFactor(knockdowns.gap, at).factor));
    steps.push(step(gapBesideTested, { k_h: ofTable, k_0: most }, own.gap));
  }
  steps.push(
    step(
      ledger,
      { k_env: own.environment, k_gap: own.gap, k_age: own.ageing, k_scatter: own.scatter },
      own.left,
    ),
  );
  return steps;
}

/** Names that a property has in the table and in the state alike. */
type Field = Exclude<keyof AdhesiveRow & keyof AdhesiveState, 'moisture' | 'temperature'>;

export function propertyStep(
  { state, adhesive }: Given,
  j: number,
  property: Property,
  field: Field,
): Step {
  const { temperature, moisture } = state.loadCase;
  const { below, above } = rowsAt(adhesive, temperature, moisture);
  const { left } = state.ledgers[j]!;
  const own = state.adhesives[j]![field]!;
  const knocked = property.knocked ? { K: left } : {};
  const low = { [rowSymbol(property.symbol, 1)]: below[field]! };
  if (below === above) return step(nearestRow(property), { ...low, ...knocked }, own);
  const values = {
    T: temperature,
    T_1: below.temperature,
    T_2: above.temperature,
    ...low,
    [rowSymbol(property.symbol, 2)]: above[field]!,
    ...knocked,
  };
  return step(betweenRows(property), values, own);
}
