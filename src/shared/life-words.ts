/** What is said of coupons under cycles, the same wherever it is said. */
import type { LifeFit, LifeSetReport, PowerLine } from './reports-coupons.ts';
import { sentence } from './words.ts';

/** 1e7 as the cases have it; small numbers as they are. */
export const cyclesText = (cycles: number): string =>
  cycles < 9999.5
    ? String(cycles < 9.95 ? Number(cycles.toPrecision(2)) : Math.round(cycles))
    : cycles.toExponential(1).replace('.0e', 'e').replace('e+', 'e');

/** Of yield. */
export const shareText = (share: number): string => share.toPrecision(3);

export const ratioText = (ratio: number): string => String(ratio).replace('-', '−');

const tidy = (value: number): string => String(Number(value.toPrecision(4)));

/** `share = 1.71·n^−0.12`. */
export const lineText = ({ coefficient, exponent }: PowerLine): string =>
  `share = ${tidy(coefficient)}·n^−${tidy(exponent)}`;

/** Where a line has this share of yield, cycles. */
export const lifeOnLine = ({ coefficient, exponent }: PowerLine, share: number): number =>
  (share / coefficient) ** (-1 / exponent);

export const shareOnLine = ({ coefficient, exponent }: PowerLine, cycles: number): number =>
  coefficient * cycles ** -exponent;

export const lifeMethodWords: Readonly<Record<LifeFit['method'], string>> = {
  'least-squares': 'least squares: all have failed',
  'censored-likelihood': 'most likely line, a run-out counted as a life beyond its end',
};

const amount = (n: number, what: string): string => `${n} ${what}${n === 1 ? '' : 's'}`;

/** `12 failures, 3 run-outs`. */
export const livesCounted = (lines: readonly { readonly runOut: boolean }[]): string => {
  const out = lines.filter(({ runOut }) => runOut).length;
  return `${amount(lines.length - out, 'failure')}, ${amount(out, 'run-out')}`;
};

/**
 * Lives at which the line keeps to what was tested: among the shares, no shorter than a cycle and no longer
 * than the longest test; the second below the first where there is none.
 */
export function reachOf(
  line: PowerLine,
  { shares, longest }: LifeFit,
): readonly [from: number, to: number] {
  const [low, high] = shares;
  return [Math.max(1, lifeOnLine(line, high)), Math.min(longest, lifeOnLine(line, low))];
}

/** What the set comes to, in one sentence. */
export function lifeAnswer({ fit, why }: LifeSetReport): string {
  if (!fit) return `No S-N line. ${sentence(why)}`;
  const { median, bound } = fit;
  if (!median || !bound) {
    return 'No S-N line. The lives do not fall as the stress rises: look at the results.';
  }
  const [from, to] = reachOf(bound, fit);
  if (!(to > from)) {
    return 'The line below the 90 % bound lies outside of what was tested: too few results, or too much scatter.';
  }
  // A round number of cycles that was tested, where there is one.
  const decade = 10 ** Math.floor(Math.log10(to));
  const at = decade >= from ? decade : to;
  return `At ${cyclesText(at)} cycles the line below the 90 % bound has a peak shear of ${shareText(shareOnLine(bound, at))} of yield; half of the coupons last that long at ${shareText(shareOnLine(median, at))}.`;
}

export const boundMeans =
  'Bound: 90 of 100 coupons last longer, with 95 % confidence. The line to be taken has the slope of the median and lies nowhere above the bound among the stresses tested.';

/** The S-N plot for whoever does not see it. */
export function lifeAlt({ lines, fit }: LifeSetReport): string {
  const drawn = lines.flatMap(({ share, cycles }) => (share === null ? [] : [{ share, cycles }]));
  if (drawn.length === 0) return 'There is no result to draw.';
  const span = (values: readonly number[], text: (value: number) => string): string =>
    `${text(Math.min(...values))} to ${text(Math.max(...values))}`;
  const shares = span(
    drawn.map((one) => one.share),
    shareText,
  );
  const cycles = span(
    drawn.map((one) => one.cycles),
    cyclesText,
  );
  const told = `S-N plot of ${livesCounted(lines)}: peak shear over yield ${shares} against ${cycles} cycles.`;
  if (!fit) return `${told} No line is fitted.`;
  const [first, last] = [fit.curve.at(-1)!, fit.curve[0]!];
  const ends = (key: 'median' | 'bound'): string =>
    `${cyclesText(first[key])} cycles at ${shareText(first.share)} to ${cyclesText(last[key])} at ${shareText(last.share)}`;
  return `${told} The median goes from ${ends('median')}, the bound from ${ends('bound')}.`;
}

/** Fewer failures than five hardly hold a line of lives. */
const NEXT_OF_FEW: Readonly<Record<number, string>> = { 3: 'a fourth', 4: 'a fifth' };

/** What is to be said of a line from few failures; empty where they are enough. */
export function fewFailures({ failures }: Pick<LifeFit, 'failures'>): string {
  const next = NEXT_OF_FEW[failures];
  return next ? `From ${failures} failures: the bound is wide and ${next} can move it far.` : '';
}
