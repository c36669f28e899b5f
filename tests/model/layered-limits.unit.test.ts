/** Layered shells in their limits: shear lag, flat plates, Goland and Reissner; symmetry, sums, extremes. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { golandReissner } from '../../src/model/flat-lap/goland-reissner.ts';
import { bondLaws } from '../../src/model/joint/bond-law.ts';
import { localProblem } from '../../src/model/joint/local-problem.ts';
import type { JointInput, Material } from '../../src/model/joint/types.ts';
import { elasticZones, type LayeredLap, solveLayered } from '../../src/model/layered/lap.ts';
import { layeredLap } from '../../src/model/layered/of-joint.ts';
import type { LayeredSection } from '../../src/model/layered/section.ts';
import { join, uniformStretch } from '../../src/model/layered/stretch.ts';
import { layeredSystem } from '../../src/model/layered/system.ts';
import { combine } from '../../src/model/shear-lag/elastic.ts';
import { solveElastic } from '../../src/model/shear-lag/solve-elastic.ts';
import { expectClose } from '../support/close.ts';
import {
  build,
  gaussPoints,
  glue,
  type Lap,
  type LapType,
  laminate,
  metal,
  randomLaps,
} from '../support/layered-laps.ts';
import { positive } from '../support/random-laps.ts';
import { noLoads } from '../support/section-12.ts';

const types: readonly LapType[] = ['sleeve-single', 'sleeve-double', 'flat-single', 'flat-double'];
const wall = (material: Material, t: number) => ({ material, atRoot: t, atMouth: t });
const bond = (gap: number) => ({ gap, tolerance: 0 });

/** Walls without contraction: along and around do not meet. */
const plain = (modulus: number, expansion = 9e-6): Material => metal(modulus, 0, expansion);

const doubleSleeve = (radius: number): JointInput => ({
  type: 'sleeve-double',
  overlap: 25,
  tube: { material: plain(70_000), outsideDiameter: 2 * radius + 2, wall: 2 },
  spigot: wall(plain(110_000), 1),
  socket: wall(plain(114_000), 1.3),
  innerBond: bond(0.2),
  outerBond: bond(0.25),
  offset: 0,
});
const doubleFlat: JointInput = {
  type: 'flat-double',
  overlap: 25,
  width: 10,
  strip: { material: plain(70_000), thickness: 2 },
  lowerStrap: wall(plain(110_000), 1),
  upperStrap: wall(plain(114_000), 1.3),
  lowerBond: bond(0.2),
  upperBond: bond(0.25),
};
const singleSleeve = (side: 'socket' | 'spigot', radius: number): JointInput => ({
  type: 'sleeve-single',
  side,
  overlap: 30,
  tube: { material: plain(70_000), outsideDiameter: 2 * radius + 1.6, wall: 1.6 },
  sleeve: wall(plain(114_000), 1.2),
  bond: bond(0.2),
  offset: 0,
});

/** The lap with its sections changed. */
const changed = (
  lap: LayeredLap,
  change: (section: LayeredSection) => LayeredSection,
): LayeredLap => {
  const section = change(lap.sectionAt(0));
  return { ...lap, sectionAt: () => section };
};

const stations = (length: number): number[] =>
  Array.from({ length: 41 }, (_v, i) => (i === 40 ? length : (length * i) / 40));

interface Field {
  readonly shear: number[][];
  readonly peel: number[][];
}
function fieldOf(lap: LayeredLap, signs: readonly number[], load: number, share = 1): Field {
  const points = solveLayered(lap, elasticZones(lap)).along(stations(lap.length), load, share);
  return {
    shear: signs.map((sign, j) => points.map(({ stresses }) => sign * stresses.shear[j]!)),
    peel: signs.map((_s, j) => points.map(({ stresses }) => stresses.peel[j]!)),
  };
}
const largest = (lists: readonly (readonly number[])[]): number =>
  Math.max(...lists.flat().map(Math.abs));
/** Largest difference over the largest value. */
const apart = (a: readonly (readonly number[])[], b: readonly (readonly number[])[]): number =>
  Math.max(...a.flatMap((list, j) => list.map((value, k) => Math.abs(value - b[j]![k]!)))) /
  largest(b);

