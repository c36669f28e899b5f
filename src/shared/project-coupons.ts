/** Coupons in the project file: specimens, what is planned of each, what was measured. */
import { z } from 'zod';
import { id, name, note, number, sourceSchema } from './project-fields.ts';
import {
  flatDoubleSchema,
  flatSingleSchema,
  sleeveDoubleSchema,
  sleeveSingleSchema,
} from './project-joints.ts';
import { moistureSchema } from './project-materials.ts';

/** What a joint has and a specimen has not. */
const ofJoint = {
  id: true,
  name: true,
  adhesive: true,
  bench: true,
  loads: true,
  sizes: true,
} as const;

const specimenSchema = z
  .strictObject({
    id,
    name,
    standard: z.string().max(80).describe('Such as "ASTM D1002"; empty for one of your own.'),
    shape: z
      .discriminatedUnion('type', [
        flatSingleSchema.omit(ofJoint),
        flatDoubleSchema.omit(ofJoint),
        sleeveSingleSchema.omit(ofJoint),
        sleeveDoubleSchema.omit(ofJoint),
      ])
      .describe('Sizes as a joint has them; pulled along its axis. Its gap is that of each set.'),
    source: sourceSchema.describe('Where the sizes are from.'),
  })
  .describe('A test piece that stands for the joints.');

const text = (most: number) => z.string().max(most, { error: `at most ${most} characters` });
const day = z.iso.date({ error: 'a day is written like 2026-01-31' });

/** How a coupon failed, in per cent of the bonded area; 100 in all. */
export const failureModes = ['cohesive', 'thinLayer', 'adhesion', 'adherend'] as const;
const modesSchema = z
  .strictObject({
    cohesive: number('percent').optional(),
    thinLayer: number('percent').optional(),
    adhesion: number('percent').optional(),
    adherend: number('percent').optional(),
  })
  .describe(
    'Share of the area, in per cent: in the adhesive, in a thin layer of it beside a surface, at a surface, in the adherend.',
  );

const couponResultSchema = z.strictObject({
  coupon: text(60).describe('Its number.'),
  batch: text(40).describe('Batch of adhesive and of preparation.'),
  load: number('failureLoad'),
  gap: number('gap').optional().describe('As measured; that of the set when left out. Unit: mm.'),
  overlap: number('overlap').optional().describe('As measured. Unit: mm.'),
  width: number('width').optional().describe('As measured, of a flat specimen. Unit: mm.'),
  modes: modesSchema.optional().describe('Left out where nobody looked.'),
  apart: text(400)
    .optional()
    .describe('Why it is kept out of the statistics; a cause, not a value.'),
  note: note.optional(),
});

/** One cell of the test matrix: one specimen, one adhesive, one environment, one gap. */
export const couponSetSchema = z.strictObject({
  id,
  name,
  specimen: id,
  adhesive: id,
  temperature: number('temperature'),
  moisture: moistureSchema,
  gap: number('gap'),
  planned: z
    .strictObject({ batches: number('batchCount'), each: number('couponCount') })
    .optional()
    .describe('How many batches, and coupons of each.'),
  tested: day.optional(),
  results: z.array(couponResultSchema).max(1000),
  note: note.optional(),
});

const lifeResultSchema = z.strictObject({
  coupon: text(60),
  batch: text(40),
  peak: number('failureLoad').describe('Highest load of the cycle. Unit: N.'),
  cycles: number('cycles'),
  runOut: z.boolean().describe('True where it had not failed when the test was stopped.'),
  note: note.optional(),
});

/** Coupons under cycles of one ratio of lowest to highest load. */
export const lifeSetSchema = z.strictObject({
  id,
  name,
  specimen: id,
  adhesive: id,
  temperature: number('temperature'),
  moisture: moistureSchema,
  gap: number('gap'),
  ratio: number('loadRatio'),
  tested: day.optional(),
  results: z.array(lifeResultSchema).max(1000),
  note: note.optional(),
});

export const couponsSchema = z
  .strictObject({
    specimens: z.array(specimenSchema).max(100),
    sets: z.array(couponSetSchema).max(400),
    life: z.array(lifeSetSchema).max(100).optional(),
  })
  .describe('Coupons: what the strengths rest on.');

export type Specimen = z.infer<typeof specimenSchema>;
export type SpecimenShape = Specimen['shape'];
export type CouponResult = z.infer<typeof couponResultSchema>;
export type CouponSet = z.infer<typeof couponSetSchema>;
export type LifeResult = z.infer<typeof lifeResultSchema>;
export type LifeSet = z.infer<typeof lifeSetSchema>;
export type Coupons = z.infer<typeof couponsSchema>;
export type FailureMode = (typeof failureModes)[number];
