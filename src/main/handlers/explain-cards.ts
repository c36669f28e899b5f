/** From a step of the model's working to a card: values put in, domains beside it. */
import type { Equation, Step } from '../../model/card.ts';
import type { Domain } from '../../model/validity/domains.ts';
import type { Card, CardValue } from '../../shared/reports.ts';

const DIGITS = 6;

/** Six significant digits, as a formula can hold them. */
export function written(value: number): string {
  const text = String(Number(value.toPrecision(DIGITS)));
  return text.replace('e+', 'e');
}

/** A formula with its values put in; what is negative stands in brackets. */
export function fill(formula: string, values: Readonly<Record<string, number>>): string {
  return formula.replace(/[A-Za-z_]\w*/g, (name, at: number) => {
    const value = Object.hasOwn(values, name) ? values[name] : undefined;
    // The e of a power of ten belongs to its number.
    if (value === undefined || /\d$/.test(formula.slice(0, at))) return name;
    return value < 0 ? `(${written(value)})` : written(value);
  });
}

const valuesOf = ({ symbols }: Equation, values: Readonly<Record<string, number>>): CardValue[] =>
  symbols.map(({ symbol, label, unit }) => ({ symbol, label, unit, value: values[symbol]! }));

/** The last card, the figure's own, carries every domain; the others those that they rest on. */
export function cardsOf(steps: readonly Step[], domains: readonly Domain[]): Card[] {
  return steps.map(({ equation, values, result }, i) => {
    const { id, title, statement, formula, source } = equation;
    const own =
      i === steps.length - 1
        ? domains
        : domains.filter(({ code }) => equation.domains.includes(code));
    return {
      id,
      title,
      statement,
      formula: `${equation.result.symbol} = ${formula}`,
      filled: `${equation.result.symbol} = ${fill(formula, values)}`,
      values: valuesOf(equation, values),
      result: { ...equation.result, value: result },
      source,
      domain: own.map(({ text, inside }) => ({ text, inside })),
    };
  });
}
