/**
 * Where each number is to be had and what is usual of it, beside what it is (`quantities.ts`). The
 * usual ranges are common practice of bonded carbon-to-metal joints, from memory, no source: outside
 * of one is a reason to look again, never to refuse. Stored units, as everywhere.
 */
import type { QuantityName } from './quantities.ts';

/** A range in stored units, or a sentence where the range says nothing. */
export type Usual = { readonly from: number; readonly to: number } | string;

export interface QuantityHelp {
  /** Where to get it, one sentence. */
  readonly whereFrom: string;
  readonly usual: Usual;
}

const help = (whereFrom: string, usual: Usual): QuantityHelp => ({ whereFrom, usual });
const range = (from: number, to: number): Usual => ({ from, to });

const drawing = 'The drawing.';
const loads = 'The load report of the frame, for this case, at the mouth of the sleeve.';
const wallTests = 'Tests of the material, its certificate or data sheet; the lower of several.';
const adhesiveTests =
  'Tests of the bulk adhesive or of thick-adherend coupons, at this temperature and moisture; a data sheet gives a first look.';
const ownCoupons = 'The report of your own coupons.';
const plan = 'The test plan.';

export const quantityHelp: Readonly<Record<QuantityName, QuantityHelp>> = {
  overlap: help('The drawing; or find it: Find on the Size page.', range(10, 60)),
  outsideDiameter: help(`${drawing} The tube as made may differ: measure it.`, range(10, 120)),
  wall: help(`${drawing} Of a tube as made, measured.`, range(0.8, 6)),
  plyThickness: help('The data sheet of the prepreg, or a measured laminate over its plies.', {
    from: 0.1,
    to: 0.3,
  }),
  width: help(drawing, range(10, 60)),
  gap: help('Half of the difference of the two diameters on the drawing.', range(0.1, 0.3)),
  gapTolerance: help('Half of the sum of the tolerances of both diameters.', range(0.02, 0.1)),
  offset: help('What jig, spacer wire or beads leave free; measured on a trial joint.', {
    from: 0,
    to: 0.1,
  }),
  modulus: help(wallTests, range(5_000, 250_000)),
  shearModulus: help(wallTests, range(2_500, 90_000)),
  poisson: help(wallTests, range(0.2, 0.36)),
  laminatePoisson: help('Lamination theory or a test with two strain gauges.', range(0.02, 0.8)),
  expansion: help('A data sheet, or a dilatometer.', range(-1e-6, 8e-5)),
  density: help('A data sheet, or mass over volume of a piece.', range(1_000, 8_500)),
  strength: help(wallTests, range(30, 3_000)),
  adhesiveModulus: help(adhesiveTests, range(500, 5_000)),
  adhesiveShearModulus: help(adhesiveTests, range(150, 1_800)),
  shearYield: help(adhesiveTests, range(8, 50)),
  plasticStrain: help(adhesiveTests, range(0.05, 1)),
  peelStrength: help(
    'Butt joints or bulk tension at this temperature and moisture; peel tests of strips give another figure.',
    range(15, 70),
  ),
  interlaminarStrength: help(
    'Tension through the thickness (Zt) or short-beam shear (S13) of the laminate.',
    range(25, 110),
  ),
  fractureEnergy: help(
    'Double cantilever beams (opening) or end-notched beams (sliding), bonded with your own process.',
    range(0.2, 6),
  ),
  fractureExponent: help('Mixed-mode tests; 1 where there are none.', range(1, 2)),
  knockdown: help('Coupons with and without what it stands for.', range(0.5, 1)),
  temperature: help(
    'The environment the joint is specified for; of a cure, a thermocouple at the bond.',
    range(-60, 180),
  ),
  force: help(loads, 'No usual range: it is that of your frame.'),
  moment: help(loads, 'No usual range: it is that of your frame.'),
  torque: help(loads, 'No usual range: it is that of your frame.'),
  shear: help(loads, 'No usual range: it is that of your frame.'),
  cycles: help('Running hours times cycles an hour, over the whole life.', range(1e3, 1e9)),
  factor: help('The code that the structure follows, or who approves it.', range(1, 2)),
  loadFactor: help('The loads of this size over those of the joint.', range(0.2, 5)),
  wallFactor: help('The walls of this size over those of the joint.', range(0.5, 2)),
  targetMargin: help('Who approves the structure: 0 is none in hand.', range(0, 0.5)),
  fatigueCoefficient: help(
    'Coupons under cycles: Lives on the Coupons page works it out.',
    range(0.8, 2),
  ),
  fatigueExponent: help(
    'Coupons under cycles: Lives on the Coupons page works it out.',
    range(0.05, 0.2),
  ),
  layerThickness: help('The settings of the printer.', range(0.02, 0.1)),
  printBase: help(drawing, range(0, 50)),
  step: help('What the workshop can tell apart.', range(0.05, 5)),
  gapStep: help('What spacers and measuring can tell apart.', range(0.01, 0.5)),
  toleranceSize: help('The drawing, or the spread of measured parts.', range(0.005, 0.5)),
  toleranceTemperature: help('How far the service temperature strays.', range(1, 15)),
  toleranceShare: help('The spread of coupons or of material certificates.', range(0.01, 0.2)),
  diameter: help('Read at the bench, with the instrument that is named.', range(8, 120)),
  station: help(
    'A scale, from the mouth of the sleeve.',
    'Near both ends of the overlap and in its middle.',
  ),
  clocking: help('The mark on the tube is 0°.', '0°, 60° and 120°.'),
  instrumentError: help('Its certificate of calibration.', range(0.001, 0.03)),
  repeatability: help('Read one place ten times: the standard deviation.', range(0.001, 0.02)),
  spacerSize: help('The packet of the wire or of the beads; measured with a micrometer.', {
    from: 0.05,
    to: 0.3,
  }),
  wasteFactor: help('Weigh what a trial joint took over what stayed in it.', range(1.2, 3)),
  mixParts: help('The data sheet of the adhesive, by mass.', range(1, 100)),
  openTime: help('The data sheet, for the temperature of your shop.', range(3, 240)),
  couponTotal: help(ownCoupons, range(5, 100)),
  couponStrength: help(ownCoupons, range(5, 60)),
  measuredOverPredicted: help(ownCoupons, range(0.7, 1.4)),
  strengthFactor: help(ownCoupons, range(0.5, 1.1)),
  failureLoad: help('The record of the test machine: the highest load.', {
    from: 200,
    to: 200_000,
  }),
  percent: help('Looked at on the broken surfaces.', 'The four shares of a coupon make 100.'),
  batchCount: help(plan, range(3, 5)),
  couponCount: help(plan, range(5, 12)),
  loadRatio: help(
    'The lowest over the highest load of the cycle: −1 reverses fully, 0.1 only pulses.',
    range(-1, 0.5),
  ),
  cureHours: help('The data sheet of the adhesive, for this temperature.', range(0.5, 168)),
};
