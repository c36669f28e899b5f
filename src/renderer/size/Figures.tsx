/** The figures behind a chart, as a table: for reading exactly, copying, and for those who cannot see the curve. */
import { createSignal, For, type JSX, Show } from 'solid-js';

export interface FiguresProps {
  readonly caption: string;
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

export function Figures(props: FiguresProps): JSX.Element {
  // Built only when it is looked at: a closed table would be made anew in every frame of a drag.
  const [open, setOpen] = createSignal(false);
  return (
    <details class="figures" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>Table</summary>
      <Show when={open()}>
        <div class="figures-sheet">
          <table>
            <caption>{props.caption}</caption>
            <thead>
              <tr>
                <For each={props.head}>{(title) => <th scope="col">{title}</th>}</For>
              </tr>
            </thead>
            <tbody>
              <For each={props.rows}>
                {(row) => (
                  <tr>
                    <For each={row}>{(cell) => <td>{cell}</td>}</For>
                  </tr>
                )}
              </For>
            </tbody>
          </table>
        </div>
      </Show>
    </details>
  );
}
