/** What is printed: the sheet of what is looked at, at the bench the card, at the machine the test sheet. */
import { papers } from '../sheet/paper.ts';
import type { WorkspaceName } from '../workspaces.ts';
import type { Action, Reach } from './action.ts';

/** The whole project, the joint that is looked at, or what stands side by side. */
export type SheetOf = 'project' | 'joint' | 'compared';

/** Pages whose paper is their own. */
const own: Partial<Record<WorkspaceName, string>> = {
  gap: 'Print card',
  coupons: 'Print test sheet',
};

export function sheetOf(page: WorkspaceName): SheetOf {
  if (page === 'compare') return 'compared';
  return page === 'size' ? 'joint' : 'project';
}

const titles: Readonly<Record<SheetOf, string>> = {
  project: 'Sheet of the project …',
  joint: 'Sheet of this joint …',
  compared: 'Sheet of what is compared …',
};

export function sheetActions(reach: Reach): Action[] {
  const { project, workspace, joint, sheetOpen, showSheet, setPaper } = reach;
  const hasOwn = (): boolean => !sheetOpen() && own[workspace()] !== undefined;
  const hasJoint = (): boolean => project.document() !== null && joint() !== undefined;
  const show = (of: SheetOf): Action => ({
    id: `sheet ${of}`,
    title: () => titles[of],
    group: 'page',
    also: 'print paper pdf report',
    available: of === 'project' ? () => project.document() !== null : hasJoint,
    run: () => showSheet(of),
  });
  return [
    {
      id: 'print',
      title: () => (sheetOpen() ? 'Print the sheet' : (own[workspace()] ?? 'Print')),
      group: 'page',
      // A figure that was just typed is in the sheet: fields apply what they read.
      keys: [{ key: 'p', ctrl: true, writing: true, yields: true }],
      also: 'paper bench sheet pdf report',
      likely: ['joints', 'size', 'compare', 'gap', 'coupons'],
      // Where nothing is laid out for paper the key is the browser's own.
      available: () => {
        if (hasOwn()) return document.querySelector('.bench-card, .test-sheet') !== null;
        if (sheetOpen()) return document.querySelector('.sheet-pages > .sheet-page') !== null;
        return sheetOf(workspace()) === 'project' ? project.document() !== null : hasJoint();
      },
      run: () => (hasOwn() || sheetOpen() ? window.print() : showSheet(sheetOf(workspace()))),
    },
    show('project'),
    show('joint'),
    show('compared'),
    ...papers.map(
      (paper): Action => ({
        id: `sheet on ${paper}`,
        title: () => `Sheet on ${paper} …`,
        group: 'page',
        also: 'paper size print pdf report',
        available: () => project.document() !== null,
        run: () => {
          setPaper(paper);
          showSheet(sheetOf(workspace()));
        },
      }),
    ),
  ];
}