describe('walls that neither bend nor grow', () => {
  const cases: readonly (readonly [string, JointInput, number, number])[] = [
    ['socket', singleSleeve('socket', 16), 1e4, 0],
    ['spigot, cooled', singleSleeve('spigot', 16), 1e4, -100],
    ['double lap, cooled', doubleSleeve(15), 2e4, -60],
    ['flat double lap, warmed', doubleFlat, 5000, 40],
  ];
  it.each(cases)('give the shear lag: %s', (_name, joint, load, deltaT) => {
    const { assembly, lap, signs } = build({ joint, adhesive: glue(), deltaT });
    const laws = bondLaws(
      assembly,
      assembly.bonds.map(() => glue()),
      false,
    );
    const problem = localProblem(assembly, laws, { ...noLoads, force: load }, 0, deltaT);
    const lag = combine(solveElastic(problem.channels[0]!, problem.bonds, problem.length), 1);
    const expected = signs.map((_s, j) => stations(lap.length).map((x) => lag.shear(j, x)));
    const miss = (stiff: number): number => {
      const rigid = changed(lap, ({ shells, bonds, shearFactor }) => ({
        shearFactor,
        // The adhesive's own strain along does not pull here: section 4 does not know it.
        bonds: bonds.map((one) => ({ ...one, contraction: 0, planeModulus: 0 })),
        shells: shells.map((shell) => ({
          ...shell,
          bending: shell.bending * stiff,
          shear: shell.shear * stiff,
          ctt: shell.ctt * stiff,
          throughShear: Number.POSITIVE_INFINITY,
          throughFlexibility: 0,
          thinAxial: 0,
          thinHoop: 0,
          freeHoop: 0,
        })),
      }));
      const still: LayeredLap = {
        ...rigid,
        root: rigid.root.map((end) => (end.kind === 'clamped' ? { ...end, growth: 0 } : end)),
      };
      return apart(fieldOf(still, signs, load).shear, expected);
    };
    // As the limit goes: what is left falls with the stiffness.
    expect(miss(1e6)).toBeLessThan(2e-4);
    expect(miss(1e4) / miss(1e6)).toBeGreaterThan(30);
    expect(miss(1)).toBeGreaterThan(0.01);
  });
});

describe('radius without bound', () => {
  const gap = (radius: number): number => {
    const around = build({ joint: doubleSleeve(radius), adhesive: glue(), deltaT: 0 });
    const flat = build({ joint: doubleFlat, adhesive: glue(), deltaT: 0 });
    // The same load per length of arc.
    const a = fieldOf(around.lap, around.signs, 500 * 2 * Math.PI * radius);
    const b = fieldOf(flat.lap, flat.signs, 500 * 10);
    return Math.max(apart(a.shear, b.shear), apart(a.peel, b.peel));
  };
  it('makes a sleeve of two laps the flat one', () => {
    // A tube that goes on holds the end of the lap as √(R·t) is long: slowly less.
    expect(gap(1e6)).toBeLessThan(2e-3);
    expect(gap(1e4) / gap(1e6)).toBeGreaterThan(5);
    expect(gap(20)).toBeGreaterThan(0.02);
  });

  it('makes socket and spigot the same joint turned over', () => {
    const field = (side: 'socket' | 'spigot', radius: number): Field => {
      const { lap, signs } = build({
        joint: singleSleeve(side, radius),
        adhesive: glue(),
        deltaT: 0,
      });
      return fieldOf(lap, signs, 500 * 2 * Math.PI * radius);
    };
    const miss = (radius: number): number => {
      const [socket, spigot] = [field('socket', radius), field('spigot', radius)];
      return Math.max(apart(socket.shear, spigot.shear), apart(socket.peel, spigot.peel));
    };
    expect(miss(1e4)).toBeLessThan(3e-3);
    expect(miss(1e5)).toBeLessThan(3e-4);
    expect(miss(20)).toBeGreaterThan(0.05);
  });
});

