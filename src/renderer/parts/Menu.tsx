/** A button with a menu under it: arrows walk, a letter jumps, Enter chooses, Escape closes. */
import { createSignal, createUniqueId, For, type JSX, onCleanup, Show } from 'solid-js';

export type MenuEntry =
  | {
      readonly kind: 'item';
      readonly label: string;
      /** A second line, quiet. */
      readonly detail?: string;
      /** At the end of the line: a key, a time. */
      readonly end?: string;
      /** The end is a key. */
      readonly isKey?: boolean;
      readonly title?: string;
      /** It can be chosen, but does not lead where one thinks. */
      readonly faint?: boolean;
      readonly disabled?: boolean;
      readonly onChoose: () => void;
    }
  | { readonly kind: 'line' }
  | { readonly kind: 'heading'; readonly label: string };

export interface MenuProps {
  /** As it is read out. */
  readonly label: string;
  readonly class?: string;
  readonly title?: string;
  readonly entries: () => readonly MenuEntry[];
  /** The menu opens to the left of the button's end. */
  readonly atEnd?: boolean;
  readonly tabindex?: number;
  /** What is seen on the button. */
  readonly children: JSX.Element;
  /** Told how to open it from elsewhere. */
  readonly onReady?: (open: () => void) => void;
}

export function Menu(props: MenuProps): JSX.Element {
  const id = createUniqueId();
  const [open, setOpen] = createSignal(false);
  let root!: HTMLDivElement;
  let button!: HTMLButtonElement;

  const items = (): HTMLElement[] => [
    ...root.querySelectorAll<HTMLElement>('[role="menuitem"]:not([aria-disabled="true"])'),
  ];
  const focusAt = (at: number): void => {
    const all = items();
    all[(at + all.length) % all.length]?.focus();
  };
  const outside = (event: PointerEvent): void => {
    if (!root.contains(event.target as Node)) setOpen(false);
  };
  const show = (at: number): void => {
    setOpen(true);
    document.addEventListener('pointerdown', outside, true);
    focusAt(at);
  };
  const close = (back = true): void => {
    if (!open()) return;
    setOpen(false);
    document.removeEventListener('pointerdown', outside, true);
    if (back) button.focus();
  };
  onCleanup(() => document.removeEventListener('pointerdown', outside, true));
  const choose = (run: () => void): void => {
    // The focus is back before a dialog opens, which gives it back in turn.
    close();
    run();
  };

  const keys = (event: KeyboardEvent): void => {
    if (event.ctrlKey || event.altKey || event.metaKey || event.isComposing) return;
    if (!open()) {
      if (event.key !== 'ArrowDown' && event.key !== 'ArrowUp') return;
      event.preventDefault();
      show(event.key === 'ArrowDown' ? 0 : -1);
      return;
    }
    const all = items();
    const at = all.indexOf(document.activeElement as HTMLElement);
    if (event.key === 'ArrowDown') focusAt(at + 1);
    else if (event.key === 'ArrowUp') focusAt(at < 0 ? -1 : at - 1);
    else if (event.key === 'Home') focusAt(0);
    else if (event.key === 'End') focusAt(-1);
    else if (event.key === 'Escape') close();
    else if (event.key === 'Tab') {
      close(false);
      return;
    } else if (event.key.length === 1 && event.key !== ' ') {
      const letter = event.key.toLowerCase();
      const turned = [...all.slice(at + 1), ...all.slice(0, at + 1)];
      turned.find((item) => item.textContent?.trim().toLowerCase().startsWith(letter))?.focus();
    } else return;
    event.preventDefault();
    event.stopPropagation();
  };

  props.onReady?.(() => show(0));
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the keys are those of the button and of the menu in it.
    <div class="menu" ref={root} onKeyDown={keys}>
      <button
        ref={button}
        type="button"
        class={props.class ?? 'link'}
        aria-label={props.label}
        aria-haspopup="menu"
        aria-expanded={open()}
        aria-controls={open() ? id : undefined}
        title={props.title}
        tabindex={props.tabindex}
        onClick={() => (open() ? close() : show(0))}
      >
        {props.children}
      </button>
      <Show when={open()}>
        <div
          class="menu-list"
          classList={{ 'is-at-end': props.atEnd ?? false }}
          id={id}
          role="menu"
          aria-label={props.label}
          onFocusOut={(event) => {
            const to = event.relatedTarget as Node | null;
            if (to !== null && !root.contains(to)) close(false);
          }}
        >
          <For each={props.entries()}>
            {(entry) => {
              if (entry.kind === 'line') return <hr />;
              if (entry.kind === 'heading') {
                return (
                  <p class="menu-heading" role="presentation">
                    {entry.label}
                  </p>
                );
              }
              return (
                <button
                  type="button"
                  role="menuitem"
                  tabindex="-1"
                  classList={{ 'is-faint': entry.faint ?? false }}
                  aria-disabled={entry.disabled ? 'true' : undefined}
                  title={entry.title}
                  onPointerEnter={(event) => {
                    if (!entry.disabled) event.currentTarget.focus();
                  }}
                  onClick={() => {
                    if (!entry.disabled) choose(entry.onChoose);
                  }}
                >
                  <span class="menu-words">
                    <span class="menu-label">{entry.label}</span>
                    <Show when={entry.detail}>
                      {(detail) => <span class="menu-detail">{detail()}</span>}
                    </Show>
                  </span>
                  <Show when={entry.end}>
                    {(end) =>
                      entry.isKey ? <kbd>{end()}</kbd> : <span class="menu-end">{end()}</span>
                    }
                  </Show>
                </button>
              );
            }}
          </For>
        </div>
      </Show>
    </div>
  );
}
