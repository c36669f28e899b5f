/** The sign of a margin's state, as a shape: colour alone tells nothing to many. */
import type { JSX } from 'solid-js';
import type { MarginState } from '../../shared/reports.ts';

const shapes: Readonly<Record<MarginState, string>> = {
  fails: 'M5 0.8 L9.8 9.4 H0.2 Z',
  low: 'M5 0 L10 5 L5 10 L0 5 Z',
  holds: 'M5 0.6 A4.4 4.4 0 1 1 4.99 0.6 Z',
};

export function Mark(props: { readonly state: MarginState }): JSX.Element {
  return (
    <svg
      class={`mark is-${props.state}`}
      width="10"
      height="10"
      viewBox="0 0 10 10"
      aria-hidden="true"
    >
      <path d={shapes[props.state]} />
    </svg>
  );
}
