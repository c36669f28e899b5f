/**
 * From lives of coupons to the S-N line of their adhesive: what would be written, why nothing can be, whether
 * what stands is of these coupons as they are, and how far it reaches beyond them.
 */

import { cyclesText, lineText, livesCounted, ratioText, reachOf, shareText } from './life-words.ts';
import type { Adhesive, Project } from './project.ts';
import { quantities } from './quantities.ts';
import type { LifeFit, LifeSetReport, PowerLine } from './reports-coupons.ts';
import { inSi } from './shown-units.ts';
import { environment } from './words.ts';

export type SnLine = NonNullable<Adhesive['fatigue']>;

/** How the source of a line begins that was taken from a set; the id stays when the set is renamed. */
const beginning = (setId: string): string => `Coupons under cycles, set ${setId}:`;
const MOST_LETTERS = 400;
/** Solved anew from the same coupons, a line differs by rounding alone. */
const ROUNDING = 1e-9;

const within = (value: number, { min, max }: { readonly min: number; readonly max: number }) =>
  value >= min && value <= max;

/** Why no line can be taken from these coupons; empty where one can. */
export function notTaken({ fit, why }: LifeSetReport): string {
  if (!fit) return why;
  if (!fit.bound) return 'The lives do not fall as the stress rises.';
  const { coefficient, exponent } = fit.bound;
  const { fatigueCoefficient, fatigueExponent } = quantities;
  const outside = (what: string, { min, max }: { min: number; max: number }): string =>
    `The line is ${lineText(fit.bound!)}; its ${what} must lie between ${min} and ${max} in a project. Test over more stresses, or look at the results.`;
  if (!within(coefficient, fatigueCoefficient)) return outside('coefficient', fatigueCoefficient);
  return within(exponent, fatigueExponent) ? '' : outside('exponent', fatigueExponent);
}

/**
 * The line as the project has it.
 * @param days when they were tested (left out where it is not known) and when it is taken
 */
export function snLineOf(
  report: LifeSetReport,
  days: { readonly tested: string | undefined; readonly taken: string },
): SnLine | null {
  const { fit, setId, specimen, temperature, moisture, gap, ratio, lines } = report;
  if (!fit?.bound || notTaken(report) !== '') return null;
  const [low, high] = fit.shares;
  const piece = specimen.standard === '' ? specimen.name : `${specimen.name}, ${specimen.standard}`;
  const tested = days.tested === undefined ? '' : `tested ${days.tested}, `;
  const figures = `${inSi(() => environment(temperature, moisture))}, gap ${gap} mm, load ratio ${ratioText(ratio)}; below the 90 % bound with 95 % confidence, shares ${shareText(low)} to ${shareText(high)}, up to ${cyclesText(fit.longest)} cycles; ${tested}taken ${days.taken}.`;
  const text = `${beginning(setId)} ${livesCounted(lines)}, ${figures}`;
  const withPiece = `${text} Specimen: ${piece}.`;
  const { coefficient, exponent } = fit.bound;
  return {
    coefficient,
    exponent,
    ratio,
    source: { kind: 'tested', text: withPiece.length > MOST_LETTERS ? text : withPiece },
  };
}

/**
 * `same`: what stands is the line of these coupons; `changed`: it was taken from them as they or their
 * adhesive were before; `other`: it is from elsewhere.
 */
export type Standing = 'none' | 'same' | 'changed' | 'other';

const alike = (a: number, b: number): boolean =>
  Math.abs(a - b) <= ROUNDING * Math.max(Math.abs(a), Math.abs(b));

export function standingOf(now: SnLine | undefined, report: LifeSetReport): Standing {
  if (!now) return 'none';
  if (!now.source.text.startsWith(beginning(report.setId))) return 'other';
  const bound = report.fit?.bound;
  return bound &&
    alike(bound.coefficient, now.coefficient) &&
    alike(bound.exponent, now.exponent) &&
    now.ratio === report.ratio
    ? 'same'
    : 'changed';
}

/** What of the line no coupon has shown. */
export function reachText(line: PowerLine, fit: LifeFit): string {
  const [low, high] = fit.shares;
  const tested = `Tested were shares of ${shareText(low)} to ${shareText(high)}, up to ${cyclesText(fit.longest)} cycles`;
  const [from, to] = reachOf(line, fit);
  return to > from
    ? `${tested}: the line keeps to them from ${cyclesText(from)} to ${cyclesText(to)} cycles. Beyond either it is drawn on, which no coupon has shown.`
    : `${tested}: the line lies wholly outside them, which no coupon has shown.`;
}

export interface Beyond {
  readonly name: string;
  readonly cycles: number;
}

/** Cyclic cases of joints with this adhesive that ask for lives outside of what was tested. */
export function casesBeyond(
  { joints, loadCases }: Pick<Project, 'joints' | 'loadCases'>,
  adhesive: string,
  line: PowerLine,
  fit: LifeFit,
): readonly Beyond[] {
  const used = new Set(
    joints
      .filter((joint) => joint.adhesive === adhesive)
      .flatMap(({ loads }) => loads.map((load) => load.case)),
  );
  const [from, to] = reachOf(line, fit);
  return loadCases.flatMap((one) =>
    one.kind === 'cyclic' && used.has(one.id) && !(one.cycles >= from && one.cycles <= to)
      ? [{ name: one.name, cycles: one.cycles }]
      : [],
  );
}

/** What it is a share of. */
export const shareOfText = ({ temperature, moisture }: LifeSetReport): string =>
  `A share of the adhesive’s yield as its own rows have it at ${environment(temperature, moisture)}, without knockdowns; margins take the same share of the yield at each case’s own temperature and moisture, after all knockdowns.`;

export const goodmanText =
  'As margins carry it over: toward a lower ratio the amplitude is kept, toward a higher one Goodman’s line is taken with yield as the static strength. An approximation made for metals that bonds are seen to lie on either side of: nothing replaces tests at the ratio of service.';
