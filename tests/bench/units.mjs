/** Figures in words. */

/** @param {number} ms */
export const time = (ms) => {
  if (ms < 0.1) return `${(1000 * ms).toPrecision(3)} µs`;
  return ms < 1000 ? `${ms.toPrecision(3)} ms` : `${(ms / 1000).toPrecision(3)} s`;
};

/** @param {number | null} count */
export const bytes = (count) => {
  if (count === null) return 'not counted';
  return count < 1e6 ? `${(count / 1e3).toPrecision(3)} kB` : `${(count / 1e6).toPrecision(3)} MB`;
};
