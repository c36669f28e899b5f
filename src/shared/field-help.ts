/** What is said of a field: what it is, where it comes from, what is usual, in the units of the screen. */
import { type ChoiceName, choiceHelp } from './choice-help.ts';
import { type QuantityName, quantities } from './quantities.ts';
import { quantityHelp, type Usual } from './quantity-help.ts';
import { displayUnit, inDisplayUnit } from './units.ts';

export interface FieldHelp {
  readonly what: string;
  readonly whereFrom: string;
  readonly usual: string;
  /** What the project file takes at all; of numbers alone. */
  readonly allowed?: string;
}

/** Where a field is a special case of its quantity. */
export interface QuantityField {
  readonly help?: string;
  readonly usual?: Usual;
}

/** Three figures are enough of what is usual; powers where zeros would have to be counted. */
function brief(name: QuantityName, value: number): string {
  const shown = Number(inDisplayUnit(name, value).toPrecision(3));
  const size = Math.abs(shown);
  const text =
    size !== 0 && (size >= 1e5 || size < 1e-3)
      ? shown.toExponential().replace('e+', 'e')
      : String(shown);
  return text.replaceAll('-', '−');
}

function between(name: QuantityName, from: number, to: number): string {
  const { symbol } = displayUnit(name);
  const ends = `${brief(name, from)} to ${brief(name, to)}`;
  return symbol === '' ? ends : `${ends} ${symbol}`;
}

export const usualOf = (name: QuantityName, { usual }: QuantityField = {}): Usual =>
  usual ?? quantityHelp[name].usual;

export function helpOfNumber(name: QuantityName, field: QuantityField = {}): FieldHelp {
  const { min, max, help } = quantities[name];
  const usual = usualOf(name, field);
  return {
    what: field.help ?? help,
    whereFrom: quantityHelp[name].whereFrom,
    usual: typeof usual === 'string' ? usual : `Usually ${between(name, usual.from, usual.to)}.`,
    allowed: `Taken from ${between(name, min, max)}.`,
  };
}

export const helpOfChoice = (name: ChoiceName): FieldHelp => choiceHelp[name];

/** Outside of the usual range, but taken: worth a second look. Null where there is nothing to say. */
export function unusual(
  name: QuantityName,
  value: number | undefined,
  field: QuantityField = {},
): string | null {
  const usual = usualOf(name, field);
  const { min, max } = quantities[name];
  if (value === undefined || typeof usual === 'string') return null;
  if (value < min || value > max || (value >= usual.from && value <= usual.to)) return null;
  return `unusual: usually ${between(name, usual.from, usual.to)}`;
}
