/**
 * The project file: one JSON document, inputs only, N, mm, MPa, °C. Unknown keys, non-finite
 * numbers and numbers outside their physical range are refused with the place named.
 * Checks that need several fields at once are in `project-rules.ts`.
 */
import { z } from 'zod';
import { type QuantityName, quantities } from './quantities.ts';

// A strict content-security-policy forbids compiling validators at run time.
z.config({ jitless: true });

export const PROJECT_FORMAT = 'lapwright-project';
export const PROJECT_VERSION = 1;

const withUnit = (value: number, unit: string): string =>
  unit === '1' ? `${value}` : `${value} ${unit}`;

/** A finite number inside the declared physical range of the quantity. */
const number = (name: QuantityName) => {
  const { label, unit, min, max, help } = quantities[name];
  const range = `${label} must be a number from ${min} to ${withUnit(max, unit)}`;
  return z
    .number({ error: range })
    .min(min, { error: range })
    .max(max, { error: range })
    .describe(unit === '1' ? help : `${help} Unit: ${unit}.`);
};

const id = z
  .string({ error: 'an id is a short text of letters, digits and hyphens' })
  .regex(/^[a-z0-9][a-z0-9-]{0,63}$/, {
    error: 'an id is 1 to 64 lower-case letters, digits and hyphens',
  });
const name = z
  .string({ error: 'a name is a text' })
  .min(1, { error: 'a name cannot be empty' })
  .max(120, { error: 'a name is at most 120 characters' });
const note = z.string().max(4000, { error: 'a note is at most 4000 characters' });

/** Where a property set comes from. `typical` and `memory` are marked wherever they are used. */
export const sourceSchema = z.strictObject({
  kind: z.enum(['typical', 'memory', 'published', 'tested']),
  text: z.string().max(400),
});

const isotropic = z.strictObject({
  id,
  name,
  kind: z.literal('isotropic'),
  modulus: number('modulus'),
  poisson: number('poisson'),
  expansion: number('expansion'),
  yieldStrength: number('strength'),
  ultimateStrength: number('strength'),
  source: sourceSchema,
});

/** What peel needs to know of a wall through its thickness; what is left out is not checked, and said. */
const throughThickness = {
  throughModulus: number('modulus')
    .optional()
    .describe('E3, through the thickness; left out, the wall is taken as rigid there. Unit: MPa.'),
  throughExpansion: number('expansion')
    .optional()
    .describe('Expansion through the thickness; left out, thermal peel leaves it out. Unit: 1/K.'),
  interlaminarTension: number('interlaminarStrength')
    .optional()
    .describe('Strength through the thickness, between plies. Unit: MPa.'),
  interlaminarShear: number('interlaminarStrength')
    .optional()
    .describe('Shear strength between plies, axial-radial. Unit: MPa.'),
};

const orthotropic = z.strictObject({
  id,
  name,
  kind: z.literal('orthotropic'),
  axialModulus: number('modulus'),
  hoopModulus: number('modulus'),
  shearModulus: number('shearModulus').describe(
    'In-plane shear modulus, axial-hoop; carries torsion. Unit: MPa.',
  ),
  poisson: number('laminatePoisson'),
  axialExpansion: number('expansion'),
  hoopExpansion: number('expansion'),
  throughShearModulus: number('shearModulus').describe(
    'Through-thickness shear modulus, axial-radial. Unit: MPa.',
  ),
  tensileStrength: number('strength').describe('Axial tension. Unit: MPa.'),
  compressiveStrength: number('strength').describe(
    'Axial compression, as a positive number. Unit: MPa.',
  ),
  shearStrength: number('strength').describe('In-plane shear. Unit: MPa.'),
  ...throughThickness,
  source: sourceSchema,
});

/** Tubes of plies: properties follow from the stack by lamination theory. */
const laminate = z.strictObject({
  id,
  name,
  kind: z.literal('laminate'),
  ply: id.describe('Id of the ply it is made of.'),
  stack: z
    .string({ error: 'a stack is a text such as "[0/±45/90]s"' })
    .min(1)
    .max(400, { error: 'a stack is at most 400 characters' })
    .describe('Ply angles from the axis of the tube, the innermost first, such as "[0/±45/90]s".'),
  source: sourceSchema,
});

