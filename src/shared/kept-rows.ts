/**
 * Rows of results as they are kept outside the project file: as text, for what is typed need not be whole.
 * Columns are told by name, whatever grid they are of.
 */
import { z } from 'zod';

const cells = z.record(z.string().max(40), z.string().max(4000));

export const keptRowSchema = z.strictObject({
  text: cells.describe('As it stands in the grid.'),
  good: cells.nullable().describe('As it last was whole; null where it never was.'),
});
/** As many as the grid takes, and as many that were found of earlier. */
export const keptRowsSchema = z.array(keptRowSchema).max(2100);

export type KeptRow = z.infer<typeof keptRowSchema>;

/** What is kept of one set. */
export interface KeptSet {
  readonly project: string;
  /** When it was last written. */
  readonly at: string;
  readonly setId: string;
  readonly rows: readonly KeptRow[];
}

export interface KeptSets {
  readonly sets: readonly KeptSet[];
}
