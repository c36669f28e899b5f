/** The card for the bench: one printed page, read at arm's length. Seen on paper only. */

import { For, type JSX, Show } from 'solid-js';
import { glossary, usualChecklist, verdictWords } from '../../shared/bench-words.ts';
import { cautions } from '../../shared/cautions.ts';
import type { GapCheck, Joint, Project } from '../../shared/project.ts';
import { changedSince, cureText } from '../../shared/recorded-check.ts';
import type { GapReport, GapVerdict } from '../../shared/reports-gap.ts';
import { inSi } from '../../shared/shown-units.ts';
import { signed } from '../../shared/words.ts';
import { Mark } from '../parts/Mark.tsx';
import { mixText, spacerText } from './bench-text.ts';
import { limitText } from './GapFigures.tsx';
import { clock } from './GapHead.tsx';
import { verdictMarks } from './VerdictView.tsx';

export interface BenchCardProps {
  readonly project: Project;
  readonly joint: Joint;
  readonly check: GapCheck;
  readonly report: GapReport | null;
  readonly verdict: GapVerdict | null;
}

const mm = (value: number): string => value.toFixed(3).replace('-', '−');
const CURE_CELLS = 8;
/** Letters in a line of the steps, and lines that one column of the page takes. */
const LETTERS = 88;
const LINES = 14;
/** Lines that each bond and each remark beyond the second takes from the steps. */
const TAKEN = { bond: 2, remark: 1 } as const;
const blank = '\u00A0';
const date = (iso: string | undefined): string => (iso ? clock(iso) : '');

export function BenchCard(props: BenchCardProps): JSX.Element {
  const result = () => props.check.result;
  const state = () => result()?.verdict ?? props.verdict?.state ?? 'unknown';
  const reason = (): string => result()?.reason ?? props.verdict?.reasons[0]?.message ?? '';
  const bonds = () =>
    result()?.bonds ??
    props.report?.bonds.map(({ held }, i) => ({ ...held, ...props.report!.limits[i]! })) ??
    [];
  const adhesive = () => props.project.adhesives.find(({ id }) => id === props.joint.adhesive);
  const made = () => result()?.made;
  const steps = (): readonly string[] =>
    made()?.steps ?? props.joint.bench?.checklist ?? usualChecklist;
  const changed = () => changedSince(result(), props.joint);
  /** Nothing on the card is to invite a bond that was not judged. */
  const rejected = (): boolean => state() === 'reject' || changed() !== null;
  const word = (): string => (changed() ? 'Out of date' : verdictWords[state()]);
  const margin = (): string => {
    const [value, target] = [
      result() ? result()!.margin : (props.verdict?.measured?.margin ?? null),
      result()?.targetMargin ?? props.verdict?.targetMargin,
    ];
    return value === null || target === undefined
      ? ''
      : `; margin ${signed(value)}, asked ${signed(target)}`;
  };
  const remarks = (): readonly string[] =>
    made()?.remarks ?? props.report?.flags.map(({ message }) => message) ?? [];
  const isLong = (): boolean => {
    const lines = steps().reduce((sum, step) => sum + Math.ceil(step.length / LETTERS), 0);
    const beside =
      TAKEN.bond * Math.max(0, bonds().length - 1) +
      TAKEN.remark * Math.max(0, remarks().length - 2);
    const said =
      Math.ceil(reason().length / LETTERS) + (props.check.recorded === undefined ? 1 : 0);
    return lines + beside + said > LINES;
  };
  /** Two rows of four: the last entries of the log, then room for more. */
  const cureRows = () => {
    const log = props.check.cure.slice(-CURE_CELLS);
    const cells = Array.from({ length: CURE_CELLS }, (_, i) => log[i] ?? null);
    return [cells.slice(0, CURE_CELLS / 2), cells.slice(CURE_CELLS / 2)];
  };
  return (
    <article class="bench-card" classList={{ 'is-long': isLong() }} aria-hidden="true">
      <header>
        <h1>{props.joint.name}</h1>
        <p>
          {props.project.name} · tube {props.check.tubeSerial || '______'} · sleeve{' '}
          {props.check.sleeveSerial || '______'} ·{' '}
          {date(props.check.recorded ?? props.check.started)} · {props.check.by || '______'}
        </p>
      </header>
      <section class="card-verdict">
        <p class="card-word">
          <Show when={state() !== 'unknown' && !changed()}>
            <Mark state={verdictMarks[state() as keyof typeof verdictMarks]} />
          </Show>{' '}
          {word()}
        </p>
        <p>{reason()}</p>
        <Show when={changed()}>{(words) => <p>{words()}</p>}</Show>
        <Show when={props.check.recorded === undefined}>
          <p>Not recorded: this card decides nothing yet.</p>
        </Show>
      </section>
      <section class="card-figures">
        <For each={bonds()}>
          {(bond) => (
            <p>
              {bond.bond === 'bond' ? 'Gap' : bond.bond} <b>{mm(bond.min.value)}</b> to{' '}
              <b>{mm(bond.max.value)}</b> ± {mm(bond.max.uncertainty)} mm; allowed{' '}
              {inSi(() => limitText(bond))}
            </p>
          )}
        </For>
        <Show
          when={!rejected()}
          fallback={
            <p>
              <b>Do not bond these parts.</b>
            </p>
          }
        >
          <p>
            Mix{' '}
            <b>
              {state() === 'unknown'
                ? 'when all is measured'
                : inSi(() => mixText(result(), props.report))}
            </b>{' '}
            of {made()?.adhesive ?? adhesive()?.name} ·{' '}
            {inSi(() => spacerText(made() ?? props.joint.bench))} · open time{' '}
            <b>
              {made() ? (made()!.openTime ?? '____') : (adhesive()?.process?.openTime ?? '____')}{' '}
              min
            </b>
            {margin()}
          </p>
        </Show>
      </section>
      <Show when={!rejected()}>
        <ol class="card-steps">
          <For each={steps()}>
            {(step) => (
              <li>
                <span class="card-box">
                  {props.check.done.some((one) => one.step === step) ? '✓' : blank}
                </span>
                {step}
              </li>
            )}
          </For>
        </ol>
        <section class="card-cure">
          <p>
            Cure:{' '}
            {(made() ? made()!.cure : cureText(adhesive())) || 'by the adhesive maker’s sheet'}.
            Log:
          </p>
          <table>
            <tbody>
              <For each={cureRows()}>
                {(row) => (
                  <tr>
                    <For each={row}>
                      {(entry) => (
                        <td>
                          {entry
                            ? `${clock(entry.at)} ${entry.temperature} °C`
                            : `time ${blank.repeat(14)} °C`}
                        </td>
                      )}
                    </For>
                  </tr>
                )}
              </For>
            </tbody>
          </table>
        </section>
      </Show>
      <section class="card-signs">
        <p>Technician</p>
        <p>Engineer{state() === 'hold' ? ' (must sign: held)' : ''}</p>
      </section>
      <footer>
        <p>{glossary.map(({ word, means }) => `${word}: ${means}`).join(' · ')}.</p>
        <p>
          <For each={remarks()}>{(message) => <>{message} </>}</For>
          {cautions.join(' ')} Model {result()?.modelVersion ?? props.verdict?.modelVersion ?? '–'},
          check {props.check.id.slice(0, 8)}.
        </p>
      </footer>
    </article>
  );
}
