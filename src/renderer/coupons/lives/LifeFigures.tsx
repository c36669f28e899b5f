/** What lives come to: the S-N plot, how it was fitted, and other load ratios by Goodman's line. */

import { type Accessor, For, type JSX, Show } from 'solid-js';
import {
  boundMeans,
  cyclesText,
  fewFailures,
  lifeAlt,
  lifeMethodWords,
  ratioText,
  shareText,
} from '../../../shared/life-words.ts';
import type { LifeFit, LifeSetReport } from '../../../shared/reports-coupons.ts';
import { goodmanText } from '../../../shared/sn-line.ts';
import type { Ink } from '../../charts/ink.ts';
import { lifePlot, lifeTables } from '../../charts/life-data.ts';
import { TakeOut } from '../../parts/TakeOut.tsx';
import { fitSheet, goodmanSheet, lifeSheet } from '../../sheets/coupon-sheets.ts';
import { DotFigure } from '../DotFigure.tsx';

function FitTable(props: { readonly fit: LifeFit; readonly name: string }): JSX.Element {
  const rows = (): readonly (readonly [string, string])[] => {
    const { method, failures, runOuts, deviation, shares, longest } = props.fit;
    return [
      ['fitted by', lifeMethodWords[method]],
      ['failures', String(failures)],
      ['run-outs', String(runOuts)],
      ['scatter of log N (std. dev.)', deviation.toPrecision(3)],
      ['shares tested', `${shareText(shares[0])} to ${shareText(shares[1])} of yield`],
      ['longest test', `${cyclesText(longest)} cycles`],
    ];
  };
  return (
    <section class="coupon-block" aria-labelledby="life-fit-title">
      <h2 id="life-fit-title">
        The line <TakeOut what={`Line of lives, ${props.name}`} sheet={() => fitSheet(props.fit)} />
      </h2>
      <table class="coupon-figures">
        <tbody>
          <For each={rows()}>
            {([head, cell]) => (
              <tr>
                <th scope="row">{head}</th>
                <td>{cell}</td>
              </tr>
            )}
          </For>
        </tbody>
      </table>
      <Show when={fewFailures(props.fit) !== ''}>
        <p class="units under">{fewFailures(props.fit)}</p>
      </Show>
      <p class="units under">
        {boundMeans}
        <Show when={props.fit.runOuts > 0}> With run-outs the bound is an approximation.</Show>
      </p>
    </section>
  );
}

function Goodman(props: { readonly report: LifeSetReport; readonly name: string }): JSX.Element {
  return (
    <section class="coupon-block" aria-labelledby="goodman-title">
      <h2 id="goodman-title">
        Other load ratios{' '}
        <TakeOut
          what={`Other load ratios, ${props.name}`}
          sheet={() => goodmanSheet(props.report)}
        />
      </h2>
      <table class="coupon-figures is-narrow">
        <thead>
          <tr>
            <th scope="col" class="number">
              load ratio R
            </th>
            <th scope="col" class="number">
              highest peak shear tested ×
            </th>
          </tr>
        </thead>
        <tbody>
          <For each={props.report.goodman}>
            {({ ratio, factor }) => (
              <tr>
                <td class="number">{ratioText(ratio)}</td>
                <td class="number">{factor.toFixed(2)}</td>
              </tr>
            )}
          </For>
        </tbody>
      </table>
      <p class="units under">{goodmanText}</p>
    </section>
  );
}

export function LifePlot(props: {
  readonly report: LifeSetReport;
  /** Name of the set. */
  readonly name: string;
  readonly ink: Accessor<Ink | null>;
}): JSX.Element {
  return (
    <DotFigure
      title="S-N plot"
      units="peak shear over yield against cycles, both logarithmic; arrows ran out"
      plot={lifePlot(props.report)}
      empty="The model has no shear stress for these coupons."
      label={lifeAlt(props.report)}
      tables={lifeTables(props.report)}
      sheet={() => lifeSheet(props.report)}
      axes="Up: peak shear over yield; along: cycles; both logarithmic, arrows ran out"
      of={props.name}
      ink={props.ink}
    />
  );
}

export function LifeFigures(props: {
  readonly report: LifeSetReport;
  readonly name: string;
}): JSX.Element {
  return (
    <>
      <Show when={props.report.fit}>{(known) => <FitTable fit={known()} name={props.name} />}</Show>
      <Show when={props.report.fit?.bound && props.report.goodman.length > 0}>
        <Goodman report={props.report} name={props.name} />
      </Show>
    </>
  );
}
