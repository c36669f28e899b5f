/** Canvases do not wait for fonts: paint them again once the app's own has come. */
import { type Accessor, createSignal, onMount } from 'solid-js';
import { FONT } from './charts/ink.ts';

export function createFontsReady(): Accessor<boolean> {
  const [ready, setReady] = createSignal(false);
  onMount(() => {
    void document.fonts
      ?.load(`400 13px ${FONT}`, 'Aθ−')
      .then(() => setReady(true))
      // Without it the system's font stands in, and is already painted.
      .catch(() => {});
  });
  return ready;
}
