/**
 * The usual notation of a ply stack, [0/±45/90]s, to angles in degrees and back.
 *
 *   stack  = "[" plies "]" ending          group  = "(" plies ")" ending
 *   plies  = item, separated by / or commas or spaces: one kind in one stack
 *   item   = group | ["±" | "∓" | "+-" | "+/-" …] angle ["°"] ["_" repeat]
 *   ending = [["_"] repeat] ["s"]          repeat also in subscript figures, T for total allowed
 *
 * s mirrors what stands before it, after repeating it. Plies run from the inside to the outside.
 * What reads two ways is refused: ±45_2, a comma beside slashes, s before its number.
 */
import { writeAngles } from './stack-writing.ts';

export const MOST_PLIES = 400;
const DECIMALS = 6;

export type StackReading =
  | { readonly ok: true; readonly angles: number[]; readonly canonical: string }
  /** `at`: index of the character in the text as given. */
  | { readonly ok: false; readonly message: string; readonly at: number };

class Refusal extends Error {
  readonly at: number;
  constructor(at: number, message: string) {
    super(message);
    this.at = at;
  }
}

const sub = '₀₁₂₃₄₅₆₇₈₉';
const plain = (figures: string): number =>
  Number([...figures].map((c) => (sub.includes(c) ? sub.indexOf(c) : c)).join(''));

const SPACE = /\s*/y;
const PAIR = /±|∓|\+\/?[-−–]|[-−–]\/?\+/y;
const ANGLE = /[-−–+]?(\d+(?:\.\d*)?|\.\d+)/y;
const DEGREE = /\s*[°º˚]/y;
const TOTAL = /_?[tTₜ]/y;
const MIRROR = /_?[sSₛ]/y;
/** After an angle a figure needs its underscore: 452 would be an angle. */
const ANGLE_REPEAT = new RegExp(`_(\\d+|[${sub}]+)|([${sub}]+)`, 'y');
const GROUP_REPEAT = new RegExp(`_?(\\d+|[${sub}]+)`, 'y');

/** Into −90 (excluded) … 90: fibres at 135° lie as at −45°. */
function direction(angle: number): number {
  const turned = angle > 90 ? angle - 180 : angle <= -90 ? angle + 180 : angle;
  return turned === angle ? angle + 0 : Number(turned.toFixed(DECIMALS)) + 0;
}

class Reader {
  readonly #text: string;
  #at = 0;
  #separator: string | undefined;

  constructor(text: string) {
    this.#text = text;
  }

  #match(pattern: RegExp): RegExpExecArray | null {
    pattern.lastIndex = this.#at;
    const found = pattern.exec(this.#text);
    if (found !== null) this.#at += found[0].length;
    return found;
  }

