/** The sheet of the guide; what it shows is loaded with it, not with the program. */
import { type JSX, lazy, Suspense } from 'solid-js';
import { KeysDialog } from '../actions/KeysDialog.tsx';
import type { WorkspaceName } from '../workspaces.ts';

const GuideView = lazy(() => import('./GuideView.tsx'));

export interface GuideProps {
  readonly page: WorkspaceName;
  readonly onClose: () => void;
}

export function Guide(props: GuideProps): JSX.Element {
  return (
    <KeysDialog class="guide" label="Guide" onClose={props.onClose}>
      <Suspense fallback={<p class="figure-empty guide-wait">Opening …</p>}>
        <GuideView workspace={props.page} onClose={props.onClose} />
      </Suspense>
    </KeysDialog>
  );
}
