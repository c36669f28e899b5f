/** Coupons: plan them, take their results, see what they come to and how far the model agrees. */
import { createMemo, For, type JSX, Match, Show, Switch } from 'solid-js';
import type { Bridge } from '../../shared/contract.ts';
import type { Project } from '../../shared/project.ts';
import { sentence } from '../../shared/words.ts';
import { readInk } from '../charts/ink.ts';
import { createFontsReady } from '../fonts.ts';
import { JobProgress } from '../parts/JobProgress.tsx';
import { createSize } from '../size-of.ts';
import { createCouponEdits } from '../state/coupon-edits.ts';
import type { CouponsState, CouponView } from '../state/coupons.ts';
import type { KeptRows } from '../state/kept-rows.ts';
import type { ProjectState } from '../state/project.ts';
import type { Theme } from '../theme.ts';
import { AgreementView } from './AgreementView.tsx';
import { AllowableOffers } from './AllowableOffers.tsx';
import { LedgerView } from './LedgerView.tsx';
import { LivesView } from './lives/LivesView.tsx';
import type { LifeRows } from './lives/life-columns.ts';
import { OpenRows } from './OpenRows.tsx';
import { PlanView } from './PlanView.tsx';
import { ResultsView } from './ResultsView.tsx';
import type { CouponRows } from './result-columns.ts';
import { SetChoice } from './SetChoice.tsx';
import { StatisticsView } from './StatisticsView.tsx';
import { couponViews, isSetless } from './views.ts';

export interface CouponsPageProps {
  readonly bridge: Bridge;
  readonly state: CouponsState;
  readonly rows: CouponRows;
  readonly lifeRows: LifeRows;
  readonly kept: KeptRows;
  readonly source: ProjectState;
  readonly project: Project;
  readonly theme: Theme;
  readonly onJoint: (id: string) => void;
}

export function CouponsPage(props: CouponsPageProps): JSX.Element {
  let page!: HTMLDivElement;
  const size = createSize(() => page);
  const fonts = createFontsReady();
  const ink = createMemo(() => {
    props.theme.version();
    fonts();
    return size() ? readInk(page) : null;
  });
  const edits = createCouponEdits(props.source, props.state);
  const names = () => ({
    adhesives: props.project.adhesives,
    specimens: props.state.specimens(),
  });
  const current = () => props.state.current();
  const specimen = () => props.state.specimens().find(({ id }) => id === current()?.specimen);
  const report = () => (current() ? props.state.report(current()!.id) : null);
  const refusal = () => (current() ? props.state.refusal(current()!.id) : null);
  const isThere = ({ id }: { readonly id: CouponView }): boolean =>
    current() !== null || isSetless(id);
  const view = (): CouponView =>
    isThere({ id: props.state.view() }) ? props.state.view() : 'plan';

  return (
    <div class="coupon-page" ref={page} tabindex="-1">
      <h1 class="hidden">Coupons</h1>
      <section data-pane aria-label="Views and sets" class="coupon-head">
        <nav class="view-row" aria-label="Views of the coupons">
          <For each={couponViews.filter(isThere)}>
            {({ id, title }) => (
              <button
                type="button"
                class="link"
                aria-current={view() === id ? 'true' : undefined}
                onClick={() => props.state.show(id)}
              >
                {title}
              </button>
            )}
          </For>
        </nav>
        <Show when={view() === 'lives' || !isSetless(view())}>
          <Show
            when={view() === 'lives'}
            fallback={<SetChoice list={props.state} {...names()} name="Set" />}
          >
            <SetChoice list={props.state.lives} {...names()} name="Set of lives" />
          </Show>
        </Show>
        <div class="coupon-job">
          <JobProgress job={props.state.job} label="Coupons" />
          <Show when={props.state.stopped() && props.state.left() > 0}>
            <p class="stopped">
              Stopped; {props.state.left()} {props.state.left() === 1 ? 'set is' : 'sets are'} not
              worked out.{' '}
              <button type="button" class="plain" onClick={() => props.state.goOn()}>
                Go on
              </button>
            </p>
          </Show>
        </div>
      </section>
      <OpenRows state={props.state} rows={props.rows} kept={props.kept} ofSet={view() !== 'plan'} />
      <Switch>
        <Match when={view() === 'plan'}>
          <PlanView
            source={props.source}
            project={props.project}
            state={props.state}
            edits={edits}
          />
        </Match>
        <Match when={view() === 'ledger'}>
          <LedgerView
            bridge={props.bridge}
            source={props.source}
            coupons={props.state}
            onJoint={props.onJoint}
          />
        </Match>
        <Match when={view() === 'lives'}>
          <LivesView
            state={props.state}
            source={props.source}
            project={props.project}
            rows={props.lifeRows}
            ink={ink}
          />
        </Match>
        <Match when={view() === 'results' && current()}>
          {(set) => (
            <ResultsView
              state={props.state}
              edits={edits}
              rows={props.rows}
              set={set()}
              specimen={specimen()}
            />
          )}
        </Match>
        <Match when={refusal()}>
          {(error) => (
            <p class="refused" role="alert">
              {sentence(error().message)}
            </p>
          )}
        </Match>
        <Match when={report()}>
          {(known) => (
            <div classList={{ 'is-old': props.state.old(known().setId) }}>
              <Show
                when={view() === 'statistics'}
                fallback={
                  <AgreementView
                    state={props.state}
                    project={props.source}
                    report={known()}
                    ink={ink}
                  />
                }
              >
                <StatisticsView report={known()} ink={ink} />
                <AllowableOffers project={props.source} report={known()} />
              </Show>
            </div>
          )}
        </Match>
        <Match when={true}>
          <p class="figure-empty">Being worked out …</p>
        </Match>
      </Switch>
    </div>
  );
}
