/** Figures of reports in the units on the screen: to be read, not to be stored. */
import { type DisplayUnit, type Measure, presets, unitOfMeasure } from './display-units.ts';
import { shownUnits } from './shown-units.ts';

const unitOf = (measure: Measure): DisplayUnit => unitOfMeasure(shownUnits(), measure);

export const symbolOf = (measure: Measure): string => unitOf(measure).symbol;

/** A figure of a report, or a place on an axis, in the unit on the screen. */
export function inShown(measure: Measure, value: number): number {
  const { scale, origin } = unitOf(measure);
  return (value - origin) / scale;
}

/** Back from an axis. */
export function fromShown(measure: Measure, shown: number): number {
  const { scale, origin } = unitOf(measure);
  return shown * scale + origin;
}

const isSi = (measure: Measure): boolean =>
  unitOf(measure).symbol === unitOfMeasure(presets.SI, measure).symbol;

/** Without its last digits: of two equal stresses that lie between two figures both are to read alike. */
export const withoutNoise = (value: number): number => Number(value.toPrecision(12));

/** In whole digits no more than one reads, in powers never. */
const MOST_DECIMALS = 5;

/** Three significant figures, never in powers: for readouts and labels beside a drawing. */
export function figure(value: number, most = 2): string {
  const size = Math.abs(value);
  const first = size >= 1 || most <= 2 || size === 0 ? 0 : -Math.floor(Math.log10(size));
  const decimals = size >= 100 ? 0 : size >= 10 ? 1 : Math.min(most, 2 + first);
  const text = withoutNoise(size).toFixed(decimals);
  return (value < 0 && Number(text) !== 0 ? '−' : '') + text;
}

/** Three significant figures in the unit on the screen. */
export const figureOf = (measure: Measure, value: number): string =>
  isSi(measure) ? figure(inShown(measure, value)) : figure(inShown(measure, value), MOST_DECIMALS);

export const figureText = (measure: Measure, value: number): string =>
  `${figureOf(measure, value)} ${symbolOf(measure)}`;

/** As many decimals as tell apart what so many of the stored unit do. */
export const decimalsOf = (measure: Measure, stored: number): number =>
  Math.max(0, stored + Math.ceil(Math.log10(unitOf(measure).scale) - 1e-9));

/** @param decimals that it would have in the stored unit */
export function fixedOf(measure: Measure, value: number, decimals: number): string {
  const shown = inShown(measure, value);
  const text = withoutNoise(Math.abs(shown)).toFixed(decimalsOf(measure, decimals));
  return (shown < 0 ? '−' : '') + text;
}

/** As it stands in the document, where it is shown in that unit; else short enough to be read. */
export function plainOf(measure: Measure, value: number): string {
  const { scale, origin } = unitOf(measure);
  const shown =
    scale === 1 && origin === 0 ? value : Number(inShown(measure, value).toPrecision(5));
  return String(shown).replace('-', '−');
}

export const plainText = (measure: Measure, value: number): string =>
  `${plainOf(measure, value)} ${symbolOf(measure)}`;

/** `12.4 mm`, `0.488 in`: a place or a length, as a sentence has it. */
export const lengthText = (value: number): string =>
  `${fixedOf('length', value, 1)} ${symbolOf('length')}`;
