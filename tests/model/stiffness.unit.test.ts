/** The joint as springs: limits, energy, closed form, and the section that a rigid bond makes. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assemble } from '../../src/model/joint/assembly.ts';
import type { JointInput, Material } from '../../src/model/joint/types.ts';
import type { BondLaw, Channel } from '../../src/model/lap/problem.ts';
import { makeBasis } from '../../src/model/shear-lag/basis.ts';
import { solveElastic } from '../../src/model/shear-lag/solve-elastic.ts';
import { type SpringKind, springChannel } from '../../src/model/stiffness/channels.ts';
import { complianceOf } from '../../src/model/stiffness/compliance.ts';
import { springsOf } from '../../src/model/stiffness/springs.ts';
import { expectClose } from '../support/close.ts';
import { integrate } from '../support/integrate.ts';
import { laps } from '../support/random-laps.ts';

const titanium: Material = {
  kind: 'isotropic',
  modulus: 114_000,
  poisson: 0.34,
  expansion: 8.6e-6,
  yieldStrength: 830,
  ultimateStrength: 900,
};
const carbon: Material = {
  kind: 'orthotropic',
  axialModulus: 70_000,
  hoopModulus: 30_000,
  shearModulus: 15_000,
  poisson: 0.3,
  axialExpansion: 1e-6,
  hoopExpansion: 6e-6,
  throughShearModulus: 4000,
  tensileStrength: 750,
  compressiveStrength: 520,
  shearStrength: 160,
};
const wall = (atRoot: number, atMouth = atRoot) => ({ material: titanium, atRoot, atMouth });
const tube = { material: carbon, outsideDiameter: 40, wall: 2 };
const fit = { gap: 0.2, tolerance: 0.05 };

const socket = (overlap: number, sleeve = wall(1.2)): JointInput => ({
  type: 'sleeve-single',
  side: 'socket',
  overlap,
  tube,
  sleeve,
  bond: fit,
  offset: 0.03,
});
const double = (overlap: number): JointInput => ({
  type: 'sleeve-double',
  overlap,
  tube,
  spigot: wall(1.2),
  socket: wall(1.5),
  innerBond: fit,
  outerBond: { gap: 0.35, tolerance: 0.05 },
  offset: 0.03,
});
const flat = (overlap: number): JointInput => ({
  type: 'flat-double',
  overlap,
  width: 25,
  strip: { material: carbon, thickness: 3 },
  lowerStrap: wall(1.2),
  upperStrap: wall(1.6),
  lowerBond: fit,
  upperBond: fit,
});

const lawsOf = (joint: JointInput, stiffness: number): BondLaw[] =>
  assemble(joint, 'nominal').bonds.map(({ width }) => ({
    width,
    stiffness,
    shearYield: 1,
    slipAtFailure: 1,
  }));

const kinds: readonly SpringKind[] = ['axial', 'bending', 'torsion'];
const joints = [
  ['single lap', socket(30)],
  ['tapered single lap', socket(30, wall(1.6, 0.5))],
  ['double lap', double(45)],
  ['flat double lap', flat(40)],
] as const;

/** Every spring of the joints above, with bonds of this stiffness. */
const each = (stiffness: number) =>
  joints.flatMap(([name, joint]) => {
    const assembly = assemble(joint, 'nominal');
    const laws = lawsOf(joint, stiffness);
    return kinds
      .filter((kind) => kind !== 'torsion' || !assembly.flat)
      .map((kind) => {
        const channel = springChannel(assembly, kind);
        return {
          what: `${name}, ${kind}`,
          channel,
          laws,
          length: joint.overlap,
          give: complianceOf(channel, laws, joint.overlap),
        };
      });
  });

/** ∫ dx / Σ K over the walls side by side. */
const composite = ({ tube: middle, outers }: Channel, length: number): number =>
  integrate(
    (x) => {
      const t = x / length;
      const sum = [middle, ...outers].reduce((all, { stiffness, taper }) => {
        if (!taper) return all + stiffness;
        const square = 2 * (stiffness + taper.mouth - 2 * taper.middle);
        return all + stiffness + t * (taper.mouth - stiffness - square + t * square);
      }, 0);
      return 1 / sum;
    },
    0,
    length,
  );

