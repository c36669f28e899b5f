/**
 * Looks at every sign of an expression before it is parsed: numbers, names of units, + − * / ^ and
 * brackets are let through, in an order that has one reading; all else is refused in words.
 */
import type { Target } from './expression-units.ts';
import { isSame, momentDimension, namedUnits, unitsOfKind } from './named-units.ts';
import { readNumber } from './number-entry.ts';
import { Refused } from './refused.ts';
import { shortened } from './shortened.ts';

export const MOST_LETTERS = 80;
const MOST_BRACKETS = 12;
/** Powers of ten in a number: beyond a double either way it is no figure of a joint. */
const MOST_POWER = 300;

interface Token {
  readonly kind: 'number' | 'name' | 'sign';
  readonly text: string;
}

/** As they are copied from the page or another document. */
const plainly = (text: string): string =>
  text
    .replaceAll('−', '-')
    .replace(/[·×]/g, '*')
    .replaceAll('÷', '/')
    .replace(/[µμ]/g, 'u')
    .replace(/°(?=[CF])/g, 'deg')
    .replaceAll('°', ' deg ')
    .replaceAll('%', ' percent ')
    .replaceAll('²', '^2')
    .replaceAll('³', '^3')
    // `in-lbf` and `ft-lbf` are products, however they are written: a length less a force is nothing.
    .replace(/\b(in|ft)-(lbf?)\b/g, '$1*$2')
    .replace(/\b(lbf?)-(in|ft)\b/g, '$1*$2');

const shape = /\s*(?:(\d+(?:\.\d*)?(?:e[+-]?\d+)?|\.\d+(?:e[+-]?\d+)?)|([a-z]+)|([-+*/^()]))\s*/iy;

/** Marks that part decimals or thousands are refused here as they are in a plain number. */
function refuseSeparators(text: string): void {
  const parted = /\d[\d.]*[,'’_][\d.,'’_]*\d|\d{1,3}(?:\s\d{3})+(?![\d.]*\s*\/)/.exec(text)?.[0];
  if (parted === undefined) return;
  const entry = readNumber(parted);
  if (!entry.ok) throw new Refused(entry.message);
}

function tokensOf(text: string): Token[] {
  const tokens: Token[] = [];
  shape.lastIndex = 0;
  while (shape.lastIndex < text.length) {
    const from = shape.lastIndex;
    const match = shape.exec(text);
    if (!match) {
      const sign = [...text.slice(from).trimStart()][0];
      throw new Refused(
        `“${sign}” is not read here: it takes numbers, units, + − * / ^ and brackets.`,
      );
    }
    const [, number, name, sign = ''] = match;
    if (number !== undefined) tokens.push({ kind: 'number', text: number });
    else if (name !== undefined) tokens.push({ kind: 'name', text: name });
    else tokens.push({ kind: 'sign', text: sign });
  }
  return tokens;
}

/** Written with other capitals. Whoever writes `nm` may mean a length that nobody bonds by: no moment then. */
function likeNamed(name: string, { dimension }: Target): string | undefined {
  if (name === 'nm' && !isSame(dimension, momentDimension)) return undefined;
  return [...namedUnits.keys()].find((one) => one.toLowerCase() === name.toLowerCase());
}

function checkName(name: string, target: Target): void {
  // What is counted is read where it is counted.
  if (namedUnits.has(name) && (name !== 'cycles' || target.symbol === name)) return;
  const like = namedUnits.has(name) ? undefined : likeNamed(name, target);
  const units = unitsOfKind(target.dimension);
  const those =
    units === ''
      ? `this field takes a number without a unit${target.symbol === '' ? '' : `, or ${target.symbol}`}`
      : `they are ${units}`;
  throw new Refused(
    like === undefined
      ? `“${shortened(name)}” is not a unit that is read here: ${those}.`
      : `“${shortened(name)}” is not a unit that is read here: write ${like}.`,
  );
}

