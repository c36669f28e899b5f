/** What the springs stand between, drawn: the joint above, the frame's model of it below. */
import type { JSX } from 'solid-js';

export interface SpringSketchProps {
  readonly flat: boolean;
}

/** A zigzag between two points of a level. */
const zigzag = (from: number, to: number, y: number): string => {
  const step = (to - from) / 8;
  const points = [1, 2, 3, 4, 5, 6, 7].map((i) => `${from + i * step},${y + (i % 2 ? -6 : 6)}`);
  return [`${from},${y}`, ...points, `${to},${y}`].join(' ');
};

const ROOT = 74;
const MOUTH = 214;
const LEVEL = 50;
const SPRING = [MOUTH - 26, MOUTH + 14] as const;

export function SpringSketch(props: SpringSketchProps): JSX.Element {
  const part = (): string => (props.flat ? 'strip' : 'tube');
  return (
    <svg
      class="spring-sketch"
      viewBox="0 0 400 104"
      role="img"
      aria-label={`x runs from the root, where the metal is solid, to the mouth and on along the ${part()}. In the frame’s model the metal is carried rigidly from the root to the mouth; there the spring joins it to the ${part()}, which is loaded along x.`}
    >
      <title>Where the springs stand and which way is positive</title>
      <rect class="is-metal" x="14" y="30" width={ROOT - 14} height="40" />
      <path class="is-guide" d={`M${ROOT} 16 V84 M${MOUTH - 6} 16 V84`} />
      <text x={ROOT} y="12" text-anchor="middle">
        root, x = 0
      </text>
      <text x={MOUTH - 6} y="12" text-anchor="middle">
        mouth, x = L
      </text>
      <path class="is-rigid" d={`M${ROOT} ${LEVEL} H${SPRING[0]}`} />
      <polyline class="is-spring" points={zigzag(SPRING[0], SPRING[1], LEVEL)} />
      <path class="is-wall" d={`M${SPRING[1]} ${LEVEL} H318`} />
      <circle class="is-node" cx={SPRING[0]} cy={LEVEL} r="3" />
      <circle class="is-node" cx={SPRING[1]} cy={LEVEL} r="3" />
      <path
        class="is-load"
        d={`M322 ${LEVEL} H356 M349 ${LEVEL - 4} L357 ${LEVEL} L349 ${LEVEL + 4}`}
      />
      <text x="364" y={LEVEL + 4}>
        F
      </text>
      <path class="is-load" d={`M294 ${LEVEL + 15} A18 18 0 1 1 308 ${LEVEL - 13}`} />
      <path class="is-load" d={`M299 ${LEVEL - 17} L308 ${LEVEL - 13} L304 ${LEVEL - 4}`} />
      <text x="294" y={LEVEL - 24} text-anchor="middle">
        {props.flat ? 'M' : 'M, T'}
      </text>
      <text x={(ROOT + SPRING[0]) / 2} y={LEVEL - 9} text-anchor="middle">
        rigid
      </text>
      <text x={MOUTH - 6} y={LEVEL + 48} text-anchor="middle">
        spring
      </text>
      <text x="258" y={LEVEL + 18} text-anchor="middle">
        {part()}
      </text>
      <path class="is-axis" d="M14 92 H70 M63 88 L71 92 L63 96" />
      <text x="78" y="96">
        x
      </text>
    </svg>
  );
}
