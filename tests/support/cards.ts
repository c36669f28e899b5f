/** Evaluates the formula of a card with its values, and says how far rounding alone may take it. */
import { evaluate, parse } from 'mathjs/number';
import { expect } from 'vitest';
import type { Step } from '../../src/model/card.ts';

type Scope = Readonly<Record<string, number>>;

const said = (formula: string, scope: Scope): number => evaluate(formula, { ...scope }) as number;

const functions = new Set(['sqrt', 'abs', 'min', 'max', 'cos', 'sin', 'tanh', 'exp', 'pi']);

/** Names in a formula that are neither its symbols nor what any reader can work out. */
export function strangers(formula: string, symbols: readonly string[]): string[] {
  const names: string[] = [];
  parse(formula).traverse((node) => {
    if ('name' in node && typeof node.name === 'string') names.push(node.name);
  });
  return names.filter((name) => !functions.has(name) && !symbols.includes(name));
}

/** What a last digit in each value moves: differences of large terms cannot be closer than that. */
function rounding(formula: string, values: Scope, result: number): number {
  const step = 1e-7;
  const moves = Object.entries(values).map(([name, value]) => {
    const moved = said(formula, { ...values, [name]: value * (1 + step) });
    return Number.isFinite(moved) ? Math.abs(moved - result) / step : 0;
  });
  return 64 * Number.EPSILON * moves.reduce((sum, move) => sum + move, 0);
}

const RELATIVE = 1e-9;
/** Squares of rounding errors: zero in any unit. */
const NOTHING = 1e-60;

export function expectCard(
  { equation, values, result, criterion, near }: Step,
  where: string,
): void {
  const what = `${where}: ${equation.id}`;
  const given = `${equation.formula} with ${JSON.stringify(values)}`;
  const symbols = equation.symbols.map(({ symbol }) => symbol);
  expect(Object.keys(values).sort(), what).toEqual([...symbols].sort());
  expect(strangers(equation.formula, symbols), what).toEqual([]);
  for (const value of [...Object.values(values), result]) {
    expect(Number.isFinite(value), `${what}: ${given}`).toBe(true);
  }
  const own = said(equation.formula, values);
  const allowed =
    (near?.relative ?? RELATIVE) * Math.abs(result) +
    rounding(equation.formula, values, own) +
    NOTHING;
  if (!(Math.abs(own - result) <= allowed)) {
    expect.fail(
      `${what}: the formula gives ${own}, the model ${result}, allowed ${allowed}; ${given}`,
    );
  }
  if (criterion && !(Math.abs(result - criterion.target) <= criterion.tolerance)) {
    expect.fail(
      `${what}: ${result} is not ${criterion.target} to ${criterion.tolerance} (${criterion.why}); ${given}`,
    );
  }
}
