/** The size that reaches the target: what to vary, the answer with its check, what stops it, what would help. */
import { createSignal, For, type JSX, Show } from 'solid-js';
import { unwrap } from 'solid-js/store';
import { boxToShow } from '../../../shared/box-entry.ts';
import type { Joint } from '../../../shared/project.ts';
import {
  inWordsOf,
  sizeText,
  stepQuantity,
  varyQuantity,
  varyWords,
} from '../../../shared/sizing-words.ts';
import { stepOf } from '../../../shared/usual-steps.ts';
import { type Vary, varied, variedValue } from '../../../shared/vary-joint.ts';
import { LooseNumber, readLoose } from '../../parts/LooseNumber.tsx';
import { createFound } from '../../state/found.ts';
import { FoundStatus } from '../FoundStatus.tsx';
import type { ViewProps } from '../views.ts';
import { FindAnswer } from './FindAnswer.tsx';

/** What was put into the document, so that it can be taken out again. */
interface Used {
  readonly said: string;
  readonly before: Joint;
  readonly revision: number;
}

const copy = (joint: Joint): Joint => JSON.parse(JSON.stringify(unwrap(joint))) as Joint;

/** Fields of the question; each vary has its own sizes, so they are emptied when it changes. */
const nothing = { step: '', from: '', to: '' };

export function FindView(props: ViewProps): JSX.Element {
  const found = createFound('joint.size', {
    bridge: props.bridge,
    project: props.project,
    index: () => props.index,
  });
  const [vary, setVary] = createSignal<Vary>(found.answer()?.vary ?? 'overlap');
  const [target, setTarget] = createSignal('');
  const [sizes, setSizes] = createSignal(nothing);
  const [used, setUsed] = createSignal<Used | null>(null);

  const settings = () => props.project.document()?.settings;
  const quantity = () => varyQuantity(vary());
  const reads = () => ({
    target: readLoose(target(), 'targetMargin'),
    step: readLoose(sizes().step, stepQuantity(vary())),
    from: readLoose(sizes().from, quantity()),
    to: readLoose(sizes().to, quantity()),
  });
  const wrong = (): boolean =>
    Object.values(reads()).some((read) => 'wrong' in read) || props.sizing.issues.stale();

  /** The project's own, or one that is round in the units of the screen. */
  const usualStep = (): number => stepOf(settings() ?? {}, vary());

  const ask = (): void => {
    const given = Object.entries(reads()).flatMap(([key, read]) =>
      'value' in read && read.value !== undefined ? [[key, read.value]] : [],
    );
    setUsed(null);
    void found.ask({ vary: vary(), step: usualStep(), ...Object.fromEntries(given) });
  };

  const put = (joint: Joint): void => {
    const path = ['joints', props.index] as const;
    const before = copy(props.joint);
    const isOverlapAlone =
      JSON.stringify({ ...before, overlap: 0 }) === JSON.stringify({ ...joint, overlap: 0 });
    // A sweep over the overlap need not be made anew for the overlap alone.
    if (isOverlapAlone) props.project.edit([...path, 'overlap'], joint.overlap);
    else props.project.edit(path, structuredClone(unwrap(joint)));
  };
  const use = (joint: Joint, change: string): void => {
    const before = copy(props.joint);
    const varies = found.answer()?.vary ?? vary();
    const [old, next] = [before, joint].map((one) => sizeText(varies, variedValue(one, varies)));
    put(joint);
    const noun = inWordsOf(joint.type, varyWords[varies].noun);
    const said = [change, `${noun} ${old} → ${next}`].filter(Boolean).join('; ');
    setUsed({ said, before, revision: props.project.revision() });
  };

  const SizeField = (field: { readonly of: keyof typeof nothing; readonly label: string }) => (
    <LooseNumber
      label={field.label}
      text={sizes()[field.of]}
      onText={(text) => setSizes((now) => ({ ...now, [field.of]: text }))}
      placeholder={
        field.of === 'step' ? boxToShow(stepQuantity(vary()), String(usualStep())) : 'auto'
      }
      quantity={field.of === 'step' ? stepQuantity(vary()) : quantity()}
    />
  );

  return (
    <div class="find">
      <form
        class="find-question"
        onSubmit={(event) => {
          event.preventDefault();
          if (!wrong()) ask();
        }}
      >
        <fieldset class="segments" aria-label="What to find">
          <For each={varied}>
            {(id) => (
              <label title={varyWords[id].note}>
                <input
                  type="radio"
                  name="vary"
                  checked={vary() === id}
                  onChange={() => {
                    setSizes(nothing);
                    setVary(id);
                  }}
                />
                <span>{inWordsOf(props.joint.type, varyWords[id].title)}</span>
              </label>
            )}
          </For>
        </fieldset>
        <LooseNumber
          label="Target"
          text={target()}
          onText={setTarget}
          placeholder={(settings()?.targetMargin ?? 0).toFixed(2)}
          quantity="targetMargin"
        />
        <SizeField of="step" label="Step" />
        <button type="submit" class="plain is-first" disabled={wrong()}>
          Find
        </button>
        <SizeField of="from" label="Look from" />
        <SizeField of="to" label="to" />
      </form>
      <FoundStatus found={found} label="Sizing" stopped="Stopped before an answer was found." />
      <Show when={used()}>
        {(done) => (
          <p class="find-used" role="status">
            <span>In the joint now: {done().said}.</span>
            <Show when={done().revision === props.project.revision()}>
              <button
                type="button"
                class="link"
                onClick={() => {
                  put(done().before);
                  setUsed(null);
                }}
              >
                Put back
              </button>
            </Show>
          </p>
        )}
      </Show>
      <Show
        when={found.answer()}
        fallback={
          <Show when={!found.refusal() && !found.job.running()}>
            <p class="asked-note">
              Finds the smallest size that reaches the target in every mode, load case and gap
              state, and checks it by the full analysis. Where none does, it says what stops it and
              tries what would help.
            </p>
          </Show>
        }
      >
        {(report) => <FindAnswer report={report()} old={found.old()} ink={props.ink} onUse={use} />}
      </Show>
    </div>
  );
}