describe('areas under the integrals of the even and odd solutions', () => {
  it('are what quadrature finds, for soft bonds and stiff ones', () => {
    for (const omegaL of [1e-6, 1e-2, 0.15, 0.25, 1, 8, 40]) {
      const basis = makeBasis(omegaL / 25, 25);
      const even = integrate(basis.evenBeyond, 0, 25, 200);
      const odd = integrate(basis.oddBeyond, 0, 25, 200);
      expectClose(basis.evenArea, even, { relative: 1e-11 }, `even, ωL ${omegaL}`);
      expectClose(basis.oddArea, odd, { relative: 1e-9 }, `odd, ωL ${omegaL}`);
    }
  });
});

describe('the give of a joint', () => {
  it('is that of the composite section when the bond is rigid', () => {
    for (const { what, channel, length, give } of each(1e9)) {
      expectClose(give, composite(channel, length), { relative: 2e-3 }, what);
      expect(give).toBeGreaterThan(composite(channel, length));
    }
  });

  it('is the slip of the bonds alone when they are very soft', () => {
    for (const { what, channel, laws, length, give } of each(1e-3)) {
      const coupling = laws.reduce(
        (sum, { width, stiffness }, j) => sum + channel.levers[j]! ** 2 * width * stiffness,
        0,
      );
      expectClose(give, 1 / (coupling * length), { relative: 1e-4 }, what);
    }
  });

  it('past the reach of the ends is a constant beyond the composite section', () => {
    const beyond = (overlap: number, joint: (overlap: number) => JointInput, kind: SpringKind) => {
      const assembly = assemble(joint(overlap), 'nominal');
      const channel = springChannel(assembly, kind);
      const give = complianceOf(channel, lawsOf(joint(overlap), 3000), overlap);
      return give - composite(channel, overlap);
    };
    for (const kind of kinds) {
      for (const joint of [socket, double]) {
        const far = beyond(400, joint, kind);
        expectClose(beyond(300, joint, kind), far, { relative: 1e-6 }, kind);
        expect(far).toBeGreaterThan(0);
      }
    }
  });

  it('falls with the overlap of a single lap at first, and grows with it in the end', () => {
    const give = (overlap: number): number => {
      const assembly = assemble(socket(overlap), 'nominal');
      return complianceOf(springChannel(assembly, 'axial'), lawsOf(socket(overlap), 3000), overlap);
    };
    expect(give(10)).toBeLessThan(give(5));
    expect(give(100)).toBeGreaterThan(give(50));
  });

  it('has the closed form of one bond', () => {
    for (const kind of kinds) {
      for (const length of [2, 12, 30, 200]) {
        const channel = springChannel(assemble(socket(length), 'nominal'), kind);
        const [law] = lawsOf(socket(length), 2500);
        const [t, s] = [channel.tube.stiffness, channel.outers[0]!.stiffness];
        const lambda = 1 / t + 1 / s;
        const omega = channel.levers[0]! * Math.sqrt(law!.width * law!.stiffness * lambda);
        const [rt, rs] = [t / (t + s), s / (t + s)];
        const ends =
          (rt * rt + rs * rs) / Math.tanh(omega * length) +
          (2 * rt * rs) / Math.sinh(omega * length);
        expectClose(
          complianceOf(channel, [law!], length),
          length / (t + s) + (lambda / omega) * ends,
          { relative: 1e-12 },
          `${kind}, ${length} mm`,
        );
      }
    }
  });

  it('is the same along every way from the root to the mouth', () => {
    for (const { what, channel, laws, length, give } of each(3000)) {
      const { mechanical } = solveElastic(channel, laws, length);
      for (const [j, { stiffness }] of laws.entries()) {
        const slip = (x: number): number => mechanical.shear(j, x) / stiffness / channel.levers[j]!;
        expectClose(slip(length) + mechanical.outerStretch(j), give, { relative: 1e-6 }, what);
        // Along the tube: across the bond at the root, then the tube's own stretch.
        const tubeForce = (x: number): number =>
          laws.reduce((left, _law, i) => left - mechanical.outerForce(i, x), 1);
        const stretch = integrate(tubeForce, 0, length) / channel.tube.stiffness;
        expectClose(slip(0) + stretch, give, { relative: 1e-6 }, `${what}, along the tube`);
      }
    }
  });

  it('holds the energy of walls and bonds', () => {
    fc.assert(
      fc.property(fc.constantFrom(1, 2), fc.nat(), (bonds, seed) => {
        const [lap] = fc.sample(laps(bonds as 1 | 2, 1, { thermal: 0 }), { numRuns: 1, seed });
        const { length, bonds: laws } = lap!;
        const channel = { ...lap!.channels[0]!, load: 1 };
        const { mechanical } = solveElastic(channel, laws, length);
        const energy = integrate(
          (x) => {
            let tubeForce = 1;
            let sum = 0;
            laws.forEach(({ width, stiffness }, j) => {
              const force = mechanical.outerForce(j, x);
              tubeForce -= force;
              sum += force ** 2 / channel.outers[j]!.stiffness;
              sum += (width * mechanical.shear(j, x) ** 2) / stiffness;
            });
            return (sum + tubeForce ** 2 / channel.tube.stiffness) / 2;
          },
          0,
          length,
          400,
        );
        expectClose(energy, complianceOf(channel, laws, length) / 2, { relative: 1e-7 }, 'energy');
      }),
      { numRuns: 100 },
    );
  });

  it('shrinks when anything is made stiffer', () => {
    fc.assert(
      fc.property(laps(2, 1, { thermal: 0 }), fc.constantFrom(0, 1, 2, 3, 4), (lap, which) => {
        const channel = { ...lap.channels[0]!, load: 1 };
        const more = <T extends { readonly stiffness: number }>(one: T, yes: boolean): T =>
          yes ? { ...one, stiffness: one.stiffness * 1.3 } : one;
        const stiffer = {
          ...channel,
          tube: more(channel.tube, which === 0),
          outers: channel.outers.map((outer, j) => more(outer, which === 1 + j)),
        };
        const laws = lap.bonds.map((law, j) => more(law, which === 3 + j));
        const before = complianceOf(channel, lap.bonds, lap.length);
        expect(complianceOf(stiffer, laws, lap.length)).toBeLessThan(before * (1 + 1e-12));
      }),
    );
  });
});

