/** Lowest margin of a joint against the gap of one bond. */

import { type JSX, Show } from 'solid-js';
import { plainText } from '../../shared/measures.ts';
import type { BondRange } from '../../shared/reports-gap.ts';
import { signed } from '../../shared/words.ts';
import { svgWithin, TakeOut } from '../parts/TakeOut.tsx';
import { rangeSheet } from '../sheets/gap-sheets.ts';
import { Figures, type Table } from '../size/Figures.tsx';

/** The figures behind the line, every one that was computed. */
const rangeTable = ({ bond, curve }: BondRange): Table => ({
  caption: `Lowest margin against the gap of the ${bond}`,
  head: ['gap', 'margin', 'set by'],
  rows: curve.map(({ gap, margin, mode }) => [plainText('small', gap), signed(margin), mode]),
});

/** Margin against gap, the target as a line, the range that counts shaded. */
export function RangeChart(props: {
  readonly range: BondRange;
  readonly target: number;
}): JSX.Element {
  const [width, height] = [300, 96];
  const gaps = () => props.range.curve.map(({ gap }) => gap);
  const values = () => [...props.range.curve.map(({ margin }) => margin), props.target, 0];
  const x = (gap: number): number => (width * gap) / Math.max(...gaps());
  const y = (margin: number): number => {
    const [low, high] = [Math.min(...values()), Math.max(...values())];
    return height - 4 - ((height - 8) * (margin - low)) / Math.max(1e-9, high - low);
  };
  let figure!: HTMLDivElement;
  return (
    <div class="gap-range-figure" ref={figure}>
      <div class="gap-range-tools">
        <Figures tables={[rangeTable(props.range)]} />
        <TakeOut
          what={`Margin against gap, ${props.range.bond}`}
          about={`target ${signed(props.target)}`}
          sheet={() => rangeSheet(props.range, props.target)}
          picture={() =>
            svgWithin(
              figure,
              `Up: lowest margin, ${signed(Math.min(...values()))} to ${signed(Math.max(...values()))}, target dashed; along: gap of the ${props.range.bond}, 0 to ${plainText('small', Math.max(...gaps()))}`,
            )
          }
        />
      </div>
      <svg
        class="gap-range-chart"
        viewBox={`0 0 ${width} ${height}`}
        role="img"
        aria-label={`Lowest margin against the gap of the ${props.range.bond}: ${signed(props.range.curve[0]?.margin ?? 0)} at ${plainText('small', gaps()[0] ?? 0)}, ${signed(props.range.curve.at(-1)?.margin ?? 0)} at ${plainText('small', gaps().at(-1) ?? 0)}; the target is ${signed(props.target)}.`}
      >
        <Show when={props.range.narrower}>
          {(range) => (
            <rect
              class="gap-gauge-range"
              x={x(range().from)}
              width={x(range().to) - x(range().from)}
              y="0"
              height={height}
            />
          )}
        </Show>
        <path class="gap-range-target" d={`M0 ${y(props.target)} H${width}`} />
        <polyline
          class="gap-range-line"
          points={props.range.curve.map(({ gap, margin }) => `${x(gap)},${y(margin)}`).join(' ')}
        />
      </svg>
    </div>
  );
}
