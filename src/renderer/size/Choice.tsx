/** A choice among few: the system's own list, drawn as quietly as the figures. */
import { Index, type JSX } from 'solid-js';
import type { ChoiceName } from '../../shared/choice-help.ts';
import { helpOfChoice } from '../../shared/field-help.ts';
import { tellHelp } from '../help/known-fields.ts';

export interface Option {
  readonly value: string;
  readonly text: string;
}

export interface ChoiceProps {
  readonly name: string;
  /** What is said of it on asking. */
  readonly help: ChoiceName;
  readonly options: readonly Option[];
  readonly value: string;
  readonly onChoose: (value: string) => void;
  readonly id?: string;
  readonly class?: string;
  readonly invalid?: boolean;
  readonly describedBy?: string | undefined;
}

export function Choice(props: ChoiceProps): JSX.Element {
  return (
    <span class={`choice ${props.class ?? ''}`}>
      <select
        ref={(field) => tellHelp(field, () => helpOfChoice(props.help))}
        id={props.id}
        aria-label={props.name}
        aria-invalid={props.invalid ? 'true' : undefined}
        aria-describedby={props.describedBy}
        onChange={(event) => props.onChoose(event.currentTarget.value)}
      >
        {/* By position: lists are made anew with every answer, their entries seldom differ. */}
        <Index each={props.options}>
          {(option) => (
            <option value={option().value} selected={option().value === props.value}>
              {option().text}
            </option>
          )}
        </Index>
      </select>
    </span>
  );
}
