/** The figures behind a chart, as a table: for reading exactly, copying, and for those who cannot see the curve. */
import { createSignal, For, type JSX, Show } from 'solid-js';

export interface Table {
  readonly caption: string;
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

export interface FiguresProps {
  readonly tables: readonly Table[];
}

export function Figures(props: FiguresProps): JSX.Element {
  // Built only when it is looked at: a closed table would be made anew in every frame of a drag.
  const [open, setOpen] = createSignal(false);
  return (
    <details class="figures" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>Table</summary>
      <Show when={open()}>
        {/* Longer than its place: arrow keys scroll what has the focus. */}
        <section class="figures-sheet" aria-label="Figures of the plot" tabindex="0">
          <For each={props.tables}>
            {(table) => (
              <table>
                <caption>{table.caption}</caption>
                <thead>
                  <tr>
                    <For each={table.head}>{(title) => <th scope="col">{title}</th>}</For>
                  </tr>
                </thead>
                <tbody>
                  <For each={table.rows}>
                    {(row) => (
                      <tr>
                        <For each={row}>{(cell) => <td>{cell}</td>}</For>
                      </tr>
                    )}
                  </For>
                </tbody>
              </table>
            )}
          </For>
        </section>
      </Show>
    </details>
  );
}
