/** The card for the bench: one printed page, read at arm's length. Seen on paper only. */
import { For, type JSX, Show } from 'solid-js';
import { glossary, usualChecklist, verdictWords } from '../../shared/bench-words.ts';
import { cautions } from '../../shared/cautions.ts';
import type { GapCheck, Joint, Project } from '../../shared/project.ts';
import type { GapReport, GapVerdict } from '../../shared/reports-gap.ts';
import { Mark } from '../parts/Mark.tsx';
import { cureText, mixText, spacerText } from './bench-text.ts';
import { limitText } from './GapFigures.tsx';
import { verdictMarks } from './VerdictView.tsx';

export interface BenchCardProps {
  readonly project: Project;
  readonly joint: Joint;
  readonly check: GapCheck;
  readonly report: GapReport | null;
  readonly verdict: GapVerdict | null;
}

const mm = (value: number): string => value.toFixed(2).replace('-', '−');
const CURE_CELLS = 8;
/** Letters in a line of the steps, and lines that one column of the page takes. */
const LETTERS = 88;
const LINES = 13;
const blank = '\u00A0';
const date = (iso: string | undefined): string => (iso ? iso.slice(0, 16).replace('T', ' ') : '');

export function BenchCard(props: BenchCardProps): JSX.Element {
  const result = () => props.check.result;
  const state = () => result()?.verdict ?? props.verdict?.state ?? 'unknown';
  const reason = (): string => result()?.reason ?? props.verdict?.reasons[0]?.message ?? '';
  const bonds = () =>
    result()?.bonds ??
    props.report?.bonds.map(({ held }, i) => ({ ...held, ...props.report!.limits[i]! })) ??
    [];
  const adhesive = () => props.project.adhesives.find(({ id }) => id === props.joint.adhesive);
  const steps = (): readonly string[] => props.joint.bench?.checklist ?? usualChecklist;
  const isLong = (): boolean =>
    steps().reduce((lines, step) => lines + Math.ceil(step.length / LETTERS), 0) > LINES;
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
          <Show when={state() !== 'unknown'}>
            <Mark state={verdictMarks[state() as keyof typeof verdictMarks]} />
          </Show>{' '}
          {verdictWords[state()]}
        </p>
        <p>{reason()}</p>
      </section>
      <section class="card-figures">
        <For each={bonds()}>
          {(bond) => (
            <p>
              {bond.bond === 'bond' ? 'Gap' : bond.bond} <b>{mm(bond.min.value)}</b> to{' '}
              <b>{mm(bond.max.value)}</b> mm, mean <b>{mm(bond.mean.value)}</b> ±{' '}
              {mm(bond.mean.uncertainty)}; allowed {limitText(bond)}
            </p>
          )}
        </For>
        <p>
          Mix <b>{mixText(result(), props.report)}</b> · {spacerText(props.joint)} · open time{' '}
          <b>{adhesive()?.process?.openTime ?? '____'} min</b>
        </p>
      </section>
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
        <p>Cure: {cureText(adhesive()) ?? 'by the adhesive maker’s sheet'}. Log:</p>
        <table>
          <tbody>
            <For each={cureRows()}>
              {(row) => (
                <tr>
                  <For each={row}>
                    {(entry) => (
                      <td>
                        {entry
                          ? `${date(entry.at).slice(5)} ${entry.temperature} °C`
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
      <section class="card-signs">
        <p>Technician</p>
        <p>Engineer{state() === 'hold' ? ' (must sign: held)' : ''}</p>
      </section>
      <footer>
        <p>{glossary.map(({ word, means }) => `${word}: ${means}`).join(' · ')}.</p>
        <p>
          <For each={props.report?.flags ?? []}>{({ message }) => <>{message} </>}</For>
          {cautions.join(' ')} Model {result()?.modelVersion ?? props.verdict?.modelVersion ?? '–'},
          check {props.check.id.slice(0, 8)}.
        </p>
      </footer>
    </article>
  );
}
