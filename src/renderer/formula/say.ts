/** A formula in words, for those who hear it. */
import { bare, type Term } from './parse.ts';
import { type Ratio, ratiosOf } from './ratios.ts';
import { symbolText } from './symbols.ts';

const relations = {
  '=': 'equals',
  '<': 'is less than',
  '>': 'is more than',
  '≤': 'is at most',
  '≥': 'is at least',
  '≈': 'is about',
} as const;

const functions: Readonly<Record<string, string>> = {
  sqrt: 'square root of',
  cbrt: 'cube root of',
  exp: 'e to the power of',
  abs: 'size of',
  log: 'natural logarithm of',
  ln: 'natural logarithm of',
  log10: 'logarithm of',
  max: 'largest of',
  min: 'smallest of',
  tanh: 'hyperbolic tangent of',
  sinh: 'hyperbolic sine of',
  cosh: 'hyperbolic cosine of',
  coth: 'hyperbolic cotangent of',
  sin: 'sine of',
  cos: 'cosine of',
  tan: 'tangent of',
};

const isSimple = (term: Term): boolean =>
  term.kind === 'number' ||
  term.kind === 'name' ||
  term.kind === 'call' ||
  (term.kind === 'binary' && term.operator === '^');

/** A part that is more than one symbol is fenced by pauses, or nobody hears where it ends. */
const part = (term: Term): string => {
  const inner = bare(term);
  return isSimple(inner) ? say(inner) : `(${say(inner)})`;
};

const product = (factors: readonly Term[]): string => factors.map(part).join(' times ');

function sayRatio({ over, under }: Ratio): string {
  const fenced = (factors: readonly Term[]): string =>
    factors.length === 1 ? product(factors) : `(${product(factors)})`;
  return under.length === 0 ? product(over) : `${fenced(over)} over ${fenced(under)}`;
}

export function say(term: Term): string {
  switch (term.kind) {
    case 'number': {
      const [mantissa = '', power] = term.text.toLowerCase().split('e');
      return power === undefined
        ? mantissa
        : `${mantissa} times 10 to the power of ${power.replace('-', 'minus ').replace('+', '')}`;
    }
    case 'name':
      return symbolText(term.text);
    case 'minus':
      return `minus ${part(term.of)}`;
    case 'group':
      return part(term);
    case 'relation':
      return `${say(term.left)} ${relations[term.relation]} ${say(term.right)}`;
    case 'call':
      return `${functions[term.name] ?? symbolText(term.name)} ${
        term.args.length === 1 ? part(term.args[0]!) : `(${term.args.map(say).join(', ')})`
      }`;
    case 'binary': {
      const { operator, left, right } = term;
      if (operator === '^') {
        const raised = bare(right);
        const two = raised.kind === 'number' && raised.text === '2';
        return two ? `${part(left)} squared` : `${part(left)} to the power of ${part(right)}`;
      }
      if (operator === '+' || operator === '-') {
        return `${say(left)} ${operator === '+' ? 'plus' : 'minus'} ${say(right)}`;
      }
      return ratiosOf(term).map(sayRatio).join(' times ');
    }
  }
}
