/** One row for each input: its bar about the middle margin on a common axis, and the figures of it. */

import { createMemo, For, type JSX, Show } from 'solid-js';
import type { InputTolerance, MattersBar, MattersReport } from '../../../shared/reports-scatter.ts';
import { changeText, lowestText } from '../../../shared/scatter-words.ts';
import { signed } from '../../../shared/words.ts';
import { tornadoDrawing } from '../../charts/tornado-drawing.ts';
import { Hatch } from '../../parts/Hatch.tsx';
import { TakeOut } from '../../parts/TakeOut.tsx';
import { mattersSheet } from '../../sheets/study-sheets.ts';
import { type BarScale, barScale } from './bar-scale.ts';

const HEIGHT = 18;

export function Tornado(props: { readonly report: MattersReport }): JSX.Element {
  const scale = createMemo(() => barScale(props.report));
  const unitOf = (input: string): InputTolerance['unit'] =>
    props.report.tolerances.find((tolerance) => tolerance.input === input)!.unit;
  /** What governs at the lower end of the margin, where that is not what governs in the middle. */
  const setBy = ({ low, high, swing }: MattersBar): string => {
    if (swing < 5e-4) return 'moves nothing';
    const lower = lowestText(low.margin < high.margin ? low : high);
    return lower === lowestText(props.report.middle) ? '' : lower;
  };
  return (
    <>
      <p class="tornado-key">
        <svg width="26" height="12" aria-hidden="true">
          <Hatch id="tornado-key-hatch" />
          <rect class="bar-low" x="0" y="1" width="26" height="10" fill="url(#tornado-key-hatch)" />
        </svg>
        input at its lower end
        <svg width="26" height="12" aria-hidden="true">
          <rect class="bar-high" x="0" y="1" width="26" height="10" />
        </svg>
        at its upper end
        <svg width="10" height="12" aria-hidden="true">
          <line class="middle" x1="5" y1="0" x2="5" y2="12" />
        </svg>
        {`every input in its middle, ${signed(props.report.middle.margin)}`}
        <Show when={scale().zero}>
          <svg width="10" height="12" aria-hidden="true">
            <line class="zero" x1="5" y1="0" x2="5" y2="12" />
          </svg>
          margin 0
        </Show>
      </p>
      <p class="take-row">
        <TakeOut
          what="What matters"
          sheet={() => mattersSheet(props.report)}
          picture={() => tornadoDrawing(props.report)}
        />
      </p>
      <table class="study-rows tornado">
        <caption class="hidden">
          Lowest margin at both ends of each tolerance, largest swing first
        </caption>
        <thead>
          <tr>
            <th scope="col">Input</th>
            <th scope="col" class="number">
              Lower end
            </th>
            <th scope="col" class="number">
              Margin
            </th>
            <th scope="col" class="bars">
              <span class="hidden">Bar</span>
            </th>
            <th scope="col" class="number">
              Margin
            </th>
            <th scope="col" class="number">
              Upper end
            </th>
            <th scope="col">Other mode</th>
          </tr>
        </thead>
        <tbody>
          <For each={props.report.bars}>
            {(bar) => (
              <tr classList={{ 'is-still': bar.swing < 5e-4 }}>
                <th scope="row">{bar.label}</th>
                <td class="number">{changeText(bar.from, unitOf(bar.input))}</td>
                <td class="number">{signed(bar.low.margin)}</td>
                <td class="bars">
                  <BarOf bar={bar} scale={scale()} middle={props.report.middle.margin} />
                </td>
                <td class="number">{signed(bar.high.margin)}</td>
                <td class="number">{changeText(bar.to, unitOf(bar.input))}</td>
                <td>{setBy(bar)}</td>
              </tr>
            )}
          </For>
        </tbody>
      </table>
    </>
  );
}

function BarOf(props: {
  readonly bar: MattersBar;
  readonly scale: BarScale;
  readonly middle: number;
}): JSX.Element {
  const id = (): string => `tornado-${props.bar.input}`;
  const span = (margin: number): { x: number; width: number } => {
    const [a, b] = [props.scale.at(margin), props.scale.at(props.middle)];
    return { x: Math.min(a, b), width: Math.abs(a - b) };
  };
  /** Where both ends lie on one side of the middle the shorter bar is drawn inside the longer. */
  const nested = (): boolean =>
    (props.bar.low.margin - props.middle) * (props.bar.high.margin - props.middle) > 0;
  const percent = (value: number): string => `${value}%`;
  const End = (end: { readonly at: 'low' | 'high' }) => {
    const place = () => span(props.bar[end.at].margin);
    const lower = (): boolean => end.at === 'low';
    return (
      <rect
        class={`bar-${end.at}`}
        x={percent(place().x)}
        width={percent(place().width)}
        y={nested() ? (lower() ? 3 : HEIGHT / 2) : 3}
        height={nested() ? HEIGHT / 2 - 3 : HEIGHT - 6}
        fill={lower() ? `url(#${id()})` : undefined}
      />
    );
  };
  return (
    <svg class="tornado-bar" width="100%" height={HEIGHT} aria-hidden="true">
      <Hatch id={id()} />
      <Show when={props.scale.zero}>
        <line
          class="zero"
          x1={percent(props.scale.at(0))}
          x2={percent(props.scale.at(0))}
          y1="0"
          y2={HEIGHT}
        />
      </Show>
      <End at="low" />
      <End at="high" />
      <line
        class="middle"
        x1={percent(props.scale.at(props.middle))}
        x2={percent(props.scale.at(props.middle))}
        y1="0"
        y2={HEIGHT}
      />
    </svg>
  );
}
