/** From page to page, and to the views that a page has. */
import { couponViews, isSetless } from '../coupons/views.ts';
import { jointsViews } from '../state/joints-view.ts';
import { workspaces } from '../workspaces.ts';
import type { Action, Reach } from './action.ts';
import { movePane } from './panes.ts';
import { sizeViews } from './size-views.ts';

export const pageActions = ({ project, go }: Reach): Action[] => [
  ...workspaces.map(
    ({ id, title }, i): Action => ({
      id: `page ${id}`,
      title: () => title,
      group: 'page',
      // No field has a use for them: what is typed stays, the page changes.
      keys: [{ key: `${i + 1}`, ctrl: true, writing: true }],
      also: 'go to page',
      available: () => project.document() !== null,
      run: () => go(id),
    }),
  ),
  {
    id: 'next pane',
    title: () => 'Next part of the page',
    group: 'page',
    keys: [{ key: 'F6', writing: true, repeats: true }],
    also: 'pane',
    available: () => true,
    run: () => movePane(1),
  },
  {
    id: 'previous pane',
    title: () => 'Previous part of the page',
    group: 'page',
    keys: [{ key: 'F6', shift: true, writing: true, repeats: true }],
    also: 'pane before',
    available: () => true,
    run: () => movePane(-1),
  },
];

export const viewActions = ({ project, go, joints, sizing, joint, coupons }: Reach): Action[] => [
  ...jointsViews.map(
    ({ id, title }): Action => ({
      id: `joints ${id}`,
      title: () => title,
      group: 'view',
      about: 'of the Joints page',
      also: id === 'list' ? 'joints' : 'joints corners load cases conditions',
      likely: ['joints'],
      available: () => project.document() !== null,
      run: () => {
        joints.setView(id);
        go('joints');
      },
    }),
  ),
  ...sizeViews.map(
    ({ id, title }): Action => ({
      id: `size ${id}`,
      title: () => title,
      group: 'view',
      about: 'of the Size page',
      also: 'view size',
      likely: ['size'],
      available: () => joint() !== undefined,
      run: () => {
        sizing.setView(id);
        go('size');
      },
    }),
  ),
  ...couponViews.map(
    ({ id, title }): Action => ({
      id: `coupons ${id}`,
      title: () => title,
      group: 'view',
      about: 'of the Coupons page',
      also: 'view coupons',
      likely: ['coupons'],
      available: () => project.document() !== null && (coupons.current() !== null || isSetless(id)),
      run: () => {
        coupons.show(id);
        go('coupons');
      },
    }),
  ),
];
