/** One stress over the unrolled bond; arrow keys and pointer move the place that is read. */
import {
  type Accessor,
  createEffect,
  createMemo,
  createSignal,
  type JSX,
  on,
  Show,
} from 'solid-js';
import type { StressReport } from '../../shared/reports.ts';
import { Canvas } from '../charts/Canvas.tsx';
import type { Ink } from '../charts/ink.ts';
import { makeMapChart } from '../charts/map-chart.ts';
import {
  fieldOf,
  mapSentence,
  type Quantity,
  type Spot,
  spotText,
  worstSpot,
} from '../charts/map-data.ts';
import { createSize } from '../size-of.ts';
import type { View } from './section/scale.ts';

export interface AroundProps {
  readonly stress: StressReport;
  readonly part: string;
  readonly quantity: Quantity;
  readonly view: View | null;
  readonly ink: Accessor<Ink | null>;
  /** The lower of two maps letters the axis. */
  readonly foot: boolean;
}

export function Around(props: AroundProps): JSX.Element {
  let body!: HTMLDivElement;
  const size = createSize(() => body);
  const field = createMemo(() => fieldOf(props.stress, props.part, props.quantity));
  const [moved, setMoved] = createSignal<Spot | null>(null);
  // Another bond is read from its worst place again; the same one, calculated anew, where it was.
  createEffect(on([() => props.part, () => props.quantity], () => setMoved(null)));
  const spot = (): Spot => {
    const now = field();
    const wish = moved();
    if (!now) return { i: 0, j: 0 };
    return wish && wish.i < now.x.length && wish.j < now.theta.length
      ? wish
      : worstSpot(now, props.quantity);
  };
  const picture = () => {
    const [now, view, ink, box] = [field(), props.view, props.ink(), size()];
    if (!now || !view || !ink || !box) return null;
    return {
      field: now,
      quantity: props.quantity,
      spot: spot(),
      foot: props.foot,
      view: { left: view.left, scale: view.scale, ...box },
      ink,
    };
  };
  const keys = (event: KeyboardEvent): void => {
    const now = field();
    if (!now) return;
    const step = event.shiftKey ? 5 : 1;
    const by = {
      ArrowLeft: [-step, 0],
      ArrowRight: [step, 0],
      ArrowUp: [0, step],
      ArrowDown: [0, -step],
    }[event.key];
    if (event.key === 'Home') setMoved(worstSpot(now, props.quantity));
    else if (by) {
      const [along = 0, around = 0] = by;
      const { i, j } = spot();
      // The last row is the first again: going round skips it.
      const turns = now.theta.length - 1;
      setMoved({
        i: Math.min(now.x.length - 1, Math.max(0, i + along)),
        j: around === 0 ? j : (((j + around) % turns) + turns) % turns,
      });
    } else return;
    event.preventDefault();
  };

  return (
    <div class="figure-body around" ref={body}>
      <Show when={field()} fallback={<p class="figure-empty">Calculating …</p>}>
        {(now) => (
          <div
            class="around-map"
            role="application"
            tabindex="0"
            aria-label={`${props.quantity} around the ${props.part}: arrow keys move the place that is read, Home goes to the largest`}
            onKeyDown={keys}
          >
            <Canvas
              label={mapSentence(now(), props.part, props.quantity)}
              make={(canvas) => makeMapChart(canvas, setMoved)}
              picture={picture()}
            />
            {/* Drawn beside the ring by the map; said here. */}
            <output class="hidden">{spotText(now(), spot())}</output>
          </div>
        )}
      </Show>
    </div>
  );
}
