/**
 * The project file: one JSON document, inputs only, N, mm, MPa, °C. Unknown keys, non-finite
 * numbers and numbers outside their physical range are refused with the place named.
 * Checks that need several fields at once are in `project-rules.ts`.
 */
import { z } from 'zod';
import { id, name, note, number } from './project-fields.ts';
import { jointSchema } from './project-joints.ts';
import { adherendSchema, adhesiveSchema, moistureSchema, plySchema } from './project-materials.ts';

export type { Source } from './project-fields.ts';
export * from './project-joints.ts';
export * from './project-materials.ts';

export const PROJECT_FORMAT = 'lapwright-project';
export const PROJECT_VERSION = 1;

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

export type LoadCase = z.infer<typeof loadCaseSchema>;
export type Settings = z.infer<typeof settingsSchema>;
export type Project = z.infer<typeof projectShape>;
