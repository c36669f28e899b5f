/** Volumes, masses and layers of print. */
import { describe, expect, it } from 'vitest';
import { assemble } from '../../src/model/joint/assembly.ts';
import type { JointInput, Material } from '../../src/model/joint/types.ts';
import { jointMass, MOST_LAYERS, printOf, TALLEST_PRINT } from '../../src/model/mass/joint-mass.ts';
import { expectClose } from '../support/close.ts';
import { integrate } from '../support/integrate.ts';

const metal: Material = {
  kind: 'isotropic',
  modulus: 114_000,
  poisson: 0.34,
  expansion: 8.6e-6,
  yieldStrength: 830,
  ultimateStrength: 900,
};
const double: JointInput = {
  type: 'sleeve-double',
  overlap: 40,
  tube: { material: metal, outsideDiameter: 40, wall: 2 },
  spigot: { material: metal, atRoot: 2, atMouth: 0.5 },
  socket: { material: metal, atRoot: 1.2, atMouth: 1.2 },
  innerBond: { gap: 0.2, tolerance: 0 },
  outerBond: { gap: 0.3, tolerance: 0 },
  offset: 0,
};
const assembly = assemble(double, 'nominal');
const known = { tube: 1550, outers: [4430, 4430], adhesive: 1150 };

describe('mass of a joint', () => {
  it('has the volumes of its rings, tapers exact', () => {
    const { tube, walls, bonds } = jointMass(assembly, known);
    const ring = (inner: number, outer: number): number => Math.PI * (outer ** 2 - inner ** 2);
    expectClose(tube.volume, 40 * ring(18, 20), { relative: 1e-12 }, 'tube');
    const spigot = integrate((x) => ring(17.8 - 2 + (1.5 * x) / 40, 17.8), 0, 40);
    expectClose(walls[0]!.volume, spigot, { relative: 1e-12 }, 'spigot');
    expectClose(walls[1]!.volume, 40 * ring(20.3, 21.5), { relative: 1e-12 }, 'socket');
    expectClose(bonds[0]!.volume, 40 * ring(17.8, 18), { relative: 1e-12 }, 'inner bond');
    expectClose(bonds[1]!.volume, 40 * ring(20, 20.3), { relative: 1e-12 }, 'outer bond');
  });

  it('adds walls and adhesive, not the tube, in grams', () => {
    const { walls, bonds, added } = jointMass(assembly, known);
    const grams =
      (4430 * (walls[0]!.volume + walls[1]!.volume) +
        1150 * (bonds[0]!.volume + bonds[1]!.volume)) /
      1e6;
    expectClose(added!, grams, { relative: 1e-12 }, 'added');
  });

  it('is not known where a density is not, and says the rest', () => {
    const some = jointMass(assembly, { ...known, outers: [undefined, 4430], tube: undefined });
    expect(some.added).toBeNull();
    expect(some.tube.mass).toBeNull();
    expect(some.walls.map(({ mass }) => mass === null)).toEqual([true, false]);
    expect(jointMass(assembly, { ...known, tube: undefined }).added).not.toBeNull();
    expect(jointMass(assembly, { ...known, adhesive: undefined }).added).toBeNull();
  });

  it('of a flat joint is that of its strips', () => {
    const flat = assemble(
      {
        type: 'flat-single',
        overlap: 20,
        width: 25,
        strip: { material: metal, thickness: 3 },
        plate: { material: metal, atRoot: 2, atMouth: 1 },
        bond: { gap: 0.2, tolerance: 0 },
      },
      'nominal',
    );
    const { walls, bonds } = jointMass(flat, { ...known, outers: [4430] });
    expectClose(walls[0]!.volume, 750, { relative: 1e-12 }, 'plate');
    expectClose(bonds[0]!.volume, 100, { relative: 1e-12 }, 'bond');
  });
});

describe('layers of print', () => {
  it('are rounded up, and whole ones are not one more', () => {
    expect(printOf(45, 0.06, 0)).toEqual({ height: 45, layers: 750, tall: false });
    expect(printOf(45.01, 0.06, 0).layers).toBe(751);
    expect(printOf(30, 0.03, 12)).toMatchObject({ height: 42, layers: 1400 });
    // 0.3/0.1 is not 3 in floating point.
    expect(printOf(0.3, 0.1, 0).layers).toBe(3);
  });

  it('are many past 2500, and a print is tall past 150 mm', () => {
    expect(printOf(MOST_LAYERS * 0.06, 0.06, 0).tall).toBe(false);
    expect(printOf(100, 0.03, 0).tall).toBe(true);
    expect(printOf(TALLEST_PRINT, 0.1, 1).tall).toBe(true);
  });
});
