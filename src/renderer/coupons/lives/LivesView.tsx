/** Lives: coupons under cycles, the line that they lie on, and what the adhesive may take from it. */
import { type Accessor, createSignal, type JSX, Match, Show, Switch } from 'solid-js';
import { lifeAnswer } from '../../../shared/life-words.ts';
import type { Project } from '../../../shared/project.ts';
import type { LifeSet } from '../../../shared/project-coupons.ts';
import { isSmallSingleLap } from '../../../shared/standard-specimens.ts';
import { sentence } from '../../../shared/words.ts';
import type { Ink } from '../../charts/ink.ts';
import { Disclosure } from '../../size/Disclosure.tsx';
import type { CouponsState } from '../../state/coupons.ts';
import { createLifeEdits } from '../../state/life-edits.ts';
import type { ProjectState } from '../../state/project.ts';
import { AskRemove } from '../AskRemove.tsx';
import { AddLife } from './AddLife.tsx';
import { LifeEntry } from './LifeEntry.tsx';
import { LifeFigures, LifePlot } from './LifeFigures.tsx';
import type { LifeRows } from './life-columns.ts';
import { TakeLine } from './TakeLine.tsx';

export interface LivesViewProps {
  readonly state: CouponsState;
  readonly source: ProjectState;
  readonly project: Project;
  readonly rows: LifeRows;
  readonly ink: Accessor<Ink | null>;
}

export function LivesView(props: LivesViewProps): JSX.Element {
  const [asked, setAsked] = createSignal<LifeSet | null>(null);
  let view!: HTMLDivElement;
  const edits = createLifeEdits(props.source, props.state);
  const lives = () => props.state.lives;
  const current = () => lives().current();
  const report = () => (current() ? lives().report(current()!.id) : null);
  const refusal = () => (current() ? lives().refusal(current()!.id) : null);
  const isOld = (): boolean => current() !== null && lives().old(current()!.id);
  const isSmall = (): boolean => {
    const piece = props.state.specimens().find(({ id }) => id === current()?.specimen);
    return piece !== undefined && isSmallSingleLap(piece.shape);
  };
  const remove = (id: string): void => {
    edits.remove(id);
    // The button that had the focus is gone, or is another set's by now.
    view.closest<HTMLElement>('.coupon-page')?.focus();
  };
  const add = (): JSX.Element => (
    <AddLife
      project={props.project}
      specimens={props.state.specimens()}
      like={lives().sets().at(-1) ?? props.state.current() ?? undefined}
      edits={edits}
    />
  );
  return (
    <div ref={view}>
      <Switch>
        <Match when={current()}>
          {(set) => (
            <>
              <LifeEntry
                set={set()}
                report={report()}
                rows={props.rows}
                edits={edits}
                onRemove={() => {
                  if (set().results.length === 0) remove(set().id);
                  else setAsked(set());
                }}
              >
                <Switch fallback={<p class="figure-empty">Being worked out …</p>}>
                  <Match when={refusal()}>
                    {(error) => (
                      <p class="refused" role="alert">
                        {sentence(error().message)}
                      </p>
                    )}
                  </Match>
                  <Match when={report()}>
                    {(known) => (
                      <>
                        <div classList={{ 'is-old': isOld() }}>
                          <p class="coupon-answer">{lifeAnswer(known())}</p>
                          <Show when={known().lines.length > 0}>
                            <LifePlot report={known()} name={set().name} ink={props.ink} />
                          </Show>
                        </div>
                        <TakeLine
                          project={props.source}
                          report={known()}
                          old={isOld()}
                          tested={set().tested}
                          small={isSmall()}
                        />
                        <div classList={{ 'is-old': isOld() }}>
                          <LifeFigures report={known()} name={set().name} />
                        </div>
                      </>
                    )}
                  </Match>
                </Switch>
              </LifeEntry>
              <div class="coupon-more">
                <Disclosure title="One more set of lives">{add()}</Disclosure>
              </div>
            </>
          )}
        </Match>
        <Match when={props.state.specimens().length > 0}>
          <div class="coupon-start">
            <h2>How long do they last?</h2>
            <p>
              Coupons under cycles of one load ratio make a set: the peak load and the cycles of
              each, and whether it ran out. Three failures at two loads or more give the line of
              lives and its bound.
            </p>
            {add()}
          </div>
        </Match>
        <Match when={true}>
          <div class="coupon-start">
            <h2>How long do they last?</h2>
            <p>
              Lives are of a test piece, and this project has none yet. Make a set of it by the
              matrix under Plan, then come back: the piece can be chosen here.
            </p>
            <button type="button" class="plain" onClick={() => props.state.show('plan')}>
              Go to the plan
            </button>
          </div>
        </Match>
      </Switch>
      <Show when={asked()}>
        {(set) => (
          <AskRemove
            set={set()}
            onKeep={() => setAsked(null)}
            onRemove={() => {
              const { id } = set();
              setAsked(null);
              remove(id);
            }}
          />
        )}
      </Show>
    </div>
  );
}
