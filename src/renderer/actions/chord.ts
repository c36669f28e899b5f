/** Keys that are pressed together: how they are told from an event, and how they are written. */

export interface Chord {
  /** As events name it; a letter in lower case. */
  readonly key: string;
  readonly ctrl?: true;
  readonly shift?: true;
  readonly alt?: true;
  /** Also while a person writes in a field. */
  readonly writing?: true;
  /** Where the action has nothing to do, the key is the browser's own. */
  readonly yields?: true;
  /** Once more for as long as it is held down. */
  readonly repeats?: true;
}

/** A sign may need Shift on one keyboard and not on another. */
const isSign = (key: string): boolean => /^[^a-z0-9]$/.test(key);

export function isPressed(chord: Chord, event: KeyboardEvent): boolean {
  // AltGr counts as Ctrl and Alt together: it writes a sign.
  if (event.altKey !== (chord.alt ?? false)) return false;
  if ((event.ctrlKey || event.metaKey) !== (chord.ctrl ?? false)) return false;
  if (!isSign(chord.key) && event.shiftKey !== (chord.shift ?? false)) return false;
  const key = event.key.length === 1 ? event.key.toLowerCase() : event.key;
  return key === chord.key;
}

const named = (key: string): string => (key.length === 1 ? key.toUpperCase() : key);

/** `Ctrl+Shift+Z` */
export const chordText = ({ ctrl, alt, shift, key }: Chord): string =>
  [ctrl && 'Ctrl', alt && 'Alt', shift && 'Shift', named(key)].filter(Boolean).join('+');

/** The same as `aria-keyshortcuts` wants it. */
export const chordAria = (chord: Chord): string => chordText(chord).replace('Ctrl', 'Control');

const pressed = ['radio', 'checkbox', 'range', 'button', 'submit', 'reset', 'file', 'color'];

/** Fields have keys of their own, an undo among them, while they are written in. */
export function isWriting(here: Element | null): boolean {
  if (here instanceof HTMLTextAreaElement) return true;
  if (here instanceof HTMLInputElement) return !pressed.includes(here.type);
  return here instanceof HTMLElement && here.isContentEditable;
}
