/** Asks for a name: of the project, of a joint. */
import { createSignal, type JSX } from 'solid-js';
import { AskDialog } from '../parts/AskDialog.tsx';
import { NameInput } from './NameInput.tsx';

export interface NameDialogProps {
  readonly title: string;
  readonly name: string;
  readonly onName: (name: string | null) => void;
}

export function NameDialog(props: NameDialogProps): JSX.Element {
  const [name, setName] = createSignal(props.name);
  return (
    <AskDialog title={props.title} onCancel={() => props.onName(null)}>
      {(then) => (
        <form
          class="ask-form"
          onSubmit={(event) => {
            event.preventDefault();
            const given = name().trim();
            if (given !== '') then(() => props.onName(given));
          }}
        >
          <NameInput required name={name()} onName={setName} />
          <div class="ask-buttons">
            <button type="submit" class="plain is-first">
              Rename
            </button>
            <button type="button" class="plain" onClick={() => then(() => props.onName(null))}>
              Leave it
            </button>
          </div>
        </form>
      )}
    </AskDialog>
  );
}
