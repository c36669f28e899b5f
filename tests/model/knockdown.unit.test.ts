/** What is left of the adhesive's strength, step by step. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  fractureAt,
  gapFactor,
  gapRows,
  knockedDown,
  ledgerAt,
  scatterAt,
} from '../../src/model/joint/knockdown.ts';
import type { AdhesiveInput } from '../../src/model/joint/types.ts';
import { glue } from '../support/layered-laps.ts';

const table = [
  { gap: 0.5, factor: 0.8 },
  { gap: 0.1, factor: 1 },
  { gap: 0.3, factor: 0.95 },
];
const room = { temperature: 23, moisture: 'dry' } as const;
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

describe('own coupons in place of the knockdown for scatter', () => {
  const tested = [
    { temperature: 60, moisture: 'wet', gap: 0.2, factor: 0.5 },
    { temperature: 23, moisture: 'dry', gap: 0.2, factor: 0.95 },
    { temperature: 80, moisture: 'dry', gap: 0.2, factor: 0.6 },
  ] as const;
  const knockdowns = { ...adhesive.knockdowns!, scatter: 0.7, tested };
  const at = (temperature: number, moisture: 'dry' | 'wet') =>
    scatterAt(knockdowns, { temperature, moisture });

  it('count where they were tested, the lower of two between, and never more than they say beyond', () => {
    expect(at(23, 'dry')).toEqual({ factor: 0.95, tested: [1], exact: true });
    expect(at(60, 'wet')).toEqual({ factor: 0.5, tested: [0], exact: true });
    expect(at(50, 'dry')).toEqual({ factor: 0.6, tested: [1, 2], exact: false });
    // Colder than any: the general knockdown is the lower one. Hotter: the nearest is.
    expect(at(-20, 'dry')).toEqual({ factor: 0.7, tested: [], exact: false });
    expect(at(90, 'dry')).toEqual({ factor: 0.6, tested: [2], exact: false });
    expect(at(23, 'wet')).toEqual({ factor: 0.5, tested: [0], exact: false });
    expect(scatterAt({ ...knockdowns, tested: [] }, room).factor).toBe(0.7);
  });

  it('have the loss of their own gap in them, and gain nothing from a thinner one', () => {
    const own = { ...adhesive, knockdowns };
    const rows = knockdowns.gap;
    const left = (gap: number) => ledgerAt(own, gap, room);
    expect(left(0.2).gap).toBe(1);
    expect(left(0.2).left).toBeCloseTo(knockdowns.environment * knockdowns.ageing * 0.95, 12);
    const thick = gapFactor(rows, 0.4).factor / gapFactor(rows, 0.2).factor;
    expect(left(0.4).gap).toBeCloseTo(thick, 12);
    expect(thick).toBeLessThan(1);
    expect(left(0.1).gap).toBe(1);
    // Where no coupon was tested the table counts as it stands.
    expect(ledgerAt(own, 0.2, { temperature: -20, moisture: 'dry' }).gap).toBe(
      gapFactor(rows, 0.2).factor,
    );
  });
});

describe('the ledger', () => {
  it('multiplies its steps', () => {
    expect(ledgerAt(adhesive, 0.2, room).left).toBeCloseTo(0.9 * 0.975 * 0.8 * 0.7, 12);
    expect(ledgerAt(adhesive, 0.7, room).gapOutsideTable).toBe(true);
    expect(ledgerAt({ stressFreeTemperature: 20, states: [] }, 0.7, room)).toMatchObject({
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
