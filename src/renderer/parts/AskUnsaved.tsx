/** Before another project takes the place of one with unsaved changes. */
import type { JSX } from 'solid-js';
import type { Instead } from '../state/files/questions.ts';
import { AskVerbs } from './AskVerbs.tsx';

export interface AskUnsavedProps {
  readonly name: string;
  /** What comes in its place: a project that is opened, or one that is begun. */
  readonly instead: Instead;
  readonly onSave: () => void;
  readonly onDiscard: () => void;
  readonly onStay: () => void;
}

const words: Readonly<Record<Instead, { text: string; save: string; discard: string }>> = {
  open: {
    text: 'Opening another project puts this one away.',
    save: 'Save, then open',
    discard: 'Open without saving',
  },
  begin: {
    text: 'Beginning a new project puts this one away.',
    save: 'Save, then begin',
    discard: 'Begin without saving',
  },
};

export const AskUnsaved = (props: AskUnsavedProps): JSX.Element => (
  <AskVerbs
    title={`${props.name} has changes that are not saved.`}
    text={words[props.instead].text}
    verbs={[
      { text: words[props.instead].save, act: () => props.onSave() },
      { text: words[props.instead].discard, act: () => props.onDiscard() },
      { text: 'Stay here', act: () => props.onStay() },
    ]}
  />
);
