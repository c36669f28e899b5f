/**
 * A key that stands twice in one object of a JSON text. The parser takes the last and says nothing: what was
 * written first would be lost by opening a file and saving it.
 */

export interface RepeatedKey {
  /** Index of the second one in the text. */
  readonly at: number;
  /** Path of the value that it names, from the top of the document. */
  readonly path: readonly (string | number)[];
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

/** @param text that has been parsed: what is no JSON is not looked for here */
export function repeatedKey(text: string): RepeatedKey | null {
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
          if (inner.keys.has(inner.at)) return { at, path: open.map((frame) => frame.at) };
          inner.keys.add(inner.at);
          keyComes = false;
        }
        at = end;
        break;
      }
      default:
    }
  }
  return null;
}
