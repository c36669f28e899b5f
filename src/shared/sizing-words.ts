/** What is said of a sizing, on the page and on the terminal alike. */

import { plainText } from './measures.ts';
import type { JointType } from './project.ts';
import type { Margin } from './reports.ts';
import type {
  SizesReport,
  SizingReport,
  SizingSuggestion,
  SuggestionKind,
} from './reports-sizing.ts';
import { withUnit } from './units.ts';
import type { Vary } from './vary-joint.ts';
import { caseText, gapWords, modeAndPlace, signed } from './words.ts';

export interface VaryWords {
  /** On a button. */
  readonly title: string;
  readonly noun: string;
  readonly smallest: string;
  readonly more: string;
  readonly less: string;
  /** What exactly varies. */
  readonly note: string;
}

export const varyWords: Readonly<Record<Vary, VaryWords>> = {
  overlap: {
    title: 'Overlap',
    noun: 'overlap',
    smallest: 'shortest',
    more: 'more overlap',
    less: 'less overlap',
    note: 'All else as it is.',
  },
  'sleeve-wall': {
    title: 'Sleeve wall',
    noun: 'sleeve wall',
    smallest: 'thinnest',
    more: 'a thicker sleeve wall',
    less: 'a thinner sleeve wall',
    note: 'Thickness at the root; the taper keeps its ratio, and a second wall its ratio to the first.',
  },
  'tube-wall': {
    title: 'Tube wall',
    noun: 'tube wall',
    smallest: 'thinnest',
    more: 'a thicker tube wall',
    less: 'a thinner tube wall',
    note: 'The outside diameter stays; of a tube over a spigot alone the bore stays.',
  },
  gap: {
    title: 'Gap',
    noun: 'gap',
    smallest: 'thinnest',
    more: 'a thicker gap',
    less: 'a thinner gap',
    note: 'Both bonds take the same gap; its tolerance stays.',
  },
};

export const suggestionWords: Readonly<Record<SuggestionKind, string>> = {
  overlap: 'more overlap',
  'sleeve-wall': 'a thicker sleeve wall',
  taper: 'a thinner wall at the mouth',
  'thinner-gap': 'a thinner gap',
  'thicker-gap': 'a thicker gap',
  'tube-wall': 'a thicker tube wall',
  'double-lap': 'a double lap',
};

/** Flat joints have a plate or straps for a sleeve, and a strip for a tube. */
export function inWordsOf(type: JointType, text: string): string {
  if (type !== 'flat-single' && type !== 'flat-double') return text;
  const outer = type === 'flat-single' ? 'plate' : 'strap';
  return text
    .replaceAll('sleeve wall', outer)
    .replaceAll('Sleeve wall', outer === 'plate' ? 'Plate' : 'Straps')
    .replaceAll('tube wall', 'strip')
    .replaceAll('Tube wall', 'Strip');
}

export const varyQuantity = (vary: Vary): 'overlap' | 'gap' | 'wall' =>
  vary === 'overlap' || vary === 'gap' ? vary : 'wall';

/** Written in the unit of what it is a step of. */
export const stepQuantity = (vary: Vary): 'step' | 'gapStep' =>
  vary === 'gap' ? 'gapStep' : 'step';

/** A size with the decimals that its step has, at least those of its field. */
export const sizeText = (vary: Vary, value: number): string => withUnit(varyQuantity(vary), value);

/** The case, with its condition, and the gap that a margin is reached in. */
export const stateText = ({ caseName, conditionName, gapState }: Margin): string =>
  `${caseText(caseName, conditionName)}, ${gapWords[gapState]}`;

/** What sets a margin, and where: `adhesive, yield, Gust, gap min`. */
export const setBy = (margin: Margin): string => `${margin.label}, ${stateText(margin)}`;

const asked = ({ target }: Pick<SizingReport, 'target'>): string =>
  `the target of ${signed(target)}`;

/** The answer in one plain sentence. */
export function sizingAnswer(report: SizingReport): string {
  const { found } = report;
  return inWordsOf(report.type, found ? foundText(report, found) : stopText(report));
}

function foundText(report: SizingReport, found: NonNullable<SizingReport['found']>): string {
  const { vary } = report;
  const { noun, smallest } = varyWords[vary];
  const text = (value: number): string => sizeText(vary, value);
  const { label, caseName, conditionName } = found.margin;
  const sets = `${label} in ${caseText(caseName, conditionName)}`;
  const lost =
    found.lostAt !== null && found.high === null
      ? ` It is missed again at ${text(found.lostAt)}.`
      : '';
  if (found.high !== null) {
    const ends = found.lowBounded && found.highBounded ? '' : ' of those that were looked at';
    const which =
      found.low === found.high
        ? `A gap of ${text(found.low)} alone${ends} reaches`
        : `Gaps from ${text(found.low)} to ${text(found.high)}${ends} reach`;
    return `${which} ${asked(report)} in every mode, case and gap; with the thickest the lowest margin is ${signed(found.margin.margin)}, ${sets}.`;
  }
  const lowest = `the lowest margin is ${signed(found.margin.margin)}, ${sets}`;
  if (!found.lowBounded) {
    return `${text(found.value)}, the ${smallest} ${noun} that was looked at, reaches ${asked(report)} already: ${lowest}.${lost}`;
  }
  return `${text(found.value)} is the ${smallest} ${noun} that reaches ${asked(report)} in every mode, case and gap: ${lowest}.${lost}`;
}