  get #next(): string {
    return this.#text[this.#at] ?? '';
  }

  stack(): number[] {
    this.#match(SPACE);
    if (this.#next !== '[') {
      throw new Refusal(this.#at, 'A stack stands in square brackets, as in [0/±45/90]s.');
    }
    this.#at++;
    const angles = this.#ending(this.#plies(']'));
    this.#match(SPACE);
    if (this.#at < this.#text.length) {
      throw new Refusal(
        this.#at,
        `Nothing can follow the stack here but a repeat, s or T: “${this.#next}”.`,
      );
    }
    return angles;
  }

  /** The items up to the closing bracket, and past it. */
  #plies(close: ']' | ')'): number[] {
    const opened = this.#at - 1;
    const angles: number[] = [];
    this.#match(SPACE);
    if (this.#next === close) throw new Refusal(this.#at, 'There is no ply between the brackets.');
    for (;;) {
      const at = this.#at;
      const item = this.#item();
      this.#allow(angles.length + item.length, at);
      angles.push(...item);
      if (this.#separate(close)) return angles;
      if (this.#at >= this.#text.length) {
        throw new Refusal(opened, `This bracket is not closed: “${close}” is missing.`);
      }
    }
  }

  /** Past a separator; true when the closing bracket came instead. */
  #separate(close: string): boolean {
    const before = this.#at;
    this.#match(SPACE);
    if (this.#next === close) {
      this.#at++;
      return true;
    }
    if (this.#at >= this.#text.length) return false;
    const at = this.#at;
    let kind = ' ';
    if (this.#next === '/' || this.#next === ',') {
      kind = this.#next;
      this.#at++;
      this.#match(SPACE);
    } else if (at === before) {
      throw new Refusal(
        at,
        `An angle, a separator or “${close}” is expected, not “${this.#next}”.`,
      );
    }
    this.#separator ??= kind;
    if (this.#separator !== kind) {
      throw new Refusal(
        kind === ' ' ? before : at,
        'Separate the plies in one way throughout: slashes, or commas, or spaces. Decimals take a point.',
      );
    }
    return false;
  }

  #item(): number[] {
    if (this.#next === '(') {
      this.#at++;
      return this.#ending(this.#plies(')'));
    }
    const start = this.#at;
    const pair = this.#match(PAIR)?.[0];
    if (pair !== undefined) this.#match(SPACE);
    const at = this.#at;
    const angle = this.#angle();
    if (pair !== undefined && !/[\d.]/.test(this.#text[at] ?? '')) {
      throw new Refusal(at, 'An angle after ± has no sign of its own.');
    }
    this.#match(DEGREE);
    const repeatAt = this.#at;
    const repeat = this.#match(ANGLE_REPEAT);
    if (repeat !== null && pair !== undefined) {
      throw new Refusal(
        start,
        'A repeat after ± reads two ways: write (±45)2 for 45/-45/45/-45, or 45_2/-45_2.',
      );
    }
    const both = pair === undefined ? [angle] : [angle, -angle];
    if (pair !== undefined && /^[-−–∓]/.test(pair)) both.reverse();
    const count = repeat === null ? 1 : this.#count(repeat[1] ?? repeat[2]!, repeatAt);
    this.#allow(both.length * count, repeatAt);
    return Array.from({ length: count }, () => both.map(direction)).flat();
  }

  #angle(): number {
    const at = this.#at;
    const found = this.#match(ANGLE);
    if (found === null) {
      const next = this.#next;
      throw new Refusal(
        at,
        next === ''
          ? 'The stack ends where an angle is expected.'
          : `An angle is expected, not “${next}”.`,
      );
    }
    const size = Number(found[1]);
    if (size > 180) throw new Refusal(at, 'An angle lies between -180° and 180°.');
    if ((found[1]!.split('.')[1] ?? '').length > DECIMALS) {
      throw new Refusal(at, `An angle has at most ${DECIMALS} decimals.`);
    }
    return /^[-−–]/.test(found[0]) ? -size : size;
  }

  /** Repeats and mirrors what stood in the brackets. */
  #ending(angles: number[]): number[] {
    const at = this.#at;
    const repeat = this.#match(GROUP_REPEAT);
    const count = repeat === null ? 1 : this.#count(repeat[1]!, at);
    this.#allow(angles.length * count, at);
    const repeated = Array.from({ length: count }, () => angles).flat();
    if (this.#match(MIRROR) === null) {
      this.#match(TOTAL);
      return repeated;
    }
    this.#allow(2 * repeated.length, at);
    if (/[\d₀-₉]/.test(this.#next)) {
      throw new Refusal(this.#at, 'The number comes before the s: [0/90]2s.');
    }
    return [...repeated, ...repeated.reverse()];
  }

  #count(figures: string, at: number): number {
    const count = plain(figures);
    if (count < 1) throw new Refusal(at, 'A repeat is at least 1.');
    this.#allow(count, at);
    return count;
  }

  #allow(plies: number, at: number): void {
    if (plies > MOST_PLIES) {
      throw new Refusal(at, `A stack has at most ${MOST_PLIES} plies; this makes more.`);
    }
  }
}

export function readStack(text: string): StackReading {
  try {
    const angles = new Reader(text).stack();
    return { ok: true, angles, canonical: writeStack(angles) };
  } catch (error) {
    if (error instanceof Refusal) return { ok: false, message: error.message, at: error.at };
    throw error;
  }
}

/** The shortest usual form; reads back to the same directions. */
export const writeStack = (angles: readonly number[]): string =>
  writeAngles(angles.map((angle) => Number(direction(angle).toFixed(DECIMALS)) + 0));
