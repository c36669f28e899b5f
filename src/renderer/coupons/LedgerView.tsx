/** The ledger: what strength margins use in each environment and gap, and what it rests on. */

import { createSignal, For, type JSX, Show } from 'solid-js';
import type { Bridge } from '../../shared/contract.ts';
import { ledgerCsv } from '../../shared/ledger-csv.ts';
import { isBare, ledgerOthers, ledgerSentence, sourceWords } from '../../shared/ledger-words.ts';
import { symbolOf } from '../../shared/measures.ts';
import type { AdhesiveLedger } from '../../shared/reports-ledger.ts';
import { sentence } from '../../shared/words.ts';
import { download, takenName } from '../files.ts';
import { JobProgress } from '../parts/JobProgress.tsx';
import { TakeOut } from '../parts/TakeOut.tsx';
import { sourcesSheet } from '../sheets/coupon-sheets.ts';
import type { CouponsState } from '../state/coupons.ts';
import { createLedger } from '../state/ledger.ts';
import type { ProjectState } from '../state/project.ts';
import { LedgerTable, type LedgerWays } from './LedgerTable.tsx';

export interface LedgerViewProps {
  readonly bridge: Bridge;
  readonly source: ProjectState;
  readonly coupons: CouponsState;
  readonly onJoint: (id: string) => void;
}

/** Rows, knockdowns, fracture and S-N line: each with a source of its own. */
function Sources(props: { readonly adhesive: AdhesiveLedger }): JSX.Element {
  return (
    <table class="coupon-figures ledger-sources">
      <caption>
        <span class="hidden">Sources of {props.adhesive.name}</span>
        <TakeOut
          what={`Sources of ${props.adhesive.name}`}
          sheet={() => sourcesSheet(props.adhesive)}
        />
      </caption>
      <thead>
        <tr>
          <For each={['of the adhesive', 'value', 'what it is', 'source']}>
            {(head) => <th scope="col">{head}</th>}
          </For>
        </tr>
      </thead>
      <tbody>
        <For each={ledgerOthers(props.adhesive)}>
          {(other) => (
            <tr>
              <th scope="row">{other.what}</th>
              <td>{other.value}</td>
              <td>
                <span classList={{ typical: isBare(other.source?.kind ?? null) }}>
                  {sourceWords(other)}
                </span>
              </td>
              <td class="units">{other.source?.text}</td>
            </tr>
          )}
        </For>
      </tbody>
    </table>
  );
}

export function LedgerView(props: LedgerViewProps): JSX.Element {
  const ledger = createLedger(props.bridge, props.source);
  const [onlyUsed, setOnlyUsed] = createSignal(false);
  const ways: LedgerWays = {
    joint: (id) => props.onJoint(id),
    set: (id) => {
      props.coupons.choose(id);
      props.coupons.show('statistics');
    },
  };
  const save = (adhesives: readonly AdhesiveLedger[]): void => {
    const [one] = adhesives;
    const whole = adhesives === ledger.report()?.adhesives;
    const what = whole || !one ? 'ledger' : `ledger ${one.name}`;
    const from = { project: props.source.document()?.name ?? '', joint: null };
    download(takenName(from, what, 'csv'), ledgerCsv({ adhesives }), 'text/csv');
  };
  return (
    <section data-pane class="coupon-view ledger-view" aria-label="Ledger">
      <JobProgress job={ledger.job} label="Ledger" />
      <Show when={ledger.stopped()}>
        <p class="stopped">
          Stopped.{' '}
          <button type="button" class="plain" onClick={() => ledger.again()}>
            Go on
          </button>
        </p>
      </Show>
      <Show when={ledger.refusal()}>
        {(error) => (
          <p class="refused" role="alert">
            {sentence(error().message)}
          </p>
        )}
      </Show>
      <Show
        when={ledger.report()}
        fallback={
          <Show when={!ledger.refusal() && !ledger.stopped()}>
            <p class="figure-empty">Being put together …</p>
          </Show>
        }
      >
        {(report) => (
          <div classList={{ 'is-old': ledger.old() }}>
            <p class="coupon-answer">{ledgerSentence(report().adhesives)}</p>
            <div class="coupon-tools">
              <label class="coupon-tick">
                <input
                  type="checkbox"
                  checked={onlyUsed()}
                  onChange={(event) => setOnlyUsed(event.currentTarget.checked)}
                />
                only what joints use
              </label>
              <button type="button" class="plain" onClick={() => save(report().adhesives)}>
                Ledger as CSV
              </button>
              <p class="units">
                Yield and peel as margins use them, in {symbolOf('stress')}; the fitting factor is
                asked of the loads and not taken off here.
              </p>
            </div>
            <For each={report().refused}>
              {({ name, error }) => (
                <p class="refused">
                  {name} cannot be computed, so no margin uses anything for it:{' '}
                  {sentence(error.message)}
                </p>
              )}
            </For>
            <For each={report().adhesives} fallback={<p>This project has no adhesive.</p>}>
              {(adhesive) => (
                <section class="coupon-block" aria-label={adhesive.name}>
                  <h2>
                    {adhesive.name}{' '}
                    <span class="units">
                      {adhesive.joints === 0
                        ? 'no joint is bonded with it'
                        : `${adhesive.joints} ${adhesive.joints === 1 ? 'joint' : 'joints'}`}
                    </span>{' '}
                    <button
                      type="button"
                      class="link take-one"
                      data-takes="csv"
                      aria-label={`CSV, ledger of ${adhesive.name}`}
                      onClick={() => save([adhesive])}
                    >
                      CSV
                    </button>
                  </h2>
                  <LedgerTable adhesive={adhesive} onlyUsed={onlyUsed()} ways={ways} />
                  <Sources adhesive={adhesive} />
                </section>
              )}
            </For>
          </div>
        )}
      </Show>
    </section>
  );
}
