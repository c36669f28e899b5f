/** The histogram, drawn to the size of its place; below zero in the colour of what fails, and hatched. */

import { createMemo, For, type JSX, Show } from 'solid-js';
import type { ScatterReport } from '../../../shared/reports-scatter.ts';
import { signed } from '../../../shared/words.ts';
import { Hatch } from '../../parts/Hatch.tsx';
import { createSize } from '../../size-of.ts';
import { LEFT } from '../section/scale.ts';
import { barsOf, histogramSentence, ticksOf } from './histogram-data.ts';

const RIGHT = 90;
const TOP = 18;
const FOOT = 22;
/** A sample that is there is seen. */
const LEAST = 1.5;

export function Histogram(props: { readonly report: ScatterReport }): JSX.Element {
  let body!: HTMLDivElement;
  const size = createSize(() => body);
  const bars = createMemo(() => barsOf(props.report.histogram));
  return (
    <div class="figure-body" ref={body}>
      <Show when={size()}>
        {(box) => {
          const shown = createMemo(() => {
            const { targetMargin } = props.report;
            const [first, last] = [bars()[0]!.from, bars().at(-1)!.to];
            // Zero and the target are drawn where they are not far off.
            const span = last - first;
            const near = [0, targetMargin].filter((at) => at > first - span && at < last + span);
            const from = Math.min(first, ...near);
            const to = Math.max(last, ...near);
            const width = box().width - LEFT - RIGHT;
            const most = Math.max(...bars().map(({ count }) => count));
            const floor = box().height - FOOT;
            return {
              floor,
              ticks: ticksOf(from, to),
              x: (margin: number) => LEFT + (width * (margin - from)) / (to - from),
              height: (count: number) =>
                count === 0 ? 0 : Math.max(((floor - TOP) * count) / most, LEAST),
              has: (margin: number) => margin >= from && margin <= to,
            };
          });
          const Line = (line: { at: number; text: string; class: string; y: number }) => (
            <Show when={shown().has(line.at)}>
              <line
                class={line.class}
                x1={shown().x(line.at)}
                x2={shown().x(line.at)}
                y1={TOP - 6}
                y2={shown().floor}
              />
              <text class="label" x={shown().x(line.at) + 4} y={line.y}>
                {line.text}
              </text>
            </Show>
          );
          return (
            <svg
              class="histogram"
              width={box().width}
              height={box().height}
              role="img"
              aria-label={histogramSentence(props.report)}
            >
              <Hatch id="histogram-hatch" />
              <For each={bars()}>
                {({ from, to, count }) => {
                  const below = to <= 1e-12;
                  return (
                    <rect
                      class={below ? 'is-below' : 'is-above'}
                      fill={below ? 'url(#histogram-hatch)' : undefined}
                      x={shown().x(from)}
                      width={Math.max(shown().x(to) - shown().x(from) - 1, 1)}
                      y={shown().floor - shown().height(count)}
                      height={shown().height(count)}
                    />
                  );
                }}
              </For>
              <line
                class="base"
                x1={LEFT}
                x2={box().width - RIGHT}
                y1={shown().floor}
                y2={shown().floor}
              />
              <For each={shown().ticks}>
                {(tick) => (
                  <text class="tick" x={shown().x(tick)} y={shown().floor + 16}>
                    {Math.abs(tick) < 1e-12 ? '0' : signed(tick)}
                  </text>
                )}
              </For>
              <Line class="zero" at={0} text="margin 0" y={TOP - 6} />
              <Line
                class="target"
                at={props.report.targetMargin}
                text={`target ${signed(props.report.targetMargin)}`}
                y={TOP + 8}
              />
            </svg>
          );
        }}
      </Show>
    </div>
  );
}
