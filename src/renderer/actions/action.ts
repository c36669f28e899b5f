/**
 * What can be done from the keyboard, as data: the keys, the box that finds (Ctrl+K) and the list of
 * keys (F1) are all made from it, so that none of them can promise what another does not do.
 */
import type { Accessor } from 'solid-js';
import type { Joint } from '../../shared/project.ts';
import type { Paper } from '../sheet/paper.ts';
import type { CouponsState } from '../state/coupons.ts';
import type { ProjectFiles } from '../state/files/project-files.ts';
import type { JointDeeds } from '../state/joint-deeds.ts';
import type { JointsView } from '../state/joints-view.ts';
import type { ProjectState } from '../state/project.ts';
import type { Sizing } from '../state/sizing.ts';
import type { Undoing } from '../state/undoing.ts';
import type { Theme } from '../theme.ts';
import type { Units } from '../units.ts';
import type { WorkspaceName } from '../workspaces.ts';
import type { Chord } from './chord.ts';
import type { SheetOf } from './sheet-actions.ts';

/** In the order in which the list of keys has them: what one of them is, and what stands over all. */
export const groups = {
  keys: { one: 'Keys', all: 'To find the way' },
  page: { one: 'Page', all: 'Pages' },
  change: { one: 'Change', all: 'Changes' },
  file: { one: 'File', all: 'Files' },
  joint: { one: 'Joint', all: 'Joints' },
  case: { one: 'Load case', all: 'Load cases' },
  view: { one: 'View', all: 'Views' },
  setting: { one: 'Field', all: 'Fields' },
  adhesive: { one: 'Adhesive', all: 'Adhesives' },
  adherend: { one: 'Material', all: 'Materials' },
  coupons: { one: 'Coupon set', all: 'Coupon sets' },
  units: { one: 'Units', all: 'Units' },
  look: { one: 'Theme', all: 'Themes' },
} as const;

export type GroupName = keyof typeof groups;

export interface Action {
  /** Unique among all. */
  readonly id: string;
  /** In plain words; may say what it would do just now. */
  title(): string;
  readonly group: GroupName;
  readonly keys?: readonly Chord[];
  /** Further words by which it is found. */
  readonly also?: string;
  /** A word or two beside the title, of what it is about; not searched. */
  readonly about?: string;
  /** Pages on which it is likely to be wanted. */
  readonly likely?: readonly WorkspaceName[];
  available(): boolean;
  run(): void;
}

/** What actions can reach of the window. */
export interface Reach {
  readonly project: ProjectState;
  readonly theme: Theme;
  readonly units: Units;
  readonly sizing: Sizing;
  readonly joints: JointsView;
  readonly coupons: CouponsState;
  readonly undoing: Undoing;
  readonly workspace: Accessor<WorkspaceName>;
  go(name: WorkspaceName): void;
  /** The joint that is looked at, and its place in the project. */
  readonly joint: Accessor<Joint | undefined>;
  readonly index: Accessor<number>;
  /** On the Size page. */
  openJoint(id: string): void;
  readonly files: ProjectFiles;
  /** The browser's own way to choose a file. */
  upload(): void;
  readonly jointDeeds: JointDeeds;
  /** The sheet before it is printed. */
  readonly sheetOpen: Accessor<boolean>;
  showSheet(of: SheetOf): void;
  /** Of the sheet; remembered. */
  setPaper(paper: Paper): void;
  /** The box that finds, and the list of keys: opened, or closed again. */
  find(): void;
  listKeys(): void;
  /** The guide, opened or closed; the help of the field with the focus; the notes of the first start. */
  guide(): void;
  fieldHelp(): void;
  showNotes(): void;
  /** What the program is, or that put away again. */
  about(): void;
  /** The sheet of units. */
  chooseUnits(): void;
}
