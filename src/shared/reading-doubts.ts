/** Single readings that look wrong: inches, radii, slips of the point or of two digits, strays. */
import type { MeasuredSurface } from './project.ts';
import type { Mistake } from './reports-gap.ts';
import { tidy } from './vary-joint.ts';

/** How far a reading may be from the drawing and still be the same part, share. */
const SAME_PART = 0.03;
/** mm: what a part may be off its drawing before it is doubted. */
const OFF_DRAWING = 0.5;
/** mm: an ordinary tube is less out of round than this. */
const ORDINARY = 0.15;

interface Doubt {
  readonly code: Mistake['code'];
  readonly message: string;
  readonly meant: number | null;
}

const figure = (value: number): string => String(Number(value.toFixed(4)));

const median = (list: readonly number[]): number => {
  const sorted = [...list].sort((a, b) => a - b);
  const half = sorted.length / 2;
  return sorted.length % 2 === 1
    ? sorted[Math.floor(half)]!
    : (sorted[half - 1]! + sorted[half]!) / 2;
};

/** The reading with two neighbouring digits exchanged, in every way that changes it. */
function swaps(value: number): readonly number[] {
  // Two decimals at least: what was typed as 40.2 may have been meant as 40.02.
  const text = value.toFixed(Math.max(2, (String(value).split('.')[1] ?? '').length));
  const places = [...text].flatMap((character, i) => (character === '.' ? [] : [i]));
  return places.slice(1).flatMap((place, k) => {
    const before = places[k]!;
    if (text[before] === text[place]) return [];
    const digits = [...text];
    [digits[before], digits[place]] = [digits[place]!, digits[before]!];
    return [Number(digits.join(''))];
  });
}

function ofSlip(value: number, near: (guess: number) => boolean): Doubt | null {
  const typed = figure(value);
  const slips: readonly (readonly [Mistake['code'], number, string])[] = [
    ['inch', 25.4, `${typed} looks like inches`],
    ['radius', 2, `${typed} looks like a radius`],
    ['decimal-point', 10, `${typed}: has the point slipped`],
    ['decimal-point', 0.1, `${typed}: has the point slipped`],
    ['decimal-point', 100, `${typed}: has the point slipped`],
    ['decimal-point', 0.01, `${typed}: has the point slipped`],
    ['decimal-point', 1000, `${typed}: has the point slipped`],
    ['decimal-point', 0.001, `${typed}: has the point slipped`],
  ];
  for (const [code, factor, text] of slips) {
    const meant = tidy(value * factor);
    if (near(meant)) return { code, meant, message: `${text}: ${figure(meant)} mm?` };
  }
  return null;
}

const ofSwap = (value: number, near: (guess: number) => boolean): Doubt | null => {
  const meant = swaps(value).find(near);
  return meant === undefined
    ? null
    : {
        code: 'swapped-digits',
        meant,
        message: `${figure(value)}: are two digits exchanged: ${figure(meant)} mm?`,
      };
};

/**
 * @param others readings of the same surface but this one
 * @param drawn diameter by the drawing, mm
 * @param gap of the bond by the drawing, mm: what matters here is a share of it
 */
function doubtOf(
  value: number,
  others: readonly number[],
  drawn: number,
  gap: number,
): Doubt | null {
  const nearDrawn = (guess: number): boolean => Math.abs(guess - drawn) <= SAME_PART * drawn;
  // Of another part altogether: no other reading is needed to see it.
  if (!nearDrawn(value)) {
    const slip =
      ofSlip(value, nearDrawn) ??
      ofSwap(value, (guess) => Math.abs(guess - drawn) <= Math.max(1, OFF_DRAWING));
    if (slip) return slip;
  }
  const kin = others.filter(nearDrawn);
  if (kin.length >= 2) {
    const middle = median(kin);
    const usual = median(kin.map((other) => Math.abs(other - middle)));
    const allowed = Math.max(ORDINARY, gap / 2, 5 * usual);
    const off = value - middle;
    if (Math.abs(off) <= allowed) return null;
    const closer = (guess: number): boolean =>
      Math.abs(guess - middle) <= Math.max(3 * usual, ORDINARY / 2);
    return (
      ofSwap(value, closer) ?? {
        code: 'stands-off',
        meant: null,
        message: `${figure(value)} mm is ${figure(Math.abs(off))} mm ${off > 0 ? 'above' : 'below'} the others: measure it again.`,
      }
    );
  }
  const off = Math.abs(value - drawn);
  if (off <= Math.max(OFF_DRAWING, 2 * gap)) return null;
  return (
    ofSwap(value, (guess) => Math.abs(guess - drawn) <= OFF_DRAWING) ?? {
      code: 'far-from-drawing',
      meant: null,
      message: `${figure(value)} mm is far from the drawing, ${figure(drawn)} mm: is it the right part?`,
    }
  );
}

/** One doubt at most for each reading; none for those that were confirmed. */
export function doubtsOf(
  { surface, diameters, confirmed = [] }: MeasuredSurface,
  drawn: number,
  gap: number,
): readonly Mistake[] {
  const read = diameters.flatMap((row, i) =>
    row.flatMap((value, j) => (value === null ? [] : [{ value, i, j }])),
  );
  return read.flatMap(({ value, i, j }, k) => {
    if (confirmed.some(([station, clocking]) => station === i && clocking === j)) return [];
    const others = read.flatMap((other, at) => (at === k ? [] : [other.value]));
    const doubt = doubtOf(value, others, drawn, gap);
    if (!doubt) return [];
    return [{ surface, at: [i, j] as const, level: 'doubt' as const, ...doubt }];
  });
}
