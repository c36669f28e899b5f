/** Elastic shear of one bond and two. */
import { annulus } from '../../../src/model/joint/section.ts';
import { decayRate, solveOneBond } from '../../../src/model/shear-lag/one-bond.ts';
import { solveTwoBonds } from '../../../src/model/shear-lag/two-bond.ts';
import { bond, channel, member } from '../../support/laps.ts';
import { type Case, lazy, printed, same, type Topic, value } from '../case.ts';
import { precise } from './shear-lag-sweep.ts';

const strips = (width: number) =>
  lazy(() => {
    const strip = member(70_000 * 2 * width);
    const law = bond(800, 0.1, width);
    const load = channel(6000, strip, [strip]);
    return { omega: decayRate(load, law), ...solveOneBond(load, law, 30) };
  });
const narrow = strips(25);
const wide = strips(50);

const equalStrips: Case = {
  id: 'equal-strips',
  title: 'Single lap of two equal strips',
  source:
    'C. Willberg, Krafteinleitung und Fügetechniken, lectures on fibre composites, Hochschule Magdeburg-Stendal, exercise 3 and its solution; formulas after H. Schürmann, Konstruieren mit Faser-Kunststoff-Verbunden, ch. 23',
  tag: 'published',
  inputs: [
    'strips E = 70 000 MPa, t = 2 mm, b = 25 mm (and 50 mm)',
    'adhesive G = 800 MPa, h = 0.1 mm; overlap 30 mm; load 6 kN',
  ],
  checks: [
    printed('ρ² = (ωL)²', '', '102.9', () => (narrow().omega * 30) ** 2),
    printed('ρ = ωL', '', '10.14', () => narrow().omega * 30),
    printed('limit overlap 5/ω', 'mm', '14.8', () => 5 / narrow().omega),
    printed('mean shear', 'MPa', '8.0', () => narrow().mechanical.outerForce(0, 0) / (25 * 30)),
    printed('peak at the mouth, b = 25 mm', 'MPa', '40.6', () => narrow().mechanical.shear(0, 30)),
    printed('peak at the root, b = 25 mm', 'MPa', '40.6', () => narrow().mechanical.shear(0, 0)),
    printed('peak at the mouth, b = 50 mm', 'MPa', '20.3', () => wide().mechanical.shear(0, 30)),
    printed('peak at the root, b = 50 mm', 'MPa', '20.3', () => wide().mechanical.shear(0, 0)),
  ],
  remarks: [
    'Misprint in the source: its simplified formula for equal strips has the prefactor 1/2 where 1/√2 is right (28.7 MPa against its own worked answer of 40.6 MPa). It is not used here.',
  ],
};

const mixedMetals = lazy(() => {
  const deltaT = 70 - 200;
  const steel = member(30e6 * 0.1, 6.0e-6 * deltaT);
  const aluminium = member(10e6 * 0.15, 13.3e-6 * deltaT);
  const law = bond(0.2e6, 0.02, 1);
  return solveTwoBonds(channel(2000, steel, [aluminium, aluminium]), [law, law], 1);
});
const bothAt = (x: number): number =>
  mixedMetals().mechanical.shear(0, x) + mixedMetals().thermal.shear(0, x);

const rounded = (place: string, x: number, text: string) =>
  value({
    name: `shear ${place}, load and temperature, as printed`,
    unit: 'psi',
    expected: Number(text),
    printed: text,
    computed: () => bothAt(x),
    tolerance: { relative: 1e-3 },
    why: 'the textbook rounds ω to 3.65 before it goes on; the hard figures are the independent ones',
    tag: 'memory',
  });

const steelAndAluminium: Case = {
  id: 'steel-and-aluminium',
  title: 'Double lap with a thermal mismatch',
  source:
    "R. G. Budynas, J. K. Nisbett, Shigley's Mechanical Engineering Design, example of an adhesive double lap: inputs read in another public document, printed answers from memory; digits by an independent boundary-value solution",
  tag: 'second-hand',
  inputs: [
    'outer strips, aluminium: E = 10e6 psi, t = 0.150 in, α = 13.3e-6 /°F',
    'inner strip, steel: E = 30e6 psi, t = 0.100 in, α = 6.0e-6 /°F',
    'adhesive G = 0.2e6 psi, h = 0.020 in; b = 1 in, overlap 1 in; 2000 lbf; stress-free 200 °F, service 70 °F',
  ],
  checks: [
    printed('ω', '1/in', '3.65', () => mixedMetals().omegaMax, 'memory'),
    rounded('at the root', 0, '-544'),
    rounded('in the middle', 0.5, '604'),
    rounded('at the mouth', 1, '4388'),
    printed('shear at the root', 'psi', '-544.43', () => bothAt(0), 'independent'),
    printed('shear in the middle', 'psi', '603.92', () => bothAt(0.5), 'independent'),
    printed('shear at the mouth', 'psi', '4390.49', () => bothAt(1), 'independent'),
    printed(
      'shear by temperature alone, at the mouth',
      'psi',
      '2467.46',
      () => mixedMetals().thermal.shear(0, 1),
      'independent',
    ),
    ...[0, 1].map((j) =>
      value({
        name: `share of the load, bond ${j + 1}`,
        unit: 'lbf',
        expected: 1000,
        computed: () => mixedMetals().mechanical.outerForce(j, 0),
        tolerance: { relative: 1e-12 },
        why: 'symmetry: rounding only',
        tag: 'independent' as const,
      }),
    ),
  ],
};

