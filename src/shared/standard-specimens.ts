/**
 * Test pieces of the usual standards as geometries. Sizes are from memory, in mm, inch sizes rounded
 * to 0.1 mm: look them up in the standard before you cut anything.
 *
 * A single lap of a small size is no design allowable (ASTM D4896): its adherends bend, so that the
 * bond peels at both ends, and the load over the area is far below the stress at the ends. It compares
 * adhesives, surfaces and batches.
 */
import type { Joint } from './project.ts';
import type { Specimen, SpecimenShape } from './project-coupons.ts';

/** Why, on the sheet for the machine. */
export const smallLapNote =
  'A single lap of a small size is no design allowable (ASTM D4896): its adherends bend, so that the bond peels at both ends, and the load over the area is far below the stress at the ends. It compares adhesives, surfaces and batches.';

export interface StandardSpecimen {
  readonly id: string;
  readonly name: string;
  readonly standard: string;
  /** Which joint of the model stands for it, and what that leaves out. */
  readonly remark: string;
  /** @param adherend id of the material of its strips */
  readonly shape: (adherend: string) => SpecimenShape;
}

interface Lap {
  readonly width: number;
  readonly overlap: number;
  readonly thickness: number;
  readonly gap: number;
}

const single =
  ({ width, overlap, thickness, gap }: Lap) =>
  (adherend: string): SpecimenShape => ({
    type: 'flat-single',
    width,
    overlap,
    strip: { adherend, thickness },
    plate: { adherend, atRoot: thickness, atMouth: thickness },
    bond: { gap, tolerance: 0 },
  });

const double =
  ({ width, overlap, thickness, gap }: Lap) =>
  (adherend: string): SpecimenShape => {
    const strap = { adherend, atRoot: thickness, atMouth: thickness };
    return {
      type: 'flat-double',
      width,
      overlap,
      strip: { adherend, thickness: 2 * thickness },
      lowerStrap: strap,
      upperStrap: { ...strap },
      lowerBond: { gap, tolerance: 0 },
      upperBond: { gap, tolerance: 0 },
    };
  };

export const standardSpecimens: readonly StandardSpecimen[] = [
  {
    id: 'd1002',
    name: 'Lap shear, thin metal',
    standard: 'ASTM D1002',
    remark: 'Two metal strips of 1.6 mm, overlap 12.7 mm: bends, and peels at both ends.',
    shape: single({ width: 25.4, overlap: 12.7, thickness: 1.6, gap: 0.2 }),
  },
  {
    id: 'd3165',
    name: 'Lap shear, laminated strips',
    standard: 'ASTM D3165',
    remark:
      'Notched laminated strips, overlap 12.7 mm. Taken as a plain single lap: the strips that go on beyond the notches bend less, so the prediction is low.',
    shape: single({ width: 25.4, overlap: 12.7, thickness: 1.6, gap: 0.2 }),
  },
  {
    id: 'd3528',
    name: 'Double lap shear',
    standard: 'ASTM D3528',
    remark: 'A strip of 3.2 mm between straps of 1.6 mm, overlap 12.7 mm.',
    shape: double({ width: 25.4, overlap: 12.7, thickness: 1.6, gap: 0.2 }),
  },
  {
    id: 'd5656',
    name: 'Thick adherend lap shear',
    standard: 'ASTM D5656',
    remark:
      'Adherends of 9.5 mm, overlap 9.5 mm: nearly even shear. Taken as a plain single lap without the grips that hold it straight.',
    shape: single({ width: 25.4, overlap: 9.5, thickness: 9.5, gap: 0.2 }),
  },
  {
    id: 'd5868',
    name: 'Lap shear, fibre-reinforced plastic',
    standard: 'ASTM D5868',
    remark: 'Two laminates of 2.5 mm, overlap 25.4 mm, gap 0.76 mm.',
    shape: single({ width: 25.4, overlap: 25.4, thickness: 2.5, gap: 0.76 }),
  },
  {
    id: 'iso-4587',
    name: 'Lap shear, rigid to rigid',
    standard: 'ISO 4587',
    remark: 'Two metal strips of 1.6 mm, 25 mm wide, overlap 12.5 mm.',
    shape: single({ width: 25, overlap: 12.5, thickness: 1.6, gap: 0.2 }),
  },
];

export const standardSpecimen = (
  { id, name, standard, remark, shape }: StandardSpecimen,
  adherend: string,
): Specimen => ({
  id,
  name,
  standard,
  shape: shape(adherend),
  source: { kind: 'memory', text: `Sizes from memory: look them up in ${standard}. ${remark}` },
});

/** A piece of tube in its sleeve, as the joint has them: the coupon that is nearest to it. */
export function sleeveSpecimen(joint: Joint, id: string): Specimen {
  const {
    id: _id,
    name,
    adhesive: _adhesive,
    bench: _bench,
    loads: _l,
    sizes: _s,
    ...shape
  } = joint;
  return {
    id,
    name: `Tube in sleeve, as ${name}`.slice(0, 120),
    standard: '',
    shape: JSON.parse(JSON.stringify(shape)) as SpecimenShape,
    source: { kind: 'typical', text: `As the joint “${name}” is drawn.`.slice(0, 400) },
  };
}

/** Thin strips that bend: of these the load over the area says least about a joint. */
export const isSmallSingleLap = (shape: SpecimenShape): boolean =>
  shape.type === 'flat-single' &&
  shape.overlap < 30 &&
  Math.min(shape.strip.thickness, shape.plate.atRoot) < shape.overlap / 2;
