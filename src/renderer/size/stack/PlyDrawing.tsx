/**
 * The stack as plies, seen from the side but hatched as if looked down on: along each band the axis
 * runs to the right, so that the hatching lies as the fibres do in the wall unrolled.
 */
import { createMemo, createUniqueId, For, type JSX, Show } from 'solid-js';
import type { LaminateReport } from '../../../shared/reports.ts';
import { angleText, type PlyRow, plyPicture, plySentence } from './ply-rows.ts';

export interface PlyDrawingProps {
  readonly report: LaminateReport;
  /** Where the first ply lies, and the last. */
  readonly faces: readonly [inner: string, outer: string];
}

const WIDTH = 236;
const LEFT = 22;
const BAND = 150;
const TOP = 16;
const FOOT = 16;
/** Between two fibres drawn. */
const PITCH = 5;

/** A tint beside the hatching, for quicker reading; nothing hangs on it. */
const tintOf = (angle: number): string =>
  angle === 0 ? 'is-axial' : Math.abs(angle) === 90 ? 'is-hoop' : 'is-off-axis';

const rowText = (row: PlyRow): string => {
  if (row.kind === 'break') return `${row.left} plies`;
  return row.count === 1 ? angleText(row.angle) : `${angleText(row.angle)} × ${row.count}`;
};

/** A square bracket open to the right. */
const bracket = (from: number, to: number): string =>
  `M${LEFT - 4} ${from + 1} H${LEFT - 9} V${to - 1} H${LEFT - 4}`;

export function PlyDrawing(props: PlyDrawingProps): JSX.Element {
  const id = createUniqueId();
  const angles = createMemo(() => props.report.plies.map(({ angle }) => angle));
  const picture = createMemo(() => plyPicture(angles()));
  const directions = createMemo(() => [...new Set(angles())]);
  const pattern = (angle: number): string => `${id}-fibres-${directions().indexOf(angle)}`;
  const middle = (): number => TOP + picture().height / 2;
  const halves = (): boolean => props.report.symmetric && props.report.plies.length > 1;
  const label = (): string => plySentence(angles(), props.report.symmetric, props.faces);

  return (
    <svg
      class="plies"
      role="img"
      aria-label={label()}
      viewBox={`0 0 ${WIDTH} ${TOP + picture().height + FOOT}`}
      width={WIDTH}
      height={TOP + picture().height + FOOT}
    >
      <defs>
        <For each={directions()}>
          {(angle) => (
            <pattern
              id={pattern(angle)}
              width={PITCH}
              height={PITCH}
              patternUnits="userSpaceOnUse"
              patternTransform={`rotate(${-angle})`}
            >
              <path class="fibre" d={`M0 ${PITCH / 2} H${PITCH}`} />
            </pattern>
          )}
        </For>
      </defs>
      <text class="face" x={LEFT} y={TOP - 5}>
        {props.faces[1]}
      </text>
      <For each={picture().rows}>
        {(row) => (
          <g class="ply" transform={`translate(${LEFT} ${TOP + row.top})`}>
            <Show
              when={row.kind === 'plies' && row}
              fallback={
                <path class="ply-break" d={`M0 0 V${row.height} M${BAND} 0 V${row.height}`} />
              }
            >
              {(plies) => (
                <>
                  <rect class={`tint ${tintOf(plies().angle)}`} width={BAND} height={row.height} />
                  <rect
                    class="fibres"
                    fill={`url(#${pattern(plies().angle)})`}
                    width={BAND}
                    height={row.height}
                  />
                </>
              )}
            </Show>
            <text class="ply-angle" x={BAND + 7} y={row.height / 2 + 4}>
              {rowText(row)}
            </text>
          </g>
        )}
      </For>
      <Show when={halves()}>
        <path class="half" d={bracket(TOP, middle())} />
        <path class="half" d={bracket(middle(), TOP + picture().height)} />
        <path class="mid-plane" d={`M${LEFT - 14} ${middle()} H${LEFT + BAND + 4}`} />
      </Show>
      <text class="face" x={LEFT} y={TOP + picture().height + 12}>
        {props.faces[0]}
      </text>
    </svg>
  );
}
