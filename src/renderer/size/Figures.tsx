/** The figures behind a chart, as a table: for reading exactly, copying, and for those who cannot see the curve. */
import { For, type JSX } from 'solid-js';

export interface FiguresProps {
  readonly caption: string;
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

export function Figures(props: FiguresProps): JSX.Element {
  return (
    <details class="figures">
      <summary>Table</summary>
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
    </details>
  );
}
