/** The shortest text of a stack among the usual forms: runs, ± pairs, one level of groups, repeats, s. */

/** Length, and a little for each item: [45_2/-45_2], not [45/±45/-45]. */
const cost = (text: string): number => text.length + text.split('/').length;

const shorter = (a: string, b: string): string => (cost(b) < cost(a) ? b : a);

const joined = (head: string, tail: string): string => (tail === '' ? head : `${head}/${tail}`);

/** How many times the `period` angles from `from` stand there in a row, up to `to`. */
function repeats(angles: readonly number[], from: number, period: number, to: number): number {
  let end = from + period;
  while (end < to && angles[end] === angles[end - period]) end++;
  return Math.floor((end - from) / period);
}

/** The smallest block whose repeats fill from..to. */
function smallestPeriod(angles: readonly number[], from: number, to: number): number {
  const n = to - from;
  for (let period = 1; 2 * period <= n; period++) {
    if (n % period === 0 && repeats(angles, from, period, to) === n / period) return period;
  }
  return n;
}

/** The shortest text from i on whose first item is an angle, a run of it, or a ± pair. */
function withAngle(
  angles: readonly number[],
  i: number,
  to: number,
  best: readonly string[],
): string {
  const angle = angles[i]!;
  const run = repeats(angles, i, 1, to);
  let found = joined(String(angle), best[i + 1]!);
  if (run > 1) found = shorter(found, joined(`${angle}_${run}`, best[i + run]!));
  if (angle !== 0 && i + 1 < to && angles[i + 1] === -angle) {
    const pair = `${angle > 0 ? '±' : '∓'}${Math.abs(angle)}`;
    found = shorter(found, joined(pair, best[i + 2]!));
  }
  return found;
}

/** Angles from..to without groups; `best[i]` is the shortest text from i on. */
function writeFlat(angles: readonly number[], from: number, to: number): string {
  const best: string[] = [];
  best[to] = '';
  for (let i = to - 1; i >= from; i--) best[i] = withAngle(angles, i, to, best);
  return best[from]!;
}

function writeList(angles: readonly number[]): string {
  const n = angles.length;
  const best: string[] = [];
  best[n] = '';
  for (let i = n - 1; i >= 0; i--) {
    let found = withAngle(angles, i, n, best);
    for (let period = 2; i + 2 * period <= n; period++) {
      const count = repeats(angles, i, period, n);
      // A block that repeats inside itself is shorter as its own smaller block.
      if (count < 2 || smallestPeriod(angles, i, i + period) < period) continue;
      const group = `(${writeFlat(angles, i, i + period)})${count}`;
      found = shorter(found, joined(group, best[i + period * count]!));
    }
    best[i] = found;
  }
  return best[0]!;
}

/** [block]n */
function writeRepeated(angles: readonly number[]): string {
  const period = smallestPeriod(angles, 0, angles.length);
  const count = angles.length / period;
  return `[${writeList(angles.slice(0, period))}]${count > 1 ? count : ''}`;
}

/** @param angles at least one, in the terms in which they shall read back */
export function writeAngles(angles: readonly number[]): string {
  const total = writeRepeated(angles);
  const last = angles.length - 1;
  const symmetric =
    angles.length % 2 === 0 && angles.every((angle, k) => angle === angles[last - k]);
  if (!symmetric || angles.every((angle) => angle === angles[0])) return total;
  const mirrored = `${writeRepeated(angles.slice(0, angles.length / 2))}s`;
  return mirrored.length <= total.length ? mirrored : total;
}
