/** From a joint as drawn to the lap that is solved: geometry, material, loads at a clocking. */
import { describe, expect, it } from 'vitest';
import { ModelError } from '../../src/model/errors.ts';
import { adhesiveStateAt } from '../../src/model/joint/adhesive-state.ts';
import { assemble, gapAt, gapStates } from '../../src/model/joint/assembly.ts';
import { adherendFlexibility, adhesiveStrain, bondLaws } from '../../src/model/joint/bond-law.ts';
import { loadWeights, localProblem } from '../../src/model/joint/local-problem.ts';
import {
  type AdhesiveInput,
  axialProperties,
  type JointInput,
} from '../../src/model/joint/types.ts';
import { expectClose } from '../support/close.ts';
import { doubleLap, noLoads, singleLap } from '../support/section-12.ts';

const adhesive: AdhesiveInput = {
  stressFreeTemperature: 60,
  states: [
    {
      temperature: 60,
      moisture: 'dry',
      modulus: 1700,
      shearModulus: 620,
      shearYield: 27,
      plasticStrain: 0.6,
    },
    {
      temperature: 20,
      moisture: 'dry',
      modulus: 2400,
      shearModulus: 876,
      shearYield: 38,
      plasticStrain: 0.4,
    },
    {
      temperature: 20,
      moisture: 'wet',
      modulus: 2000,
      shearModulus: 700,
      shearYield: 30,
      plasticStrain: 0.5,
    },
  ],
};

describe('adhesive at temperature', () => {
  it('is interpolated between rows of its moisture, whatever their order', () => {
    const state = adhesiveStateAt(adhesive, 30, 'dry');
    expect(state.shearModulus).toBeCloseTo(876 - 64, 9);
    expect(state.shearYield).toBeCloseTo(38 - 2.75, 9);
    expect(state.plasticStrain).toBeCloseTo(0.45, 9);
    expect(state.modulus).toBeCloseTo(2400 - 175, 9);
    expect(state.outsideTable).toBe(false);
  });

  it('is the nearest row beyond the table, and says so', () => {
    expect(adhesiveStateAt(adhesive, 80, 'dry')).toMatchObject({
      shearYield: 27,
      outsideTable: true,
    });
    expect(adhesiveStateAt(adhesive, -20, 'dry')).toMatchObject({
      shearYield: 38,
      outsideTable: true,
    });
    expect(adhesiveStateAt(adhesive, 60, 'dry')).toMatchObject({
      shearYield: 27,
      outsideTable: false,
    });
    expect(adhesiveStateAt(adhesive, 20, 'wet')).toMatchObject({
      shearYield: 30,
      outsideTable: false,
    });
  });

  it('refuses a moisture that the table does not have', () => {
    const dry = { ...adhesive, states: adhesive.states.slice(0, 2) };
    expect(() => adhesiveStateAt(dry, 20, 'wet')).toThrow(ModelError);
    expect(() => adhesiveStateAt(dry, 20, 'wet')).toThrow(/add a wet row/);
  });
});

