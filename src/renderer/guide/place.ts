/** Where one is in the guide, and where one was: kept while the program runs. */
import { createSignal } from 'solid-js';
import type { WorkspaceName } from '../workspaces.ts';

export interface Place {
  readonly page: string;
  readonly anchor: string;
}

/** What the guide opens at: the page of the workspace, or where it was left on that workspace. */
const pageOf: Readonly<Record<WorkspaceName, string>> = {
  joints: 'start',
  size: 'size',
  compare: 'compare',
  gap: 'gap',
  coupons: 'coupons',
};

let left: { readonly workspace: WorkspaceName; readonly trail: readonly Place[] } | null = null;

/** For tests: as after a start. */
export const forget = (): void => {
  left = null;
};

export function createPlace(workspace: WorkspaceName) {
  const kept = left?.workspace === workspace ? left.trail : null;
  const [trail, setTrail] = createSignal<readonly Place[]>(
    kept ?? [{ page: pageOf[workspace], anchor: '' }],
  );
  const set = (next: readonly Place[]): void => {
    left = { workspace, trail: next };
    setTrail(next);
  };
  return {
    now: (): Place => trail().at(-1)!,
    canGoBack: (): boolean => trail().length > 1,
    go: (place: Place): void => set([...trail(), place]),
    back: (): void => {
      if (trail().length > 1) set(trail().slice(0, -1));
    },
  };
}
