/** A canvas with a sentence for those who do not see it, painted at most once a frame. */
import { createEffect, type JSX, onCleanup, onMount } from 'solid-js';
import { shownUnits } from '../../shared/shown-units.ts';
import { makeFrame } from '../frame.ts';

export interface Painted<Picture> {
  show(picture: Picture): void;
  /** Pixels from the left and from the top; null when the pointer has left. */
  hover(pixel: number | null, down?: number): void;
  destroy(): void;
}

export interface CanvasProps<Picture> {
  readonly label: string;
  /** Builds the painter once the canvas is there. */
  readonly make: (canvas: HTMLCanvasElement) => Painted<Picture>;
  /** Read reactively; null when there is nothing to paint yet. */
  readonly picture: Picture | null;
}

export function Canvas<Picture>(props: CanvasProps<Picture>): JSX.Element {
  let canvas!: HTMLCanvasElement;
  onMount(() => {
    const painted = props.make(canvas);
    let latest: Picture | null = null;
    const frame = makeFrame(() => {
      if (latest !== null) painted.show(latest);
    });
    createEffect(() => {
      // What is painted is written in them.
      shownUnits();
      latest = props.picture;
      if (latest !== null) frame.ask();
    });
    const move = (event: PointerEvent): void => painted.hover(event.offsetX, event.offsetY);
    const leave = (): void => painted.hover(null);
    canvas.addEventListener('pointermove', move);
    canvas.addEventListener('pointerleave', leave);
    onCleanup(() => {
      frame.drop();
      canvas.removeEventListener('pointermove', move);
      canvas.removeEventListener('pointerleave', leave);
      painted.destroy();
    });
  });
  return <canvas ref={canvas} role="img" aria-label={props.label} />;
}
