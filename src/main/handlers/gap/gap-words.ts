/** What a verdict says, one sentence for each finding, in the words of the bench. */
import type { Finding } from '../../../model/gap/types.ts';
import type { Bench } from '../../../shared/project.ts';
import type { Margin } from '../../../shared/reports.ts';
import type { BondGap, GapLimits, PlacedGap } from '../../../shared/reports-gap.ts';
import { caseText, signed } from '../../../shared/words.ts';

export interface Said {
  readonly bonds: readonly BondGap[];
  readonly limits: readonly GapLimits[];
  readonly bench: Bench | undefined;
  readonly measured: Margin | null;
  readonly guarded: Margin | null;
  readonly target: number;
}

const mm = (value: number): string => String(Number(value.toFixed(3))).replace('-', '−');
const within = (value: number | null, uncertainty: number | null): string =>
  `${mm(value ?? 0)} ± ${mm(uncertainty ?? 0)} mm`;

export const placeText = ({ x, theta }: PlacedGap): string =>
  `${Number(x.toFixed(1))} mm from the mouth, ${Math.round(theta) % 360}° from the mark`;

const spacerText = ({ bench }: Said): string =>
  bench?.spacer
    ? `the ${bench.spacer.size} mm ${bench.spacer.form === 'wire' ? 'wire' : 'beads'}`
    : 'the spacers';

const whose = {
  engineer: 'the limit set by the engineer',
  coupons: 'the range of the coupons',
  spacer: 'the size of the spacers',
} as const;

/** `the inner bond: ` where a joint has two. */
const bondText = ({ bonds }: Said, bond: number | null): string =>
  bond === null || bonds.length < 2 ? '' : `${bonds[bond]!.bond}: `;

/** The load case alone: what fails is for the engineer, who finds it beside the margin. */
const marginText = (margin: Margin | null): string =>
  margin ? `under “${caseText(margin.caseName, margin.conditionName)}”` : '';

/** Both with as many digits as tell them apart. */
function apart(value: number, target: number): string {
  const plain = signed(value) !== signed(target);
  const longer = (one: number): string => `${one < 0 ? '−' : '+'}${Math.abs(one).toFixed(5)}`;
  const say = plain ? signed : longer;
  return `${say(value)}, below the ${say(target)}`;
}

const FINER = 'Use a finer instrument, or have it decided by the engineer.';

function uncertainText(finding: Finding, said: Said): string {
  const { value, uncertainty, limit, against, bond } = finding;
  const shown = within(value, uncertainty);
  const at = mm(limit ?? 0);
  const place = bond === null ? null : said.bonds[bond]!;
  switch (against) {
    case 'spacer':
      return `it cannot be told whether ${spacerText(said)} fits: the gap is ${shown} at ${placeText(place!.centred.min)}. ${FINER}`;
    case 'from':
      return `it cannot be told whether the gap is thick enough: ${shown} may be below ${at} mm, ${whose[said.limits[bond!]!.fromBy!]}. ${FINER}`;
    case 'to':
      return `it cannot be told whether the gap is thin enough: ${shown} may be above ${at} mm, ${whose[said.limits[bond!]!.toBy!]}. ${FINER}`;
    default:
      return `it cannot be told whether the joint is strong enough at this gap: within the uncertainty the margin may be ${apart(value ?? 0, said.target)} asked for, ${marginText(said.guarded)}. ${FINER}`;
  }
}

function textOf(finding: Finding, said: Said): string {
  const { code, bond, value, uncertainty, limit } = finding;
  const place = bond === null ? null : said.bonds[bond]!;
  const shown = within(value, uncertainty);
  switch (code) {
    case 'inside':
      return 'the gap is within its limits and the joint is strong enough at it.';
    case 'reading':
      return `${value === 1 ? 'a reading looks' : `${value} readings look`} wrong: measure again, or confirm what is right.`;
    case 'does-not-fit':
      return `the parts do not go together: at ${placeText(place!.centred.min)} there is ${shown} between them.`;
    case 'below-spacer':
      return `the gap is too thin for ${spacerText(said)}: ${shown} at ${placeText(place!.centred.min)}.`;
    case 'below-range':
      return `the gap is too thin: ${shown} at ${placeText(place!.held.min)}, below ${mm(limit!)} mm, ${whose[said.limits[bond!]!.fromBy!]}.`;
    case 'above-range':
      return `the gap is too thick: ${shown} at ${placeText(place!.held.max)}, above ${mm(limit!)} mm, ${whose[said.limits[bond!]!.toBy!]}.`;
    case 'margin':
      return value! < 0
        ? `at this gap the joint fails: its margin is ${signed(value!)} ${marginText(said.measured)}.`
        : `at this gap the joint is not strong enough: its margin is ${apart(value!, said.target)} asked for, ${marginText(said.measured)}.`;
    case 'uncertain':
      return uncertainText(finding, said);
    case 'not-held':
      return 'nothing holds the tube off the sleeve: on one side they can touch. Use spacers or a jig, and have them set for this joint.';
    case 'unseen':
      return 'too little is measured to tell: an oval or an end of the joint can lie between the readings. Measure at 0°, 60° and 120°, near both ends and in the middle.';
    case 'no-range':
      return 'no gap is qualified for this adhesive: there are no coupons at any gap and no limits are set.';
  }
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

export const sayFinding = (finding: Finding, said: Said): string =>
  capital(bondText(said, finding.bond) + textOf(finding, said));
