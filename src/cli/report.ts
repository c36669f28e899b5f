/** What the reports of all commands have in common. */
import { cautionShort } from '../shared/cautions.ts';
import type { Flag } from '../shared/reports.ts';
import { paragraph } from './layout.ts';
import type { Terminal } from './terminal.ts';

/** How a report may be drawn. */
export type Paper = Pick<Terminal, 'width' | 'colour'>;

/** Parts of a report with a blank line between; what is empty leaves none. */
export const parts = (...texts: readonly string[]): string =>
  texts.filter((text) => text !== '').join('\n\n');

export const flagLines = (flags: readonly Flag[], width: number): string =>
  flags.map(({ message }) => paragraph(message, width, '! ')).join('\n');

export const caution = (width: number): string => paragraph(cautionShort, width);
