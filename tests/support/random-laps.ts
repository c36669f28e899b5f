/** Random laps of the sizes that frames have, for properties. */
import fc from 'fast-check';
import type { LapProblem } from '../../src/model/lap/problem.ts';

export const positive = (low: number, high: number) =>
  fc.double({ min: Math.log(low), max: Math.log(high), noNaN: true }).map(Math.exp);
/** Zero, or a number whose square is still an ordinary one: denormal loads are no loads. */
export const signed = (size: number) =>
  fc.double({ min: -size, max: size, noNaN: true }).map((x) => (Math.abs(x) < 1e-9 * size ? 0 : x));

const member = (thermal: number) =>
  fc.record({ stiffness: positive(1e6, 1e8), thermalStrain: signed(thermal) });

const law = fc
  .record({
    g: positive(200, 1500),
    h: positive(0.1, 0.5),
    width: positive(20, 200),
    ge: positive(0.02, 0.08),
    gp: positive(0.05, 1),
  })
  .map(({ g, h, width, ge, gp }) => ({
    width,
    stiffness: g / h,
    shearYield: g * ge,
    slipAtFailure: h * (ge + gp),
  }));

/** A lap whose load is `use` times the load at which the whole bond would flow. */
export const laps = (
  bonds: 1 | 2,
  channels: 1 | 2,
  { thermal = 5e-4, use = positive(0.05, 0.95), length = positive(5, 120) } = {},
): fc.Arbitrary<LapProblem> =>
  fc
    .record({
      length,
      laws: fc.array(law, { minLength: bonds, maxLength: bonds }),
      members: fc.array(fc.array(member(thermal), { minLength: bonds + 1, maxLength: bonds + 1 }), {
        minLength: channels,
        maxLength: channels,
      }),
      levers: fc.array(positive(0.9, 1.1), { minLength: bonds, maxLength: bonds }),
      use,
      sign: fc.constantFrom(-1, 1),
      turn: fc.double({ min: 0.2, max: 1.3, noNaN: true }),
    })
    .map(({ length: overlap, laws, members, levers, use: share, sign, turn }) => {
      const flow = laws.reduce((sum, one, j) => sum + levers[j]! * one.width * one.shearYield, 0);
      const size = sign * share * flow * overlap;
      const loads = channels === 1 ? [size] : [size * Math.cos(turn), size * Math.sin(turn)];
      return {
        length: overlap,
        bonds: laws,
        channels: members.map(([tube, ...outers], q) => ({
          load: loads[q]!,
          tube: { ...tube!, thermalStrain: q === 0 ? tube!.thermalStrain : 0 },
          outers: outers.map((outer) => ({
            ...outer,
            thermalStrain: q === 0 ? outer.thermalStrain : 0,
          })),
          levers,
        })),
      };
    });
