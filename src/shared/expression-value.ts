/** What the tree of an expression is worth: an exact fraction of a product of units, or why not. */
import { nameOf, unitNamed } from './expression-text.ts';
import {
  ConstantNode,
  OperatorNode,
  ParenthesisNode,
  SymbolNode,
  type TreeNode,
} from './expression-tree.ts';
import type { Target } from './expression-units.ts';
import {
  type Dimension,
  dimensionWords,
  iceInKelvin,
  isSame,
  massAsForce,
  noDimension,
  product,
  raised,
  temperatureDimension,
} from './named-units.ts';
import { parseDecimal } from './number-entry.ts';
import {
  add,
  divided,
  lengthOf,
  negated,
  ofDecimal,
  power,
  type Rational,
  rational,
  times,
  toNumber,
} from './rational.ts';
import { Refused } from './refused.ts';
import { shortened } from './shortened.ts';

export interface Amount {
  readonly value: Rational;
  readonly dimension: Dimension;
  /** No unit stands in it. */
  readonly bare: boolean;
}

const MOST_EXPONENT = 9;
/** Hexadecimal digits of a fraction on the way: whatever is larger is no figure of a joint. */
const MOST_DIGITS = 4000;

/** A part of the expression as it is quoted. */
export function written(node: TreeNode): string {
  if (node instanceof ConstantNode) return node.text;
  if (node instanceof SymbolNode) return unitNamed(node.name)?.shown ?? nameOf(node.name);
  if (node instanceof ParenthesisNode) return `(${written(node.content)})`;
  if (!(node instanceof OperatorNode))
    throw new Refused('It is not an expression that is read here.');
  const [first, second] = node.args.map(written);
  if (second === undefined) return `${node.op}${first}`.replace('-', '−');
  if (node.implicit) return `${first} ${second}`;
  return ['+', '-'].includes(node.op)
    ? `${first} ${node.op} ${second}`.replace(' - ', ' − ')
    : `${first}${node.op}${second}`;
}

const bounded = (amount: Amount): Amount => {
  if (lengthOf(amount.value) > MOST_DIGITS)
    throw new Refused('Its figures grow too large on the way.');
  return amount;
};

/** A pound or a kilogram where a force is meant. */
function meant(text: string, dimension: Dimension, target: Target): string {
  const isMeant = !isSame(dimension, target.dimension);
  if (!isMeant || !isSame(massAsForce(dimension), target.dimension)) return '';
  return /lb(?!f)/.test(text) ? '. A pound of force is lbf' : '. A force is in N, kN, lbf or kip';
}

/** `“5 MPa” is a stress; this field takes a length.` */
export const wrongKind = (text: string, dimension: Dimension, target: Target): string =>
  `“${shortened(text)}” is ${dimensionWords(dimension)}; this field takes ${dimensionWords(target.dimension)}${meant(text, dimension, target)}.`;

const alone = 'A temperature stands alone: write it like 90 degF, 32.5 degC or 300 K.';

/** Reads one expression for one field. */
export class Evaluation {
  readonly #target: Target;
  /** Numbers without a unit that took the field's, beside others that had one. */
  readonly taken: string[] = [];

  constructor(target: Target) {
    this.#target = target;
  }

  amountOf(node: TreeNode): Amount {
    if (node instanceof ConstantNode) {
      const decimal = parseDecimal(node.text);
      if (!decimal) throw new Refused(`“${node.text}” is not a number.`);
      return { value: ofDecimal(decimal), dimension: noDimension, bare: true };
    }
    if (node instanceof SymbolNode) return this.#unit(node);
    if (node instanceof ParenthesisNode) return this.amountOf(node.content);
    if (node instanceof OperatorNode) return bounded(this.#operation(node));
    throw new Refused('It is not an expression that is read here.');
  }

  #unit(node: SymbolNode): Amount {
    const unit = unitNamed(node.name);
    if (!unit) throw new Refused(`“${node.name}” is not a unit that is read here.`);
    // Where no temperature is asked for, so many °F are as far as one is from another.
    if (unit.zero && this.#target.onScale) throw new Refused(alone);
    return { value: unit.factor, dimension: unit.dimension, bare: false };
  }

  #operation(node: OperatorNode): Amount {
    const [left, right] = node.args;
    if (!left) throw new Refused('It is not an expression that is read here.');
    if (!right) {
      const doubled = left instanceof OperatorNode && left.args.length === 1;
      if (doubled) throw new Refused('Two signs stand together: write one, or use brackets.');
      const amount = this.amountOf(left);
      return node.fn === 'unaryPlus' ? amount : { ...amount, value: negated(amount.value) };
    }
    switch (node.fn) {
      case 'add':
      case 'subtract':
        return this.#sum(left, right, node.fn === 'subtract');
      case 'multiply':
        return this.#product(this.amountOf(left), this.amountOf(right));
      case 'divide':
        return this.#division(left, right);
      case 'pow':
        return this.#power(left, right);
      default:
        throw new Refused(`“${node.op}” is not read here.`);
    }
  }

