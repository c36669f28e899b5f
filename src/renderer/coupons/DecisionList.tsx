/** The way to the values, step by step: what was asked, how it came out, what follows. */
import { For, type JSX, Show } from 'solid-js';
import { comparedWords, outcomeWords, testWords } from '../../shared/coupon-words.ts';
import type { CouponStatistics, StatisticsDecision } from '../../shared/reports-coupons.ts';
import { Mark } from '../parts/Mark.tsx';

/** A distribution that does not fit is a step on the way; batches that differ are a warning. */
const markOf = ({ test, outcome }: StatisticsDecision): 'holds' | 'low' | null => {
  if (outcome === 'holds') return 'holds';
  if (outcome === 'not-applicable') return null;
  return test.startsWith('outliers') || test.startsWith('batches') || test.startsWith('variances')
    ? 'low'
    : null;
};

export function DecisionList(props: { readonly statistics: CouponStatistics }): JSX.Element {
  return (
    <section class="coupon-block" aria-labelledby="decisions-title">
      <h2 id="decisions-title">Decisions, in their order</h2>
      <ol class="coupon-decisions">
        <For each={props.statistics.decisions}>
          {(decision) => (
            <li>
              <span class="decision-mark">
                <Show when={markOf(decision)}>{(mark) => <Mark state={mark()} />}</Show>
              </span>
              <div>
                <p>
                  <b>{testWords(decision, props.statistics.batches)}</b>{' '}
                  <span class="units">
                    {[comparedWords(decision), outcomeWords[decision.outcome]]
                      .filter((one) => one !== '')
                      .join(' · ')}
                  </span>
                </p>
                <p>{decision.says}</p>
              </div>
            </li>
          )}
        </For>
      </ol>
    </section>
  );
}
