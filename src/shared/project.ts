/**
 * The project file: one JSON document, inputs only, N, mm, MPa, °C. Unknown keys, non-finite
 * numbers and numbers outside their physical range are refused with the place named.
 * Checks that need several fields at once are in `project-rules.ts`.
 */
import { z } from 'zod';
import { gapCheckSchema, instrumentSchema } from './project-bench.ts';
import { couponsSchema } from './project-coupons.ts';
import { id, name, note, number } from './project-fields.ts';
import { jointSchema } from './project-joints.ts';
import { adherendSchema, adhesiveSchema, moistureSchema, plySchema } from './project-materials.ts';
import { settingsSchema } from './project-settings.ts';
import { sheetSchema } from './project-sheet.ts';

export * from './project-bench.ts';
export * from './project-coupons.ts';
export type { Source } from './project-fields.ts';
export * from './project-joints.ts';
export * from './project-materials.ts';
export * from './project-settings.ts';
export type { Revision, SheetWords } from './project-sheet.ts';

export const PROJECT_FORMAT = 'lapwright-project';
export const PROJECT_VERSION = 1;

const caseCommon = {
  id,
  name,
  temperature: number('temperature'),
  moisture: moistureSchema,
  everyCondition: z
    .boolean()
    .optional()
    .describe("Judged in each of the project's conditions too, not only in its own."),
};
export const loadCaseSchema = z.discriminatedUnion(
  'kind',
  [
    z.strictObject({ ...caseCommon, kind: z.literal('limit') }),
    z.strictObject({ ...caseCommon, kind: z.literal('ultimate') }),
    z.strictObject({
      ...caseCommon,
      kind: z.literal('cyclic'),
      cycles: number('cycles'),
      ratio: number('loadRatio')
        .optional()
        .describe("Left out, the cycles are taken to be of the S-N line's ratio."),
    }),
  ],
  { error: 'a load case is of kind "limit", "ultimate" or "cyclic"' },
);

/** Surroundings that load cases can be judged in besides their own. */
const conditionSchema = z.strictObject({
  id,
  name,
  temperature: number('temperature'),
  moisture: moistureSchema,
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
  sheet: sheetSchema.optional(),
  settings: settingsSchema,
  plies: z.array(plySchema).max(200).optional(),
  adherends: z.array(adherendSchema).max(500),
  adhesives: z.array(adhesiveSchema).max(200),
  conditions: z.array(conditionSchema).max(20).optional(),
  loadCases: z.array(loadCaseSchema).max(200),
  joints: z.array(jointSchema).max(2000),
  variants: z
    .array(z.strictObject({ of: id.describe('Id of the joint it varies.'), joint: jointSchema }))
    .max(200)
    .optional()
    .describe('Other shapes of a joint, to compare; no part of the frame.'),
  instruments: z
    .array(instrumentSchema)
    .max(40)
    .optional()
    .describe('What diameters are read with at the bench; a usual caliper when left out.'),
  gapChecks: z
    .array(gapCheckSchema)
    .max(5000)
    .optional()
    .describe('Measured parts and what was said of them, the oldest first.'),
  coupons: couponsSchema.optional(),
});

export type LoadCase = z.infer<typeof loadCaseSchema>;
export type Condition = z.infer<typeof conditionSchema>;
export type Project = z.infer<typeof projectShape>;
