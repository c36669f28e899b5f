/** The page of the workspace that is looked at. */
import { type JSX, Match, Show, Switch } from 'solid-js';
import type { Bridge } from '../shared/contract.ts';
import type { Joint } from '../shared/project.ts';
import type { CornerMargin } from '../shared/reports.ts';
import type { LifeRows } from './coupons/lives/life-columns.ts';
import type { CouponRows } from './coupons/result-columns.ts';
import { JointsPage } from './joints/JointsPage.tsx';
import { ComparePage, CouponsPage, GapPage, SizePage } from './pages.ts';
import { TakenFromProvider } from './parts/TakeOut.tsx';
import type { Comparison } from './state/comparison.ts';
import type { CouponsState } from './state/coupons.ts';
import type { GapCheckState } from './state/gap-check.ts';
import type { JointDeeds } from './state/joint-deeds.ts';
import type { JointsView } from './state/joints-view.ts';
import type { KeptChecks } from './state/kept-checks.ts';
import type { KeptRows } from './state/kept-rows.ts';
import type { ProjectState } from './state/project.ts';
import type { Sizing } from './state/sizing.ts';
import type { Theme } from './theme.ts';
import type { WorkspaceName } from './workspaces.ts';

export interface WorkspaceProps {
  readonly name: WorkspaceName;
  readonly bridge: Bridge;
  readonly project: ProjectState;
  readonly theme: Theme;
  readonly joints: JointsView;
  readonly sizing: Sizing;
  readonly comparison: Comparison;
  readonly gapCheck: GapCheckState;
  readonly kept: KeptChecks;
  readonly coupons: CouponsState;
  readonly couponRows: CouponRows;
  readonly lifeRows: LifeRows;
  readonly keptRows: KeptRows;
  /** Place of the joint that is looked at; −1 when there is none. */
  readonly index: number;
  readonly joint: Joint | undefined;
  readonly onJoint: (id: string) => void;
  readonly onSize: (id: string) => void;
  readonly onCorner: (id: string, corner: CornerMargin) => void;
  readonly jointDeeds: JointDeeds;
  /** The sheet of what is looked at, to be printed. */
  readonly onSheet: () => void;
}

const none = (what: string): JSX.Element => (
  <div class="empty">
    <p>There is no joint to {what} in this project.</p>
  </div>
);

/** Pages that are of one joint. */
const ofJoint = new Set<WorkspaceName>(['size', 'gap']);

export function Workspace(props: WorkspaceProps): JSX.Element {
  const from = () => ({
    project: props.project.document()?.name ?? '',
    joint: ofJoint.has(props.name) ? (props.joint?.name ?? null) : null,
  });
  return (
    <TakenFromProvider value={from}>
      <Page {...props} />
    </TakenFromProvider>
  );
}

function Page(props: WorkspaceProps): JSX.Element {
  return (
    <Switch>
      <Match when={props.name === 'joints'}>
        <JointsPage
          joints={props.joints}
          project={props.project}
          onOpen={props.onSize}
          onOpenCorner={props.onCorner}
          deeds={props.jointDeeds}
          onSheet={props.onSheet}
        />
      </Match>
      <Match when={props.name === 'size'}>
        <Show when={props.joint} fallback={none('size')}>
          {(joint) => (
            <SizePage
              bridge={props.bridge}
              project={props.project}
              sizing={props.sizing}
              theme={props.theme}
              index={props.index}
              joint={joint()}
              onJoint={props.onJoint}
              onSheet={props.onSheet}
            />
          )}
        </Show>
      </Match>
      <Match when={props.name === 'compare'}>
        <Show when={props.joint && props.project.document()} fallback={none('compare')}>
          {(document) => (
            <ComparePage
              comparison={props.comparison}
              state={props.project}
              project={document()}
              theme={props.theme}
              onJoint={props.onJoint}
              onSize={props.onSize}
              onSheet={props.onSheet}
            />
          )}
        </Show>
      </Match>
      <Match when={props.name === 'gap'}>
        <Show when={props.joint} fallback={none('check')}>
          {(joint) => (
            <GapPage
              state={props.gapCheck}
              kept={props.kept}
              source={{
                bridge: props.bridge,
                project: props.project,
                index: () => props.index,
              }}
              project={props.project.document()!}
              joint={joint()}
              onJoint={props.onJoint}
            />
          )}
        </Show>
      </Match>
      <Match when={props.name === 'coupons' && props.project.document()}>
        {(document) => (
          <CouponsPage
            bridge={props.bridge}
            state={props.coupons}
            rows={props.couponRows}
            lifeRows={props.lifeRows}
            kept={props.keptRows}
            source={props.project}
            project={document()}
            theme={props.theme}
            onJoint={props.onSize}
          />
        )}
      </Match>
    </Switch>
  );
}