describe('assembly', () => {
  it('puts the sleeve outside the gap, the bond in its middle', () => {
    const { tube, outers, bonds, referenceRadius } = assemble(singleLap, 'nominal');
    expect(tube.root.meanRadius).toBeCloseTo(15.2, 12);
    expect(outers[0]!.root.meanRadius).toBeCloseTo(16.2 + 0.6, 12);
    expect(bonds[0]!.radius).toBeCloseTo(16.1, 12);
    expect(bonds[0]!.width).toBeCloseTo(2 * Math.PI * 16.1, 12);
    expect(referenceRadius).toBe(bonds[0]!.radius);
  });

  it('puts a spigot inside the bore', () => {
    const spigot: JointInput = { ...singleLap, side: 'spigot' } as JointInput;
    const { outers, bonds } = assemble(spigot, 'nominal');
    expect(bonds[0]!.radius).toBeCloseTo(14.3, 12);
    expect(outers[0]!.root.outerRadius).toBeCloseTo(14.2, 12);
    expect(outers[0]!.root.meanRadius).toBeCloseTo(13.6, 12);
  });

  it('puts the tube of a double lap between both, at its mean radius', () => {
    const { outers, bonds, referenceRadius } = assemble(doubleLap, 'nominal');
    expect(outers.map(({ name }) => name)).toEqual(['spigot', 'socket']);
    expect(outers[0]!.root.meanRadius).toBeCloseTo(12.5, 12);
    expect(outers[1]!.root.meanRadius).toBeCloseTo(16.1, 12);
    expect(bonds.map(({ radius }) => radius)).toEqual([
      expect.closeTo(13.1, 12),
      expect.closeTo(15.325, 12),
    ]);
    expect(referenceRadius).toBeCloseTo(14.2, 12);
  });

  it('takes tolerance and offset together, all the way round', () => {
    const bond = { gap: 0.2, tolerance: 0.05 };
    expect(gapAt(bond, 0.03, 'min')).toBeCloseTo(0.12, 12);
    expect(gapAt(bond, 0.03, 'nominal')).toBe(0.2);
    expect(gapAt(bond, 0.03, 'max')).toBeCloseTo(0.28, 12);
    expect(() => gapAt(bond, 0.15, 'min', 'outerBond')).toThrow(/closes/);
    expect(gapStates(singleLap)).toEqual(['nominal']);
  });

  it('takes the offset alone on the sides of a gap at nominal', () => {
    const bond = { gap: 0.2, tolerance: 0.05 };
    expect(gapAt(bond, 0.03, 'thin-side')).toBeCloseTo(0.17, 12);
    expect(gapAt(bond, 0.03, 'thick-side')).toBeCloseTo(0.23, 12);
  });

  it('has sides where they differ from min and max', () => {
    const three = ['min', 'max', 'nominal'];
    const five = [...three, 'thin-side', 'thick-side'];
    const single = (offset: number, tolerance: number): JointInput =>
      ({ ...singleLap, offset, bond: { gap: 0.2, tolerance } }) as JointInput;
    // Without a tolerance min and max are the sides; without an offset there are none.
    expect(gapStates(single(0.01, 0))).toEqual(three);
    expect(gapStates(single(0, 0.05))).toEqual(three);
    expect(gapStates(single(0.01, 0.05))).toEqual(five);
    expect(gapStates({ ...doubleLap, offset: 0.01 } as JointInput)).toEqual(five);
  });

  it('off-centre, makes one bond of a double lap thin where the other is thick', () => {
    const joint = { ...doubleLap, offset: 0.03 } as Extract<JointInput, { type: 'sleeve-double' }>;
    const gaps = (state: 'thin-side' | 'thick-side'): number[] =>
      assemble(joint, state).bonds.map(({ gap }) => gap);
    const [inner, outer] = [joint.innerBond.gap, joint.outerBond.gap];
    expect(gaps('thin-side')).toEqual([
      expect.closeTo(inner + 0.03, 12),
      expect.closeTo(outer - 0.03, 12),
    ]);
    expect(gaps('thick-side')).toEqual([
      expect.closeTo(inner - 0.03, 12),
      expect.closeTo(outer + 0.03, 12),
    ]);
  });

  it('names the wall that does not fit', () => {
    const thick = {
      ...doubleLap,
      spigot: {
        ...(doubleLap as Extract<JointInput, { type: 'sleeve-double' }>).spigot,
        atRoot: 20,
      },
    } as JointInput;
    expect(() => assemble(thick, 'nominal')).toThrow(/spigot wall of 20 mm does not fit/);
    const solid = {
      ...singleLap,
      tube: { ...(singleLap as Extract<JointInput, { type: 'sleeve-single' }>).tube, wall: 16 },
    } as JointInput;
    expect(() => assemble(solid, 'nominal')).toThrow(/no bore/);
  });

  it('keeps the bonded face of a tapered wall where it is', () => {
    const tapered = {
      ...singleLap,
      sleeve: {
        ...(singleLap as Extract<JointInput, { type: 'sleeve-single' }>).sleeve,
        atMouth: 0.4,
      },
    } as JointInput;
    const [sleeve] = assemble(tapered, 'nominal').outers;
    expect(sleeve!.mouth.meanRadius - sleeve!.mouth.thickness / 2).toBeCloseTo(16.2, 12);
    expect(sleeve!.middle.thickness).toBeCloseTo(0.8, 12);
  });
});

describe('bond law', () => {
  const state = { ...adhesiveStateAt(adhesive, 20, 'dry') };

  it('adds a third of each wall bonded on one face, a sixth of one bonded on both', () => {
    const titanium = 114_000 / (2 * 1.34);
    expectClose(
      adherendFlexibility(assemble(singleLap, 'nominal'), 0),
      1.6 / (3 * 4000) + 1.2 / (3 * titanium),
      { relative: 1e-12 },
      'socket',
    );
    expectClose(
      adherendFlexibility(assemble(doubleLap, 'nominal'), 1),
      2 / (6 * 4000) + 1.3 / (3 * titanium),
      { relative: 1e-12 },
      'outer bond',
    );
  });

  it('fails at the slip of yield and the plastic strain together', () => {
    const [plain] = bondLaws(assemble(singleLap, 'nominal'), [state], false);
    expectClose(plain!.stiffness, 876 / 0.2, { relative: 1e-12 }, 'stiffness');
    expectClose(
      plain!.slipAtFailure,
      0.2 * (38 / 876 + 0.4),
      { relative: 1e-12 },
      'slip at failure',
    );
    const [soft] = bondLaws(assemble(singleLap, 'nominal'), [state], true);
    const flexibility = adherendFlexibility(assemble(singleLap, 'nominal'), 0);
    expectClose(1 / soft!.stiffness, 0.2 / 876 + flexibility, { relative: 1e-12 }, 'flexibility');
    // The adhesive alone has the same strain at failure, whatever the walls do.
    const strain = adhesiveStrain(soft!.slipAtFailure, 38, 0.2, flexibility);
    expectClose(strain, 38 / 876 + 0.4, { relative: 1e-12 }, 'strain at failure');
  });
});

