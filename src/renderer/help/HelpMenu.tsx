/** What the “?” of the bar opens: the guide, the list of keys, the notes of the first start, what the program is. */
import { createSignal, createUniqueId, type JSX, Show } from 'solid-js';

export interface HelpMenuProps {
  readonly onGuide: () => void;
  readonly onKeys: () => void;
  /** Undefined while there is no joint to speak of. */
  readonly onNotes: (() => void) | undefined;
  readonly onAbout: () => void;
}

export function HelpMenu(props: HelpMenuProps): JSX.Element {
  const id = createUniqueId();
  const [open, setOpen] = createSignal(false);
  let opener!: HTMLButtonElement;
  let whole!: HTMLSpanElement;
  const close = (): void => {
    const inside = whole.contains(document.activeElement);
    setOpen(false);
    if (inside) opener.focus();
  };
  /** The focus is on the opener first: what opens then gives it back there. */
  const item = (text: string, keys: string, run: () => void): JSX.Element => (
    <div class="help-line">
      <button
        type="button"
        class="help-item"
        aria-keyshortcuts={keys === '' ? undefined : keys}
        onClick={() => {
          close();
          run();
        }}
      >
        {text}
      </button>
      <Show when={keys}>
        <kbd>{keys}</kbd>
      </Show>
    </div>
  );
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: Escape closes what its buttons opened.
    <span
      class="help-menu"
      ref={whole}
      onKeyDown={(event) => {
        if (event.key !== 'Escape' || !open()) return;
        event.preventDefault();
        close();
      }}
      onFocusOut={(event) => {
        if (!whole.contains(event.relatedTarget as Node | null)) setOpen(false);
      }}
    >
      <button
        type="button"
        class="bar-keys"
        ref={opener}
        aria-label="Help"
        aria-expanded={open()}
        aria-controls={open() ? id : undefined}
        title="Help"
        onClick={() => setOpen(!open())}
      >
        ?
      </button>
      <Show when={open()}>
        <div class="help-items" id={id}>
          {item('Guide', 'Shift+F1', props.onGuide)}
          {item('Keys', 'F1', props.onKeys)}
          <Show when={props.onNotes}>{(run) => item('Show the three notes again', '', run())}</Show>
          {item('About Lapwright', '', props.onAbout)}
        </div>
      </Show>
    </span>
  );
}
