/** Figures of many times. */

/**
 * @param {readonly number[]} values not empty
 * @param {number} share 0.5 for the median
 */
export const percentile = (values, share) =>
  values.toSorted((a, b) => a - b)[Math.max(Math.ceil(share * values.length) - 1, 0)];

/** @param {readonly number[]} values */
export const summary = (values) => ({
  count: values.length,
  median: percentile(values, 0.5),
  p95: percentile(values, 0.95),
});

/**
 * Slope of a straight line through points, by least squares.
 * @param {readonly (readonly [x: number, y: number])[]} points
 */
export function slope(points) {
  const mean = (at) => points.reduce((sum, one) => sum + one[at], 0) / points.length;
  const [x, y] = [mean(0), mean(1)];
  const up = points.reduce((sum, one) => sum + (one[0] - x) * (one[1] - y), 0);
  return up / points.reduce((sum, one) => sum + (one[0] - x) ** 2, 0);
}
