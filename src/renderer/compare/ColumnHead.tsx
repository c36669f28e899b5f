/** The head of one column: its letter and line, what it is, and what can be done with it. */

import { createSignal, type JSX, Show } from 'solid-js';
import type { Joint, Project } from '../../shared/project.ts';
import type { CompareColumn } from '../../shared/reports-compare.ts';
import { saidText } from '../../shared/said.ts';
import { sentence, signed, stateWords } from '../../shared/words.ts';
import { dashOf } from '../charts/compare-data.ts';
import { Mark } from '../parts/Mark.tsx';
import { Choice } from '../size/Choice.tsx';
import type { Column } from '../state/compared.ts';

export interface ColumnHeadProps {
  readonly column: Column;
  readonly letter: string;
  readonly joint: Joint;
  readonly project: Project;
  readonly result: CompareColumn | null;
  /** Chosen, not taken away: the first column. */
  readonly first: boolean;
  readonly onJoint: (id: string) => void;
  readonly onSize: () => void;
  readonly onRemove: () => void;
  readonly onDelete: () => void;
}

/** The line that its curves are drawn with. */
function LineSample(props: { readonly letter: string }): JSX.Element {
  return (
    <svg class="line-sample" width="44" height="6" viewBox="0 0 44 6" aria-hidden="true">
      <path d="M0 3 H44" stroke-dasharray={dashOf(props.letter).join(' ')} />
    </svg>
  );
}

export function ColumnHead(props: ColumnHeadProps): JSX.Element {
  const [asking, setAsking] = createSignal(false);
  const called = (): string => `${props.letter} ${props.joint.name}`;
  let keep!: HTMLButtonElement;
  let ask!: HTMLButtonElement;
  return (
    <>
      <div class="column-line">
        <span class="letter">{props.letter}</span>
        <LineSample letter={props.letter} />
        <span class="column-kind">{props.column.kind === 'variant' ? 'variant' : 'joint'}</span>
        <Show when={props.result?.lowest}>
          {(lowest) => (
            <span class={`column-lowest is-${lowest().state}`} title="Lowest margin">
              <Mark state={lowest().state} />
              <span class="hidden">lowest margin </span>
              <span class="value">{signed(lowest().margin)}</span>
              <span class="state">{stateWords[lowest().state]}</span>
            </span>
          )}
        </Show>
      </div>
      <Show when={props.first} fallback={<p class="column-name">{props.joint.name}</p>}>
        <Choice
          name="Joint"
          help="joint"
          class="joint-choice"
          options={props.project.joints.map(({ id, name }) => ({ value: id, text: name }))}
          value={props.joint.id}
          onChoose={props.onJoint}
        />
      </Show>
      <p class="column-about">{props.result?.description}</p>
      <Show when={props.result?.refused}>
        {(error) => (
          <p class="refused" role="alert">
            {sentence(saidText(error()))}
          </p>
        )}
      </Show>
      <div class="column-acts">
        <Show when={props.column.kind === 'joint'}>
          <button
            type="button"
            class="link"
            aria-label={`Size ${called()}`}
            onClick={() => props.onSize()}
          >
            Size
          </button>
        </Show>
        <Show when={!props.first}>
          <button
            type="button"
            class="link"
            aria-label={`Take away ${called()}`}
            title="Out of the comparison; it stays in the project"
            onClick={() => props.onRemove()}
          >
            Take away
          </button>
        </Show>
        <Show when={props.column.kind === 'variant'}>
          <button
            ref={ask}
            type="button"
            class="link"
            aria-label={`Delete ${called()} from the project`}
            aria-expanded={asking()}
            onClick={() => {
              setAsking(true);
              keep.focus();
            }}
          >
            Delete …
          </button>
        </Show>
      </div>
      <Show when={asking()}>
        <div class="column-ask" role="alertdialog" aria-label={`Delete ${called()}?`}>
          <p>Delete this variant from the project?</p>
          <button type="button" class="plain" onClick={() => props.onDelete()}>
            Delete it
          </button>
          <button
            ref={keep}
            type="button"
            class="plain"
            onClick={() => {
              setAsking(false);
              ask.focus();
            }}
          >
            Keep it
          </button>
        </div>
      </Show>
    </>
  );
}
