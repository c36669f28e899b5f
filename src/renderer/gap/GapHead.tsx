/** Which joint, which parts, who measures; earlier checks to look at again. */
import { createUniqueId, type JSX, Show } from 'solid-js';
import { verdictWords } from '../../shared/bench-words.ts';
import type { ChoiceName } from '../../shared/choice-help.ts';
import { helpOfChoice } from '../../shared/field-help.ts';
import type { GapCheck } from '../../shared/project.ts';
import { tellHelp } from '../help/known-fields.ts';
import { momentText, secondText } from '../parts/clock.ts';
import { Choice } from '../size/Choice.tsx';
import type { GapPageProps } from './GapPage.tsx';

export const clock = (iso: string): string => momentText(new Date(iso));

export const titleOf = (check: GapCheck): string => {
  const parts = [check.tubeSerial, check.sleeveSerial].filter((one) => one !== '').join(' in ');
  const said = check.result ? verdictWords[check.result.verdict] : 'in progress';
  return `${clock(check.started)}${parts === '' ? '' : `, ${parts}`}: ${said}`;
};

function TextEntry(props: {
  readonly label: string;
  readonly value: string;
  readonly help: ChoiceName;
  readonly most: number;
  readonly fixed: boolean;
  readonly onText: (text: string) => void;
}): JSX.Element {
  const id = createUniqueId();
  return (
    <span class="gap-field">
      <label for={id}>{props.label}</label>
      <input
        ref={(field) => tellHelp(field, () => helpOfChoice(props.help))}
        id={id}
        type="text"
        class="words"
        autocomplete="off"
        maxlength={props.most}
        readonly={props.fixed}
        value={props.value}
        onInput={(event) => props.onText(event.currentTarget.value)}
      />
    </span>
  );
}

export interface GapHeadProps extends GapPageProps {
  /** The check is recorded. */
  readonly fixed: boolean;
  readonly flat: boolean;
}

export function GapHead(props: GapHeadProps): JSX.Element {
  const check = () => props.state.current();
  const keptText = (): string => {
    const at = props.state.keptAt();
    return at === null ? '' : `kept ${secondText(new Date(at))}`;
  };
  return (
    <section data-pane aria-label="Joint and check" class="gap-head">
      <Choice
        name="Joint"
        help="joint"
        class="joint-choice"
        options={props.project.joints.map(({ id, name }) => ({ value: id, text: name }))}
        value={props.joint.id}
        onChoose={props.onJoint}
      />
      <Show when={!props.flat}>
        <Show when={check()}>
          {(one) => (
            <>
              <TextEntry
                label="Tube no."
                help="serial"
                most={60}
                value={one().tubeSerial}
                fixed={props.fixed}
                onText={(text) => props.state.edit(['tubeSerial'], text)}
              />
              <TextEntry
                label="Sleeve no."
                help="serial"
                most={60}
                value={one().sleeveSerial}
                fixed={props.fixed}
                onText={(text) => props.state.edit(['sleeveSerial'], text)}
              />
              <TextEntry
                label="By"
                help="person"
                most={80}
                value={one().by}
                fixed={props.fixed}
                onText={(text) => props.state.edit(['by'], text)}
              />
            </>
          )}
        </Show>
        <span class="gap-kept" role="status">
          <Show when={props.state.keepTrouble()} fallback={keptText()}>
            {(message) => <span class="refused">{message()}</span>}
          </Show>
        </span>
        <Show when={props.state.checks().length > 0}>
          <Choice
            name="Checks of this joint"
            help="pastCheck"
            options={[
              ...(check() ? [] : [{ value: '', text: 'choose a check' }]),
              ...props.state.checks().map((one) => ({ value: one.id, text: titleOf(one) })),
            ]}
            value={check()?.id ?? ''}
            onChoose={props.state.choose}
          />
        </Show>
        <button type="button" class="plain" onClick={() => props.state.begin()}>
          New check
        </button>
      </Show>
    </section>
  );
}
