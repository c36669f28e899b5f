/** Round numbers that divide an axis: steps of 1, 2 or 5 times a power of ten. */
export function niceStep(span: number, about: number): number {
  const rough = span / Math.max(1, about);
  const power = 10 ** Math.floor(Math.log10(rough));
  const ratio = rough / power;
  // Between two steps the nearer one, in proportion: √50, √10 and √2 part them.
  return power * (ratio >= 7.07 ? 10 : ratio >= 3.16 ? 5 : ratio >= 1.41 ? 2 : 1);
}

/** Every multiple of the step from `low` to `high`, both included when they are multiples. */
export function ticks(low: number, high: number, about: number): number[] {
  if (!(high > low)) return [];
  const step = niceStep(high - low, about);
  const first = Math.ceil(low / step - 1e-9);
  const last = Math.floor(high / step + 1e-9);
  // Multiplying whole numbers and rounding once keeps 0.3 from becoming 0.30000000000000004.
  return Array.from({ length: last - first + 1 }, (_, i) => {
    const value = Number(((first + i) * step).toPrecision(12));
    return value === 0 ? 0 : value;
  });
}

/** Decimals that tell neighbouring ticks apart. */
export const tickDecimals = (values: readonly number[]): number => {
  const [first, second] = values;
  if (first === undefined || second === undefined) return 0;
  return Math.max(0, -Math.floor(Math.log10(second - first) + 1e-9));
};
