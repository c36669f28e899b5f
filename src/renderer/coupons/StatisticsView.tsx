/** Statistics of one set: the results that count, the way to the values, the values, the plot. */

import { type Accessor, For, type JSX, Show } from 'solid-js';
import {
  basisSentence,
  batchWords,
  countedSentence,
  percentOf,
  plotSentence,
  samplingWords,
} from '../../shared/coupon-words.ts';
import { symbolOf } from '../../shared/measures.ts';
import type {
  CouponSetReport,
  CouponStatistics,
  SampleSummary,
} from '../../shared/reports-coupons.ts';
import { figure } from '../../shared/words.ts';
import { probabilityPlot, probabilityTable } from '../charts/coupon-data.ts';
import type { Ink } from '../charts/ink.ts';
import { Mark } from '../parts/Mark.tsx';
import { TakeOut } from '../parts/TakeOut.tsx';
import { probabilitySheet, samplingSheet, summarySheet } from '../sheets/coupon-sheets.ts';
import { BasisTable } from './BasisTable.tsx';
import { DecisionList } from './DecisionList.tsx';
import { DotFigure } from './DotFigure.tsx';
import { FlagList, isHeavy } from './FlagList.tsx';

export interface StatisticsViewProps {
  readonly report: CouponSetReport;
  readonly ink: Accessor<Ink | null>;
}

interface OfSet {
  readonly statistics: CouponStatistics;
  /** Its name. */
  readonly set: string;
}

function SummaryTable(props: OfSet): JSX.Element {
  const cells = (one: SampleSummary): readonly string[] => [
    String(one.n),
    figure(one.mean),
    one.deviation === null ? '–' : figure(one.deviation),
    one.variation === null ? '–' : percentOf(one.variation),
    figure(one.lowest),
    figure(one.highest),
  ];
  return (
    <section class="coupon-block" aria-labelledby="summary-title">
      <h2 id="summary-title">
        Load over area{' '}
        <span class="units">
          {symbolOf('stress')}; compares coupons, and is no strength to design to
        </span>{' '}
        <TakeOut
          what={`Load over area, ${props.set}`}
          sheet={() => summarySheet(props.statistics)}
        />
      </h2>
      <table class="coupon-figures">
        <thead>
          <tr>
            <th scope="col">
              <span class="hidden">results</span>
            </th>
            <For each={['n', 'mean', 'std. dev.', 'scatter', 'lowest', 'highest']}>
              {(head) => (
                <th scope="col" class="number">
                  {head}
                </th>
              )}
            </For>
          </tr>
        </thead>
        <tbody>
          <tr class="is-all">
            <th scope="row">all that count</th>
            <For each={cells(props.statistics.all)}>{(cell) => <td class="number">{cell}</td>}</For>
          </tr>
          <Show when={props.statistics.batches.length > 1}>
            <For each={props.statistics.batches}>
              {(one) => (
                <tr>
                  <th scope="row">{batchWords(one.name)}</th>
                  <For each={cells(one)}>{(cell) => <td class="number">{cell}</td>}</For>
                </tr>
              )}
            </For>
          </Show>
        </tbody>
      </table>
    </section>
  );
}

function Sampling(props: OfSet): JSX.Element {
  return (
    <section class="coupon-block" aria-labelledby="sampling-title">
      <h2 id="sampling-title">
        Classes of data{' '}
        <TakeOut
          what={`Classes of data, ${props.set}`}
          sheet={() => samplingSheet(props.statistics)}
        />
      </h2>
      <table class="coupon-figures">
        <tbody>
          <For each={props.statistics.sampling}>
            {(one) => (
              <tr>
                <th scope="row">{one.name}</th>
                <td>
                  <span class="coupon-class">
                    <Show when={one.met}>
                      <Mark state="holds" />
                    </Show>
                    {samplingWords(one)}
                  </span>
                </td>
              </tr>
            )}
          </For>
        </tbody>
      </table>
      <p class="units under">
        How much was tested. A class that is met makes no published allowable of a value.
      </p>
    </section>
  );
}

export function StatisticsView(props: StatisticsViewProps): JSX.Element {
  return (
    <Show
      when={props.report.statistics}
      fallback={
        <div class="coupon-start">
          <p>
            {props.report.lines.length === 0
              ? 'There are no results of this set yet: type them under Results, or read them from a file.'
              : `No result counts: ${countedSentence(props.report.lines)}`}
          </p>
          <FlagList flags={props.report.flags} />
        </div>
      }
    >
      {(statistics) => (
        <section data-pane class="coupon-view" aria-label="Statistics">
          <p class="coupon-answer">{basisSentence(statistics())}</p>
          <p class="units">{countedSentence(props.report.lines)}</p>
          <FlagList flags={props.report.flags.filter(isHeavy)} />
          <div class="coupon-halves">
            <div>
              <SummaryTable statistics={statistics()} set={props.report.name} />
              <BasisTable statistics={statistics()} set={props.report.name} />
              <Sampling statistics={statistics()} set={props.report.name} />
            </div>
            <div>
              <DotFigure
                title="Probability plot"
                units={`${statistics().plot.family === 'weibull' ? 'Weibull' : statistics().plot.family} axes`}
                plot={probabilityPlot(statistics().plot)}
                empty="No result counts."
                label={plotSentence(statistics().plot)}
                tables={[probabilityTable(statistics().plot)]}
                sheet={() => probabilitySheet(statistics())}
                axes="Up: share of coupons that fail below; along: load over area, MPa"
                of={props.report.name}
                ink={props.ink}
              />
              <DecisionList statistics={statistics()} />
            </div>
          </div>
          <FlagList flags={props.report.flags.filter((one) => !isHeavy(one))} />
        </section>
      )}
    </Show>
  );
}
