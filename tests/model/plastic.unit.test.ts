/** Properties of the plastic bond: equilibrium, limits, monotone capacity, and the chain against it. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chainCapacity } from '../../src/model/chain/capacity.ts';
import { newton } from '../../src/model/chain/newton.ts';
import { slipNewton } from '../../src/model/chain/slip-newton.ts';
import { fastestDecay, isBeyondFlow, solveChain } from '../../src/model/chain/solve.ts';
import { ModelError } from '../../src/model/errors.ts';
import { chainState, plasticState, resultant } from '../../src/model/joint/lap-state.ts';
import { scaleLoads } from '../../src/model/lap/problem.ts';
import { flowLoad, solvePlastic } from '../../src/model/plastic/one-bond.ts';
import { capacityOf, troughFactor } from '../../src/model/plastic/one-bond-capacity.ts';
import { solveOneBond } from '../../src/model/shear-lag/one-bond.ts';
import { expectClose } from '../support/close.ts';
import { bond, channel, member } from '../support/laps.ts';
import { laps } from '../support/random-laps.ts';

const runs = { numRuns: 150 };

describe('one bond, exact', () => {
  it('carries the load and obeys both end slopes in every regime', () => {
    fc.assert(
      fc.property(laps(1, 1), ({ channels: [lap], bonds: [law], length }) => {
        const state = solvePlastic(lap!, law!, length);
        const scale = Math.abs(lap!.load);
        expectClose(state.outerForce(0), lap!.load, { absolute: 1e-9 * scale }, 'load');
        // Shear never passes yield, and is yield wherever the slip is past it.
        for (let i = 0; i <= 20; i++) {
          const x = (length * i) / 20;
          const tau = state.shear(x);
          expect(Math.abs(tau)).toBeLessThanOrEqual(law!.shearYield * (1 + 1e-9));
          const elastic = law!.stiffness * state.slip(x);
          const capped = Math.max(Math.min(elastic, law!.shearYield), -law!.shearYield);
          expectClose(tau, capped, { absolute: 1e-6 * law!.shearYield }, `law at ${x}`);
        }
      }),
      runs,
    );
  });

  it('is the elastic solution below yield', () => {
    fc.assert(
      fc.property(laps(1, 1), ({ channels: [lap], bonds: [law], length }) => {
        const strong = { ...law!, shearYield: 1e9 };
        const state = solvePlastic(lap!, strong, length);
        const elastic = solveOneBond(lap!, strong, length);
        for (const t of [0, 0.2, 0.5, 1]) {
          const both =
            elastic.mechanical.shear(0, t * length) + elastic.thermal.shear(0, t * length);
          const size =
            Math.abs(elastic.mechanical.shear(0, 0)) +
            Math.abs(elastic.mechanical.shear(0, length)) +
            Math.abs(elastic.thermal.shear(0, 0));
          expectClose(state.shear(t * length), both, { absolute: 1e-9 * size }, `shear at ${t}`);
        }
      }),
      runs,
    );
  });

  it('has a capacity that never falls as the overlap grows, and at last stops growing', () => {
    fc.assert(
      fc.property(laps(1, 1, { thermal: 0 }), ({ channels: [lap], bonds: [law] }) => {
        let before = 0;
        for (const length of [2, 5, 12, 30, 80, 200, 500]) {
          const { factor } = capacityOf(lap!, law!, length);
          expect(factor).toBeGreaterThanOrEqual(before * (1 - 1e-9));
          expect(factor * Math.abs(lap!.load)).toBeLessThanOrEqual(
            flowLoad(lap!, law!, length) * (1 + 1e-9),
          );
          before = factor;
        }
        const [far, farther] = [3000, 6000].map((length) => capacityOf(lap!, law!, length).factor);
        expectClose(farther!, far!, { relative: 1e-6 }, 'plateau');
      }),
      { numRuns: 60 },
    );
  });

  it('reaches exactly the slip at failure at its capacity', () => {
    fc.assert(
      fc.property(laps(1, 1), ({ channels: [lap], bonds: [law], length }) => {
        const { factor, end, wholeBondFlows } = capacityOf(lap!, law!, length);
        if (wholeBondFlows || factor === 0) return;
        const state = solvePlastic({ ...lap!, load: lap!.load * factor }, law!, length);
        const slip = end === 'root' ? state.slipAtRoot : state.slipAtMouth;
        expectClose(Math.abs(slip), law!.slipAtFailure, { relative: 1e-6 }, 'slip');
      }),
      runs,
    );
  });

  it('keeps its trough up to the trough factor', () => {
    fc.assert(
      fc.property(laps(1, 1), ({ channels: [lap], bonds: [law], length }) => {
        const { factor: limit } = capacityOf(lap!, law!, length);
        const factor = troughFactor(lap!, law!, length, 0.1, limit);
        if (factor === 0 || factor >= limit) return;
        const at = (f: number): number =>
          solvePlastic({ ...lap!, load: lap!.load * f }, law!, length).lowestShear /
          law!.shearYield;
        expectClose(at(factor), 0.1, { absolute: 1e-6 }, 'lowest shear over yield');
        // And lowestShear is what a scan along the bond finds.
        const state = solvePlastic({ ...lap!, load: lap!.load * factor }, law!, length);
        let scanned = Number.POSITIVE_INFINITY;
        for (let i = 0; i <= 2000; i++) {
          scanned = Math.min(scanned, Math.abs(state.shear((length * i) / 2000)));
        }
        expectClose(state.lowestShear, scanned, { absolute: 2e-3 * law!.shearYield }, 'scan');
      }),
      runs,
    );
  });

  it('refuses a load at which the whole bond flows', () => {
    const law = bond(800, 0.2, 10, { yieldStrain: 0.05, plasticStrain: 1 });
    const lap = channel(10 * 40 * 20 * 1.0001, member(1e6), [member(1e6)]);
    expect(() => solvePlastic(lap, law, 20)).toThrow(/flows/);
  });
});

describe('the chain', () => {
  it('gives the exact one-bond state: slips, zones, forces', () => {
    fc.assert(
      fc.property(laps(1, 1), (problem) => {
        const [lap] = problem.channels;
        const [law] = problem.bonds;
        const exact = solvePlastic(lap!, law!, problem.length);
        const state = chainState(problem, solveChain(problem, { kind: 'load', factor: 1 }));
        const unit = law!.shearYield / law!.stiffness;
        const size = unit + Math.abs(exact.slipAtRoot) + Math.abs(exact.slipAtMouth);
        const places = [0, 0.1, 0.4, 0.8, 1];
        // Temperature alone can give larger forces inside than the load.
        const force = Math.max(
          Math.abs(lap!.load),
          ...places.map((t) => Math.abs(exact.outerForce(t * problem.length))),
        );
        for (const t of places) {
          const x = t * problem.length;
          expectClose(
            state.slip(0, 0, x),
            exact.slip(x),
            { absolute: 1e-4 * size },
            `slip at ${t}`,
          );
          expectClose(
            state.outerForce(0, 0, x),
            exact.outerForce(x),
            { absolute: 2e-5 * force + 1e-3 },
            `force at ${t}`,
          );
        }
      }),
      runs,
    );
  });

  it('gives the exact one-bond capacity', () => {
    fc.assert(
      fc.property(laps(1, 1), (problem) => {
        const exact = capacityOf(problem.channels[0]!, problem.bonds[0]!, problem.length);
        if (exact.factor === 0) return;
        const { factor } = chainCapacity(problem, { bond: 0, end: exact.end });
        expectClose(factor, exact.factor, { relative: 5e-6 }, 'capacity', problem);
      }),
      runs,
    );
  });

  it('comes out the same with the slips alone as with the forces as unknowns', () => {
    fc.assert(
      fc.property(
        fc
          .constantFrom([1, 2], [2, 1], [2, 2] as const)
          .chain(([b, c]) => laps(b as 1 | 2, c as 1 | 2, {})),
        (problem) => {
          const chain = solveChain(problem, { kind: 'load', factor: 0.6 });
          const control = { kind: 'load', factor: 0.6 } as const;
          const omega = fastestDecay(problem);
          const a = newton(problem, control, chain);
          const b = slipNewton(problem, control, chain, omega);
          expect(a).not.toBeNull();
          expect(b).not.toBeNull();
          const m = 2 * problem.bonds.length * problem.channels.length + 1;
          const most = new Float64Array(m);
          a!.values.forEach((value, i) => {
            most[i % m] = Math.max(most[i % m]!, Math.abs(value));
          });
          a!.values.forEach((value, i) => {
            // The explicit rates differ from the implicit ones by the cell's fifth power.
            expectClose(b!.values[i]!, value, { absolute: 2e-4 * most[i % m]! }, `unknown ${i}`);
          });
        },
      ),
      { numRuns: 60 },
    );
  });

  it('refuses a load beyond the flow of the whole bond at once, and no load that it carries', () => {
    fc.assert(
      fc.property(laps(1, 1), (problem) => {
        const [lap] = problem.channels;
        const factor = flowLoad(lap!, problem.bonds[0]!, problem.length) / Math.abs(lap!.load);
        expect(isBeyondFlow(problem, factor * (1 + 1e-8))).toBe(true);
        expect(isBeyondFlow(problem, -factor * (1 + 1e-8))).toBe(true);
        expect(isBeyondFlow(problem, factor * (1 - 1e-8))).toBe(false);
      }),
      runs,
    );
    // What carries until it slips at failure has no more than the flow of all of it.
    fc.assert(
      fc.property(laps(2, 2), (problem) => {
        const { factor } = chainCapacity(problem, { bond: 0, end: 'mouth' });
        expect(isBeyondFlow(problem, factor * (1 - 1e-8))).toBe(false);
        const least = { ...problem, length: problem.length / 1e4 };
        const short = chainCapacity(least, { bond: 0, end: 'mouth' }).factor;
        expect(isBeyondFlow(least, short * 1.5)).toBe(true);
        expect(() => solveChain(least, { kind: 'load', factor: short * 1.5 })).toThrow(ModelError);
      }),
      { numRuns: 40 },
    );
  });

  it('closes equilibrium and stays inside one yield surface, two bonds and two channels', () => {
    fc.assert(
      fc.property(laps(2, 2), (problem) => {
        const state = chainState(problem, solveChain(problem, { kind: 'load', factor: 0.7 }));
        problem.channels.forEach(({ load }, q) => {
          const sum = state.outerForce(q, 0, 0) + state.outerForce(q, 1, 0);
          expectClose(sum, 0.7 * load, { absolute: 1e-7 * Math.abs(load) + 1e-3 }, `load ${q}`);
        });
        for (let i = 0; i <= 30; i++) {
          const x = (problem.length * i) / 30;
          problem.bonds.forEach((law, j) => {
            expect(resultant(problem, state, j, x)).toBeLessThanOrEqual(
              law.shearYield * (1 + 1e-6),
            );
          });
        }
      }),
      { numRuns: 60 },
    );
  });

  it('reduces to one channel when the other is at rest', () => {
    fc.assert(
      fc.property(laps(1, 1, { thermal: 0 }), (problem) => {
        const [lap] = problem.channels;
        const idle = { ...lap!, load: 0 };
        const turned = {
          ...problem,
          channels: [
            { ...lap!, load: lap!.load * Math.SQRT1_2 },
            { ...lap!, load: lap!.load * Math.SQRT1_2 },
          ],
        };
        const alone = plasticState(problem, 0.8);
        const beside = chainState(
          { ...problem, channels: [lap!, idle] },
          solveChain({ ...problem, channels: [lap!, idle] }, { kind: 'load', factor: 0.8 }),
        );
        // Equal stiffness both ways: the problem turns as a whole.
        const both = chainState(turned, solveChain(turned, { kind: 'load', factor: 0.8 }));
        const size = Math.abs(alone.slip(0, 0, 0)) + Math.abs(alone.slip(0, 0, problem.length));
        for (const t of [0, 0.25, 1]) {
          const x = t * problem.length;
          expectClose(
            beside.slip(0, 0, x),
            alone.slip(0, 0, x),
            { absolute: 1e-4 * size },
            `idle ${t}`,
          );
          const turnedSlip = Math.hypot(both.slip(0, 0, x), both.slip(1, 0, x));
          expectClose(
            turnedSlip,
            Math.abs(alone.slip(0, 0, x)),
            { absolute: 1e-4 * size },
            `turned ${t}`,
          );
        }
      }),
      { numRuns: 60 },
    );
  });

  it('scales: twice the load is the doubled problem at once', () => {
    fc.assert(
      fc.property(laps(2, 1), (problem) => {
        const half = scaleLoads(problem, 0.5);
        const a = chainCapacity(problem, { bond: 0, end: 'mouth' }).factor;
        const b = chainCapacity(half, { bond: 1, end: 'root' }).factor;
        expectClose(b, 2 * a, { relative: 1e-5 }, 'capacity', problem);
      }),
      { numRuns: 60 },
    );
  });
});
