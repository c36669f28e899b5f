/** The steps of the bonding, one in a line; as many as the printed card takes. */
import { createSignal, createUniqueId, type JSX, Show } from 'solid-js';
import { helpOfChoice } from '../../shared/field-help.ts';
import { checklistLimits } from '../../shared/project.ts';
import { tellHelp } from '../help/known-fields.ts';

export interface ChecklistProps {
  readonly steps: readonly string[];
  /** Undefined for the usual ones. */
  readonly onSteps: (steps: readonly string[] | undefined) => void;
}

const linesOf = (text: string): readonly string[] =>
  text
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '');

function wrongWith(steps: readonly string[]): string | null {
  const { steps: most, letters } = checklistLimits;
  if (steps.length > most) return `These are ${steps.length} steps: the card takes ${most}.`;
  const long = steps.findIndex((step) => step.length > letters);
  if (long >= 0) {
    return `Step ${long + 1} has ${steps[long]!.length} letters: the card takes ${letters}.`;
  }
  const twice = steps.findIndex((step, i) => steps.indexOf(step) < i);
  return twice < 0 ? null : `Step ${twice + 1} stands twice.`;
}

export function Checklist(props: ChecklistProps): JSX.Element {
  const id = createUniqueId();
  const [typed, setTyped] = createSignal<string | null>(null);
  const wrong = (): string | null => {
    const text = typed();
    return text === null ? null : wrongWith(linesOf(text));
  };
  return (
    <div class="gap-checklist">
      <label for={id}>Steps of the bonding, one in a line; none for the usual ones</label>
      <textarea
        ref={(field) => tellHelp(field, () => helpOfChoice('checklistStep'))}
        id={id}
        rows="6"
        value={typed() ?? props.steps.join('\n')}
        aria-invalid={wrong() === null ? undefined : 'true'}
        aria-describedby={wrong() === null ? undefined : `${id}-error`}
        onInput={(event) => setTyped(event.currentTarget.value)}
        onChange={(event) => {
          const steps = linesOf(event.currentTarget.value);
          if (wrongWith(steps) !== null) return;
          props.onSteps(steps.length > 0 ? steps : undefined);
          setTyped(null);
        }}
      />
      <Show when={wrong()}>
        {(message) => (
          <p class="refused" id={`${id}-error`} role="alert">
            {message()} Not stored.
          </p>
        )}
      </Show>
    </div>
  );
}
