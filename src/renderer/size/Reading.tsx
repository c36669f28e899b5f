/** A figure that opens its working; what a canvas shows beside it, the keyboard reaches here. */
import type { JSX } from 'solid-js';
import { isSameSubject, type Subject } from '../state/working.ts';

/** Opens the working of a subject; the focus comes back to the opener. */
export type OpenWorking = (subject: Subject, opener: HTMLElement) => void;

export interface ReadingProps {
  readonly subject: Subject;
  /** The subject whose working is open. */
  readonly open: Subject | null;
  readonly onWorking: OpenWorking;
  /** Said after the text, for those who do not see where it stands. */
  readonly said: string;
  readonly class?: string;
  readonly children: JSX.Element;
}

export const WORKING_ID = 'working';

export function Reading(props: ReadingProps): JSX.Element {
  const isOpen = (): boolean => isSameSubject(props.open, props.subject);
  return (
    <button
      type="button"
      class={`reading ${props.class ?? ''}`}
      title="Show the working"
      aria-expanded={isOpen()}
      aria-controls={isOpen() ? WORKING_ID : undefined}
      onClick={(event) => props.onWorking(props.subject, event.currentTarget)}
    >
      {props.children}
      <span class="hidden">{props.said}, working</span>
    </button>
  );
}
