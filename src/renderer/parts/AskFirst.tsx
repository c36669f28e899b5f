/** Before something goes away that cannot be had again: one more press. Keeping it leads, and is what Escape does. */
import type { JSX } from 'solid-js';
import { AskVerbs } from './AskVerbs.tsx';

export interface AskFirstProps {
  /** What is in the way, as a sentence. */
  readonly title: string;
  /** What goes with it. */
  readonly text: string;
  readonly keep: string;
  readonly remove: string;
  readonly onKeep: () => void;
  readonly onRemove: () => void;
}

export function AskFirst(props: AskFirstProps): JSX.Element {
  return (
    <AskVerbs
      title={props.title}
      text={props.text}
      verbs={[
        { text: props.keep, act: () => props.onKeep() },
        { text: props.remove, act: () => props.onRemove() },
      ]}
      onCancel={() => props.onKeep()}
    />
  );
}
