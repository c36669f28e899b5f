/** Asks what a new project begins with: its name and its first joint. */
import { createSignal, createUniqueId, For, type JSX, onMount } from 'solid-js';
import type { Lap } from '../../shared/convert-lap.ts';
import { laps, newJointWords } from '../../shared/new-joint.ts';
import type { NewWish } from '../state/files/questions.ts';
import { LONGEST_NAME } from './NameDialog.tsx';

export interface NewDialogProps {
  readonly name: string;
  readonly onAnswer: (wish: NewWish | null) => void;
}

export function NewDialog(props: NewDialogProps): JSX.Element {
  const id = createUniqueId();
  let dialog!: HTMLDialogElement;
  let field!: HTMLInputElement;
  const [name, setName] = createSignal(props.name);
  const [lap, setLap] = createSignal<Lap | null>('socket');
  onMount(() => {
    dialog.showModal?.();
    field.focus();
    field.select();
  });
  const answer = (wish: NewWish | null): void => {
    dialog.close?.();
    props.onAnswer(wish);
  };
  const option = (value: Lap | null, text: string): JSX.Element => (
    <label class="ask-option">
      <input
        type="radio"
        name={`${id}-lap`}
        checked={lap() === value}
        onChange={() => setLap(value)}
      />
      <span>{text}</span>
    </label>
  );
  return (
    <dialog
      ref={dialog}
      class="ask"
      aria-labelledby={id}
      onCancel={(event) => {
        event.preventDefault();
        answer(null);
      }}
    >
      <form
        class="ask-form"
        onSubmit={(event) => {
          event.preventDefault();
          answer({ name: name().trim() || props.name, lap: lap() });
        }}
      >
        <h2 id={id}>New project</h2>
        <label class="ask-field">
          <span>Name</span>
          <input
            ref={field}
            type="text"
            autocomplete="off"
            maxlength={LONGEST_NAME}
            value={name()}
            onInput={(event) => setName(event.currentTarget.value)}
          />
        </label>
        <fieldset class="ask-options">
          <legend>First joint</legend>
          <For each={laps}>{(one) => option(one, newJointWords[one])}</For>
          {option(null, 'None yet')}
        </fieldset>
        <p>
          It begins with the typical carbon, titanium and paste of the demonstration. They are no
          allowables: replace them by your own.
        </p>
        <div class="ask-buttons">
          <button type="submit" class="plain is-first">
            Begin
          </button>
          <button type="button" class="plain" onClick={() => answer(null)}>
            Stay here
          </button>
        </div>
      </form>
    </dialog>
  );
}
