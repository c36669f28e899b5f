/** Measured over predicted: of this set, or of all sets of its adhesive, against what may explain it. */

import {
  type Accessor,
  createEffect,
  createSignal,
  createUniqueId,
  For,
  type JSX,
  onCleanup,
  Show,
} from 'solid-js';
import {
  calibrationText,
  correlationSentence,
  countedSentence,
  percentOf,
} from '../../shared/coupon-words.ts';
import { symbolOf } from '../../shared/measures.ts';
import type { Correlation, CouponSetReport } from '../../shared/reports-coupons.ts';
import { sentence } from '../../shared/words.ts';
import {
  type Against,
  againstWords,
  agreementAlt,
  agreementPlot,
  agreementTable,
  setLines,
} from '../charts/coupon-data.ts';
import type { Ink } from '../charts/ink.ts';
import { TakeOut } from '../parts/TakeOut.tsx';
import { agreementSheet, correlationSheet } from '../sheets/coupon-sheets.ts';
import type { CouponsState } from '../state/coupons.ts';
import type { ProjectState } from '../state/project.ts';
import { loadText } from './coupon-format.ts';
import { DotFigure } from './DotFigure.tsx';
import { FlagList } from './FlagList.tsx';
import { GapCurves } from './GapCurves.tsx';

export interface AgreementViewProps {
  readonly state: CouponsState;
  readonly project: ProjectState;
  readonly report: CouponSetReport;
  readonly ink: Accessor<Ink | null>;
}

type Scope = 'set' | 'adhesive';

function Segments<T extends string>(props: {
  readonly legend: string;
  readonly options: readonly { readonly value: T; readonly text: string }[];
  readonly value: T;
  readonly onChoose: (value: T) => void;
}): JSX.Element {
  const group = createUniqueId();
  return (
    <fieldset class="segments">
      <legend class="hidden">{props.legend}</legend>
      <For each={props.options}>
        {(option) => (
          <label>
            <input
              type="radio"
              name={group}
              checked={props.value === option.value}
              onChange={() => props.onChoose(option.value)}
            />
            <span>{option.text}</span>
          </label>
        )}
      </For>
    </fieldset>
  );
}

function Figures(props: { readonly found: Correlation; readonly of: string }): JSX.Element {
  const interval = (): string =>
    props.found.low === null || props.found.high === null
      ? 'takes 2 results'
      : `${props.found.low.toFixed(3)} to ${props.found.high.toFixed(3)}`;
  const rows = (): readonly (readonly [string, string])[] => [
    ['results', String(props.found.n)],
    ['mean', props.found.mean.toFixed(3)],
    ['scatter', props.found.variation === null ? '–' : percentOf(props.found.variation)],
    ['95 % interval of the mean', interval()],
  ];
  return (
    <>
      <p class="take-row">
        <TakeOut
          what={`Agreement in figures, ${props.of}`}
          sheet={() => correlationSheet(props.found)}
        />
      </p>
      <table class="coupon-figures is-narrow">
        <tbody>
          <For each={rows()}>
            {([head, cell]) => (
              <tr>
                <th scope="row">{head}</th>
                <td class="number">{cell}</td>
              </tr>
            )}
          </For>
        </tbody>
      </table>
    </>
  );
}

export function AgreementView(props: AgreementViewProps): JSX.Element {
  const [against, setAgainst] = createSignal<Against>('gap');
  const [scope, setScope] = createSignal<Scope>('set');
  const adhesive = () => props.report.adhesive;
  createEffect(() => props.state.lookAtAll(scope() === 'adhesive' ? adhesive().id : null));
  onCleanup(() => props.state.lookAtAll(null));

  /** Sets with results that are known by now; one of them where one is looked at. */
  const reports = (): readonly CouponSetReport[] =>
    scope() === 'set'
      ? [props.report]
      : props.state
          .sets()
          .filter((set) => set.adhesive === adhesive().id && set.results.length > 0)
          .flatMap(({ id }) => props.state.report(id) ?? []);
  const lines = () => setLines(reports());
  const isKnown = (): boolean => scope() === 'set' || props.state.overall(adhesive().id) !== null;
  const found = (): Correlation | null =>
    scope() === 'set'
      ? props.report.correlation
      : (props.state.overall(adhesive().id)?.correlation ?? null);
  const of = (): string =>
    scope() === 'set' ? 'Coupons of this set' : `Coupons with ${adhesive().name}`;
  /** As it names a file. */
  const named = (): string => (scope() === 'set' ? props.report.name : adhesive().name);
  const predicted = () => props.report.predicted;

  return (
    <section data-pane class="coupon-view" aria-label="Measured over predicted">
      <p class="coupon-answer">
        {isKnown() ? correlationSentence(found(), of()) : 'Over all sets: being worked out.'}
      </p>
      <p class="units">{countedSentence(lines())}</p>
      <div class="coupon-tools">
        <Segments
          legend="Of which coupons"
          options={[
            { value: 'set', text: 'this set' },
            { value: 'adhesive', text: 'all sets of the adhesive' },
          ]}
          value={scope()}
          onChoose={setScope}
        />
        <Segments
          legend="Drawn against"
          options={(['gap', 'overlap', 'temperature'] as const).map((value) => ({
            value,
            text: againstWords[value].text,
          }))}
          value={against()}
          onChoose={setAgainst}
        />
        <p class="units">Crosses: kept apart, not counted. Band: 95 % interval of the mean.</p>
      </div>
      <div class="coupon-halves is-agreement">
        <DotFigure
          title="Measured over predicted"
          units={`against ${againstWords[against()].text}, ${symbolOf(againstWords[against()].measure)}`}
          plot={agreementPlot(lines(), against(), isKnown() ? found() : null)}
          empty={
            lines().length === 0
              ? 'There are no results yet.'
              : 'The model predicts no load for these coupons: see below.'
          }
          label={
            lines().some(({ ratio }) => ratio !== null) ? agreementAlt(lines(), against()) : ''
          }
          tables={[agreementTable(lines())]}
          sheet={() => agreementSheet(lines())}
          axes={`Up: measured over predicted load; along: ${againstWords[against()].text}, ${symbolOf(againstWords[against()].measure)}`}
          of={named()}
          ink={props.ink}
        />
        <div>
          <Show when={isKnown() && found()}>{(one) => <Figures found={one()} of={named()} />}</Show>
          <p class="coupon-predicted">
            <Show
              when={predicted().load !== null}
              fallback={`No prediction for the set by its drawing: ${sentence(predicted().why)}`}
            >
              The set by its drawing is expected to fail at {loadText(predicted().load!)} (
              {predicted().mode}). Each coupon is predicted at the gap, overlap and width that were
              measured of it.
            </Show>
          </p>
          <Show when={isKnown() && calibrationText(found())}>
            {(text) => (
              <>
                <h2>A calibration, if you want one</h2>
                <p>{text()}</p>
              </>
            )}
          </Show>
          <Show when={scope() === 'adhesive' && props.state.overall(adhesive().id)}>
            {(all) => <GapCurves project={props.project} curves={all().gapCurves} />}
          </Show>
          <FlagList flags={props.report.flags} />
        </div>
      </div>
    </section>
  );
}
