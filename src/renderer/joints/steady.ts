/** Rows that do not move under the hand while the table fills. */

export interface Held<T> {
  readonly rows: readonly T[];
  /** Rows stay where they are as long as the hand does. */
  readonly kept: boolean;
}

/**
 * The rows of `before`, as they are now, in the order they had; those that are new come after them in the order
 * of `ordered`, those that are gone are left out.
 */
export function inPlace<T>(
  before: readonly T[],
  ordered: readonly T[],
  id: (row: T) => string,
): readonly T[] {
  const now = new Map(ordered.map((row) => [id(row), row]));
  const known = new Set(before.map(id));
  return [
    ...before.flatMap((row) => now.get(id(row)) ?? []),
    ...ordered.filter((row) => !known.has(id(row))),
  ];
}

/**
 * Rows in their order, or, for a hand that is on the table while it fills, where they were.
 * What filled under the hand stays as it is until the hand has gone, though all rows be there.
 */
export function steady<T>(
  before: Held<T>,
  ordered: readonly T[],
  now: { readonly filling: boolean; readonly underHand: boolean },
  id: (row: T) => string,
): Held<T> {
  const kept = now.underHand && (now.filling || before.kept);
  return { rows: kept ? inPlace(before.rows, ordered, id) : ordered, kept };
}
