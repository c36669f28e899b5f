/** The working of margins on paper: the same cards that the Size page opens. */
import { For, type JSX, Show } from 'solid-js';
import type { JointSheet } from '../../shared/reports-sheet.ts';
import { sentence, signed, stateWords } from '../../shared/words.ts';
import { Mark } from '../parts/Mark.tsx';
import { CardView } from '../size/working/CardView.tsx';

export function WorkingPart(props: { readonly sheet: JointSheet }): JSX.Element {
  return (
    <Show when={props.sheet.workings.length > 0}>
      <h2>
        Working of{' '}
        {props.sheet.workings.length === props.sheet.report.margins.length
          ? 'all margins'
          : 'the lowest margins'}
      </h2>
      <For each={props.sheet.workings}>
        {({ margin, working, refused }) => (
          <>
            <h3 class="working-title">
              <Mark state={margin.state} /> {margin.label}: {stateWords[margin.state]}{' '}
              {signed(margin.margin)}
            </h3>
            <Show when={working}>
              {(now) => (
                <p class="sheet-line" data-heading="">
                  {now().where}
                </p>
              )}
            </Show>
            <Show when={refused}>
              {(error) => (
                <p class="sheet-line">The working cannot be shown. {sentence(error().message)}</p>
              )}
            </Show>
            <For each={working?.cards}>{(card) => <CardView card={card} />}</For>
          </>
        )}
      </For>
    </Show>
  );
}
