/**
 * What a field has of its own to take back: text that is typed and not done with. While it has, Ctrl+Z is the
 * browser's, letter by letter; else the window takes back what was changed last. Only fields that say so here
 * hand their keys on.
 */

export interface OwnTyping {
  /** True while the keys of undo and redo are the browser's. */
  has(what: 'undo' | 'redo'): boolean;
  /** Puts what is stored in the place of refused text that nothing is typed in; false where there is none. */
  takeBack(): boolean;
  /** What is in the field now is what is stored. */
  forget(): void;
}

export interface Watched {
  takeBack?(): boolean;
  /** Whoever comes to a number types another over it: all of it is selected. */
  readonly number?: true;
}

const known = new WeakMap<Element, OwnTyping>();
export const typingIn = (field: Element | null): OwnTyping | undefined =>
  field ? known.get(field) : undefined;

/** For `ref`. */
export function watchField(field: HTMLInputElement, { takeBack, number }: Watched = {}): void {
  /** Before the first letter since it was entered or done with; null while nothing is typed. */
  let before: string | null = null;
  /** As the last letter left it: any other text was put there by the page. */
  let last = '';
  /** The last that was done was to take something back. */
  let undone = false;
  const forget = (): void => {
    before = null;
    undone = false;
  };
  known.set(field, {
    has(what) {
      if (before === null || field.value !== last) return false;
      return last !== before || (what === 'redo' && undone);
    },
    takeBack: () => takeBack?.() ?? false,
    forget,
  });
  let entered = field.value;
  field.addEventListener('focusin', () => {
    forget();
    entered = field.value;
  });
  field.addEventListener('beforeinput', () => {
    if (before === null || field.value !== last) before = field.value;
  });
  field.addEventListener('input', (event) => {
    // Not every way to write tells beforehand.
    before ??= entered;
    last = field.value;
    undone = (event as InputEvent).inputType === 'historyUndo';
  });
  field.addEventListener('keydown', ({ key }) => {
    if (key === 'Enter' || key === 'Escape') forget();
  });
  if (number) selectOnEntry(field);
}

/** By Tab, by name or by a click; a second click, or a drag, puts the mark where it is wanted. */
function selectOnEntry(field: HTMLInputElement): void {
  let pressed = false;
  // After the field has put every digit into itself, which drops the browser's own selection.
  field.addEventListener('focusin', () => field.select());
  field.addEventListener('mousedown', () => {
    pressed = document.activeElement !== field;
  });
  field.addEventListener('mouseup', () => {
    if (pressed && field.selectionStart === field.selectionEnd) field.select();
    pressed = false;
  });
}
