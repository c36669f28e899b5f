/** The documents that the program carries with it, in the order of their list of contents. */
export interface GuidePage {
  /** Short, as in addresses within the guide. */
  readonly id: string;
  /** Under `docs`. */
  readonly file: string;
}

export const guidePages: readonly GuidePage[] = [
  { id: 'start', file: 'guide/start.md' },
  { id: 'joints', file: 'guide/joints.md' },
  { id: 'size', file: 'guide/size.md' },
  { id: 'compare', file: 'guide/compare.md' },
  { id: 'gap', file: 'guide/gap-check.md' },
  { id: 'coupons', file: 'guide/coupons.md' },
  { id: 'margins', file: 'guide/margins.md' },
  { id: 'conditions', file: 'guide/conditions.md' },
  { id: 'files', file: 'guide/files.md' },
  { id: 'typing', file: 'guide/typing.md' },
  { id: 'printing', file: 'guide/printing.md' },
  { id: 'terminal', file: 'guide/terminal.md' },
  { id: 'limits', file: 'guide/limits.md' },
  { id: 'method', file: 'method.md' },
  { id: 'project-file', file: 'project-file.md' },
];
