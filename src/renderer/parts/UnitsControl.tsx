/** In the bar: which units the page writes in, and the way to choose others. */
import type { JSX } from 'solid-js';
import type { Units } from '../units.ts';

export function UnitsControl(props: {
  readonly units: Units;
  readonly onOpen: () => void;
}): JSX.Element {
  const now = (): string => props.units.preset() ?? 'own';
  return (
    <button
      type="button"
      class="link bar-units"
      title="Units on the screen"
      aria-haspopup="dialog"
      onClick={() => props.onOpen()}
    >
      <span class="hidden">Units: </span>
      {now()}
    </button>
  );
}
