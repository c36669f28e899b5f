/**
 * Every physical number of the project file, once: its name, its unit inside the program and the
 * range in which it makes physical sense. The schema refuses what is outside; the input fields,
 * the JSON Schema and the messages all read this table.
 */
export type Unit =
  | 'mm'
  | 'MPa'
  | 'N'
  | 'N/mm'
  | 'N·mm'
  | '°C'
  | '1/K'
  | 'kg/m³'
  | '°'
  | 'min'
  | 'h'
  | '1'
  | 'cycles';

export interface Quantity {
  /** What a person calls it, lower case, as it stands in a sentence. */
  readonly label: string;
  readonly unit: Unit;
  readonly min: number;
  readonly max: number;
  /** What it is and where it comes from, in one sentence. */
  readonly help: string;
}

const quantity = (label: string, unit: Unit, min: number, max: number, help: string): Quantity => ({
  label,
  unit,
  min,
  max,
  help,
});

export const quantities = {
  overlap: quantity('overlap', 'mm', 1, 500, 'Bonded length, from the sleeve root to its mouth.'),
  outsideDiameter: quantity('outside diameter', 'mm', 2, 1000, 'Outside diameter of the tube.'),
  wall: quantity('wall', 'mm', 0.1, 50, 'Thickness of the wall.'),
  plyThickness: quantity('ply thickness', 'mm', 0.01, 5, 'Thickness of one cured ply.'),
  width: quantity('width', 'mm', 1, 1000, 'Width of the strips across the load.'),
  gap: quantity('gap', 'mm', 0.01, 5, 'Nominal thickness of the adhesive bondline.'),
  gapTolerance: quantity('gap tolerance', 'mm', 0, 5, 'Plus-or-minus on the gap, from the fits.'),
  offset: quantity(
    'offset',
    'mm',
    0,
    5,
    "Distance of the tube's axis from the sleeve's axis: thins the gap on one side.",
  ),
  modulus: quantity('modulus', 'MPa', 100, 1_000_000, "Young's modulus."),
  shearModulus: quantity('shear modulus', 'MPa', 20, 500_000, 'Shear modulus.'),
  poisson: quantity('Poisson ratio', '1', 0, 0.49, 'Contraction across over extension along.'),
  laminatePoisson: quantity(
    'Poisson ratio',
    '1',
    -0.5,
    1.5,
    'Hoop contraction over axial extension; angle-ply laminates can exceed 0.5.',
  ),
  expansion: quantity(
    'thermal expansion',
    '1/K',
    -2e-5,
    2e-4,
    'Linear thermal expansion coefficient.',
  ),
  density: quantity('density', 'kg/m³', 10, 25_000, 'Mass over volume.'),
  strength: quantity('strength', 'MPa', 1, 10_000, 'Stress at which the part is taken to fail.'),
  adhesiveModulus: quantity('adhesive modulus', 'MPa', 1, 20_000, "Young's modulus, bulk."),
  adhesiveShearModulus: quantity(
    'adhesive shear modulus',
    'MPa',
    0.5,
    10_000,
    'From a thick-adherend shear test, at this temperature and moisture.',
  ),
  shearYield: quantity(
    'shear yield stress',
    'MPa',
    0.1,
    500,
    'Plateau of the shear stress-strain curve, idealised as elastic, then perfectly plastic.',
  ),
  plasticStrain: quantity(
    'plastic shear strain',
    '1',
    0,
    5,
    'Shear strain from yield to failure, beyond the elastic part.',
  ),
  peelStrength: quantity(
    'peel strength',
    'MPa',
    0.1,
    500,
    'Stress across the bond at which it opens, at this temperature and moisture.',
  ),
  interlaminarStrength: quantity(
    'interlaminar strength',
    'MPa',
    1,
    1000,
    'Stress between plies at which the laminate parts.',
  ),
  fractureEnergy: quantity(
    'fracture energy',
    'N/mm',
    0.001,
    100,
    'Energy that a crack in the bond takes per area; 1 N/mm is 1 kJ/m².',
  ),
  fractureExponent: quantity(
    'mode-mix exponent',
    '1',
    0.5,
    4,
    'Exponent m of (G_I/G_Ic)^m + (G_II/G_IIc)^m = 1.',
  ),
  knockdown: quantity(
    'knockdown',
    '1',
    0.05,
    1.5,
    'What is left of the strength: 1 takes nothing away.',
  ),
  temperature: quantity('temperature', '°C', -200, 400, 'Temperature in service or of cure.'),
  force: quantity('axial force', 'N', -1e7, 1e7, 'Along the tube; tension positive.'),
  moment: quantity('bending moment', 'N·mm', -1e9, 1e9, 'At the mouth of the sleeve.'),
  torque: quantity('torque', 'N·mm', -1e9, 1e9, 'About the axis of the tube.'),
  shear: quantity('transverse shear', 'N', -1e7, 1e7, 'Across the tube, in the plane of bending.'),
  cycles: quantity('cycles', 'cycles', 1, 1e12, 'Number of load cycles in the life.'),
  factor: quantity('factor', '1', 0.1, 20, 'Multiplies the loads before strength is compared.'),
  loadFactor: quantity('load factor', '1', 0, 100, 'Multiplies the loads of the joint.'),
  wallFactor: quantity('wall factor', '1', 0.1, 10, 'Multiplies the walls of the sleeve.'),
  targetMargin: quantity('target margin', '1', -0.5, 20, 'Margins below it are marked low.'),
  fatigueCoefficient: quantity(
    'S-N coefficient',
    '1',
    0.01,
    10,
    'Peak shear over yield shear, extrapolated to one cycle.',
  ),
  fatigueExponent: quantity('S-N exponent', '1', 0, 1, 'Slope of the S-N line in log-log.'),
  layerThickness: quantity('layer thickness', 'mm', 0.005, 1, 'Thickness of one printed layer.'),
  printBase: quantity(
    'base',
    'mm',
    0,
    1000,
    'Height of solid metal printed under the root of the sleeve.',
  ),
  step: quantity('step', 'mm', 0.001, 100, 'What sizing rounds to.'),
  gapStep: quantity('step', 'mm', 0.001, 100, 'What sizing of gaps rounds to.'),
  toleranceSize: quantity('spread', 'mm', 0, 100, 'Of a size.'),
  toleranceTemperature: quantity('spread', '°C', 0, 200, 'Of a temperature.'),
  toleranceShare: quantity('spread', '1', 0, 0.9, 'Share of the value: 0.05 is 5 %.'),
  diameter: quantity(
    'diameter',
    'mm',
    0.001,
    1_000_000,
    'As it was read, slips of the point and all: what looks wrong is said, not lost.',
  ),
  station: quantity('station', 'mm', 0, 500, 'Distance from the mouth of the sleeve.'),
  clocking: quantity('clocking', '°', 0, 179.999, 'Turn from the mark on the tube.'),
  instrumentError: quantity(
    'instrument error',
    'mm',
    0,
    1,
    'Largest error of the instrument, plus or minus, the same in all its readings; from its certificate.',
  ),
  repeatability: quantity(
    'repeatability',
    'mm',
    0,
    1,
    'Standard deviation of one reading, from reading the same place ten times.',
  ),
  spacerSize: quantity('spacer size', 'mm', 0.01, 5, 'Diameter of the wire or of the beads.'),
  wasteFactor: quantity(
    'waste factor',
    '1',
    1,
    20,
    'Adhesive mixed over adhesive in the bond: what stays in the cup, the nozzle and the fillets.',
  ),
  mixParts: quantity('mix', '1', 0.01, 1000, 'Parts by mass.'),
  openTime: quantity('open time', 'min', 1, 1440, 'From mixing until the parts must be together.'),
  couponTotal: quantity('coupons', '1', 1, 1000, 'Results behind a basis value.'),
  couponStrength: quantity('strength', 'MPa', 0.001, 10_000, 'Load over bonded area.'),
  measuredOverPredicted: quantity(
    'measured over predicted',
    '1',
    0.01,
    100,
    'Mean of the coupons over what the model predicts of them.',
  ),
  strengthFactor: quantity(
    'strength factor',
    '1',
    0.01,
    2,
    'Basis value over what the model predicts with mean properties.',
  ),
  failureLoad: quantity('failure load', 'N', 0.01, 100_000_000, 'At which the coupon broke.'),
  percent: quantity('share', '1', 0, 100, 'In per cent of the bonded area.'),
  batchCount: quantity('batches', '1', 1, 50, 'Batches of adhesive and of preparation.'),
  couponCount: quantity('coupons', '1', 1, 200, 'Coupons of each batch.'),
  loadRatio: quantity('load ratio', '1', -1, 0.95, 'Lowest over highest load of a cycle, R.'),
  cureHours: quantity('cure time', 'h', 0.1, 1000, 'How long a step of the cure lasts.'),
} as const satisfies Record<string, Quantity>;

export type QuantityName = keyof typeof quantities;
