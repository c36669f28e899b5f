/** Coupons: plan them, take their results, see what they come to and how far the model agrees. */
import { createMemo, For, type JSX, Match, Show, Switch } from 'solid-js';
import type { Project } from '../../shared/project.ts';
import { environment, sentence } from '../../shared/words.ts';
import { readInk } from '../charts/ink.ts';
import { createFontsReady } from '../fonts.ts';
import { JobProgress } from '../parts/JobProgress.tsx';
import { Choice } from '../size/Choice.tsx';
import { createSize } from '../size-of.ts';
import { createCouponEdits } from '../state/coupon-edits.ts';
import type { CouponRows } from '../state/coupon-rows.ts';
import type { CouponsState, CouponView } from '../state/coupons.ts';
import type { KeptRows } from '../state/kept-rows.ts';
import type { ProjectState } from '../state/project.ts';
import type { Theme } from '../theme.ts';
import { AgreementView } from './AgreementView.tsx';
import { AllowableOffers } from './AllowableOffers.tsx';
import { OpenRows } from './OpenRows.tsx';
import { PlanView } from './PlanView.tsx';
import { ResultsView } from './ResultsView.tsx';
import { StatisticsView } from './StatisticsView.tsx';

export interface CouponsPageProps {
  readonly state: CouponsState;
  readonly rows: CouponRows;
  readonly kept: KeptRows;
  readonly source: ProjectState;
  readonly project: Project;
  readonly theme: Theme;
}

const views: readonly { readonly id: CouponView; readonly title: string }[] = [
  { id: 'plan', title: 'Plan' },
  { id: 'results', title: 'Results' },
  { id: 'statistics', title: 'Statistics' },
  { id: 'agreement', title: 'Measured over predicted' },
];

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
  const current = () => props.state.current();
  const specimen = () => props.state.specimens().find(({ id }) => id === current()?.specimen);
  const report = () => (current() ? props.state.report(current()!.id) : null);
  const refusal = () => (current() ? props.state.refusal(current()!.id) : null);
  /** Sets by name, with the adhesive where there are several. */
  const setOptions = () => {
    const sets = props.state.sets();
    const isMixed = new Set(sets.map(({ adhesive }) => adhesive)).size > 1;
    return sets.map(({ id, name, results, adhesive }) => {
      const glue = isMixed ? props.project.adhesives.find((one) => one.id === adhesive)?.name : '';
      const tail = [glue, results.length === 0 ? 'no results' : ''].filter(Boolean).join(', ');
      return { value: id, text: tail === '' ? name : `${name} (${tail})` };
    });
  };
  /** Without a set there is nothing but the plan. */
  const view = (): CouponView => (current() ? props.state.view() : 'plan');

  return (
    <div class="coupon-page" ref={page} tabindex="-1">
      <h1 class="hidden">Coupons</h1>
      <div class="coupon-head" classList={{ 'is-empty': !current() }}>
        <Show when={current()}>
          {(set) => (
            <>
              <nav class="view-row" aria-label="Views of the coupons">
                <For each={views}>
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
              <Show when={view() !== 'plan'}>
                <Choice
                  name="Set"
                  class="joint-choice"
                  options={setOptions()}
                  value={set().id}
                  onChoose={props.state.choose}
                />
                <span class="units">
                  {[
                    specimen()?.standard,
                    environment(set().temperature, set().moisture),
                    `gap ${set().gap} mm`,
                  ]
                    .filter(Boolean)
                    .join(' · ')}
                </span>
              </Show>
            </>
          )}
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
      </div>
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
