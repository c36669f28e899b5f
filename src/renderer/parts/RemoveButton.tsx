/** The cross at the end of a row that takes the row away. */
import type { JSX } from 'solid-js';

export interface RemoveButtonProps {
  /** As it is read out: `Remove gap row 2`. */
  readonly label: string;
  /** What it does, under the pointer. */
  readonly title: string;
  readonly onRemove: () => void;
}

export const RemoveButton = (props: RemoveButtonProps): JSX.Element => (
  <button
    type="button"
    class="quiet"
    aria-label={props.label}
    title={props.title}
    onClick={() => props.onRemove()}
  >
    <svg width="9" height="9" viewBox="0 0 9 9" aria-hidden="true">
      <path d="M1 1 L8 8 M8 1 L1 8" />
    </svg>
  </button>
);
