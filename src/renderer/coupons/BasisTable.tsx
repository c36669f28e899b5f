/** A and B value of every method, the chosen ones marked; or why there is none and what would do. */

import { For, type JSX, Show } from 'solid-js';
import { basisMeans, becauseWords, methodWords } from '../../shared/coupon-words.ts';
import { figureOf, symbolOf } from '../../shared/measures.ts';
import type { BasisKind, BasisMethod, CouponStatistics } from '../../shared/reports-coupons.ts';
import { TakeOut } from '../parts/TakeOut.tsx';
import { basisSheet } from '../sheets/coupon-sheets.ts';

const kinds: readonly BasisKind[] = ['B', 'A'];

export function BasisTable(props: {
  readonly statistics: CouponStatistics;
  /** Name of the set. */
  readonly set: string;
}): JSX.Element {
  const methods = (): readonly BasisMethod[] => [
    ...new Set(props.statistics.basis.map(({ method }) => method)),
  ];
  const line = (method: BasisMethod, kind: BasisKind) =>
    props.statistics.basis.find((one) => one.method === method && one.kind === kind);
  const isChosen = (method: BasisMethod, kind: BasisKind): boolean =>
    props.statistics.chosen[kind]?.method === method;
  return (
    <section class="coupon-block" aria-labelledby="basis-title">
      <h2 id="basis-title">
        A and B values{' '}
        <TakeOut what={`A and B values, ${props.set}`} sheet={() => basisSheet(props.statistics)} />
      </h2>
      <table class="coupon-figures">
        <thead>
          <tr>
            <th scope="col">by</th>
            <For each={kinds}>
              {(kind) => (
                <th scope="col" class="number" title={basisMeans[kind]}>
                  {kind}, {symbolOf('stress')}
                </th>
              )}
            </For>
          </tr>
        </thead>
        <tbody>
          <For each={methods()}>
            {(method) => (
              <tr classList={{ 'is-chosen': kinds.some((kind) => isChosen(method, kind)) }}>
                <th scope="row">{methodWords[method]}</th>
                <For each={kinds}>
                  {(kind) => (
                    <td class="number">
                      <Show
                        when={line(method, kind)?.value}
                        fallback={
                          <span class="units">
                            {line(method, kind) ? becauseWords(line(method, kind)!) : ''}
                          </span>
                        }
                      >
                        {(value) => (
                          <>
                            <Show when={isChosen(method, kind)}>
                              <span class="coupon-chosen">chosen</span>{' '}
                            </Show>
                            {figureOf('stress', value())}
                          </>
                        )}
                      </Show>
                    </td>
                  )}
                </For>
              </tr>
            )}
          </For>
        </tbody>
      </table>
      <p class="units under">{kinds.map((kind) => basisMeans[kind]).join('. ')}.</p>
    </section>
  );
}
