/** Whether a figure keeps to what its method is good for: a tick, or a bar through a ring. */
import type { JSX } from 'solid-js';

export function DomainMark(props: { readonly inside: boolean }): JSX.Element {
  return (
    <svg
      class="domain-mark"
      classList={{ 'is-outside': !props.inside }}
      width="11"
      height="11"
      viewBox="0 0 11 11"
      aria-hidden="true"
    >
      <path
        d={
          props.inside
            ? 'M1.5 6 L4.2 8.8 L9.6 2.4'
            : 'M5.5 1 A4.5 4.5 0 1 0 5.51 1 Z M2.4 8.6 L8.6 2.4'
        }
      />
    </svg>
  );
}