function checkNumber(text: string): void {
  const entry = readNumber(text);
  if (!entry.ok) throw new Refused(entry.message);
  const power = Number(/e([+-]?\d+)$/i.exec(text)?.[1] ?? 0);
  if (Math.abs(power) > MOST_POWER) {
    throw new Refused(`“${shortened(text)}” is too ${power > 0 ? 'large' : 'small'}.`);
  }
}

/** `1 1/2 in` is one and a half to some; a bare 1 beside half an inch would be another length. */
function refuseMixed(before: Token, after: readonly Token[]): void {
  const [over, line, under, unit] = after;
  if (before.kind !== 'number' || over?.kind !== 'number' || line?.text !== '/' || !under) return;
  const fraction = `${over.text}/${under.text}`;
  const ending = unit?.kind === 'name' ? ` ${unit.text}` : '';
  throw new Refused(
    `“${before.text} ${fraction}” has two readings: write (${before.text} + ${fraction})${ending}.`,
  );
}

/** Between two that stand side by side there is a sign, but for a number and its unit. */
function checkNeighbours(tokens: readonly Token[]): void {
  tokens.slice(1).forEach((next, i) => {
    const before = tokens[i]!;
    const ends = before.kind !== 'sign' || before.text === ')';
    const begins = next.kind !== 'sign' || next.text === '(';
    const withUnit = next.kind === 'name' && before.kind !== 'name';
    if (!ends || !begins || withUnit) return;
    refuseMixed(before, tokens.slice(i + 1));
    throw new Refused(
      `Between “${shortened(before.text)}” and “${shortened(next.text)}” a sign is missing: + − * or /.`,
    );
  });
}

function checkBrackets(tokens: readonly Token[]): void {
  let open = 0;
  for (const { text } of tokens) {
    if (text === '(') open += 1;
    if (text === ')') open -= 1;
    if (open < 0) throw new Refused('A bracket is closed that was not opened.');
    if (open > MOST_BRACKETS) throw new Refused('Too many brackets stand in one another.');
  }
  if (open > 0) throw new Refused('A bracket is not closed.');
}

/** `12e-6 1/K` says what `12e-6/K` says. */
const withoutOne = (tokens: readonly Token[]): Token[] =>
  tokens.filter(
    ({ text }, i) =>
      !(
        text === '1' &&
        tokens[i - 1]?.kind === 'number' &&
        tokens[i + 1]?.text === '/' &&
        tokens[i + 2]?.text === 'K'
      ),
  );

/** A number as the parser has no second thought about: a digit before the point and after it. */
const whole = (text: string): string => text.replace(/^\./, '0.').replace(/\.(?=e|$)/i, '');

/** In the parser's language `in` turns one unit into another: the inch goes by its long name. */
const INCH = 'inch';
export const unitNamed = (name: string) => namedUnits.get(name === INCH ? 'in' : name);
export const nameOf = (name: string): string => (name === INCH ? 'in' : name);

/** The same for the parser; or throws what is to be said. */
export function checkedText(typed: string, target: Target): string {
  if (typed.length > MOST_LETTERS) {
    throw new Refused(`At most ${MOST_LETTERS} characters are read here.`);
  }
  refuseSeparators(typed);
  const tokens = withoutOne(tokensOf(plainly(typed)));
  for (const { kind, text } of tokens) {
    if (kind === 'name') checkName(text, target);
    if (kind === 'number') checkNumber(text);
  }
  checkNeighbours(tokens);
  checkBrackets(tokens);
  return tokens
    .map(({ kind, text }) =>
      kind === 'number' ? whole(text) : kind === 'name' && text === 'in' ? INCH : text,
    )
    .join(' ');
}

/** More than one number, and made of what an expression is made of. */
export function looksLikeExpression(typed: string): boolean {
  if (typed.length > MOST_LETTERS || !/\d/.test(typed)) return false;
  try {
    const tokens = tokensOf(plainly(typed));
    return (
      tokens.slice(1).some(({ kind }) => kind !== 'number') &&
      tokens.every(({ kind, text }) => kind !== 'name' || namedUnits.has(text))
    );
  } catch (error) {
    if (error instanceof Refused) return false;
    throw error;
  }
}
