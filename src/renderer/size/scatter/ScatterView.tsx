/** How the lowest margin scatters over all tolerances at once: what to draw, how many, and the answer. */
import { createSignal, For, type JSX, Show } from 'solid-js';
import { scatterDefaults } from '../../../shared/reports-scatter.ts';
import { createFound } from '../../state/found.ts';
import { FoundStatus } from '../FoundStatus.tsx';
import { PlainNumber } from '../tolerances/PlainNumber.tsx';
import { Tolerances } from '../tolerances/Tolerances.tsx';
import type { ViewProps } from '../views.ts';
import { ScatterAnswer } from './ScatterAnswer.tsx';

const methods = [
  {
    value: 'fitted',
    text: 'fitted surfaces',
    note: 'Seconds to minutes: surfaces fitted to the full model, checked against it, and what decides computed by it.',
  },
  {
    value: 'each',
    text: 'each sample',
    note: 'Every sample by the full model: exact, and hours for 100 000.',
  },
] as const;

export function ScatterView(props: ViewProps): JSX.Element {
  const found = createFound('joint.scatter', {
    bridge: props.bridge,
    project: props.project,
    index: () => props.index,
  });
  const last = found.answer();
  const [samples, setSamples] = createSignal<number>(last?.samples ?? scatterDefaults.samples);
  const [seed, setSeed] = createSignal<number>(last?.seed ?? scatterDefaults.seed);
  const [method, setMethod] = createSignal<'fitted' | 'each'>(
    last?.method ?? scatterDefaults.method,
  );
  return (
    <div class="study">
      <form
        class="study-question"
        onSubmit={(event) => {
          event.preventDefault();
          void found.ask({ samples: samples(), seed: seed(), method: method() });
        }}
      >
        <span>
          Samples{' '}
          <PlainNumber
            name="Samples"
            value={samples()}
            min={100}
            max={1_000_000}
            whole
            onValue={setSamples}
          />
        </span>
        <span title="The same seed gives the same figures.">
          Seed{' '}
          <PlainNumber
            name="Seed"
            value={seed()}
            min={0}
            max={4_294_967_295}
            whole
            onValue={setSeed}
          />
        </span>
        <fieldset class="segments" aria-label="Method">
          <For each={methods}>
            {({ value, text, note }) => (
              <label title={note}>
                <input
                  type="radio"
                  name="scatter-method"
                  checked={method() === value}
                  onChange={() => setMethod(value)}
                />
                <span>{text}</span>
              </label>
            )}
          </For>
        </fieldset>
        <button type="submit" class="plain is-first" disabled={props.sizing.issues.stale()}>
          Start
        </button>
      </form>
      <FoundStatus found={found} label="Scatter" stopped="Stopped: nothing was counted." />
      <Show when={found.answer()}>
        {(report) => (
          <div class="study-result" classList={{ 'is-old': found.old() }}>
            <Show when={found.old()}>
              <p class="stale-word">Of the project before its last change. Start again.</p>
            </Show>
            <ScatterAnswer report={report()} />
          </div>
        )}
      </Show>
      <Tolerances bridge={props.bridge} project={props.project} index={props.index} />
    </div>
  );
}
