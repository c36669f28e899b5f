/** What the knockdowns leave at the gap that is drawn, a column for each bond: the core's figures. */

import { For, type JSX, Show } from 'solid-js';
import { figureText } from '../../../shared/measures.ts';
import type { Ledger, LedgerRow } from '../../../shared/reports.ts';
import { figure } from '../../../shared/words.ts';
import { TakeOut } from '../../parts/TakeOut.tsx';
import { knockdownsSheet } from '../../sheets/study-sheets.ts';
import { useAnswers } from '../answers.ts';

const words: Readonly<Record<LedgerRow['name'], string>> = {
  environment: 'Environment',
  gap: 'Gap',
  ageing: 'Ageing',
  scatter: 'Scatter',
  fitting: '1 / fitting factor',
};

export function LedgerTable(): JSX.Element {
  const answers = useAnswers();
  const ledgers = (): readonly Ledger[] => answers.stress()?.ledgers ?? [];
  const rowOf = (ledger: Ledger, name: LedgerRow['name']): string => {
    const row = ledger.rows.find((one) => one.name === name);
    return row ? figure(row.factor) : '–';
  };
  return (
    <Show when={ledgers()[0]}>
      {(first) => (
        <>
          <p class="take-row">
            <TakeOut what="Knockdowns at the gap drawn" sheet={() => knockdownsSheet(ledgers())} />
          </p>
          <table class="ledger" classList={{ 'is-old': answers.stale() }}>
            <caption>
              {answers.stale() ? 'Left, not recalculated' : 'Left at the gap drawn'}
            </caption>
            <thead>
              <tr>
                <td />
                <For each={ledgers()}>
                  {({ part, gap }) => (
                    <th scope="col">
                      {part} {figureText('small', gap)}
                    </th>
                  )}
                </For>
              </tr>
            </thead>
            <tbody>
              <For each={first().rows}>
                {({ name }) => (
                  <tr>
                    <th scope="row">{words[name]}</th>
                    <For each={ledgers()}>{(ledger) => <td>{rowOf(ledger, name)}</td>}</For>
                  </tr>
                )}
              </For>
            </tbody>
            <tfoot>
              <tr>
                <th scope="row">Left</th>
                <For each={ledgers()}>{(ledger) => <td>{figure(ledger.left)}</td>}</For>
              </tr>
            </tfoot>
          </table>
        </>
      )}
    </Show>
  );
}
