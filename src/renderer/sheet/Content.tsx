/** The whole sheet as one long column, before it is laid on pages. */
import { For, type JSX, Show } from 'solid-js';
import type { SheetData } from './data.ts';
import { JointPart } from './JointPart.tsx';
import { ProjectPart } from './ProjectPart.tsx';
import { SignOff } from './SignOff.tsx';

export function Content(props: { readonly data: SheetData; readonly width: number }): JSX.Element {
  return (
    <>
      <Show when={props.data.check}>
        {(check) => <ProjectPart data={props.data} check={check()} />}
      </Show>
      <For each={props.data.parts}>
        {(part) => <JointPart data={props.data} part={part} width={props.width} />}
      </For>
      <SignOff data={props.data} />
    </>
  );
}
