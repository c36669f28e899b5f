/** The working behind one figure, in a sheet over the margins. The page under it stays usable. */
import { createEffect, Index, type JSX, on, onCleanup, onMount, Show } from 'solid-js';
import type { Margin } from '../../../shared/reports.ts';
import { remarkText, sentence, signed, stateWords } from '../../../shared/words.ts';
import { DomainMark } from '../../parts/DomainMark.tsx';
import { Mark } from '../../parts/Mark.tsx';
import type { WorkingState } from '../../state/working.ts';
import { WORKING_ID } from '../Reading.tsx';
import { CardView } from './CardView.tsx';

export interface WorkingSheetProps {
  readonly state: WorkingState;
  /** Inputs do not hold a joint that could be computed: the cards are of the last one that could. */
  readonly stale: boolean;
  readonly onClose: () => void;
}

function MarginHead(props: { readonly margin: Margin }): JSX.Element {
  const { margin } = props;
  return (
    <div class={`working-margin is-${margin.state}`}>
      <Mark state={margin.state} />
      <span>
        <span class="state">{stateWords[margin.state]}</span>
        {margin.remark === '' ? '' : ` · ${remarkText(margin)}`}
        <Show when={margin.typical}>
          {' · '}
          <span class="typical">typical</span> values stand behind it
        </Show>
      </span>
      <span class="value">{signed(margin.margin)}</span>
    </div>
  );
}

function Outside(props: { readonly flags: Margin['flags'] }): JSX.Element {
  return (
    <div class="working-outside">
      <p>
        <DomainMark inside={false} /> Outside domain
      </p>
      <ul>
        <Index each={props.flags}>{(flag) => <li>{sentence(flag().message)}</li>}</Index>
      </ul>
    </div>
  );
}

export function WorkingSheet(props: WorkingSheetProps): JSX.Element {
  let sheet!: HTMLElement;
  const working = () => props.state.working();
  const refusal = () => props.state.refusal();

  createEffect(on(props.state.subject, () => queueMicrotask(() => sheet.focus())));
  const keys = (event: KeyboardEvent): void => {
    if (event.key !== 'Escape' || event.defaultPrevented) return;
    if (document.querySelector('dialog[open]')) return;
    event.preventDefault();
    props.onClose();
  };
  onMount(() => window.addEventListener('keydown', keys));
  onCleanup(() => window.removeEventListener('keydown', keys));

  return (
    <section
      ref={sheet}
      id={WORKING_ID}
      class="working"
      data-pane
      classList={{ 'is-stale': props.stale }}
      aria-labelledby="working-title"
      tabindex="-1"
    >
      <header>
        <div class="working-head">
          <p class="working-kind">Working</p>
          <button type="button" class="link" aria-keyshortcuts="Escape" onClick={props.onClose}>
            Close<span class="hidden"> the working</span>
          </button>
        </div>
        <h2 id="working-title">{working()?.title ?? 'Working of this figure'}</h2>
        <p class="working-where">{working()?.where}</p>
        <p class="working-where">in N, mm, MPa, °C</p>
        <Show when={props.stale}>
          <p class="stale-word">not recalculated</p>
        </Show>
        <Show when={!props.stale && working() !== null && props.state.slow()}>
          <p class="behind-word">recalculating …</p>
        </Show>
      </header>
      <Show when={props.state.gone()}>
        <p class="working-word">
          This figure is not among the results any more: the change of inputs took it away.
        </p>
      </Show>
      <Show when={!props.state.gone() && refusal()}>
        {(error) => (
          <p class="refused" role="alert">
            The working cannot be shown. {sentence(error().message)}
          </p>
        )}
      </Show>
      <Show when={!props.state.gone()}>
        <Show
          when={working()}
          fallback={
            <Show when={refusal() === null}>
              <p class="working-word">Calculating …</p>
            </Show>
          }
        >
          {(now) => (
            <>
              <Show when={now().margin} keyed>
                {(margin) => (
                  <>
                    <MarginHead margin={margin} />
                    <Show when={margin.flags.length > 0}>
                      <Outside flags={margin.flags} />
                    </Show>
                  </>
                )}
              </Show>
              <ol class="cards">
                <Index each={now().cards}>
                  {(card) => (
                    <li>
                      <CardView card={card()} />
                    </li>
                  )}
                </Index>
              </ol>
            </>
          )}
        </Show>
      </Show>
    </section>
  );
}
