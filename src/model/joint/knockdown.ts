/**
 * What is left of an adhesive's strength, step by step: environment, gap, ageing, scatter. The
 * fitting factor is not here: it is asked of the loads.
 *
 * A knockdown K shrinks the whole shear stress-strain curve about its origin: τp and γp by K, G stays,
 * so that every failure load falls by K whether the bond is short or long. Peel strength falls by K,
 * fracture energies, which go with the square of the stress, by K². Common practice, no source.
 *
 * Own coupons take the place of the knockdown for scatter where they were tested: their basis value over
 * what this model predicts of them with the mean properties of the table.
 */
import type { AdhesiveState } from './adhesive-state.ts';
import type { AdhesiveInput, Fracture, Knockdowns, TestedStrength } from './types.ts';

export interface Ledger {
  readonly environment: number;
  readonly gap: number;
  readonly ageing: number;
  readonly scatter: number;
  /** Their product. */
  readonly left: number;
  /** True when the gap lies beyond the table of strength against gap. */
  readonly gapOutsideTable: boolean;
}

/** Rows of the table between which a gap lies; null at its ends and beyond. */
export function gapRows(table: Knockdowns['gap'], gap: number) {
  const rows = [...table].sort((a, b) => a.gap - b.gap);
  const above = rows.findIndex((row) => row.gap >= gap);
  return above > 0 ? ([rows[above - 1]!, rows[above]!] as const) : null;
}

/** Strength at a gap over that of the table's own coupons: linear, the nearest beyond the table. */
export function gapFactor(
  table: Knockdowns['gap'],
  gap: number,
): { readonly factor: number; readonly outside: boolean } {
  const rows = [...table].sort((a, b) => a.gap - b.gap);
  const first = rows[0];
  const last = rows[rows.length - 1];
  if (!first || !last) return { factor: 1, outside: false };
  // Gaps are sums of decimals: what differs by rounding is at the end of the table.
  const slack = 1e-9 * last.gap;
  if (gap <= first.gap) return { factor: first.factor, outside: gap < first.gap - slack };
  if (gap >= last.gap) return { factor: last.factor, outside: gap > last.gap + slack };
  const [a, b] = gapRows(rows, gap)!;
  const t = (gap - a.gap) / (b.gap - a.gap);
  return { factor: a.factor + t * (b.factor - a.factor), outside: false };
}

type Surroundings = Pick<TestedStrength, 'temperature' | 'moisture'>;

/** Which tests the strength in some surroundings rests on. */
export interface RestsOn {
  readonly factor: number;
  /** Places in `tested`; none where the general knockdown counts. */
  readonly tested: readonly number[];
  /** False where it was not tested at this temperature. */
  readonly exact: boolean;
}

/**
 * Between two tested temperatures the lower of both counts, beyond them the lower of the nearest and
 * the general knockdown: no strength is drawn out of tests that were not made. Tests of the other
 * moisture say nothing.
 */
export function scatterAt(
  knockdowns: Knockdowns,
  { temperature, moisture }: Surroundings,
): RestsOn {
  const rows = (knockdowns.tested ?? [])
    .map((row, place) => ({ ...row, place }))
    .filter((row) => row.moisture === moisture)
    .sort((a, b) => a.temperature - b.temperature);
  const general = { factor: knockdowns.scatter, tested: [], exact: false };
  if (rows.length === 0) return general;
  const at = rows.find((row) => row.temperature === temperature);
  if (at) return { factor: at.factor, tested: [at.place], exact: true };
  const above = rows.findIndex((row) => row.temperature > temperature);
  if (above > 0) {
    const pair = [rows[above - 1]!, rows[above]!];
    return {
      factor: Math.min(...pair.map(({ factor }) => factor)),
      tested: pair.map(({ place }) => place),
      exact: false,
    };
  }
  const nearest = above === 0 ? rows[0]! : rows.at(-1)!;
  return nearest.factor <= general.factor
    ? { factor: nearest.factor, tested: [nearest.place], exact: false }
    : general;
}

export function ledgerAt(
  { knockdowns }: AdhesiveInput,
  gap: number,
  surroundings: Surroundings,
): Ledger {
  if (!knockdowns) {
    return { environment: 1, gap: 1, ageing: 1, scatter: 1, left: 1, gapOutsideTable: false };
  }
  const { environment, ageing } = knockdowns;
  const { factor: scatter, tested } = scatterAt(knockdowns, surroundings);
  const table = gapFactor(knockdowns.gap, gap);
  // The coupons had a gap of their own, whose loss is in their results; more than theirs is not drawn from a table.
  const theirs = tested.map((place) => knockdowns.tested![place]!.gap);
  const factor = theirs.reduce(
    (least, at) => Math.min(least, table.factor / gapFactor(knockdowns.gap, at).factor),
    theirs.length > 0 ? 1 : table.factor,
  );
  return {
    environment,
    gap: factor,
    ageing,
    scatter,
    left: environment * factor * ageing * scatter,
    gapOutsideTable: table.outside,
  };
}

export function knockedDown(state: AdhesiveState, left: number): AdhesiveState {
  return {
    ...state,
    shearYield: state.shearYield * left,
    plasticStrain: state.plasticStrain * left,
    peelStrength: state.peelStrength === undefined ? undefined : state.peelStrength * left,
  };
}

export const fractureAt = (fracture: Fracture, left: number): Fracture => ({
  ...fracture,
  modeI: fracture.modeI * left * left,
  modeII: fracture.modeII * left * left,
});
