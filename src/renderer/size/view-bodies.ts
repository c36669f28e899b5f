/** What draws each view of the Size page but the stress, by its name. */
import type { Component } from 'solid-js';
import { FindView } from './find/FindView.tsx';
import { SizesView } from './frame-sizes/SizesView.tsx';
import { MattersView } from './matters/MattersView.tsx';
import { ScatterView } from './scatter/ScatterView.tsx';
import { SpringsView } from './springs/SpringsView.tsx';
import type { ViewId, ViewProps } from './views.ts';

export const viewBodies: Readonly<Record<ViewId, Component<ViewProps>>> = {
  find: FindView,
  matters: MattersView,
  scatter: ScatterView,
  sizes: SizesView,
  springs: SpringsView,
};
