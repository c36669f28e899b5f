/** The mouth of the sleeve, to be taken by hand: pointer, arrow keys, or read as a slider. */
import type { JSX } from 'solid-js';
import { createEffect, createMemo, on, onCleanup } from 'solid-js';
import { fromShown, inShown, lengthText } from '../../../shared/measures.ts';
import { quantities } from '../../../shared/quantities.ts';
import { shownUnits } from '../../../shared/shown-units.ts';
import { fromDisplay } from '../../../shared/units.ts';
import { makeFrame } from '../../frame.ts';

const { min, max } = quantities.overlap;

/** What a hand can mean, and how far a key goes: round in the unit on the screen. */
const steps = {
  mm: { drag: 0.1, small: 0.5, large: 5 },
  in: { drag: 0.005, small: 0.02, large: 0.2 },
} as const;
const stepsNow = () => steps[shownUnits().length];

/** The nearest length that is so many decimals long in the unit on the screen. */
function roundTo(value: number, step: number): number {
  const count = Math.round(inShown('length', value) / step);
  const entry = fromDisplay('overlap', (count * step).toFixed(4));
  return Math.min(max, Math.max(min, entry.ok ? entry.value : value));
}

/** A tenth of a millimetre, or five thousandths of an inch, is as fine as a hand can mean it. */
export const byHand = (value: number): number => roundTo(value, stepsNow().drag);

/** What a key does to the overlap; null for keys that mean nothing here. */
export function keyed(overlap: number, key: string, shift: boolean): number | null {
  const { small, large } = stepsNow();
  const step = fromShown('length', shift ? large : small);
  const to = (value: number): number => roundTo(value, 0.001);
  const page = fromShown('length', large);
  switch (key) {
    case 'ArrowRight':
    case 'ArrowUp':
      return to(overlap + step);
    case 'ArrowLeft':
    case 'ArrowDown':
      return to(overlap - step);
    case 'PageUp':
      return to(overlap + page);
    case 'PageDown':
      return to(overlap - page);
    case 'Home':
      return min;
    case 'End':
      return max;
    default:
      return null;
  }
}

export interface OverlapHandleProps {
  /** Whose overlap it is: a drag ends where another comes under the hand. */
  readonly joint: string;
  readonly overlap: number;
  readonly x: number;
  readonly top: number;
  readonly bottom: number;
  /** Pixels for a millimetre. */
  readonly scale: number;
  readonly onChange: (overlap: number) => void;
  readonly onDragging: (dragging: boolean) => void;
}

export function OverlapHandle(props: OverlapHandleProps): JSX.Element {
  let drag: { pointer: number; from: number; overlap: number; scale: number } | null = null;
  let wanted = 0;
  const frame = makeFrame(() => {
    if (wanted !== props.overlap) props.onChange(wanted);
  });
  onCleanup(() => frame.drop());
  const letGo = (): void => {
    if (!drag) return;
    drag = null;
    frame.drop();
    props.onDragging(false);
  };
  // A memo: the joint is another object after each change of it.
  createEffect(
    on(
      createMemo(() => props.joint),
      letGo,
      { defer: true },
    ),
  );

  const start = (event: PointerEvent & { currentTarget: SVGGElement }): void => {
    if (event.button !== 0) return;
    event.preventDefault();
    event.currentTarget.focus();
    event.currentTarget.setPointerCapture(event.pointerId);
    drag = {
      pointer: event.pointerId,
      from: event.clientX,
      overlap: props.overlap,
      scale: props.scale,
    };
    props.onDragging(true);
  };
  const follow = (event: PointerEvent): boolean => {
    if (drag?.pointer !== event.pointerId) return false;
    wanted = byHand(drag.overlap + (event.clientX - drag.from) / drag.scale);
    return true;
  };
  const move = (event: PointerEvent): void => {
    if (follow(event)) frame.ask();
  };
  /** Browsers that tell of a move at once let the question go before the frame that a move waits for. */
  const atOnce = (event: Event): void => {
    if (follow(event as PointerEvent)) frame.soon();
  };
  const end = (event: PointerEvent): void => {
    if (drag?.pointer !== event.pointerId) return;
    drag = null;
    frame.flush();
    props.onDragging(false);
  };
  const key = (event: KeyboardEvent): void => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    if (event.key === 'Escape' && drag) {
      const { overlap } = drag;
      drag = null;
      frame.drop();
      props.onChange(overlap);
      props.onDragging(false);
      return;
    }
    const next = keyed(props.overlap, event.key, event.shiftKey);
    if (next === null) return;
    event.preventDefault();
    if (next !== props.overlap) props.onChange(next);
  };

  return (
    <g
      ref={(handle) => handle.addEventListener('pointerrawupdate', atOnce)}
      class="handle"
      role="slider"
      tabindex="0"
      aria-label="Drag overlap"
      aria-orientation="horizontal"
      aria-valuemin={min}
      aria-valuemax={max}
      aria-valuenow={props.overlap}
      aria-valuetext={lengthText(props.overlap)}
      transform={`translate(${props.x} 0)`}
      onPointerDown={start}
      onPointerMove={move}
      onPointerUp={end}
      onPointerCancel={end}
      onLostPointerCapture={end}
      onKeyDown={key}
    >
      <rect
        class="handle-reach"
        x="-16"
        y={props.top - 14}
        width="32"
        height={props.bottom - props.top + 28}
      />
      <rect
        class="handle-grip"
        x="-6"
        y={props.top - 8}
        width="12"
        height={props.bottom - props.top + 16}
        rx="6"
      />
      <path
        class="handle-ridges"
        d={`M-1.5 ${(props.top + props.bottom) / 2 - 7} v14 M1.5 ${(props.top + props.bottom) / 2 - 7} v14`}
      />
    </g>
  );
}