/** One unidirectional ply; across the fibres it is the same in all directions. */
export const plySchema = z.strictObject({
  id,
  name,
  axialModulus: number('modulus').describe('Along the fibres, E1. Unit: MPa.'),
  transverseModulus: number('modulus').describe('Across the fibres, E2. Unit: MPa.'),
  shearModulus: number('shearModulus').describe('In the plane of the ply, G12. Unit: MPa.'),
  poisson: number('poisson').describe('ν12: contraction across over extension along the fibres.'),
  transverseShearModulus: number('shearModulus').describe('Across the fibres, G23. Unit: MPa.'),
  axialExpansion: number('expansion'),
  transverseExpansion: number('expansion'),
  thickness: number('plyThickness'),
  tensileStrength: number('strength').describe('Along the fibres, tension. Unit: MPa.'),
  compressiveStrength: number('strength').describe(
    'Along the fibres, compression, as a positive number. Unit: MPa.',
  ),
  transverseTensileStrength: number('strength').describe('Across the fibres, tension. Unit: MPa.'),
  transverseCompressiveStrength: number('strength').describe(
    'Across the fibres, compression, as a positive number. Unit: MPa.',
  ),
  shearStrength: number('strength').describe('In the plane of the ply. Unit: MPa.'),
  interlaminarTension: number('interlaminarStrength'),
  interlaminarShear: number('interlaminarStrength'),
  source: sourceSchema,
});

export const adherendSchema = z.discriminatedUnion('kind', [isotropic, orthotropic, laminate], {
  error: 'an adherend is of kind "isotropic", "orthotropic" or "laminate"',
});

export const moistureSchema = z.enum(['dry', 'wet'], { error: 'moisture is "dry" or "wet"' });

const adhesiveState = z.strictObject({
  temperature: number('temperature'),
  moisture: moistureSchema,
  modulus: number('adhesiveModulus'),
  shearModulus: number('adhesiveShearModulus'),
  shearYield: number('shearYield'),
  plasticStrain: number('plasticStrain'),
  peelStrength: number('peelStrength').optional(),
});

/** What is taken off the strengths of an adhesive, step by step. */
const knockdowns = z.strictObject({
  environment: number('knockdown').describe(
    'Beyond what the rows of temperature and moisture already say.',
  ),
  ageing: number('knockdown').describe('Loss over the life of the joint.'),
  scatter: number('knockdown').describe('From the mean of coupons to what may be designed to.'),
  gap: z
    .array(z.strictObject({ gap: number('gap'), factor: number('knockdown') }))
    .max(40)
    .describe('Strength against gap, from coupons; linear between, the nearest beyond.'),
  source: sourceSchema,
});

export const adhesiveSchema = z.strictObject({
  id,
  name,
  stressFreeTemperature: number('temperature').describe(
    'Temperature at which the joint is free of thermal stress; the cure temperature unless known better. Unit: °C.',
  ),
  states: z
    .array(adhesiveState)
    .min(1, { error: 'an adhesive needs at least one state' })
    .max(40, { error: 'an adhesive has at most 40 states' })
    .describe('Properties at several temperatures, dry and wet; interpolated in temperature.'),
  expansion: number('expansion')
    .optional()
    .describe('Expansion of the adhesive; left out, its own shrinkage is left out. Unit: 1/K.'),
  fracture: z
    .strictObject({
      modeI: number('fractureEnergy').describe('Opening, G_Ic. Unit: N/mm.'),
      modeII: number('fractureEnergy').describe('Sliding, G_IIc. Unit: N/mm.'),
      exponent: number('fractureExponent'),
      source: sourceSchema,
    })
    .optional(),
  knockdowns: knockdowns.optional(),
  fatigue: z
    .strictObject({
      coefficient: number('fatigueCoefficient'),
      exponent: number('fatigueExponent'),
      source: sourceSchema,
    })
    .optional()
    .describe('S-N line: allowed peak shear = yield × min(1, coefficient × cycles^−exponent).'),
  source: sourceSchema,
});

const caseCommon = {
  id,
  name,
  temperature: number('temperature'),
  moisture: moistureSchema,
};
export const loadCaseSchema = z.discriminatedUnion(
  'kind',
  [
    z.strictObject({ ...caseCommon, kind: z.literal('limit') }),
    z.strictObject({ ...caseCommon, kind: z.literal('ultimate') }),
    z.strictObject({ ...caseCommon, kind: z.literal('cyclic'), cycles: number('cycles') }),
  ],
  { error: 'a load case is of kind "limit", "ultimate" or "cyclic"' },
);

const wallSchema = z
  .strictObject({
    adherend: id,
    atRoot: number('wall'),
    atMouth: number('wall'),
  })
  .describe('A sleeve wall, its thickness linear from the root to the mouth.');
const bondSchema = z.strictObject({ gap: number('gap'), tolerance: number('gapTolerance') });

const tubeSchema = z.strictObject({
  adherend: id,
  outsideDiameter: number('outsideDiameter'),
  wall: number('wall'),
});
const stripSchema = z.strictObject({ adherend: id, thickness: number('wall') });

