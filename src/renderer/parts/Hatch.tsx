/** The pattern of what must be told from a plain bar without its colour; goes into an `svg`. */
import type { JSX } from 'solid-js';

export const Hatch = (props: { readonly id: string }): JSX.Element => (
  <defs>
    <pattern
      id={props.id}
      width="5"
      height="5"
      patternUnits="userSpaceOnUse"
      patternTransform="rotate(45)"
    >
      <line class="hatch" x1="0" y1="0" x2="0" y2="5" />
    </pattern>
  </defs>
);
