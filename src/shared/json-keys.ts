/**
 * What the parser of JSON loses without a word, so that opening a file and saving it would change what it says: of
 * a key that stands twice in one object the first value, of a number too small to be told from zero all of it.
 */

export interface PlaceInText {
  /** Index in the text: of a key that stands twice, that of the second. */
  readonly at: number;
  /** Path of the value, from the top of the document. */
  readonly path: readonly (string | number)[];
}
export interface LostNumber extends PlaceInText {
  /** As it is written. */
  readonly written: string;
}
interface Lost {
  readonly twice: PlaceInText | null;
  readonly number: LostNumber | null;
}

interface Frame {
  /** Keys so far; null in a list. */
  readonly keys: Set<string> | null;
  /** Where in it the scan is: the last key, or the place in the list. */
  at: string | number;
}

/** Index of the closing quote of the text whose opening one stands at `from`. */
function closingQuote(text: string, from: number): number {
  for (let at = text.indexOf('"', from + 1); ; at = text.indexOf('"', at + 1)) {
    let slashes = 0;
    while (text[at - 1 - slashes] === '\\') slashes++;
    if (slashes % 2 === 0) return at;
  }
}

/** Two ways to write a key are one key: what is escaped is read as the parser reads it. */
function keyOf(text: string, from: number, to: number): string {
  const raw = text.slice(from + 1, to);
  return raw.includes('\\') ? (JSON.parse(`"${raw}"`) as string) : raw;
}

/** A number, from where one begins. */
const literal = /-?[\d.]+(?:e[+-]?\d+)?/iy;

/** Zero for the parser, though a digit of it is none. */
const isLost = (written: string): boolean =>
  Number(written) === 0 && /[1-9]/.test(written.replace(/e.*/i, ''));

/**
 * The first that is lost of each kind; numbers after a key that stands twice are not looked at.
 * @param text that has been parsed: what is no JSON is not looked for here
 */
export function lostInText(text: string): Lost {
  let number: LostNumber | null = null;
  const open: Frame[] = [];
  let inner: Frame | undefined;
  let keyComes = false;
  for (let at = 0; at < text.length; at++) {
    switch (text[at]) {
      case '{':
      case '[':
        inner = text[at] === '{' ? { keys: new Set(), at: '' } : { keys: null, at: 0 };
        open.push(inner);
        keyComes = inner.keys !== null;
        break;
      case '}':
      case ']':
        open.pop();
        inner = open.at(-1);
        keyComes = false;
        break;
      case ',':
        if (inner?.keys === null) inner.at = Number(inner.at) + 1;
        keyComes = inner?.keys !== null;
        break;
      case '"': {
        const end = closingQuote(text, at);
        if (keyComes && inner?.keys) {
          inner.at = keyOf(text, at, end);
          if (inner.keys.has(inner.at)) {
            return { twice: { at, path: open.map((frame) => frame.at) }, number };
          }
          inner.keys.add(inner.at);
          keyComes = false;
        }
        at = end;
        break;
      }
      case '-':
      case '0':
      case '1':
      case '2':
      case '3':
      case '4':
      case '5':
      case '6':
      case '7':
      case '8':
      case '9': {
        literal.lastIndex = at;
        const written = literal.exec(text)?.[0] ?? '0';
        if (number === null && isLost(written)) {
          number = { at, path: open.map((frame) => frame.at), written };
        }
        at += written.length - 1;
        break;
      }
      default:
    }
  }
  return { twice: null, number };
}