describe('the answer', () => {
  it.each(types)(
    'does not feel where a %s is cut into zones, nor how often its stretches are doubled',
    (type) => {
      fc.assert(
        fc.property(
          randomLaps(type, { usual: true, overlap: positive(3, 60) }),
          fc.double({ min: 0.1, max: 0.9, noNaN: true }),
          (given, cut) => {
            const { lap, solution, assembly } = build(given);
            const flow = assembly.bonds.map(() => 0);
            const zones = [
              { to: cut * lap.length, flow },
              { to: lap.length, flow },
            ];
            const at = stations(lap.length);
            const [one, two] = [solution().along(at, 1e4, 1), solution(zones).along(at, 1e4, 1)];
            for (const what of ['shear', 'peel'] as const) {
              const lists = (points: typeof one) =>
                flow.map((_f, j) => points.map(({ stresses }) => stresses[what][j]!));
              expect(apart(lists(two), lists(one))).toBeLessThan(1e-7);
            }
            // And one stretch is what its two halves joined are.
            const system = layeredSystem(lap.sectionAt(0), flow);
            const short = Math.min(lap.length, 10);
            const whole = uniformStretch(system.a, system.g, short).ends;
            const part = (share: number) => uniformStretch(system.a, system.g, share * short);
            const joined = join(part(cut), part(1 - cut)).ends;
            const { half } = system;
            for (const end of ['start', 'end'] as const) {
              // By both ends' displacements, and by temperature and flow.
              for (const of of [0, 1, 2]) {
                const block = (rows: Float64Array): Float64Array =>
                  rows.filter((_v, i) => Math.floor((i % (2 * half + 1)) / half) === of);
                const size = Math.max(...block(whole[end]).map(Math.abs));
                block(whole[end]).forEach((value, i) => {
                  const off = Math.abs(block(joined[end])[i]! - value);
                  expect(off).toBeLessThanOrEqual(1e-8 * size);
                });
              }
            }
          },
        ),
        { seed: 1, numRuns: 15, endOnFailure: true },
      );
    },
  );

  it.each(types)(
    'of a %s is the sum of its parts, and temperature turned round turns it round',
    (type) => {
      fc.assert(
        fc.property(randomLaps(type), (given) => {
          const { lap, signs } = build(given);
          const [both, load, heat] = [
            fieldOf(lap, signs, 5000),
            fieldOf(lap, signs, 5000, 0),
            fieldOf(lap, signs, 0),
          ];
          const sum = (a: Field, b: Field, what: keyof Field) =>
            a[what].map((list, j) => list.map((value, k) => value + b[what][j]![k]!));
          const cold = build({ ...given, deltaT: -given.deltaT });
          const turned = fieldOf(cold.lap, cold.signs, 0);
          const twice = fieldOf(lap, signs, 1e4, 0);
          for (const what of ['shear', 'peel'] as const) {
            const size = largest(load[what]) + largest(heat[what]);
            expect(apart(sum(load, heat, what), both[what]) * largest(both[what])).toBeLessThan(
              1e-9 * size,
            );
            expect(apart(sum(load, load, what), twice[what])).toBeLessThan(1e-9);
            if (given.deltaT !== 0) {
              const minus = turned[what].map((list) => list.map((value) => -value));
              expect(apart(minus, heat[what])).toBeLessThan(1e-7);
            }
          }
        }),
        { seed: 2, numRuns: 15, endOnFailure: true },
      );
    },
  );

  it('of a balanced flat double lap is the same on both sides, and its strip does not bend', () => {
    const joint: JointInput = {
      ...doubleFlat,
      type: 'flat-double',
      upperStrap: wall(metal(110_000), 1),
      lowerStrap: wall(metal(110_000), 1),
      lowerBond: bond(0.2),
      upperBond: bond(0.2),
    } as JointInput;
    const { lap, signs, solution } = build({ joint, adhesive: glue(), deltaT: -50 });
    const { shear, peel } = fieldOf(lap, signs, 6000);
    expect(apart([shear[0]!], [shear[1]!])).toBeLessThan(1e-9);
    expect(apart([peel[0]!], [peel[1]!])).toBeLessThan(1e-9);
    for (const { forces } of solution().along(stations(25), 6000, 1)) {
      expect(Math.abs(forces[1]!.moment)).toBeLessThan(1e-6);
      expectClose(forces[0]!.moment, -forces[2]!.moment, { absolute: 1e-6 }, 'strap moments');
    }
  });

  // A long stretch that hardly resists being turned must not be the difference of large figures.
  it('keeps its digits in a flat single lap of 500 mm with a thick and a thin wall', () => {
    const joint: JointInput = {
      type: 'flat-single',
      overlap: 500,
      width: 17,
      strip: { material: plain(400_000), thickness: 10 },
      plate: wall(laminate(20_000, 30_000), 0.3),
      bond: bond(0.05),
    };
    const { lap, solution } = build({
      joint,
      adhesive: glue(),
      deltaT: 0,
      edge: { moment: 2, shear: 0.01 },
    });
    const zones = [
      { to: 0.4 * lap.length, flow: [0] },
      { to: lap.length, flow: [0] },
    ];
    const [one, two] = [solution().at(0, 1e4, 1), solution(zones).at(0, 1e4, 1)];
    expectClose(
      two.stresses.shear[0]!,
      one.stresses.shear[0]!,
      { relative: 5e-3 },
      'shear at the root',
    );
  });

  it('is finite at every size that a project may have', () => {
    const edges = fc.constantFrom(1, 500);
    for (const type of types) {
      fc.assert(
        fc.property(randomLaps(type, { overlap: edges }), (given) => {
          const { lap, solution } = build(given);
          const found = solution().along([0, lap.length / 3, lap.length], 1e6, 1);
          for (const { stresses, forces } of found) {
            const all = [
              ...stresses.shear,
              ...stresses.peel,
              ...forces.flatMap(({ axial, hoop, moment }) => [axial, hoop, moment]),
            ];
            expect(all.every(Number.isFinite)).toBe(true);
          }
        }),
        { seed: 3, numRuns: 20 },
      );
    }
  });
});

