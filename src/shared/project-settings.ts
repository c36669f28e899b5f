/** Settings of the project file: what is asked of every joint, and how it is made. */
import { z } from 'zod';
import { number } from './project-fields.ts';

/** Inputs that scatter, by what their spread is measured in. */
export const toleranceInputs = {
  mm: ['overlap', 'gap', 'offset', 'tube-diameter', 'tube-wall', 'sleeve-wall'],
  '°C': ['service-temperature', 'stress-free-temperature'],
  '1': [
    'tube-modulus',
    'sleeve-modulus',
    'adhesive-modulus',
    'shear-yield',
    'plastic-strain',
    'peel-strength',
    'interlaminar-strength',
    'laminate-strength',
    'metal-strength',
    'load',
  ],
} as const;

const distribution = z.enum(['normal', 'uniform', 'triangular'], {
  error: 'distribution is "normal", "uniform" or "triangular"',
});
const NO_INPUT = {
  error: `input is one of ${Object.values(toleranceInputs).flat().join(', ')}`,
};

const toleranceSchema = z
  .discriminatedUnion(
    'input',
    [
      z.strictObject({
        input: z.enum(toleranceInputs.mm),
        distribution,
        spread: number('toleranceSize'),
      }),
      z.strictObject({
        input: z.enum(toleranceInputs['°C']),
        distribution,
        spread: number('toleranceTemperature'),
      }),
      z.strictObject({
        input: z.enum(toleranceInputs['1']),
        distribution,
        spread: number('toleranceShare'),
      }),
    ],
    NO_INPUT,
  )
  .describe(
    'How an input scatters. Spread: the standard deviation (normal) or half of the width (uniform, triangular).',
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
  printing: z
    .strictObject({ layerThickness: number('layerThickness'), base: number('printBase') })
    .optional()
    .describe('How sleeves are printed; layers of 0.06 mm and no base when left out.'),
  steps: z
    .strictObject({ overlap: number('step'), wall: number('step'), gap: number('gapStep') })
    .optional()
    .describe('What sizing rounds to; 1, 0.1 and 0.05 mm when left out.'),
  tolerances: z
    .array(toleranceSchema)
    .max(40)
    .optional()
    .describe('How the inputs of every joint scatter, one row for each input.'),
});

export type Settings = z.infer<typeof settingsSchema>;
export type Tolerance = z.infer<typeof toleranceSchema>;
export type ToleranceInput = Tolerance['input'];
