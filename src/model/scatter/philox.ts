/**
 * Philox4x32-10: random numbers as a function of a key and a counter (J. K. Salmon, M. A. Moraes,
 * R. O. Dror, D. E. Shaw, "Parallel random numbers: as easy as 1, 2, 3", SC11, 2011). Nothing is kept
 * between two numbers, so that any sample of any input can be drawn by itself, and an input that is
 * added shifts none of the others. Whole numbers only: every machine gives the same bits.
 */

const MULTIPLY_0 = 0xd2511f53;
const MULTIPLY_1 = 0xcd9e8d57;
const WEYL_0 = 0x9e3779b9;
const WEYL_1 = 0xbb67ae85;
const ROUNDS = 10;

/** Upper 32 bits of the product of two 32-bit numbers; `Math.imul` has the lower ones. */
function high(a: number, b: number): number {
  const [aLow, aHigh, bLow, bHigh] = [a & 0xffff, a >>> 16, b & 0xffff, b >>> 16];
  const low = aLow * bLow;
  const first = aHigh * bLow + (low >>> 16);
  const second = aLow * bHigh + (first & 0xffff);
  return aHigh * bHigh + Math.floor(first / 0x10000) + (second >>> 16);
}

/**
 * @param counter four 32-bit words, overwritten by the four words drawn
 */
export function philox(counter: Uint32Array, key0: number, key1: number): void {
  let [c0, c1, c2, c3] = [counter[0]!, counter[1]!, counter[2]!, counter[3]!];
  let [k0, k1] = [key0 >>> 0, key1 >>> 0];
  for (let round = 0; round < ROUNDS; round++) {
    const high0 = high(MULTIPLY_0, c0);
    const low0 = Math.imul(MULTIPLY_0, c0);
    const high1 = high(MULTIPLY_1, c2);
    const low1 = Math.imul(MULTIPLY_1, c2);
    c0 = (high1 ^ c1 ^ k0) >>> 0;
    c1 = low1 >>> 0;
    c2 = (high0 ^ c3 ^ k1) >>> 0;
    c3 = low0 >>> 0;
    k0 = (k0 + WEYL_0) >>> 0;
    k1 = (k1 + WEYL_1) >>> 0;
  }
  counter[0] = c0;
  counter[1] = c1;
  counter[2] = c2;
  counter[3] = c3;
}

/** What a number is drawn for; the same counter under another purpose gives another number. */
export const purposes = { sample: 0, design: 1, choice: 2 } as const;
export type Purpose = keyof typeof purposes;

export type Uniform = (index: number, stream: number, purpose?: Purpose) => number;

/**
 * Uniform numbers strictly between 0 and 1: 52 random bits and a half, (k + ½)/2⁵², which a double
 * holds exactly; u and 1 − u are equally likely and both exact.
 * @param seed whole, 0 … 2³² − 1
 */
export function uniforms(seed: number): Uniform {
  const words = new Uint32Array(4);
  return (index, stream, purpose = 'sample') => {
    words[0] = index;
    words[1] = stream;
    words[2] = purposes[purpose];
    words[3] = 0;
    philox(words, seed, 0);
    const bits = (words[0]! >>> 6) * 0x4000000 + (words[1]! >>> 6);
    return (bits + 0.5) / 0x10000000000000;
  };
}
