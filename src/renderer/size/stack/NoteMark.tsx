/** Beside something to know that is no verdict: an outline, unlike the filled marks of the margins. */
import type { JSX } from 'solid-js';

export function NoteMark(): JSX.Element {
  return (
    <svg class="note-mark" width="11" height="11" viewBox="0 0 11 11" aria-hidden="true">
      <path d="M5.5 1 L10.4 10 H0.6 Z M5.5 4.2 V7 M5.5 8.1 V8.9" />
    </svg>
  );
}
