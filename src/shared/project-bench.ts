/** What the bench needs of the project file: instruments, how a joint is held, checks of measured parts. */
import { z } from 'zod';
import { id, name, note, number, sourceSchema } from './project-fields.ts';

/** Diameters that bound a bond; a single lap has two of them, a double lap all of its four. */
export const surfaces = ['spigot-outside', 'tube-inside', 'tube-outside', 'socket-inside'] as const;

const instrumentShape = {
  name,
  error: number('instrumentError'),
  repeatability: number('repeatability'),
};
export const instrumentSchema = z.strictObject({ id, ...instrumentShape });

const range = z.strictObject({ from: number('gap'), to: number('gap') });

const stations = z
  .array(number('station'))
  .min(1, { error: 'give at least one station' })
  .max(20, { error: 'at most 20 stations' })
  .describe('Distances from the mouth of the sleeve, rising. Unit: mm.');
const clockings = z
  .array(number('clocking'))
  .min(1, { error: 'give at least one clocking' })
  .max(36, { error: 'at most 36 clockings' })
  .describe('Turns from the mark at which a diameter is taken, rising, below 180. Unit: °.');

/** As much as one page takes in type that is read at arm's length. */
export const checklistLimits = { steps: 16, letters: 100 } as const;

const benchShape = {
  spacer: z
    .strictObject({
      form: z.enum(['wire', 'beads'], { error: 'form is "wire" or "beads"' }),
      size: number('spacerSize'),
    })
    .optional()
    .describe('What keeps the parts apart in the bond.'),
};

/** What the engineer sets for the bench; whatever is left out has a default that the page names. */
export const benchSchema = z
  .strictObject({
    limits: z
      .strictObject({
        bond: range.optional().describe('The only bond of a single lap.'),
        innerBond: range.optional(),
        outerBond: range.optional(),
      })
      .optional()
      .describe('Gaps that may be bonded; the range of the coupons when left out.'),
    ...benchShape,
    jigOffset: number('offset')
      .optional()
      .describe('How far the jig lets the tube off the centre of the sleeve. Unit: mm.'),
    stations: stations.optional(),
    clockings: clockings.optional(),
    waste: number('wasteFactor').optional(),
    checklist: z
      .array(z.string().min(1).max(checklistLimits.letters))
      .max(checklistLimits.steps)
      .optional()
      .describe('Steps of the bonding, in their order; the usual ones when left out.'),
  })
  .describe('How the joint is measured, held and bonded.');

export const processSchema = z
  .strictObject({
    mix: z
      .strictObject({ resin: number('mixParts'), hardener: number('mixParts') })
      .optional()
      .describe('Parts by mass.'),
    openTime: number('openTime').optional(),
    cure: z
      .array(z.strictObject({ temperature: number('temperature'), hours: number('cureHours') }))
      .max(10)
      .optional()
      .describe('Steps of the cure; the first one on the jig.'),
    source: sourceSchema,
  })
  .describe('How the adhesive is mixed and cured.');

const time = z.iso.datetime({ error: 'a time is written like 2026-01-31T08:30:00Z' });
const text = (most: number) => z.string().max(most, { error: `at most ${most} characters` });

/** Diameters of one surface at stations and clockings, with the instrument that read them. */
export const measuredSurfaceSchema = z.strictObject({
  surface: z.enum(surfaces),
  instrument: z.strictObject(instrumentShape),
  stations,
  clockings,
  diameters: z
    .array(z.array(number('diameter').nullable()).max(36))
    .max(20)
    .describe(
      'One row for each station, one value for each clocking; null where not yet read. Unit: mm.',
    ),
  confirmed: z
    .array(z.tuple([z.int().min(0).max(19), z.int().min(0).max(35)]))
    .max(720)
    .optional()
    .describe('Readings that looked wrong and were found right: station and clocking, from 0.'),
});

export const verdicts = ['accept', 'hold', 'reject'] as const;

const spread = z.strictObject({ value: z.number(), uncertainty: z.number().min(0) });
const checkResult = z
  .strictObject({
    verdict: z.enum(verdicts),
    reason: text(600),
    bonds: z
      .array(
        z.strictObject({
          bond: z.enum(['bond', 'inner bond', 'outer bond']),
          min: spread,
          mean: spread,
          max: spread,
          from: z.number().nullable(),
          to: z.number().nullable(),
        }),
      )
      .max(2)
      .describe('Gap as held, with its expanded uncertainty (k = 2), and its limits. Unit: mm.'),
    made: z
      .strictObject({
        lap: z.string().max(40),
        overlap: number('overlap'),
        drawn: text(20_000)
          .optional()
          .describe('Sizes, adhesive and loads as they were, to see whether they have changed.'),
        adhesive: text(120),
        spacer: benchShape.spacer,
        jigOffset: number('offset').optional(),
        openTime: number('openTime').optional(),
        cure: text(300),
        steps: z.array(text(160)).max(40),
        remarks: z.array(text(600)).max(40),
        guarded: z.number().nullable(),
      })
      .optional()
      .describe(
        'What the verdict was of: joint, holding, adhesive, steps, remarks, the margin at the ends of the uncertainty.',
      ),
    mix: z
      .strictObject({
        volume: z.number().min(0),
        mass: z.number().min(0).nullable(),
        resin: z.number().min(0).nullable(),
        hardener: z.number().min(0).nullable(),
      })
      .optional()
      .describe('Adhesive to mix, waste included: mm³, and g where they were known.'),
    margin: z.number().nullable().describe('Lowest margin at the gap as measured.'),
    targetMargin: z.number(),
    modelVersion: text(20),
  })
  .describe('What the program said then; never computed anew.');

export const gapCheckSchema = z.strictObject({
  id,
  joint: id.describe('Id of the joint; kept when the joint is gone.'),
  started: time,
  recorded: time.optional().describe('When the verdict was taken down; left out while measuring.'),
  by: text(80),
  tubeSerial: text(60),
  sleeveSerial: text(60),
  surfaces: z.array(measuredSurfaceSchema).max(4),
  done: z
    .array(z.strictObject({ step: text(160), at: time }))
    .max(40)
    .describe('Steps of the checklist that were ticked, with their time.'),
  cure: z
    .array(z.strictObject({ at: time, temperature: number('temperature'), note: text(200) }))
    .max(100)
    .describe('Log of the cure.'),
  note: note.optional(),
  result: checkResult.optional(),
});

export type Instrument = z.infer<typeof instrumentSchema>;
export type Bench = z.infer<typeof benchSchema>;
export type Process = z.infer<typeof processSchema>;
export type SurfaceName = (typeof surfaces)[number];
export type MeasuredSurface = z.infer<typeof measuredSurfaceSchema>;
export type GapCheck = z.infer<typeof gapCheckSchema>;
export type CheckResult = z.infer<typeof checkResult>;
export type VerdictState = (typeof verdicts)[number];
