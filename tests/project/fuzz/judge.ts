/** What may come of opening any bytes: a project that saving keeps as it is, or one sentence that names the place. */
import { isDeepStrictEqual } from 'node:util';
import { projectOf } from '../../../src/main/files/read-project-file.ts';
import { fileText } from '../../../src/shared/project-text.ts';

const NAME = 'fuzzed.lapwright';

/** JSON writes −0 as 0, and both mean nothing at all. */
const withoutSign = (text: string): unknown =>
  JSON.parse(text, (_key, value) => (Object.is(value, -0) ? 0 : value));

/**
 * The first number of a text that its parser takes for zero, though it is written otherwise: what is parsed does
 * not tell. Texts in quotes are passed over.
 */
function takenForZero(text: string): string | undefined {
  const parts = text.match(/"(?:[^"\\]|\\[\s\S])*"|-?\d[-+.\dEe]*/g) ?? [];
  return parts.find(
    (part) => !part.startsWith('"') && Number(part) === 0 && /^[-0.]*[1-9]/.test(part),
  );
}

const natures = [
  Object.prototype,
  Array.prototype,
  String.prototype,
  Number.prototype,
  Function.prototype,
];
const namesOf = () => natures.map((nature) => Reflect.ownKeys(nature).length).join();
const unpolluted = namesOf();

/** Sentences about a file as a whole, which has no place but itself. */
const ofTheWhole = [
  /^The file is empty\.$/,
  /^A project is a JSON object; this is something else\.$/,
  /^A field at the top has no name, "": remove it or give it its name\.$/,
  /^it is not UTF-8 text: it is UTF-16; save it as UTF-8\.$/,
];

/** What stands above the field that is named is there; a key may hold points itself. */
function isThere(value: unknown, field: string): boolean {
  if (typeof value !== 'object' || value === null) return false;
  const keys = field.split('.');
  // The last key, however many points it holds, may be missing or cut short.
  if (keys.length === 1 || Object.hasOwn(value, field)) return true;
  return keys.slice(1).some((_key, more) => {
    const key = keys.slice(0, more + 1).join('.');
    const below = (value as Record<string, unknown>)[key];
    return Object.hasOwn(value, key) && isThere(below, keys.slice(more + 1).join('.'));
  });
}

function parsed(bytes: Uint8Array): unknown {
  try {
    return withoutSign(
      new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes).replace(/^\ufeff/, ''),
    );
  } catch {
    return undefined;
  }
}

function wrongWithRefusal(bytes: Uint8Array, field: string, whole: string): string | null {
  // A place stands in words before what is wrong.
  const before = `${NAME}: `;
  if (!whole.startsWith(before)) return `does not begin with ${before}: ${whole}`;
  const message = whole.slice(before.length);
  if (!/^\S.*[.!?]$/su.test(message)) return `is no sentence: ${message}`;
  if (whole.length > 700) return `says ${whole.length} letters`;
  const hasLine = /\bline \d+/.test(message);
  if (field === '')
    return hasLine || ofTheWhole.some((known) => known.test(message))
      ? null
      : `names no place: ${message}`;
  const document = parsed(bytes);
  // A key may hold a point, or be cut short: then its words alone tell.
  if (document === undefined || /[^\w.-]/.test(field)) return null;
  return isThere(document, field) ? null : `names ${field}, where nothing is: ${message}`;
}

export type Verdict = { readonly accepted: boolean } | { readonly wrong: string };

export function judge(bytes: Uint8Array): Verdict {
  let verdict: Verdict;
  try {
    verdict = opened(bytes);
  } catch (error) {
    verdict = { wrong: `throws: ${error instanceof Error ? error.stack : error}` };
  }
  if (namesOf() !== unpolluted || 'polluted' in {})
    return { wrong: 'something got into a prototype' };
  return verdict;
}

function opened(bytes: Uint8Array): Verdict {
  const read = projectOf(NAME, bytes);
  if (!read.ok) {
    const { code, field, message } = read.error;
    const wrong =
      code === 'bad-input' ? wrongWithRefusal(bytes, field, message) : `has the code ${code}`;
    return wrong === null ? { accepted: false } : { wrong };
  }
  const { document } = read.value;
  const text = fileText(document);
  // Nothing that the file says is left out, filled in or turned into something else.
  if (!isDeepStrictEqual(parsed(bytes), withoutSign(text)))
    return { wrong: 'is not what the file says' };
  const lost = takenForZero(new TextDecoder('utf-8').decode(bytes));
  if (lost !== undefined) return { wrong: `takes ${lost} for 0` };
  const again = projectOf(NAME, Buffer.from(text));
  if (!again.ok) return { wrong: `is refused once saved: ${again.error.message}` };
  if (fileText(again.value.document) !== text) return { wrong: 'is something else once saved' };
  return { accepted: true };
}