describe('springs of a joint', () => {
  const of = (joint: JointInput) => springsOf(assemble(joint, 'nominal'), lawsOf(joint, 3000));

  it('are three for a sleeve, two for a flat joint', () => {
    expect(of(socket(30)).springs.map(({ kind }) => kind)).toEqual(kinds);
    expect(of(flat(30)).springs.map(({ kind }) => kind)).toEqual(['axial', 'bending']);
  });

  it('give the same movement, wherever the frame ends its tube', () => {
    for (const { stiffness, atRoot, tube: bare, tubeLength } of of(socket(3)).springs) {
      expectClose(tubeLength / bare, 1 / stiffness, { relative: 1e-12 }, 'length of bare tube');
      expect(atRoot).not.toBeNull();
      expectClose(3 / bare + 1 / atRoot!, 1 / stiffness, { relative: 1e-12 }, 'tube to the root');
    }
  });

  it('have none at the root where the joint is stiffer than its length of bare tube', () => {
    for (const { atRoot, stiffness, tube: bare } of of(double(45)).springs) {
      expect(stiffness).toBeGreaterThan(bare / 45);
      expect(atRoot).toBeNull();
    }
  });

  it('across are the walls side by side, softer where one tapers', () => {
    const shear = 114_000 / 2.68;
    const area = (inner: number, outer: number): number => Math.PI * (outer ** 2 - inner ** 2);
    const walls = 15_000 * area(18, 20) + shear * area(20.2, 21.4);
    expectClose(of(socket(30)).shear, walls / 2 / 30, { relative: 1e-12 }, 'uniform');
    expect(of(socket(30, wall(1.2, 0.6))).shear).toBeLessThan(of(socket(30)).shear);
  });
});
