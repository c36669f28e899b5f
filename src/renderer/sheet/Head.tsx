/** The title block, as in the corner of a drawing: what the sheet is of, from which file, by which program. */
import { For, type JSX, Show } from 'solid-js';
import { momentText } from '../parts/clock.ts';
import { fileText, type SheetData, versionText } from './data.ts';

export interface HeadProps {
  readonly data: SheetData;
  readonly title: string;
  /** What it is, such as `double lap, tube in sleeve`. */
  readonly what: string;
}

export function Head(props: HeadProps): JSX.Element {
  const { project, at } = props.data;
  const sheet = project.sheet;
  const cells: readonly (readonly [string, string | undefined])[] = [
    ['Project', project.name],
    ['Job', sheet?.job],
    ['Drawing', sheet?.drawing],
    ['Revision', sheet?.revision],
    ['Printed', momentText(at)],
    ['File', fileText(props.data)],
    ['By', versionText(props.data)],
  ];
  return (
    <header class="title-block" data-part={props.title} data-page="" data-heading="">
      <div class="title-main">
        <h1>{props.title}</h1>
        <p>{props.what}</p>
      </div>
      <dl>
        <For each={cells}>
          {([name, value]) => (
            <div class={`title-${name.toLowerCase()}`}>
              <dt>{name}</dt>
              <dd>{value || '–'}</dd>
            </div>
          )}
        </For>
      </dl>
    </header>
  );
}

export function Remarks(props: { readonly data: SheetData }): JSX.Element {
  const { note, sheet } = props.data.project;
  return (
    <>
      <Show when={sheet?.remarks}>{(text) => <p class="sheet-remarks">{text()}</p>}</Show>
      <Show when={note}>{(text) => <p class="sheet-project-note">{text()}</p>}</Show>
    </>
  );
}
