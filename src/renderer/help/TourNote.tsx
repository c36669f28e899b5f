/** One of the notes of the first start, in the flow of the page: it covers nothing. */
import { createEffect, type JSX, Show } from 'solid-js';
import { type Tour, type TourStep, tourSteps, useTour } from './tour.ts';

export interface TourNoteProps {
  readonly step: TourStep;
  readonly text: string;
  /** What goes on to the next note, where it does more than that. */
  readonly next?: { readonly text: string; readonly run: () => void };
}

function Note(props: TourNoteProps & { readonly tour: Tour }): JSX.Element {
  const place = (): number => tourSteps.indexOf(props.step) + 1;
  const counted = (): string => `Note ${place()} of ${tourSteps.length}`;
  createEffect(() => props.tour.say(`${counted()}. ${props.text}`));
  return (
    <div
      class={`tour-note is-${props.step}`}
      role="note"
      aria-label={counted()}
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return;
        event.preventDefault();
        props.tour.close();
      }}
    >
      <p>{props.text}</p>
      <p class="tour-buttons">
        <Show when={place() < tourSteps.length}>
          <button
            type="button"
            class="link"
            onClick={() => (props.next ? props.next.run() : props.tour.next())}
          >
            {props.next?.text ?? 'Next'}
          </button>
        </Show>
        <button type="button" class="link" onClick={() => props.tour.close()}>
          Got it
        </button>
        <span class="units" aria-hidden="true">
          {place()} of {tourSteps.length}
        </span>
      </p>
    </div>
  );
}

export function TourNote(props: TourNoteProps): JSX.Element {
  const tour = useTour();
  return (
    <Show when={tour?.step() === props.step && tour}>
      {(shown) => <Note {...props} tour={shown()} />}
    </Show>
  );
}
