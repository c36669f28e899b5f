/** The sheet of the box that finds and of the list of keys. It keeps the focus, and gives it back. */
import { type JSX, onCleanup, onMount } from 'solid-js';

export interface KeysDialogProps {
  readonly class: string;
  readonly label: string;
  readonly onClose: () => void;
  readonly children: JSX.Element;
}

/** Tells it from the dialogs that ask something. */
export const KEYS_DIALOG = 'keys-dialog';

const canHaveFocus = (element: Element | null): element is HTMLElement | SVGElement =>
  element !== null && element !== document.body && 'focus' in element;

export function KeysDialog(props: KeysDialogProps): JSX.Element {
  let dialog!: HTMLDialogElement;
  const before = document.activeElement;
  onMount(() => dialog.showModal?.());
  onCleanup(() => {
    dialog.close?.();
    if (canHaveFocus(before) && before.isConnected) before.focus({ preventScroll: true });
  });
  return (
    <dialog
      ref={dialog}
      class={`${KEYS_DIALOG} ${props.class}`}
      aria-label={props.label}
      onCancel={(event) => {
        event.preventDefault();
        props.onClose();
      }}
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return;
        event.preventDefault();
        props.onClose();
      }}
      onClick={(event) => {
        if (event.target === dialog) props.onClose();
      }}
    >
      {/* A press beside the sheet meets the dialog itself, one on it does not. */}
      <div class="keys-sheet">{props.children}</div>
    </dialog>
  );
}
