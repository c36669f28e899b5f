/** e^(Aℓ) of a layered section against the same series in exact arithmetic of 240 bits. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  advance,
  balance,
  LONGEST_STEP,
  seriesOf,
  stateAt,
  transferOver,
} from '../../src/model/layered/exponential.ts';
import { HARMONIC, harmonicSystem } from '../../src/model/layered/harmonic-system.ts';
import type { LayeredSection } from '../../src/model/layered/section.ts';
import { layeredSystem } from '../../src/model/layered/system.ts';
import { build, type LapType, randomLaps } from '../support/layered-laps.ts';

const BITS = 240n;
const ONE = 1n << BITS;

/** A float is a whole number over a power of two: nothing is lost that is larger than 2^−240. */
function fixed(value: number): bigint {
  let whole = value;
  let halvings = 0n;
  for (; !Number.isInteger(whole); halvings++) whole *= 2;
  return (BigInt(whole) << BITS) >> halvings;
}
const float = (value: bigint): number => Number(value >> (BITS - 120n)) / 2 ** 120;

/** Σ (A·ℓ)ᵏ/k! until nothing is left of it. */
function exact(a: Float64Array, size: number, length: number): number[] {
  const step = fixed(length);
  const x = Array.from(a, (value) => (fixed(value) * step) >> BITS);
  let term = Array.from(x, (_v, i) => (i % (size + 1) === 0 ? ONE : 0n));
  const sum = [...term];
  for (let k = 1n; term.some((value) => value !== 0n && value !== -1n); k++) {
    const next = new Array<bigint>(size * size).fill(0n);
    for (let i = 0; i < size; i++) {
      for (let l = 0; l < size; l++) {
        const factor = x[i * size + l]!;
        if (factor === 0n) continue;
        for (let j = 0; j < size; j++) next[i * size + j]! += factor * term[l * size + j]!;
      }
    }
    term = next.map((value) => (value >> BITS) / k);
    for (let i = 0; i < sum.length; i++) sum[i]! += term[i]!;
  }
  return sum.map(float);
}

const types: readonly LapType[] = ['sleeve-single', 'sleeve-double', 'flat-single', 'flat-double'];

function systemsOf(section: LayeredSection) {
  const elastic = section.bonds.map(() => 0);
  const flowing = section.bonds.map((_bond, j) => (j === 0 ? 1 : 0));
  return [
    layeredSystem(section, elastic),
    layeredSystem(section, flowing),
    ...(section.shells[0]!.flat ? [] : [{ ...harmonicSystem(section), half: HARMONIC }]),
  ];
}

describe.each(types)('e^(Aℓ) of a %s', (type) => {
  it('is that of exact arithmetic, mirrored or as a whole', () => {
    fc.assert(
      fc.property(randomLaps(type), fc.double({ min: 0.01, max: 1 }), (given, share) => {
        for (const { a, g } of systemsOf(build(given).lap.sectionAt(0))) {
          // Balanced already: what is compared has entries of like sizes.
          const first = balance(a, g);
          const balanced = { ...first, scale: first.scale.map(() => 1) };
          const { size } = balanced;
          const length = (share * LONGEST_STEP) / balanced.rate;
          const known = exact(balanced.a, size, length);
          const largest = Math.max(...known.map(Math.abs));
          expect(balanced.mirrored).not.toBeNull();
          for (const one of [balanced, { ...balanced, mirrored: null }]) {
            const { matrix } = transferOver(one, length);
            matrix.forEach((value, i) => {
              expect(Math.abs(value - known[i]!)).toBeLessThan(1e-14 * largest);
            });
          }
        }
      }),
      { seed: 3, numRuns: 6 },
    );
  });

  it('carries a state as its series does, at every share of the way', () => {
    fc.assert(
      fc.property(randomLaps(type), fc.double({ min: 0, max: 1, noNaN: true }), (given, t) => {
        for (const { a, g } of systemsOf(build(given).lap.sectionAt(0))) {
          const balanced = balance(a, g);
          const { size, scale } = balanced;
          const length = LONGEST_STEP / balanced.rate;
          const start = Float64Array.from({ length: size }, (_v, i) => scale[i]! * Math.sin(i + 1));
          const whole = transferOver(balanced, t * length);
          const along = new Float64Array(size);
          stateAt(seriesOf(balanced, start, 1, length), t, along);
          const stepped = advance(balanced, start, 1, t * length);
          for (let i = 0; i < size; i++) {
            let sum = whole.load[i]!;
            for (let j = 0; j < size; j++) sum += whole.matrix[i * size + j]! * start[j]!;
            const room =
              1e-12 * scale[i]! * Math.max(1, ...along.map((v, k) => Math.abs(v / scale[k]!)));
            expect(Math.abs(along[i]! - sum)).toBeLessThan(room);
            expect(Math.abs(stepped[i]! - sum)).toBeLessThan(room);
          }
        }
      }),
      { seed: 4, numRuns: 20 },
    );
  });
});

it('is taken as a whole where a section is no mirror image', () => {
  const a = Float64Array.from([0, 1, 0.1, 0]);
  const g = new Float64Array(2);
  expect(balance(a, g).mirrored).not.toBeNull();
  a[0] = 0.2;
  expect(balance(a, g).mirrored).toBeNull();
  const { matrix } = transferOver(balance(a, g), 0.3);
  exact(a, 2, 0.3).forEach((value, i) => {
    expect(matrix[i]).toBeCloseTo(value, 14);
  });
});
