/** One adhesive of the ledger: environments, and under each of them its gaps, equal ones on one line. */

import { createMemo, For, type JSX, Show } from 'solid-js';
import {
  allowableText,
  gapsText,
  isMarked,
  type LedgerLine,
  ledgerLines,
  lineText,
  offerText,
  rowsText,
  setText,
  useText,
} from '../../shared/ledger-words.ts';
import { figureOf, symbolOf } from '../../shared/measures.ts';
import type { AdhesiveLedger, LedgerEnvironment } from '../../shared/reports-ledger.ts';
import { shownRest } from '../../shared/said.ts';
import { environment, figure, sentence } from '../../shared/words.ts';

/** Where a row leads. */
export interface LedgerWays {
  joint(id: string): void;
  set(id: string): void;
}

/** Names on one line; the others are counted. */
const MOST_NAMES = 4;

function RestsOn(props: {
  readonly environment: LedgerEnvironment;
  readonly ways: LedgerWays;
}): JSX.Element {
  return (
    <>
      <span class="ledger-basis" classList={{ typical: isMarked(props.environment.basis) }}>
        {shownRest(props.environment)}
      </span>
      <Show when={rowsText(props.environment)}>
        {(words) => <span class="units">{sentence(words())}</span>}
      </Show>
      <Show when={props.environment.allowables.length === 0}>
        <span class="units">{props.environment.source}</span>
      </Show>
      <For each={props.environment.allowables}>
        {(one) => (
          <span class="units">
            <Show when={one.set !== 'gone'} fallback={one.taken.setName}>
              <button type="button" class="link" onClick={() => props.ways.set(one.taken.set)}>
                {one.taken.setName}
              </button>
            </Show>
            : {allowableText(one)}. <b>{setText(one)}</b>
          </span>
        )}
      </For>
      <For each={props.environment.offers}>
        {(offer) => (
          <span class="units">
            Not taken:{' '}
            <button type="button" class="link" onClick={() => props.ways.set(offer.setId)}>
              {offer.name}
            </button>
            , {offerText(offer)}
          </span>
        )}
      </For>
    </>
  );
}

function UsedBy(props: {
  readonly line: LedgerLine;
  readonly environment: LedgerEnvironment;
  readonly ways: LedgerWays;
}): JSX.Element {
  const uses = () =>
    props.environment.uses.filter(({ jointId }) => props.line.joints.includes(jointId));
  return (
    <Show when={uses().length > 0} fallback={<span class="units">no joint</span>}>
      <For each={uses().slice(0, MOST_NAMES)}>
        {(use, i) => (
          <>
            {i() > 0 && ', '}
            <button
              type="button"
              class="link"
              title={useText(use)}
              onClick={() => props.ways.joint(use.jointId)}
            >
              {use.name}
            </button>
          </>
        )}
      </For>
      <Show when={uses().length > MOST_NAMES}> and {uses().length - MOST_NAMES} more</Show>
    </Show>
  );
}

const columns = (): readonly (readonly [head: string, title: string])[] => [
  [
    `Rows, ${symbolOf('stress')}`,
    'Shear yield that the adhesive’s rows give here, before knockdowns',
  ],
  ['× environ.', 'Left by the knockdown for environment'],
  ['× ageing', 'Left by the knockdown for ageing'],
  ['× scatter', 'Left by the knockdown for scatter, or by the allowable in its place'],
  [`Gap, ${symbolOf('small')}`, 'Gaps of bonds in all their states, of the table, of coupons'],
  ['× gap', 'Left at this gap'],
  [`= Yield, ${symbolOf('stress')}`, 'Shear yield that margins use'],
  [`Peel, ${symbolOf('stress')}`, 'Peel strength that margins use'],
];

function Rows(props: {
  readonly environment: LedgerEnvironment;
  readonly lines: readonly LedgerLine[];
  readonly isWhole: boolean;
  readonly ways: LedgerWays;
}): JSX.Element {
  const here = () => environment(props.environment.temperature, props.environment.moisture);
  const span = () => props.lines.length;
  const factors = () => props.lines[0]?.factors;
  return (
    <tbody>
      <For each={props.lines}>
        {(line, i) => (
          <tr>
            <Show when={i() === 0}>
              <th scope="rowgroup" rowspan={span()}>
                {here()}
                <span class="units">{props.environment.names.join(', ')}</span>
              </th>
              <td rowspan={span()} class="ledger-rests">
                <Show
                  when={props.environment.table}
                  fallback={<span class="coupon-why">{sentence(props.environment.why)}</span>}
                >
                  <RestsOn environment={props.environment} ways={props.ways} />
                </Show>
              </td>
              <td rowspan={span()} class="number">
                <Show when={props.environment.table} fallback="–">
                  {(table) => figureOf('stress', table().shearYield)}
                </Show>
              </td>
              <For each={['environment', 'ageing', 'scatter'] as const}>
                {(name) => (
                  <td rowspan={span()} class="number">
                    {factors() ? figure(factors()![name]) : '–'}
                    <Show when={name === 'scatter' && props.environment.allowables[0]}>
                      {(one) => (
                        <span class="units">
                          {one().taken.basis === 'mean'
                            ? 'mean × knockdown'
                            : `${one().taken.basis}-basis`}
                        </span>
                      )}
                    </Show>
                  </td>
                )}
              </For>
            </Show>
            <td class="number">
              {gapsText(line.gaps, props.isWhole)}
              <span class="units">{lineText(line)}</span>
            </td>
            <td class="number">{line.factors ? figure(line.factors.gap) : '–'}</td>
            <td class="number ledger-strength">
              {line.strength ? figureOf('stress', line.strength.shearYield) : '–'}
            </td>
            <td class="number ledger-strength">
              {line.strength?.peelStrength == null
                ? '–'
                : figureOf('stress', line.strength.peelStrength)}
            </td>
            <td>
              <UsedBy line={line} environment={props.environment} ways={props.ways} />
            </td>
          </tr>
        )}
      </For>
    </tbody>
  );
}

export function LedgerTable(props: {
  readonly adhesive: AdhesiveLedger;
  readonly onlyUsed: boolean;
  readonly ways: LedgerWays;
}): JSX.Element {
  const groups = createMemo(() =>
    props.adhesive.environments
      .map((one) => ({
        environment: one,
        lines: ledgerLines(one.gaps).filter(({ joints }) => !props.onlyUsed || joints.length > 0),
      }))
      .filter(({ lines }) => lines.length > 0),
  );
  return (
    <Show
      when={groups().length > 0}
      fallback={<p class="units">No joint uses a strength of this adhesive.</p>}
    >
      <table class="coupon-figures ledger-table">
        <caption class="hidden">Strengths of {props.adhesive.name} that margins use</caption>
        <thead>
          <tr>
            <th scope="col">Environment</th>
            <th scope="col">Rests on</th>
            <For each={columns()}>
              {([head, title]) => (
                <th scope="col" class="number" title={title}>
                  {head}
                </th>
              )}
            </For>
            <th scope="col">Used by</th>
          </tr>
        </thead>
        <For each={groups()}>
          {({ environment: one, lines }) => (
            <Rows
              environment={one}
              lines={lines}
              isWhole={props.adhesive.leftOut === 0}
              ways={props.ways}
            />
          )}
        </For>
      </table>
      <Show when={props.adhesive.leftOut > 0}>
        <p class="units under">
          {props.adhesive.leftOut} lines that no joint uses are left out: there are too many.
        </p>
      </Show>
    </Show>
  );
}