describe('a flat single lap', () => {
  const t = 1.6;
  const flatLap = (gap: number, material: Material, edge: Lap['edge']): Lap => ({
    joint: {
      type: 'flat-single',
      overlap: 12.5,
      width: 25,
      strip: { material, thickness: t },
      plate: wall(material, t),
      bond: bond(gap),
    },
    adhesive: glue(),
    deltaT: 0,
    edge,
  });
  const factor = 0.6;
  const edge = { moment: (factor * t) / 2, shear: ((1 - factor) * t) / 12.5 };
  const source = (gap: number) =>
    golandReissner(
      {
        load: 240,
        overlap: 12.5,
        thickness: t,
        modulus: 70_000,
        adhesive: { thickness: gap, shearModulus: 900, modulus: 2400 },
      },
      { factor, transverseForce: edge.shear * 240 },
    );
  const miss = (lap: LayeredLap, signs: readonly number[], gap: number) => {
    const { shear, peel } = fieldOf(lap, signs, 240 * 25);
    const theirs = source(gap);
    return {
      shear: apart(shear, [stations(12.5).map((x) => theirs.shear(x))]),
      peel: apart(peel, [stations(12.5).map((x) => theirs.peel(x))]),
    };
  };

  it('has the edge loads it is given', () => {
    const { solution } = build(flatLap(0.2, laminate(70_000, 30_000), edge));
    const { forces } = solution().at(12.5, 6000, 1);
    expectClose(forces[0]!.axial, 240, { relative: 1e-10 }, 'force of the strip');
    expectClose(forces[0]!.moment, -edge.moment * 240, { relative: 1e-9 }, 'edge moment');
    expectClose(forces[1]!.axial, 0, { absolute: 1e-7 }, 'force of the plate at its end');
    const { x, weight } = gaussPoints([0, 12.5], 0.02);
    const peel = solution()
      .along(x, 6000, 1)
      .reduce((sum, { stresses }, k) => sum + weight[k]! * stresses.peel[0]!, 0);
    expectClose(peel, edge.shear * 240, { relative: 1e-9 }, 'integral of peel');
  });

  it('is that of Goland and Reissner when walls do not shear and the layer has no thickness', () => {
    const { lap, signs } = build(flatLap(0.2, plain(70_000), edge));
    const theirs = changed(lap, ({ shells, bonds }) => ({
      shearFactor: 1,
      // A layer of the same stiffnesses and no thickness.
      bonds: bonds.map((one) => ({
        ...one,
        gap: 1e-9,
        shearModulus: (900 * 1e-9) / 0.2,
        constrainedModulus: (2400 * 1e-9) / 0.2,
        contraction: 0,
      })),
      shells: shells.map((shell) => ({
        ...shell,
        shear: shell.shear * 1e8,
        throughShear: Number.POSITIVE_INFINITY,
        throughFlexibility: 0,
        thinAxial: 0,
        thinHoop: 0,
      })),
    }));
    const found = miss(theirs, signs, 0.2);
    expect(found.shear).toBeLessThan(1e-6);
    expect(found.peel).toBeLessThan(1e-6);
  });

  it('is within a third of theirs as it stands: they neglect the walls’ own shear and thickness', () => {
    const { lap, signs } = build(flatLap(0.2, plain(70_000), edge));
    const found = miss(lap, signs, 0.2);
    expect(found.shear).toBeGreaterThan(0.005);
    expect(found.shear).toBeLessThan(0.35);
    expect(found.peel).toBeLessThan(0.6);
  });
});

it('takes adhesives as they come', () => {
  const made = build({ joint: doubleFlat, adhesive: glue(), deltaT: 0 });
  const soft = layeredLap(made.assembly, [glue({ shearModulus: 450, modulus: 1200 }), glue()], 0);
  const [alike, apartFrom] = [made.lap, soft].map(
    (lap) => fieldOf(lap, made.signs, 5000).shear[0]!,
  );
  expect(apartFrom![0]!).toBeLessThan(alike![0]!);
});
