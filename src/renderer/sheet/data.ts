/** All that stands on a sheet, as it was at one moment: paper does not follow the document. */
import type { Project } from '../../shared/project.ts';
import type { About, CheckReport } from '../../shared/reports.ts';
import type { SheetPart } from '../state/sheet.ts';
import type { Paper } from './paper.ts';

export interface SheetData {
  readonly project: Project;
  /** Name of the file that it came from. */
  readonly origin: string;
  readonly unsaved: boolean;
  readonly at: Date;
  readonly about: About | null;
  /** Null where the table of all joints is not wanted. */
  readonly check: CheckReport | null;
  readonly parts: readonly SheetPart[];
  readonly paper: Paper;
}

export const fileText = ({ origin, unsaved }: Pick<SheetData, 'origin' | 'unsaved'>): string =>
  `${origin}${unsaved ? ', with changes not saved' : ''}`;

export const versionText = ({ about }: Pick<SheetData, 'about'>): string =>
  about ? `Lapwright ${about.version}, model ${about.modelVersion}` : 'Lapwright';

/** What the sheet is of, in a few words. */
export const titleOf = ({ check, parts, project }: SheetData): string =>
  check === null && parts.length === 1 ? parts[0]!.joint.name : project.name;

/** The same as a file name, without its ending. */
export function sheetName(data: SheetData): string {
  const { sheet, name } = data.project;
  const title = titleOf(data);
  return [sheet?.job, name, title === name ? '' : title, sheet?.revision && `rev ${sheet.revision}`]
    .filter(Boolean)
    .join(' ')
    .replace(/[^\p{L}\p{N}. _-]+/gu, ' ')
    .trim()
    .replace(/\s+/g, '-')
    .replace(/^\.+/, '')
    .slice(0, 100);
}
