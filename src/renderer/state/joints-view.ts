/** How the Joints page is looked at; outlives the page, as long as the app runs. */
import { type Accessor, createEffect, createSignal } from 'solid-js';
import type { Bridge } from '../../shared/contract.ts';
import { type CornerOrder, lowestFirst } from '../joints/corners/order.ts';
import { type Check, type Corners, createCheck, createWholeReport } from './check.ts';
import { createIssues, type Issues } from './issues.ts';
import type { ProjectState } from './project.ts';

export type JointsViewName = 'list' | 'cases';

export const jointsViews: readonly { readonly id: JointsViewName; readonly title: string }[] = [
  { id: 'list', title: 'List' },
  { id: 'cases', title: 'By case' },
];

export interface JointsView {
  readonly view: Accessor<JointsViewName>;
  setView(view: JointsViewName): void;
  readonly order: Accessor<CornerOrder>;
  setOrder(order: CornerOrder): void;
  /** Each is asked for only while its view is looked at. */
  readonly check: Check;
  readonly corners: Corners;
  /** Of the fields on this page. */
  readonly issues: Issues;
}

export function createJointsView(
  bridge: Bridge,
  project: ProjectState,
  active: Accessor<boolean>,
  /** The list is wanted on paper, whatever page is looked at. */
  printed: Accessor<boolean> = () => false,
): JointsView {
  const [view, setView] = createSignal<JointsViewName>('list');
  const [order, setOrder] = createSignal<CornerOrder>(lowestFirst);
  const check = createCheck(bridge, project, () => (active() && view() === 'list') || printed());
  const isByCase = (): boolean => active() && view() === 'cases';
  const corners = createWholeReport('project.corners', bridge, project, isByCase);
  const issues = createIssues();
  createEffect(() => issues.setRefusal(corners.refusal()));
  return { view, setView, order, setOrder, check, corners, issues };
}
