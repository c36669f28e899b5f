/** What the stack makes of the wall: moduli and expansion at a glance, A, B and D on request. */

import { For, type JSX } from 'solid-js';
import { acrossOf } from '../../../shared/laminate-words.ts';
import type { LaminateReport } from '../../../shared/reports.ts';
import { TakeOut } from '../../parts/TakeOut.tsx';
import { matrixSheet } from '../../sheets/study-sheets.ts';
import { Disclosure } from '../Disclosure.tsx';
import { bendingReadings, matrices, type Reading, readings } from './figures.ts';

export interface LaminateFiguresProps {
  readonly report: LaminateReport;
  readonly flat: boolean;
}

function Readings(props: { readonly of: readonly Reading[]; readonly label: string }): JSX.Element {
  return (
    <dl class="laminate-figures" aria-label={props.label}>
      <For each={props.of}>
        {({ symbol, value, unit, help }) => (
          <div title={help}>
            <dt>{symbol}</dt>
            <dd>
              {value} <span class="unit">{unit}</span>
            </dd>
          </div>
        )}
      </For>
    </dl>
  );
}

export function LaminateFigures(props: LaminateFiguresProps): JSX.Element {
  const across = (): string => acrossOf(props.flat);
  const axes = (): readonly string[] => ['x', across(), `x${across()}`];
  return (
    <>
      <Readings of={readings(props.report, across())} label="Laminate properties" />
      <Disclosure title="A, B, D and bending">
        <Readings of={bendingReadings(props.report, across())} label="Moduli in bending" />
        <For each={matrices(props.report)}>
          {({ name, unit, help, rows }) => (
            <table class="matrix">
              <caption>
                {name} <span class="unit">{unit}</span> <span class="about">{help}</span>{' '}
                <TakeOut
                  what={`Laminate, ${name}`}
                  sheet={() => matrixSheet(props.report, name, axes())}
                />
              </caption>
              <thead class="hidden">
                <tr>
                  <td />
                  <For each={axes()}>{(axis) => <th scope="col">{axis}</th>}</For>
                </tr>
              </thead>
              <tbody>
                <For each={rows}>
                  {(row, i) => (
                    <tr>
                      <th scope="row">{axes()[i()]}</th>
                      <For each={row}>{(value) => <td>{value}</td>}</For>
                    </tr>
                  )}
                </For>
              </tbody>
            </table>
          )}
        </For>
      </Disclosure>
    </>
  );
}