  #sum(left: TreeNode, right: TreeNode, minus: boolean): Amount {
    const [a, b] = [this.amountOf(left), this.amountOf(right)];
    const united = (node: TreeNode, amount: Amount, beside: Amount): Amount => {
      if (!amount.bare || beside.bare) return amount;
      const { shown, dimension, symbol } = this.#target;
      if (symbol !== '') this.taken.push(written(node));
      return { value: times(amount.value, shown), dimension, bare: false };
    };
    const [one, other] = [united(left, a, b), united(right, b, a)];
    if (!isSame(one.dimension, other.dimension)) {
      this.#refuseSum(left, one, right, other);
    }
    const value = add(one.value, minus ? negated(other.value) : other.value);
    return { value, dimension: one.dimension, bare: a.bare && b.bare };
  }

  #refuseSum(left: TreeNode, one: Amount, right: TreeNode, other: Amount): never {
    const target = this.#target;
    const fits = (amount: Amount): boolean => isSame(amount.dimension, target.dimension);
    if (fits(one)) throw new Refused(wrongKind(written(right), other.dimension, target));
    if (fits(other)) throw new Refused(wrongKind(written(left), one.dimension, target));
    throw new Refused(
      `“${written(left)}” is ${dimensionWords(one.dimension)} and “${written(right)}” ${dimensionWords(other.dimension)}: they have no sum.`,
    );
  }

  #product = (a: Amount, b: Amount): Amount => ({
    value: times(a.value, b.value),
    dimension: product(a.dimension, b.dimension),
    bare: a.bare && b.bare,
  });

  #quotient(a: Amount, b: Amount, by: TreeNode): Amount {
    if (b.value.over === 0n)
      throw new Refused(`“${written(by)}” is zero: nothing is divided by it.`);
    return {
      value: divided(a.value, b.value),
      dimension: product(a.dimension, b.dimension, -1),
      bare: a.bare && b.bare,
    };
  }

  /** `(1 + 2)/2 mm` is so many mm, as `3/2 mm` is; `8 kN/2 mm` divides by a length. */
  #division(left: TreeNode, right: TreeNode): Amount {
    const above = this.amountOf(left);
    if (right instanceof OperatorNode && right.implicit) {
      const [number, unit] = right.args as [TreeNode, TreeNode];
      const simple = number instanceof ConstantNode || number instanceof ParenthesisNode;
      if (!simple) {
        throw new Refused(`“${written(left)}/${written(right)}” has two readings: use brackets.`);
      }
      if (above.bare) {
        return this.#product(
          this.#quotient(above, this.amountOf(number), number),
          this.amountOf(unit),
        );
      }
    }
    return this.#quotient(above, this.amountOf(right), right);
  }

  #power(left: TreeNode, right: TreeNode): Amount {
    const [base, exponent] = [this.amountOf(left), this.amountOf(right)];
    const by = exponent.bare ? toNumber(exponent.value) : Number.NaN;
    if (!Number.isInteger(by) || Math.abs(by) > MOST_EXPONENT) {
      throw new Refused(
        `The exponent “${written(right)}” is none of the whole numbers from −${MOST_EXPONENT} to ${MOST_EXPONENT}.`,
      );
    }
    if (by < 0 && base.value.over === 0n) {
      throw new Refused(`“${written(left)}” is zero: nothing is divided by it.`);
    }
    if (lengthOf(base.value) * Math.abs(by) > MOST_DIGITS) {
      throw new Refused('Its figures grow too large on the way.');
    }
    return { value: power(base.value, by), dimension: raised(base.dimension, by), bare: base.bare };
  }

  /** On the scale of °C a temperature is one number with its unit; nothing is added to it. */
  temperatureOf(node: TreeNode): Amount {
    if (node instanceof ParenthesisNode) return this.temperatureOf(node.content);
    if (node instanceof OperatorNode && node.fn === 'multiply') {
      const [number, symbol] = node.args;
      const unit = symbol instanceof SymbolNode ? unitNamed(symbol.name) : undefined;
      if (number && unit && isSame(unit.dimension, temperatureDimension)) {
        const amount = this.amountOf(number);
        if (!amount.bare) throw new Refused(alone);
        const kelvin = add(times(amount.value, unit.factor), unit.zero ?? rational(0n));
        const value = add(kelvin, negated(iceInKelvin));
        return { value, dimension: temperatureDimension, bare: false };
      }
    }
    const amount = this.amountOf(node);
    if (!amount.bare && isSame(amount.dimension, temperatureDimension)) throw new Refused(alone);
    return amount;
  }
}
