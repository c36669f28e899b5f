/** Figures in words. */

/** @param {number} ms */
export const time = (ms) => {
  if (ms < 0.1) return `${(1000 * ms).toPrecision(3)} µs`;
  return ms < 1000 ? `${ms.toPrecision(3)} ms` : `${(ms / 1000).toPrecision(3)} s`;
};

/** Of fewer runs than this a 95th percentile says nothing. */
const FEW = 20;

/**
 * @param {number} runs
 * @param {number} ms
 */
export const percentile = (runs, ms) => (runs < FEW ? '–' : time(ms));

/** What is aimed at, and by how much it is missed.
 * @param {number} value
 * @param {number} most
 */
export const met = (value, most) => {
  const ratio = value / most;
  return ratio <= 1
    ? 'met'
    : `missed: ${ratio < 10 ? ratio.toFixed(1) : Math.round(ratio)} times as long`;
};

/** @param {number} count */
export const bytes = (count) => {
  const [unit, name] = count < 1e6 ? [1e3, 'kB'] : count < 1e9 ? [1e6, 'MB'] : [1e9, 'GB'];
  return `${(count / unit).toPrecision(3)} ${name}`;
};
