/** The one place where keys of the window become actions. */
import { onCleanup, onMount } from 'solid-js';
import type { Bridge } from '../../shared/contract.ts';
import { typingIn } from '../parts/own-typing.ts';
import type { Action } from './action.ts';
import { type Chord, isPressed, isWriting } from './chord.ts';
import { KEYS_DIALOG } from './KeysDialog.tsx';

function pressed(
  actions: readonly Action[],
  event: KeyboardEvent,
): { readonly action: Action; readonly chord: Chord } | null {
  for (const action of actions) {
    const chord = action.keys?.find((one) => isPressed(one, event));
    if (chord) return { action, chord };
  }
  return null;
}

/** Whether a dialog stands before it: one that asks lets nothing by, ours only each other. */
function isHeld({ group }: Action): boolean {
  const dialogs = [...document.querySelectorAll('dialog[open]')];
  return !dialogs.every((dialog) => group === 'keys' && dialog.matches(`.${KEYS_DIALOG}`));
}

/** Of a field that has nothing of its own to take back, or to do again, the window does it. */
function isHandedOn({ id }: Action, field: Element | null): boolean {
  const typing = id === 'undo' || id === 'redo' ? typingIn(field) : undefined;
  return typing !== undefined && !typing.has(id as 'undo' | 'redo');
}

export function act(actions: readonly Action[], event: KeyboardEvent): void {
  if (event.defaultPrevented || event.isComposing) return;
  const found = pressed(actions, event);
  if (!found) return;
  const { action, chord } = found;
  if (isHeld(action)) {
    // Nor does the browser do what the key means to it.
    if (chord.writing) event.preventDefault();
    return;
  }
  const field = document.activeElement;
  if (!chord.writing && isWriting(field) && !isHandedOn(action, field)) return;
  // What could not be taken is not in the document: it goes from the field first.
  if (action.id === 'undo' && typingIn(field)?.takeBack()) {
    event.preventDefault();
    return;
  }
  // Undo with nothing left to take back is still ours; a print of a page without paper is not.
  if (!action.available()) {
    const ours = action.group === 'change' || (chord.writing && !chord.yields);
    if (ours) event.preventDefault();
    return;
  }
  event.preventDefault();
  if (event.repeat && !chord.repeats) return;
  if (action.group === 'change') typingIn(field)?.forget();
  action.run();
}

export function listenForKeys(actions: readonly Action[]): void {
  const keys = (event: KeyboardEvent): void => act(actions, event);
  onMount(() => window.addEventListener('keydown', keys));
  onCleanup(() => window.removeEventListener('keydown', keys));
}

/** What the menu of the window asks for besides actions. */
export interface Commands {
  openFile(path: string): void;
  saveAndClose(): void;
}

/** The menu of the window, where it has one: its commands are the actions of the same names. */
export function listenForCommands(
  actions: readonly Action[],
  bridge: Pick<Bridge, 'onCommand'>,
  commands: Commands,
): void {
  const stop = bridge.onCommand?.(({ name, path }) => {
    // A dialog of ours asks something: nothing goes by it.
    if (document.querySelector('dialog[open]')) return;
    if (name === 'open-file') commands.openFile(path ?? '');
    else if (name === 'save-and-close') commands.saveAndClose();
    else {
      const action = actions.find(({ id }) => id === name);
      if (action?.available()) action.run();
    }
  });
  if (stop) onCleanup(stop);
}
