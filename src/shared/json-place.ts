/**
 * Where a text stops being JSON (RFC 8259). The engine's own complaint names the place in some of
 * its versions and for some mistakes only; a person with a file of a thousand lines needs it always.
 */

const number = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
const word = /true|false|null/y;
const space = /[ \t\n\r]*/y;
const escaped = /\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/y;

/** Index just after the pattern at `from`, or −1 when it does not stand there. */
function after(pattern: RegExp, text: string, from: number): number {
  pattern.lastIndex = from;
  return pattern.test(text) ? pattern.lastIndex : -1;
}

const skip = (text: string, from: number): number => after(space, text, from);

interface Scanned {
  readonly at: number;
  readonly closed: boolean;
}

/** From the opening quote to after the closing one, or to what may not stand in a text. */
function scanString(text: string, from: number): Scanned {
  let at = from + 1;
  while (at < text.length) {
    const code = text.charCodeAt(at);
    if (code === 0x22) return { at: at + 1, closed: true };
    if (code < 0x20) break;
    const end = code === 0x5c ? after(escaped, text, at) : at + 1;
    if (end < 0) break;
    at = end;
  }
  return { at, closed: false };
}

type Next = 'value' | 'value-or-end' | 'key' | 'key-or-end' | 'colon' | 'after';

/**
 * Index of the first character that cannot stand where it does, or of the word or number that it
 * breaks; the length when the text stops too early.
 */
export function jsonErrorAt(text: string): number {
  const open: ('{' | '[')[] = [];
  let next: Next = 'value';
  let at = skip(text, 0);
  while (at < text.length) {
    const c = text[at]!;
    const inner = open.at(-1);
    const keyComes: boolean = next === 'key' || next === 'key-or-end';
    const ends = next === 'after' || next === 'value-or-end' || next === 'key-or-end';
    if (ends && inner !== undefined && c === (inner === '{' ? '}' : ']')) {
      open.pop();
      next = 'after';
      at++;
    } else if (next === 'after') {
      if (c !== ',' || inner === undefined) return at;
      next = inner === '{' ? 'key' : 'value';
      at++;
    } else if (next === 'colon') {
      if (c !== ':') return at;
      next = 'value';
      at++;
    } else if (c === '"') {
      const { at: end, closed } = scanString(text, at);
      if (!closed) return end;
      at = end;
      next = keyComes ? 'colon' : 'after';
    } else if (keyComes) {
      return at;
    } else if (c === '{' || c === '[') {
      open.push(c);
      next = c === '{' ? 'key-or-end' : 'value-or-end';
      at++;
    } else {
      const end = Math.max(after(number, text, at), after(word, text, at));
      if (end < 0) return at;
      at = end;
      next = 'after';
    }
    at = skip(text, at);
  }
  return text.length;
}
