/** Materials of the project file: adherends, the plies of laminates, adhesives. */
import { z } from 'zod';
import { processSchema } from './project-bench.ts';
import { id, name, number, sourceSchema } from './project-fields.ts';

const density = number('density')
  .optional()
  .describe('Left out, masses with it are not known. Unit: kg/m³.');

const isotropic = z.strictObject({
  id,
  name,
  kind: z.literal('isotropic'),
  modulus: number('modulus'),
  poisson: number('poisson'),
  expansion: number('expansion'),
  yieldStrength: number('strength'),
  ultimateStrength: number('strength'),
  density,
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
  density,
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
  density,
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

/** Modes in which the adhesive itself fails. */
export const bondModes = ['adhesive-strain', 'adhesive-peel', 'fracture'] as const;
export type BondMode = (typeof bondModes)[number];

/** What own coupons allow in one environment: a snapshot, taken on purpose. */
const allowable = z
  .strictObject({
    set: id.describe('Id of the set of coupons; kept when the set is gone.'),
    setName: name,
    temperature: number('temperature'),
    moisture: moistureSchema,
    gap: number('gap'),
    basis: z
      .enum(['A', 'B', 'mean'], { error: 'basis is "A", "B" or "mean"' })
      .describe('A mean calibrates the model; the knockdown for scatter stays.'),
    coupons: number('couponTotal'),
    batches: number('batchCount'),
    method: z.string().max(60),
    value: number('couponStrength').describe('Basis value, load over bonded area. Unit: MPa.'),
    mean: number('couponStrength').describe('Mean of the coupons. Unit: MPa.'),
    ratio: number('measuredOverPredicted'),
    factor: number('strengthFactor'),
    mode: z
      .enum(bondModes)
      .optional()
      .describe('How the model has the adhesive of these coupons fail: what they tell of.'),
    taken: z.iso.datetime({ error: 'a time is written like 2026-01-31T08:30:00Z' }),
  })
  .describe(
    'Basis value over what the model predicts with the mean properties: it stands in place of the knockdown for scatter; that of a mean stands beside it.',
  );

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
  allowables: z.array(allowable).max(40).optional(),
  fatigue: z
    .strictObject({
      coefficient: number('fatigueCoefficient'),
      exponent: number('fatigueExponent'),
      ratio: number('loadRatio')
        .optional()
        .describe('Lowest over highest load in the tests behind it; left out, not known.'),
      source: sourceSchema,
    })
    .optional()
    .describe('S-N line: allowed peak shear = yield × min(1, coefficient × cycles^−exponent).'),
  process: processSchema.optional(),
  density,
  source: sourceSchema,
});

export type Adherend = z.infer<typeof adherendSchema>;
export type Laminate = Extract<Adherend, { kind: 'laminate' }>;
export type Ply = z.infer<typeof plySchema>;
export type Knockdowns = z.infer<typeof knockdowns>;
export type Adhesive = z.infer<typeof adhesiveSchema>;
export type Allowable = z.infer<typeof allowable>;
export type Moisture = z.infer<typeof moistureSchema>;
