/**
 * What the Size page can show under its section. The first is the stress and the strength against
 * overlap; each other one is a folder of its own beside this file and takes the whole place.
 */
import type { Accessor, Component } from 'solid-js';
import type { Bridge } from '../../shared/contract.ts';
import type { Joint } from '../../shared/project.ts';
import type { Ink } from '../charts/ink.ts';
import type { ProjectState } from '../state/project.ts';
import type { Sizing } from '../state/sizing.ts';
import { FindView } from './find/FindView.tsx';
import { SizesView } from './frame-sizes/SizesView.tsx';
import { MattersView } from './matters/MattersView.tsx';
import { ScatterView } from './scatter/ScatterView.tsx';
import { SpringsView } from './springs/SpringsView.tsx';

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

export interface SizeView {
  readonly id: string;
  /** A word or two. */
  readonly title: string;
  readonly Body: Component<ViewProps>;
}

/** Beside "Stress", in the order in which they stand in the row. */
export const views: readonly SizeView[] = [
  { id: 'find', title: 'Find', Body: FindView },
  { id: 'matters', title: 'What matters', Body: MattersView },
  { id: 'scatter', title: 'Scatter', Body: ScatterView },
  { id: 'sizes', title: 'Sizes', Body: SizesView },
  { id: 'springs', title: 'Springs', Body: SpringsView },
];
