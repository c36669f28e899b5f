/** The joint cut along its axis, drawn to scale: on the Size page and on paper. */
import {
  type Accessor,
  createMemo,
  createUniqueId,
  Index,
  type JSX,
  Show,
  untrack,
} from 'solid-js';
import type { Joint } from '../../../shared/project.ts';
import { toDisplay } from '../../../shared/units.ts';
import { layOut, type SectionLayout } from './layout.ts';
import type { View } from './scale.ts';
import type { Stack } from './stack.ts';

export interface SectionDrawingProps {
  readonly joint: Joint;
  readonly stack: Stack;
  readonly description: string;
  readonly view: View;
  readonly width: number;
  readonly height: number;
  /** `group` where something in it can be taken by the hand. */
  readonly role: 'group' | 'img';
  /** What is taken by the hand, drawn over the rest. */
  readonly handle?: (layout: Accessor<SectionLayout>) => JSX.Element;
}

const ARROW = 7;

/** Past the edge of the sheet the handle waits at the edge; the figure tells the truth. */
export const gripAt = ({ mouth }: SectionLayout, width: number): number =>
  Math.min(mouth, width - 8);

/** An arrowhead whose tip is at (x, y), pointing along `direction`. */
const arrow = (x: number, y: number, direction: 1 | -1): string =>
  `M${x} ${y} l${-direction * ARROW} -2.6 v5.2 Z`;

export function SectionDrawing(props: SectionDrawingProps): JSX.Element {
  const id = createUniqueId();
  const layout = createMemo(() =>
    layOut(props.stack, props.joint.overlap, props.view, {
      width: props.width,
      height: props.height,
    }),
  );
  const grip = (): number => gripAt(layout(), props.width);
  const length = (): string => toDisplay('overlap', props.joint.overlap);
  const middle = (): number => (layout().root + grip()) / 2;
  const textRoom = (): number => length().length * 4.4 + 8;
  const tubeEnd = () => layout().tubeEnd;
  const diameterX = (): number => props.width - 14;

  return (
    <svg
      class="section"
      width={props.width}
      height={props.height}
      viewBox={`0 0 ${props.width} ${props.height}`}
      role={props.role}
      aria-label={`Section through the joint: ${props.description}`}
    >
      <defs>
        <pattern
          id={`${id}-metal`}
          class="hatch"
          width="7"
          height="7"
          patternUnits="userSpaceOnUse"
        >
          <path d="M-1 8 L8 -1 M-1 1 L1 -1 M6 8 L8 6" />
        </pattern>
        <pattern
          id={`${id}-plies`}
          class="hatch"
          width="40"
          height="4"
          patternUnits="userSpaceOnUse"
        >
          <path d="M0 2.5 H40" />
        </pattern>
      </defs>

      <Show when={layout().axis}>
        {(axis) => (
          <>
            <path class="axis" d={`M4 ${axis()} H${props.width - 4}`} />
            {/* Half the diameter, from the axis; broken, since the bore is not drawn to scale. */}
            <g class="dimension" classList={{ 'is-crowded': tubeEnd().x > props.width - 30 }}>
              <path
                d={`M${tubeEnd().x + 6} ${tubeEnd().y} H${diameterX() + 6} M${diameterX()} ${axis()} V${(axis() + layout().bottom) / 2 + 5} l-4 -3 l8 -4 l-4 -3 V${tubeEnd().y}`}
              />
              <path class="tip" d={`M${diameterX()} ${tubeEnd().y} l-2.6 ${ARROW} h5.2 Z`} />
              <text x={diameterX() - 8} y={axis() - 7} text-anchor="end">
                Ø {toDisplay('outsideDiameter', props.stack.diameter ?? 0)}
              </text>
            </g>
          </>
        )}
      </Show>

      <Index each={layout().bonds}>
        {(bond) => (
          <rect
            class="bond"
            x={bond().x}
            y={bond().y}
            width={Math.max(0, bond().width)}
            height={bond().height}
          />
        )}
      </Index>
      <Index each={layout().shapes}>
        {(shape) => (
          <g class="cut">
            <path class="face" d={shape().face} />
            <path d={shape().face} fill={`url(#${id}-${shape().hatch})`} />
            <path class="edge" d={shape().outline} />
            <path class="broken" d={shape().broken} />
          </g>
        )}
      </Index>

      <g class="dimension">
        <path d={`M${layout().root} ${layout().bottom + 3} V${layout().dimension + 6}`} />
        <path d={`M${grip()} ${layout().bottom + 12} V${layout().dimension + 6}`} />
        <path
          d={`M${layout().root} ${layout().dimension} H${middle() - textRoom()} M${middle() + textRoom()} ${layout().dimension} H${grip()}`}
        />
        <path class="tip" d={arrow(layout().root, layout().dimension, -1)} />
        <path class="tip" d={arrow(grip(), layout().dimension, 1)} />
        <text class="strong" x={middle()} y={layout().dimension + 4.5} text-anchor="middle">
          {length()}
        </text>
      </g>
      <Index each={layout().labels}>
        {(label) => (
          <text class="label" x={label().x} y={label().y}>
            {label().text}
          </text>
        )}
      </Index>

      {untrack(() => props.handle?.(layout))}
    </svg>
  );
}
