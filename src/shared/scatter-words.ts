/** What the screens and the terminal say about scatter, in one place, so that both say it alike. */
import { plainText } from './measures.ts';
import type {
  InputTolerance,
  LowestMargin,
  MattersReport,
  ScatterCheck,
  ScatterReport,
} from './reports-scatter.ts';
import { signed } from './words.ts';

/** 100 000, with narrow spaces that do not break. */
export const grouped = (count: number): string =>
  String(count).replace(/\B(?=(\d{3})+(?!\d))/g, '\u202F');

/** A share in per cent with two significant figures: `0.037 %`; near all of it, `99.35 %`. */
export function percent(share: number): string {
  if (share === 0) return '0 %';
  if (share === 1) return '100 %';
  // Towards 100 % the digits that differ from it count.
  const open = Math.min(share, 1 - share);
  const decimals = Math.max(0, 1 - Math.floor(Math.log10(100 * open)));
  return `${(100 * share).toFixed(Math.min(decimals, 8))} %`;
}

/** A difference of margins, two significant figures. */
export function difference(value: number): string {
  const size = Math.abs(value);
  if (size === 0) return '0';
  const decimals = Math.max(0, 1 - Math.floor(Math.log10(size)));
  return `${value < 0 ? '−' : ''}${size.toFixed(Math.min(decimals, 8))}`;
}

const confidenceText = (confidence: number): string =>
  `with ${Number((100 * confidence).toPrecision(6))} % confidence`;

/** `37 of 100 000 samples fall below zero: 0.037 %, between 0.026 % and 0.051 % with 95 % confidence.` */
export function belowSentence({ below, samples, confidence, check }: ScatterReport): string {
  const { count, share, low, high } = below;
  const sure = confidenceText(confidence);
  if (count === 0 && low === 0) {
    return `None of ${grouped(samples)} samples falls below zero: the share is below ${percent(high)} ${sure}.`;
  }
  const about = check && check.recomputed < check.inBand ? 'About ' : '';
  const verb = count === 1 ? 'falls' : 'fall';
  return `${about}${grouped(count)} of ${grouped(samples)} samples ${verb} below zero: ${percent(share)}, between ${percent(low)} and ${percent(high)} ${sure}.`;
}

const fitText = ({ points, checked, largest, rms }: ScatterCheck): string =>
  `Samples go through surfaces fitted to ${grouped(points)} evaluations of the full model; at ${checked} of them computed by it the margin is off by at most ${difference(largest)}, ${difference(rms)} rms`;

/** How good the surfaces are, and what was done about it. */
export function checkSentences(report: ScatterReport): string[] {
  const { check, samples } = report;
  if (!check) return [`Each of ${grouped(samples)} samples is computed by the full model.`];
  const { weakest, band, inBand, recomputed, left } = check;
  const near =
    inBand === 0
      ? `No further sample lies within ${difference(band)} of zero.`
      : recomputed === inBand
        ? `All ${grouped(inBand)} further samples within ${difference(band)} of zero are computed by the full model.`
        : `Of ${grouped(inBand)} further samples within ${difference(band)} of zero ${grouped(recomputed)}, chosen at random, are computed by the full model; the confidence limits allow for the rest.`;
  return [
    `${fitText(check)}; among the ${weakest.checked} weakest by at most ${difference(weakest.largest)}.`,
    near,
    ...(left.length === 0
      ? []
      : [
          `Not followed by a surface, for it jumps or is missing somewhere: ${left.join('; ')}. Where it governs the margin is too high: let each sample be computed.`,
        ]),
  ];
}

/** `5th percentile +0.123 (+0.121 … +0.126)`: limits of many samples lie close together. */
export const percentileText = ({
  share,
  value,
  low,
  high,
}: ScatterReport['percentiles'][number]): string =>
  `${ordinal(Math.round(100 * share))} percentile ${signed(value, 3)} (${signed(low, 3)} … ${signed(high, 3)})`;

const ordinal = (n: number): string =>
  `${n}${n === 1 ? 'st' : n === 2 ? 'nd' : n === 3 ? 'rd' : 'th'}`;

export const distributionWords = {
  normal: 'normal',
  uniform: 'uniform',
  triangular: 'triangular',
} as const;

export const originWords: Readonly<Record<InputTolerance['origin'], string>> = {
  project: 'from the project',
  joint: "the joint's own",
  typical: 'typical, from memory',
};

const plain = (value: number): string => String(Number(value.toPrecision(6)));

/** Sizes vary by little, whatever they are. */
export const spreadMeasures = { mm: 'small', '°C': 'difference' } as const;

/** A change of an input in its unit: `+0.5 mm`, `−12 %`. */
export function changeText(value: number, unit: InputTolerance['unit']): string {
  const sign = value < 0 ? '−' : value > 0 ? '+' : '';
  const size = Math.abs(value);
  if (unit === '1') return `${sign}${plain(100 * size)} %`;
  return `${sign}${plainText(spreadMeasures[unit], Number(plain(size)))}`;
}

/** `± 0.5 mm, uniform`, `standard deviation 5 %`; an offset that runs from 0 says so. */
export function toleranceText({ distribution, spread, middle, unit }: InputTolerance): string {
  const size = changeText(spread, unit).replace('+', '');
  if (distribution === 'normal') return `standard deviation ${size}`;
  if (middle !== 0) {
    return `${distributionWords[distribution]}, ${changeText(middle - spread, unit)} … ${changeText(middle + spread, unit) || '0'}`;
  }
  return `± ${size}, ${distributionWords[distribution]}`;
}

export const lowestText = ({ label, caseName }: LowestMargin): string => `${label}, ${caseName}`;

/** Where the study starts from, beside the margin that the list of margins shows. */
export const middleSentence = ({ middle, own }: Pick<MattersReport, 'middle' | 'own'>): string =>
  `With every input in its middle the lowest margin is ${signed(middle.margin)} (${lowestText(middle)}); the joint's own, with its worst gap and all knockdowns, is ${signed(own.margin)}.`;
