/** What a number field takes, for whoever reads an expression typed into it. */
import type { DisplayUnit } from './display-units.ts';
import { type Dimension, exact, storedUnits } from './named-units.ts';
import { type QuantityName, quantities } from './quantities.ts';
import { type Rational, times } from './rational.ts';
import { displayUnit, isDifference } from './units.ts';

/** What a field takes, and how large one of its units is. */
export interface Target {
  readonly dimension: Dimension;
  /** Of what is stored. */
  readonly stored: Rational;
  /** Of what the field shows, and a bare number means. */
  readonly shown: Rational;
  /** What is stored where the field shows zero, in what is stored: of a scale of temperature alone. */
  readonly zero?: Rational;
  readonly symbol: string;
  /** A temperature on the scale of °C; otherwise a difference of temperatures, or neither. */
  readonly onScale: boolean;
}

/** Stored as so many per cent. */
const inPercent: ReadonlySet<QuantityName> = new Set(['percent']);

export function targetOf(
  name: QuantityName,
  { symbol, size: shown, zero }: DisplayUnit = displayUnit(name),
): Target {
  const { unit } = quantities[name];
  const [whole, dimension] = storedUnits[unit];
  const size = inPercent.has(name) ? times(whole, exact('0.01')) : whole;
  return {
    dimension,
    stored: size,
    shown: times(size, shown),
    ...(zero === undefined ? {} : { zero }),
    symbol,
    onScale: unit === '°C' && !isDifference(name),
  };
}
