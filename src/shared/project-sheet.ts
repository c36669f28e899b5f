/** What the printed sheet says of a project besides its figures: numbers, names, revisions. */
import { z } from 'zod';

const words = (most: number, what: string) =>
  z.string().max(most, { error: `${what} is at most ${most} characters` });

/** Most letters of each text of the sheet. */
export const sheetLengths = {
  job: 60,
  drawing: 60,
  revision: 20,
  prepared: 80,
  checked: 80,
  approved: 80,
  remarks: 2000,
} as const;
export type SheetText = keyof typeof sheetLengths;

/** Most letters of each text of a revision. */
export const revisionLengths = { revision: 20, date: 20, by: 80, change: 200 } as const;
export type RevisionText = keyof typeof revisionLengths;
export const MOST_REVISIONS = 40;

const revisionSchema = z.strictObject({
  revision: words(revisionLengths.revision, 'a revision').describe('Such as A, B or 2.'),
  date: words(revisionLengths.date, 'a date').describe('As it is to be printed.'),
  by: words(revisionLengths.by, 'a name').optional(),
  change: words(revisionLengths.change, 'a change').optional().describe('What was changed.'),
});

export const sheetSchema = z
  .strictObject({
    job: words(sheetLengths.job, 'a job number').optional().describe('Number of the job.'),
    drawing: words(sheetLengths.drawing, 'a drawing number').optional(),
    revision: words(sheetLengths.revision, 'a revision')
      .optional()
      .describe('Of the sheet as it is now.'),
    prepared: words(sheetLengths.prepared, 'a name').optional().describe('Who prepared it.'),
    checked: words(sheetLengths.checked, 'a name').optional().describe('Who checks it.'),
    approved: words(sheetLengths.approved, 'a name').optional().describe('Who approves it.'),
    remarks: words(sheetLengths.remarks, 'a remark').optional().describe('Printed under the head.'),
    revisions: z
      .array(revisionSchema)
      .max(MOST_REVISIONS, { error: `a sheet has at most ${MOST_REVISIONS} revisions` })
      .optional()
      .describe('The oldest first.'),
  })
  .describe('Words of the printed sheet; no figure depends on them.');

export type SheetWords = z.infer<typeof sheetSchema>;
export type Revision = z.infer<typeof revisionSchema>;
