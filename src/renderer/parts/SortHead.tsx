/** The head of a column that rows can be put in the order of. */
import type { JSX } from 'solid-js';

export interface SortHeadProps {
  readonly active: boolean;
  readonly down: boolean;
  readonly onSort: () => void;
  readonly class?: string;
  readonly children: JSX.Element;
}

export function SortHead(props: SortHeadProps): JSX.Element {
  return (
    <th
      scope="col"
      class={props.class}
      aria-sort={props.active ? (props.down ? 'descending' : 'ascending') : undefined}
    >
      <button
        type="button"
        class="sort"
        classList={{ 'is-active': props.active, 'is-down': props.active && props.down }}
        onClick={() => props.onSort()}
      >
        {props.children}
        <svg width="9" height="9" viewBox="0 0 9 9" aria-hidden="true">
          <path d="M1.5 5.5 L4.5 2.5 L7.5 5.5" />
        </svg>
      </button>
    </th>
  );
}
