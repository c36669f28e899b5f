/**
 * What the Size page can show under its section. The first is the stress and the strength against
 * overlap; each other one is a folder of its own beside this file and takes the whole place. Names
 * alone: the list of actions needs no drawing, which is in `view-bodies.ts`.
 */
import type { Accessor } from 'solid-js';
import type { Bridge } from '../../shared/contract.ts';
import type { Joint } from '../../shared/project.ts';
import type { Ink } from '../charts/ink.ts';
import type { ProjectState } from '../state/project.ts';
import type { Sizing } from '../state/sizing.ts';

/** What every view is given; what it computes for itself it asks over the bridge. */
export interface ViewProps {
  readonly bridge: Bridge;
  readonly project: ProjectState;
  readonly sizing: Sizing;
  readonly joint: Joint;
  /** Place of the joint in the project. */
  readonly index: number;
  /** Null until the page has its size; anew with the theme. */
  readonly ink: Accessor<Ink | null>;
}

/** Beside "Stress", in the order in which they stand in the row; a title is a word or two. */
export const views = [
  { id: 'find', title: 'Find' },
  { id: 'matters', title: 'What matters' },
  { id: 'scatter', title: 'Scatter' },
  { id: 'sizes', title: 'Sizes' },
  { id: 'springs', title: 'Springs' },
] as const;

export type ViewId = (typeof views)[number]['id'];