const sleeveLoads = z
  .array(
    z.strictObject({
      case: id,
      force: number('force'),
      moment: number('moment'),
      torque: number('torque'),
      shear: number('shear'),
    }),
  )
  .max(200);
const flatLoads = z.array(z.strictObject({ case: id, force: number('force') })).max(200);

const jointCommon = { id, name, overlap: number('overlap'), adhesive: id };

export const sleeveSingleSchema = z.strictObject({
  ...jointCommon,
  type: z.literal('sleeve-single'),
  side: z.enum(['socket', 'spigot'], {
    error: 'side is "socket" (sleeve outside the tube) or "spigot" (sleeve inside the tube)',
  }),
  tube: tubeSchema,
  sleeve: wallSchema,
  bond: bondSchema,
  offset: number('offset'),
  loads: sleeveLoads,
});
export const sleeveDoubleSchema = z.strictObject({
  ...jointCommon,
  type: z.literal('sleeve-double'),
  tube: tubeSchema,
  spigot: wallSchema,
  socket: wallSchema,
  innerBond: bondSchema,
  outerBond: bondSchema,
  offset: number('offset'),
  loads: sleeveLoads,
});
export const flatSingleSchema = z.strictObject({
  ...jointCommon,
  type: z.literal('flat-single'),
  width: number('width'),
  strip: stripSchema,
  plate: wallSchema,
  bond: bondSchema,
  loads: flatLoads,
});
export const flatDoubleSchema = z.strictObject({
  ...jointCommon,
  type: z.literal('flat-double'),
  width: number('width'),
  strip: stripSchema,
  lowerStrap: wallSchema,
  upperStrap: wallSchema,
  lowerBond: bondSchema,
  upperBond: bondSchema,
  loads: flatLoads,
});
export const jointSchema = z.discriminatedUnion(
  'type',
  [sleeveSingleSchema, sleeveDoubleSchema, flatSingleSchema, flatDoubleSchema],
  {
    error: 'a joint is of type "sleeve-single", "sleeve-double", "flat-single" or "flat-double"',
  },
);

export const settingsSchema = z.strictObject({
  targetMargin: number('targetMargin'),
  factors: z
    .strictObject({
      limit: number('factor').describe('Asked of limit and cyclic loads before yield.'),
      ultimate: number('factor').describe('Asked of limit and cyclic loads before failure.'),
      fitting: number('factor').describe('Asked in addition of every mode, at a joint.'),
    })
    .describe('An ultimate case already contains its factor: only the fitting factor is added.'),
  adherendShear: z
    .boolean()
    .describe('Include the shear flexibility of the adherends in the shear lag.'),
  edgeMoment: z
    .enum(['goland-reissner', 'hart-smith'], {
      error: 'edgeMoment is "goland-reissner" or "hart-smith"',
    })
    .optional()
    .describe('Edge moment of flat single laps; Goland and Reissner when left out.'),
});

export const projectShape = z.strictObject({
  format: z.literal(PROJECT_FORMAT, {
    error: `format must be "${PROJECT_FORMAT}": this is not a Lapwright project`,
  }),
  version: z.literal(PROJECT_VERSION, {
    error: `version must be ${PROJECT_VERSION}: this Lapwright reads no other`,
  }),
  name,
  note: note.optional(),
  settings: settingsSchema,
  plies: z.array(plySchema).max(200).optional(),
  adherends: z.array(adherendSchema).max(500),
  adhesives: z.array(adhesiveSchema).max(200),
  loadCases: z.array(loadCaseSchema).max(200),
  joints: z.array(jointSchema).max(2000),
});

export type Source = z.infer<typeof sourceSchema>;
export type Adherend = z.infer<typeof adherendSchema>;
export type Laminate = Extract<Adherend, { kind: 'laminate' }>;
export type Ply = z.infer<typeof plySchema>;
export type Knockdowns = z.infer<typeof knockdowns>;
export type Adhesive = z.infer<typeof adhesiveSchema>;
export type Moisture = z.infer<typeof moistureSchema>;
export type LoadCase = z.infer<typeof loadCaseSchema>;
export type Wall = z.infer<typeof wallSchema>;
export type Bond = z.infer<typeof bondSchema>;
export type SleeveSingle = z.infer<typeof sleeveSingleSchema>;
export type SleeveDouble = z.infer<typeof sleeveDoubleSchema>;
export type FlatSingle = z.infer<typeof flatSingleSchema>;
export type FlatDouble = z.infer<typeof flatDoubleSchema>;
export type Joint = z.infer<typeof jointSchema>;
export type JointType = Joint['type'];
export type Settings = z.infer<typeof settingsSchema>;
export type Project = z.infer<typeof projectShape>;
