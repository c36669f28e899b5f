/** The answer of a scatter run: the share below zero, the histogram, percentiles, what governs. */

import { For, type JSX } from 'solid-js';
import type { ScatterReport } from '../../../shared/reports-scatter.ts';
import { saidText } from '../../../shared/said.ts';
import {
  belowSentence,
  checkSentences,
  grouped,
  middleSentence,
  percent,
} from '../../../shared/scatter-words.ts';
import { signed } from '../../../shared/words.ts';
import { svgWithin, TakeOut } from '../../parts/TakeOut.tsx';
import { governsSheet, histogramSheet, percentilesSheet } from '../../sheets/study-sheets.ts';
import { Figures } from '../Figures.tsx';
import { Histogram } from './Histogram.tsx';
import { barsOf } from './histogram-data.ts';

export function ScatterAnswer(props: { readonly report: ScatterReport }): JSX.Element {
  let figure!: HTMLElement;
  const report = () => props.report;
  const range = ({ low, high }: { low: number; high: number }): string =>
    `${signed(low, 3)} … ${signed(high, 3)}`;
  return (
    <>
      <p class="study-answer">{belowSentence(report())}</p>
      <section class="study-figure" aria-label="Histogram of the lowest margin" ref={figure}>
        <header>
          <h3>Lowest margin</h3>
          <span class="units">
            {`${grouped(report().samples)} samples, seed ${report().seed}, trough apart`}
          </span>
          <span class="figure-tools">
            <TakeOut
              what="Scatter of the lowest margin"
              about={`${grouped(report().samples)} samples, seed ${report().seed}, trough apart`}
              sheet={() => histogramSheet(report())}
              picture={() => svgWithin(figure, 'Up: samples; along: lowest margin')}
            />
            <Figures
              tables={[
                {
                  caption: 'Samples by their lowest margin',
                  head: ['from', 'to', 'samples'],
                  rows: barsOf(report().histogram).map(({ from, to, count }) => [
                    signed(from),
                    signed(to),
                    grouped(count),
                  ]),
                },
              ]}
            />
          </span>
        </header>
        <Histogram report={report()} />
      </section>
      <div class="study-tables">
        <table class="study-rows">
          <caption>
            Margin{' '}
            <TakeOut what="Percentiles of the margin" sheet={() => percentilesSheet(report())} />
          </caption>
          <tbody>
            <For each={report().percentiles}>
              {(percentile) => (
                <tr>
                  <th scope="row">{`${100 * percentile.share} % of samples below`}</th>
                  <td class="number">{signed(percentile.value, 3)}</td>
                  <td>{`${range(percentile)} with ${100 * report().confidence} % confidence`}</td>
                </tr>
              )}
            </For>
            <tr>
              <th scope="row">mean</th>
              <td class="number">{signed(report().mean, 3)}</td>
              <td>{`standard deviation ${report().deviation.toFixed(3)}`}</td>
            </tr>
            <tr>
              <th scope="row">lowest, highest</th>
              <td class="number">{signed(report().lowest, 3)}</td>
              <td>{signed(report().highest, 3)}</td>
            </tr>
          </tbody>
        </table>
        <table class="study-rows">
          <caption>
            What is lowest, how often{' '}
            <TakeOut what="What is lowest" sheet={() => governsSheet(report())} />
          </caption>
          <tbody>
            <For each={report().governs}>
              {({ label, caseName, count }) => (
                <tr>
                  <td class="number">{percent(count / report().samples)}</td>
                  <th scope="row">{label}</th>
                  <td>{caseName}</td>
                </tr>
              )}
            </For>
          </tbody>
        </table>
      </div>
      <p class="asked-note">{middleSentence(report())}</p>
      <p class="asked-note">{checkSentences(report()).join(' ')}</p>
      <ul class="study-notes">
        <For each={report().flags}>{(flag) => <li>{saidText(flag)}</li>}</For>
      </ul>
    </>
  );
}
