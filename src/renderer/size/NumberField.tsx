/**
 * One number of the document. While it has the focus it shows what is typed; otherwise what is
 * stored. Good text is stored at once, so that the drawing follows the typing; bad text stays here,
 * with what is wrong with it. A number that may be left out is taken away by emptying its field.
 */
import {
  batch,
  createEffect,
  createSignal,
  createUniqueId,
  type JSX,
  on,
  onCleanup,
  Show,
} from 'solid-js';
import type { Entry } from '../../shared/number-entry.ts';
import { quantities } from '../../shared/quantities.ts';
import { displayUnit, fromDisplay, toDisplay } from '../../shared/units.ts';
import { sentence } from '../../shared/words.ts';
import type { Issues } from '../state/issues.ts';
import { type ProjectState, pathText, valueAt } from '../state/project.ts';
import type { NumberInput } from './form-model.ts';

type Refused = Extract<Entry, { ok: false }>;

export interface FieldSource {
  readonly project: ProjectState;
  readonly issues: Issues;
}

export interface NumberFieldProps extends FieldSource {
  readonly input: NumberInput;
  /** Id of the label's target; made up when left out. */
  readonly id?: string;
}

export function NumberField(props: NumberFieldProps): JSX.Element {
  const own = createUniqueId();
  const id = (): string => props.id ?? own;
  const path = pathText(props.input.path);
  const stored = (): number | undefined =>
    valueAt(props.project.document(), props.input.path) as number | undefined;
  const shown = (): string => {
    const value = stored();
    return value === undefined ? '' : toDisplay(props.input.quantity, value);
  };
  const [text, setText] = createSignal(shown());
  const message = (): string | undefined => props.issues.at(path);
  const unit = (): string => displayUnit(props.input.quantity).symbol;

  props.issues.mount(path);
  onCleanup(() => props.issues.unmount(path));

  let field!: HTMLInputElement;
  let typing = false;
  const showStored = (): void => {
    props.issues.setTyped(path, null);
    setText(shown());
  };
  // Changed from elsewhere, by the drag for one: what was typed no longer says what is stored.
  createEffect(
    on(
      stored,
      () => {
        if (!typing) showStored();
      },
      { defer: true },
    ),
  );

  const understood = (typed: string): { ok: true; value: number | undefined } | Refused =>
    props.input.optional && typed.trim() === ''
      ? { ok: true, value: undefined }
      : fromDisplay(props.input.quantity, typed);
  const read = (typed: string): void => {
    setText(typed);
    const entry = understood(typed);
    // Together: between the two the old value would be asked about once more.
    batch(() => {
      props.issues.setTyped(path, entry.ok ? null : entry.message);
      if (!entry.ok || entry.value === stored()) return;
      typing = true;
      props.project.edit(props.input.path, entry.value);
    });
    typing = false;
  };
  const leave = (): void => {
    if (understood(text()).ok) showStored();
  };
  const key = (event: KeyboardEvent): void => {
    if (event.key === 'Escape') {
      showStored();
      field.select();
    }
    if (event.key === 'Enter') {
      leave();
      field.select();
    }
  };

  return (
    <>
      <input
        ref={field}
        id={id()}
        class="figure"
        type="text"
        inputmode="decimal"
        autocomplete="off"
        spellcheck={false}
        title={props.input.help ?? quantities[props.input.quantity].help}
        placeholder={props.input.optional ? 'not set' : undefined}
        aria-label={props.input.name}
        aria-invalid={message() === undefined ? undefined : 'true'}
        aria-describedby={message() === undefined ? `${id()}-unit` : `${id()}-error ${id()}-unit`}
        value={text()}
        onInput={(event) => read(event.currentTarget.value)}
        onBlur={leave}
        onKeyDown={key}
      />
      <span class="unit" id={`${id()}-unit`}>
        {unit()}
      </span>
      <Show when={message()}>
        {(words) => (
          <p class="callout" id={`${id()}-error`}>
            {sentence(words())}
          </p>
        )}
      </Show>
    </>
  );
}