function stopText(report: SizingReport): string {
  const { stop, vary, from, to } = report;
  if (!stop) return '';
  const { noun, more, less } = varyWords[vary];
  const text = (value: number): string => sizeText(vary, value);
  const none = `No ${noun} from ${text(from)} to ${text(to)} reaches ${asked(report)}; the best is ${signed(stop.margin.margin)} at ${text(stop.best)}.`;
  const mode = modeAndPlace(stop.margin);
  if (stop.rising) {
    return `${none} ${mode} sets it, and the margin still rises at the end: look further.`;
  }
  // Level to the end, or lower there than at the best.
  const falls = stop.margin.margin - stop.endMargin.margin > 0.005;
  if (!falls) {
    return stop.levelFrom <= from
      ? `${none} ${mode} stops it: ${more} does not raise it.`
      : `${none} ${mode} stops it: past ${text(stop.levelFrom)} ${more} does not raise it.`;
  }
  const other =
    stop.endMargin.mode === stop.margin.mode
      ? ''
      : `, where ${lowered(modeAndPlace(stop.endMargin))} sets it at ${text(stop.end)}`;
  return stop.best <= from
    ? `${none} ${mode} stops it: ${more} lowers the margin${other}.`
    : `${none} ${mode} stops it: past ${text(stop.best)} ${more} lowers the margin${other}, and ${less} does too.`;
}

const lowered = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

/** `reaches the target with an overlap of 32.0 mm: +0.27`, `helps by 0.08, to +0.14 at 40.0 mm`. */
export function suggestionText(
  { vary, type }: Pick<SizingReport, 'vary' | 'type'>,
  suggestion: SizingSuggestion,
): string {
  const { reached, value, margin, gain } = suggestion;
  const size = sizeText(vary, value);
  const noun = vary === 'overlap' ? 'an overlap' : `a ${inWordsOf(type, varyWords[vary].noun)}`;
  return reached
    ? `reaches the target with ${noun} of ${size}: ${signed(margin)}`
    : `helps by ${gain.toFixed(2)}, to ${signed(margin)} at ${size}`;
}

/** The change and what comes of it, as one sentence. */
export const changeText = (report: SizingReport, suggestion: SizingSuggestion): string =>
  `${suggestion.change}: ${suggestionText(report, suggestion)}`;

/** What exactly was varied, as a sentence. */
export const varyNote = ({ vary, step, type }: SizingReport): string =>
  inWordsOf(
    type,
    `${varyWords[vary].title} in steps of ${plainText(vary === 'gap' ? 'small' : 'length', step)}. ${noteOf(vary, type)}`,
  );

const noteOf = (vary: Vary, type: JointType): string =>
  vary === 'tube-wall' && type.startsWith('flat') ? 'All else as it is.' : varyWords[vary].note;

/** `Tried and of no help: a thinner gap, a double lap.`; empty when all of them help. */
export const noHelpText = ({ noHelp, type }: Pick<SizingReport, 'noHelp' | 'type'>): string =>
  noHelp.length === 0
    ? ''
    : inWordsOf(
        type,
        `Tried and of no help: ${noHelp.map((kind) => suggestionWords[kind]).join(', ')}.`,
      );

/** What the sizes of a joint need, in one sentence. */
export function sizesAnswer(report: SizesReport): string {
  const { sizes, common, each, target } = report;
  const nameOf = (id: string): string => sizes.find(({ sizeId }) => sizeId === id)?.name ?? id;
  const refused = sizes.filter((size) => size.refused !== null).map(({ name }) => name);
  if (refused.length > 0) return `Not computed: ${refused.join(', ')}.`;
  const without = sizes.filter(({ overlap }) => overlap === null).map(({ name }) => name);
  if (without.length > 0) {
    return `No overlap reaches the target of ${signed(target)} in ${without.join(', ')}: size it on its own to see what stops it.`;
  }
  if (each) return `Each size reaches the target of ${signed(target)} with the overlap of its own.`;
  if (!common) return `No one overlap reaches the target of ${signed(target)} in every size.`;
  return `${sizeText('overlap', common.overlap)} for all reaches the target of ${signed(target)} in every size; ${nameOf(common.by)} asks for it.`;
}
