/** What is left of the adhesive's strength, step by step. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  fractureAt,
  gapFactor,
  gapRows,
  knockedDown,
  ledgerAt,
} from '../../src/model/joint/knockdown.ts';
import type { AdhesiveInput } from '../../src/model/joint/types.ts';
import { glue } from '../support/layered-laps.ts';

const table = [
  { gap: 0.5, factor: 0.8 },
  { gap: 0.1, factor: 1 },
  { gap: 0.3, factor: 0.95 },
];
const adhesive: AdhesiveInput = {
  stressFreeTemperature: 20,
  states: [],
  knockdowns: { environment: 0.9, ageing: 0.8, scatter: 0.7, gap: table },
};

describe('strength at a gap', () => {
  it('is the table at its rows, whatever their order, and linear between them', () => {
    for (const { gap, factor } of table) {
      expect(gapFactor(table, gap)).toEqual({ factor, outside: false });
    }
    expect(gapFactor(table, 0.2).factor).toBeCloseTo(0.975, 12);
    expect(gapFactor(table, 0.35).factor).toBeCloseTo(0.9125, 12);
    expect(gapRows(table, 0.35)?.map(({ gap }) => gap)).toEqual([0.3, 0.5]);
  });

  it('is the nearest row beyond the table, and says so', () => {
    expect(gapFactor(table, 0.05)).toEqual({ factor: 1, outside: true });
    expect(gapFactor(table, 0.6)).toEqual({ factor: 0.8, outside: true });
    expect(gapRows(table, 0.6)).toBeNull();
    // A sum of decimals at the end of the table is no gap beyond it.
    expect(gapFactor(table, 0.5 * (1 + 1e-12)).outside).toBe(false);
    expect(gapFactor(table, 0.1 * (1 - 1e-12)).outside).toBe(false);
  });

  it('is one where there is no table, and never leaves its factors', () => {
    expect(gapFactor([], 3)).toEqual({ factor: 1, outside: false });
    const rows = fc.array(
      fc.record({
        gap: fc.double({ min: 0.01, max: 3, noNaN: true }),
        factor: fc.double({ min: 0.1, max: 1.2, noNaN: true }),
      }),
      { minLength: 1, maxLength: 6 },
    );
    fc.assert(
      fc.property(rows, fc.double({ min: 0.001, max: 5, noNaN: true }), (some, gap) => {
        const { factor } = gapFactor(some, gap);
        const factors = some.map((row) => row.factor);
        expect(factor).toBeGreaterThanOrEqual(Math.min(...factors) - 1e-12);
        expect(factor).toBeLessThanOrEqual(Math.max(...factors) + 1e-12);
      }),
    );
  });
});

describe('the ledger', () => {
  it('multiplies its steps', () => {
    expect(ledgerAt(adhesive, 0.2).left).toBeCloseTo(0.9 * 0.975 * 0.8 * 0.7, 12);
    expect(ledgerAt(adhesive, 0.7).gapOutsideTable).toBe(true);
    expect(ledgerAt({ stressFreeTemperature: 20, states: [] }, 0.7)).toMatchObject({
      left: 1,
      gapOutsideTable: false,
    });
  });

  it('shrinks the curve about its origin: stiffness stays, energies by the square', () => {
    const state = glue();
    const less = knockedDown(state, 0.6);
    expect(less.shearYield / state.shearYield).toBeCloseTo(0.6, 12);
    expect(less.plasticStrain / state.plasticStrain).toBeCloseTo(0.6, 12);
    expect(less.peelStrength! / state.peelStrength!).toBeCloseTo(0.6, 12);
    expect([less.modulus, less.shearModulus, less.expansion]).toEqual([
      state.modulus,
      state.shearModulus,
      state.expansion,
    ]);
    expect(knockedDown(glue({ peelStrength: undefined }), 0.6).peelStrength).toBeUndefined();
    const energy = fractureAt({ modeI: 2, modeII: 5, exponent: 1.5 }, 0.6);
    expect(energy.modeI).toBeCloseTo(0.72, 12);
    expect(energy.modeII).toBeCloseTo(1.8, 12);
    expect(energy.exponent).toBe(1.5);
  });
});
