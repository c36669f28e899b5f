/** Bytes of a file as text: UTF-8 and nothing else, so that no letter is replaced by another in silence. */
import { ok, type Reply, refuse } from './reply.ts';

/** Two bytes for each letter, with the mark of it: what some editors call Unicode. */
const isMarkedUtf16 = ([a, b]: Uint8Array): boolean =>
  (a === 0xff && b === 0xfe) || (a === 0xfe && b === 0xff);

/** The same without a mark: every other byte of plain letters is zero, which no text in UTF-8 begins with. */
function isBareUtf16(bytes: Uint8Array): boolean {
  const zero = Array.from(bytes.subarray(0, 4), (byte) => byte === 0).join();
  return zero === 'false,true,false,true' || zero === 'true,false,true,false';
}

function isUtf8(bytes: Uint8Array): boolean {
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return true;
  } catch {
    return false;
  }
}

/** No letter of UTF-8 holds the byte of a line end, so each line is text by itself or is not. */
function firstWrongLine(bytes: Uint8Array): number {
  let line = 1;
  for (let from = 0; ; line++) {
    const end = bytes.indexOf(0x0a, from);
    if (end < 0 || !isUtf8(bytes.subarray(from, end))) return line;
    from = end + 1;
  }
}

const whatElse = (bytes: Uint8Array): string =>
  isMarkedUtf16(bytes) || isBareUtf16(bytes)
    ? 'it is UTF-16; save it as UTF-8'
    : `something else stands in line ${firstWrongLine(bytes)}`;

/**
 * The text that bytes are, with its mark if it has one, or one clear line that begins with the name.
 * @param name of the file
 */
export function textOf(name: string, bytes: Uint8Array): Reply<string> {
  const refused = (): Reply<never> =>
    refuse('bad-input', '', `${name}: it is not UTF-8 text: ${whatElse(bytes)}.`);
  // Its bytes may be letters of UTF-8 too.
  if (isBareUtf16(bytes)) return refused();
  try {
    // With its mark, which whoever reads the text takes off: once.
    return ok(new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes));
  } catch {
    return refused();
  }
}