describe('loads at a clocking', () => {
  const assembly = assemble(singleLap, 'nominal');
  const bonds = bondLaws(
    assembly,
    [0, 1].map(() => adhesiveStateAt(adhesive, 20, 'dry')),
    false,
  );
  const at = (loads: Partial<typeof noLoads>, theta: number) =>
    localProblem(assembly, bonds, { ...noLoads, ...loads }, theta, 0);

  it('turns a moment into a line load at the bond, opposite on the other side', () => {
    const problem = at({ force: 1000, moment: 50_000 }, 0);
    expectClose(problem.channels[0]!.load, 1000 + (2 * 50_000) / 16.1, { relative: 1e-12 }, 'load');
    const other = at({ force: 1000, moment: 50_000 }, Math.PI);
    expectClose(other.channels[0]!.load, 1000 - (2 * 50_000) / 16.1, { relative: 1e-12 }, 'load');
  });

  it('gives the beam its end strain and the force its own', () => {
    const tube = assembly.tube.root;
    const bending = at({ moment: 50_000 }, 0).channels[0]!;
    const strain = bending.load / bending.tube.stiffness;
    expectClose(
      strain,
      (50_000 * 16.1) / (70_000 * tube.secondMoment),
      { relative: 1e-12 },
      'strain',
    );
    const pull = at({ force: 1000 }, 0).channels[0]!;
    expectClose(pull.tube.stiffness, 70_000 * tube.area, { relative: 1e-12 }, 'axial stiffness');
    const both = loadWeights(assembly, { ...noLoads, force: 500, moment: (500 * 16.1) / 2 }, 0);
    expect(both.force).toBeCloseTo(0.5, 12);
    expect(both.moment).toBeCloseTo(0.5, 12);
  });

  it('turns torque and shear into a circumferential load, worst across the plane of bending', () => {
    const twisted = at({ torque: 20_000 }, 0);
    expect(twisted.axial).toBe(-1);
    const { load, tube } = twisted.channels[twisted.hoop]!;
    expectClose(load, 20_000 / 16.1, { relative: 1e-12 }, 'torque over radius');
    const stiffness = (15_000 * assembly.tube.root.polarMoment) / 16.1 ** 2;
    expectClose(tube.stiffness, stiffness, { relative: 1e-12 }, 'torsional stiffness');
    const sheared = at({ shear: 300 }, Math.PI / 2);
    expectClose(sheared.channels[sheared.hoop]!.load, 600, { relative: 1e-12 }, '2V');
  });

  it('uses the tube own radius in a double lap, with a lever for each bond', () => {
    const both = assemble(doubleLap, 'nominal');
    const laws = bondLaws(
      both,
      [0, 1].map(() => adhesiveStateAt(adhesive, 20, 'dry')),
      false,
    );
    const loads = { ...noLoads, moment: 71_000, torque: 14_200 };
    const problem = localProblem(both, laws, loads, 0, 0);
    expectClose(problem.channels[0]!.load, 10_000, { relative: 1e-12 }, '2M over r');
    expectClose(problem.channels[0]!.levers[0]!, 13.1 / 14.2, { relative: 1e-12 }, 'inner lever');
    expectClose(problem.channels[1]!.load, 1000, { relative: 1e-12 }, 'T over r');
    expectClose(problem.channels[1]!.levers[1]!, 15.325 / 14.2, { relative: 1e-12 }, 'outer lever');
    const socket = both.outers[1]!.root;
    expectClose(
      problem.channels[0]!.outers[1]!.stiffness,
      (2 * 114_000 * socket.secondMoment) / 14.2 ** 2,
      { relative: 1e-12 },
      'beam stiffness of the socket',
    );
  });

  it('keeps temperature in the axial channel', () => {
    const { channels } = localProblem(assembly, bonds, { ...noLoads, torque: 1000 }, 0, -80);
    expect(channels).toHaveLength(2);
    expect(channels[0]!.tube.thermalStrain).toBeCloseTo(-80e-6, 15);
    expect(channels[0]!.outers[0]!.thermalStrain).toBeCloseTo(-80 * 8.6e-6, 15);
    expect(channels[1]!.tube.thermalStrain).toBe(0);
  });

  it('derives the shear modulus of a metal, and takes that of a laminate as given', () => {
    const metal = axialProperties(assembly.outers[0]!.material);
    expectClose(metal.shearModulus, 114_000 / 2.68, { relative: 1e-12 }, 'G of the metal');
    expect(axialProperties(assembly.tube.material)).toEqual({
      modulus: 70_000,
      shearModulus: 15_000,
      throughShearModulus: 4000,
      expansion: 1e-6,
    });
  });
});
