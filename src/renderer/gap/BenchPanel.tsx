/** What the bench does with the parts: adhesive to mix, steps to tick, the log of the cure. */
import { createSignal, For, type JSX, Show } from 'solid-js';
import { usualChecklist } from '../../shared/bench-words.ts';
import type { Adhesive, GapCheck, Joint } from '../../shared/project.ts';
import { readQuantity } from '../../shared/quantity-entry.ts';
import { cureText } from '../../shared/recorded-check.ts';
import type { GapReport } from '../../shared/reports-gap.ts';
import { clockText } from '../parts/clock.ts';
import { Disclosure } from '../size/Disclosure.tsx';
import type { GapCheckState } from '../state/gap-check.ts';
import { amountText, mixText, spacerText } from './bench-text.ts';

export interface BenchPanelProps {
  readonly state: GapCheckState;
  readonly check: GapCheck;
  readonly joint: Joint;
  readonly adhesive: Adhesive | undefined;
  readonly report: GapReport | null;
}

const now = (): string => new Date().toISOString();
const clock = (iso: string): string => clockText(new Date(iso));

function CureLog(props: BenchPanelProps): JSX.Element {
  const [text, setText] = createSignal('');
  const [note, setNote] = createSignal('');
  const value = () => readQuantity(text(), 'temperature');
  const [wrong, setWrong] = createSignal<string | null>(null);
  const add = (event: Event): void => {
    event.preventDefault();
    const entry = value();
    if (!entry.ok) return;
    setWrong(null);
    const row = { at: now(), temperature: entry.value, note: note() };
    props.state.edit(['cure'], [...props.check.cure.map((one) => ({ ...one })), row]);
    setText('');
    setNote('');
  };
  return (
    <form class="gap-cure" onSubmit={add}>
      <For each={props.check.cure}>
        {(row) => (
          <p>
            {clock(row.at)} · {row.temperature} °C {row.note}
          </p>
        )}
      </For>
      <label>
        Now{' '}
        <input
          class="figure"
          type="text"
          inputmode="decimal"
          value={text()}
          aria-label="Temperature of the cure, °C"
          onInput={(event) => {
            setText(event.currentTarget.value);
            const entry = value();
            setWrong(text().trim() === '' || entry.ok ? null : entry.message);
          }}
        />{' '}
        °C
      </label>
      <input
        class="words"
        type="text"
        maxlength={200}
        aria-label="Note on the cure"
        placeholder="note"
        value={note()}
        onInput={(event) => setNote(event.currentTarget.value)}
      />
      <button type="submit" class="plain" disabled={!value().ok}>
        Log
      </button>
      <Show when={wrong()}>
        {(message) => (
          <p class="refused" role="alert">
            {message()}
          </p>
        )}
      </Show>
    </form>
  );
}

export function BenchPanel(props: BenchPanelProps): JSX.Element {
  const made = () => props.check.result?.made;
  const steps = (): readonly string[] =>
    made()?.steps ?? props.joint.bench?.checklist ?? usualChecklist;
  const doneAt = (step: string): string | undefined =>
    props.check.done.find((one) => one.step === step)?.at;
  const tick = (step: string, on: boolean): void => {
    const others = props.check.done.filter((one) => one.step !== step).map((one) => ({ ...one }));
    props.state.edit(['done'], on ? [...others, { step, at: now() }] : others);
  };
  const ticked = () => steps().filter((step) => doneAt(step) !== undefined).length;
  const process = () => props.adhesive?.process;
  return (
    <section class="gap-bench" aria-label="Bench">
      <p class="gap-mix">
        Mix <b>{mixText(props.check.result, props.report)}</b>
      </p>
      <Show when={props.report}>{(report) => <p class="units">{amountText(report())}</p>}</Show>
      <p>
        {made()?.adhesive ?? props.adhesive?.name}; {spacerText(made() ?? props.joint.bench)}
        <Show when={process()?.openTime}>{(minutes) => <>; open time {minutes()} min</>}</Show>
        <Show when={cureText(props.adhesive)}>{(cure) => <>; cure {cure()}</>}</Show>.
      </p>
      <Disclosure title="Steps" aside={`${ticked()} of ${steps().length} done`}>
        <ul class="gap-steps">
          <For each={steps()}>
            {(step) => (
              <li>
                <label>
                  <input
                    type="checkbox"
                    checked={doneAt(step) !== undefined}
                    onChange={(event) => tick(step, event.currentTarget.checked)}
                  />
                  {step}
                  <Show when={doneAt(step)}>
                    {(at) => <span class="units"> {clock(at())}</span>}
                  </Show>
                </label>
              </li>
            )}
          </For>
        </ul>
      </Disclosure>
      <label class="gap-note">
        Note{' '}
        <input
          class="words"
          type="text"
          maxlength={4000}
          readonly={props.check.recorded !== undefined}
          value={props.check.note ?? ''}
          onInput={(event) => props.state.edit(['note'], event.currentTarget.value)}
        />
      </label>
      <Disclosure title="Cure log" aside={`${props.check.cure.length} entries`}>
        <CureLog {...props} />
      </Disclosure>
    </section>
  );
}
