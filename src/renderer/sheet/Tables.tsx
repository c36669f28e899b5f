/** The tables of the sheet: figures beside their names, several to a line; rows under a head. */
import { For, type JSX, Show } from 'solid-js';
import type { Source } from '../../shared/project.ts';
import { sourceWords } from '../../shared/sheet-words.ts';

/** Where a property set comes from; what is to be replaced stands out without colour. */
export function SourceText(props: { readonly source: Source }): JSX.Element {
  const { mark, text } = sourceWords(props.source);
  return (
    <>
      <Show when={mark}>
        <strong class="typical">{mark}</strong>
        {text === '' ? '' : '. '}
      </Show>
      {text}
    </>
  );
}

export interface Pair {
  readonly label: JSX.Element;
  readonly value: JSX.Element;
}

export interface PairTableProps {
  readonly title: string;
  /** Beside the title. */
  readonly note?: JSX.Element;
  readonly pairs: readonly Pair[];
  /** Pairs on a line. */
  readonly across?: number;
}

export function PairTable(props: PairTableProps): JSX.Element {
  const across = props.across ?? 3;
  const rows = Array.from({ length: Math.ceil(props.pairs.length / across) }, (_, i) =>
    Array.from({ length: across }, (_v, k) => props.pairs[i * across + k] ?? null),
  );
  return (
    <table class={`paper-pairs is-across-${across}`}>
      <thead>
        <tr>
          <th scope="colgroup" colspan={2 * across}>
            {props.title}
            <Show when={props.note}>
              <span class="paper-note">{props.note}</span>
            </Show>
          </th>
        </tr>
      </thead>
      <tbody>
        <For each={rows}>
          {(row) => (
            <tr>
              <For each={row}>
                {(pair) => (
                  <>
                    <th scope="row">{pair?.label}</th>
                    <td>{pair?.value}</td>
                  </>
                )}
              </For>
            </tr>
          )}
        </For>
      </tbody>
    </table>
  );
}

export interface RowTableProps {
  readonly title: string;
  readonly note?: JSX.Element;
  readonly class?: string;
  readonly head: readonly string[];
  readonly rows: readonly (readonly JSX.Element[])[];
}

/** The first column names the row. */
export function RowTable(props: RowTableProps): JSX.Element {
  return (
    <table class={`paper-rows ${props.class ?? ''}`}>
      <thead>
        <tr>
          <th class="table-title" scope="colgroup" colspan={props.head.length}>
            {props.title}
            <Show when={props.note}>
              <span class="paper-note">{props.note}</span>
            </Show>
          </th>
        </tr>
        <tr>
          <For each={props.head}>{(text) => <th scope="col">{text}</th>}</For>
        </tr>
      </thead>
      <tbody>
        <For each={props.rows}>
          {(row) => (
            <tr>
              <For each={row}>
                {(cell, i) => (
                  <Show when={i() === 0} fallback={<td>{cell}</td>}>
                    <th scope="row">{cell}</th>
                  </Show>
                )}
              </For>
            </tr>
          )}
        </For>
      </tbody>
    </table>
  );
}