const tubeArea = annulus(23, 25).area;
const sleeveArea = annulus(25.2, 26.7).area;
const tubeBond = bond(800, 0.2, 2 * Math.PI * 25.1);
const carbonTube = lazy(() =>
  solveOneBond(
    channel(50_000, member(70_000 * tubeArea, -2e-6 * 100), [
      member(110_300 * sleeveArea, -8.6e-6 * 100),
    ]),
    tubeBond,
    40,
  ),
);
const meanShear = (): number => carbonTube().mechanical.outerForce(0, 0) / (tubeBond.width * 40);
const lowestShear = (): number => {
  let lowest = Number.POSITIVE_INFINITY;
  for (let x = 0; x <= 40; x += 0.01) {
    lowest = Math.min(lowest, carbonTube().mechanical.shear(0, x));
  }
  return lowest;
};

const tubeInSleeve: Case = {
  id: 'tube-in-sleeve',
  title: 'Carbon tube in a titanium sleeve',
  source:
    "the project's own reference case, solved as a boundary-value problem to all digits shown",
  tag: 'independent',
  inputs: [
    'tube: outside diameter 50 mm, wall 2 mm, E = 70 GPa, α = 2e-6 /°C',
    'sleeve outside: wall 1.5 mm, E = 110.3 GPa, α = 8.6e-6 /°C',
    'adhesive G = 800 MPa, h = 0.2 mm; overlap 40 mm; 50 kN; ΔT = −100 °C apart',
  ],
  checks: [
    printed('ω', '1/mm', '0.230793', () => carbonTube().omegaMax),
    printed('mean shear', 'MPa', '7.92604', meanShear),
    printed('peak/mean at the mouth', '', '5.17962', () => shearAt(40) / meanShear()),
    printed('peak/mean at the root', '', '4.05392', () => shearAt(0) / meanShear()),
    printed('peak at the mouth', 'MPa', '41.0539', () => shearAt(40)),
    printed('peak at the root', 'MPa', '32.1315', () => shearAt(0)),
    printed('lowest shear', 'MPa', '0.7186', lowestShear),
    printed('thermal shear at the root', 'MPa', '-11.4366', () => carbonTube().thermal.shear(0, 0)),
    printed('thermal shear at the mouth', 'MPa', '11.4366', () =>
      carbonTube().thermal.shear(0, 40),
    ),
  ],
};
function shearAt(x: number): number {
  return carbonTube().mechanical.shear(0, x);
}

/** A wall of the same thickness at any radius: with areas 2πρt the ratio is that of flat strips. */
const peakRatio = (radius: number): number => {
  const width = 2 * Math.PI * radius;
  const { mechanical } = solveOneBond(
    channel(1000, member(70_000 * 2 * width), [member(110_300 * 1.5 * width)]),
    bond(800, 0.2, width),
    40,
  );
  return (mechanical.shear(0, 40) * width * 40) / 1000;
};

const thinWalls: Case = {
  id: 'thin-walls',
  title: 'Thin-walled tubes and flat strips have the same peak',
  source: 'identity of the theory: with thin-wall areas the radius cancels',
  tag: 'independent',
  inputs: ['walls, moduli and adhesive of the case above; bond radius 10, 25.1 and 1000 mm'],
  checks: [10, 25.1, 1000].map((radius) =>
    printed(`peak/mean at the mouth, ρ = ${radius} mm`, '', '4.976965', () => peakRatio(radius)),
  ),
};

/** The peak of an ever longer overlap, over its limit: it stays. */
const peakAt = (length: number): number =>
  solveOneBond(
    channel(50_000, member(70_000 * tubeArea), [member(110_300 * sleeveArea)]),
    tubeBond,
    length,
  ).mechanical.shear(0, length);

const behaviour: Case = {
  id: 'tubular-behaviour',
  title: 'Where the peak of a tubular joint is, and that length does not remove it',
  source:
    'N. Pugno, A. Carpinteri, Tubular Adhesive Joints Under Axial Load, J. Applied Mechanics (venue from memory)',
  tag: 'abstract',
  inputs: ['tube and sleeve of the case above, overlap 40, 400 and 4000 mm'],
  checks: [
    same({
      name: 'the largest shear is at an end, and at that of the stiffer tube',
      compare: () => {
        const [root, middle, mouth] = [shearAt(0), shearAt(20), shearAt(40)];
        const largest = Math.max(root, middle, mouth);
        // The sleeve is the stiffer one; it ends at the mouth.
        const end = largest === mouth ? 'mouth' : largest === root ? 'root' : 'middle';
        return [{ what: 'place of the peak', expected: 'mouth', computed: end }];
      },
    }),
    value({
      name: 'peak at 4000 mm over that at 400 mm',
      unit: '',
      expected: 1,
      computed: () => peakAt(4000) / peakAt(400),
      tolerance: { relative: 1e-12 },
      why: 'at ωL = 90 the other end is out of reach',
    }),
  ],
};

export const shearLag: Topic = {
  title: 'Elastic shear lag',
  intro:
    'Section 5 of the method. Here the program must be exact: the theory has a closed form, so what differs is rounding of what is printed.',
  cases: [equalStrips, steelAndAluminium, tubeInSleeve, thinWalls, behaviour, precise],
};
