/** Day and note of a set of coupons. */
import type { JSX } from 'solid-js';

export function TestedOn(props: {
  readonly tested: string | undefined;
  readonly onTested: (day: string | undefined) => void;
}): JSX.Element {
  return (
    <label class="coupon-line">
      Tested on
      <input
        class="words"
        type="date"
        value={props.tested ?? ''}
        onChange={(event) => props.onTested(event.currentTarget.value || undefined)}
      />
    </label>
  );
}

export function SetNote(props: {
  readonly note: string | undefined;
  readonly onNote: (note: string | undefined) => void;
}): JSX.Element {
  return (
    <label class="coupon-note">
      Note
      <input
        class="words"
        type="text"
        maxlength={4000}
        value={props.note ?? ''}
        onChange={(event) => props.onNote(event.currentTarget.value || undefined)}
      />
    </label>
  );
}
