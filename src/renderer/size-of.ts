/** The size of an element, kept up with it; nothing until it has one. */
import { type Accessor, createSignal, onCleanup, onMount } from 'solid-js';

export interface Size {
  readonly width: number;
  readonly height: number;
}

export function createSize(element: () => Element | undefined): Accessor<Size | null> {
  const [size, setSize] = createSignal<Size | null>(null, {
    equals: (a, b) => a?.width === b?.width && a?.height === b?.height,
  });
  onMount(() => {
    const measured = element();
    if (!measured || typeof ResizeObserver === 'undefined') return;
    const observer = new ResizeObserver(() => {
      const { clientWidth: width, clientHeight: height } = measured;
      if (width > 0 && height > 0) setSize({ width, height });
    });
    observer.observe(measured);
    onCleanup(() => observer.disconnect());
  });
  return size;
}
