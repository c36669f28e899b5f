/** Asks what a new project begins with: its name and its first joint. */
import { createSignal, createUniqueId, For, type JSX } from 'solid-js';
import type { Lap } from '../../shared/convert-lap.ts';
import { laps, newJointWords } from '../../shared/new-joint.ts';
import { AskDialog } from '../parts/AskDialog.tsx';
import type { NewWish } from '../state/files/questions.ts';
import { NameInput } from './NameInput.tsx';

export interface NewDialogProps {
  readonly name: string;
  readonly onAnswer: (wish: NewWish | null) => void;
}

export function NewDialog(props: NewDialogProps): JSX.Element {
  const id = createUniqueId();
  const [name, setName] = createSignal(props.name);
  const [lap, setLap] = createSignal<Lap | null>('socket');
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
    <AskDialog title="New project" onCancel={() => props.onAnswer(null)}>
      {(then) => (
        <form
          class="ask-form"
          onSubmit={(event) => {
            event.preventDefault();
            then(() => props.onAnswer({ name: name().trim() || props.name, lap: lap() }));
          }}
        >
          <NameInput name={name()} onName={setName} />
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
            <button type="button" class="plain" onClick={() => then(() => props.onAnswer(null))}>
              Stay here
            </button>
          </div>
        </form>
      )}
    </AskDialog>
  );
}
