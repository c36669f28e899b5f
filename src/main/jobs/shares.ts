/** Work that several threads share: item by item in turn, and back. */

/** One list from those of the shares: the first item of each, then the second of each. */
export function dealtBack<T>(shares: readonly (readonly T[])[]): T[] {
  const count = shares.reduce((sum, items) => sum + items.length, 0);
  return Array.from(
    { length: count },
    (_item, index) => shares[index % shares.length]![Math.floor(index / shares.length)]!,
  );
}
