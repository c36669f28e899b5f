/**
 * An equation as data, beside the function that computes it: what it says, in which symbols, from
 * where. The working of a figure is a chain of them with values put in; the tests evaluate each
 * formula and compare it with what the function gave.
 */
export interface CardQuantity {
  readonly symbol: string;
  readonly label: string;
  /** Empty for a pure number. */
  readonly unit: string;
}

export interface Equation<S extends string = string> {
  readonly id: string;
  readonly title: string;
  readonly statement: string;
  /** Right-hand side in the symbols: + - * / ^ sqrt abs min max cos sin tanh exp pi, nothing else. */
  readonly formula: string;
  readonly symbols: readonly (CardQuantity & { readonly symbol: S })[];
  readonly result: CardQuantity;
  readonly source: string;
  /** Codes of the domains (validity/domains.ts) that this equation rests on. */
  readonly domains: readonly string[];
}

/** An equation with the values that went into it and what the model's own function made of them. */
export interface Step {
  readonly equation: Equation;
  readonly values: Readonly<Record<string, number>>;
  readonly result: number;
  /** Where a search ended on this equation: what it must come to, and how near the search comes. */
  readonly criterion?: Criterion;
  /** Where the values come from a numerical solution: how near it satisfies the equation. */
  readonly near?: Near;
}

export interface Near {
  readonly relative: number;
  readonly why: string;
}

export interface Criterion {
  readonly target: number;
  /** In the unit of the result. */
  readonly tolerance: number;
  readonly why: string;
}

/** Label and unit. */
export type Named = readonly [label: string, unit: string];

interface Written<S extends string> {
  readonly id: string;
  readonly title: string;
  readonly statement: string;
  readonly formula: string;
  readonly symbols: Readonly<Record<S, Named>>;
  readonly result: readonly [symbol: string, label: string, unit: string];
  readonly source: string;
  readonly domains?: readonly string[];
}

export function equation<S extends string>(written: Written<S>): Equation<S> {
  const [symbol, label, unit] = written.result;
  const given = Object.entries(written.symbols) as [S, Named][];
  return {
    ...written,
    symbols: given.map(([name, [text, of]]) => ({ symbol: name, label: text, unit: of })),
    result: { symbol, label, unit },
    domains: written.domains ?? [],
  };
}

export const step = <S extends string>(
  of: Equation<S>,
  values: Readonly<Record<NoInfer<S>, number>>,
  result: number,
  criterion?: Criterion,
): Step => ({ equation: of, values, result, ...(criterion ? { criterion } : {}) });

export const nearly = (of: Step, near: Near): Step => ({ ...of, near });

export const COMMON_PRACTICE = 'Common practice, no source.';
