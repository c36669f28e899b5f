/**
 * The help of the field that has the focus: a small “?” beside it, and on asking (that, or F2) a note
 * under it. It lies over the page, so that nothing moves, and goes with the focus.
 */
import {
  type Accessor,
  createEffect,
  createSignal,
  createUniqueId,
  type JSX,
  onCleanup,
  onMount,
  Show,
} from 'solid-js';
import type { FieldHelp } from '../../shared/field-help.ts';
import { helpAt } from './known-fields.ts';

/** Milliseconds: whoever only passes by the field is not to see it flash. */
const PAUSE = 400;
const GAP = 6;
const EDGE = 8;

export interface FieldNotes {
  /** The field with the focus, where it has help. */
  readonly field: Accessor<HTMLElement | null>;
  readonly shown: Accessor<boolean>;
  follow(field: Element | null): void;
  toggle(): void;
  close(): void;
}

export function createFieldNotes(): FieldNotes {
  const [field, setField] = createSignal<HTMLElement | null>(null);
  const [shown, setShown] = createSignal(false);
  return {
    field,
    shown,
    follow(next) {
      if (next === field()) return;
      setShown(false);
      setField(next instanceof HTMLElement && helpAt(next) !== null ? next : null);
    },
    toggle() {
      if (field() !== null) setShown(!shown());
    },
    close: () => void setShown(false),
  };
}

const nameOf = (field: HTMLElement): string =>
  field.getAttribute('aria-label') ??
  (field as HTMLInputElement).labels?.[0]?.textContent?.trim() ??
  'This field';

/** In front of the first field of its row, where only the end of a label can be. */
function placeMark(mark: HTMLElement, field: HTMLElement): void {
  const first = field.closest('.row')?.querySelector('input, select') ?? field;
  const box = field.getBoundingClientRect();
  const [left, own] = [first.getBoundingClientRect().left, mark.offsetWidth];
  mark.style.left = `${Math.max(0, Math.min(left, box.left) - own - 2)}px`;
  mark.style.top = `${box.top + (box.height - mark.offsetHeight) / 2}px`;
  // Among cells that stand close it would lie on a reading: F2 is enough there.
  mark.classList.toggle('is-in-the-way', liesOnAnother(mark, field));
}

function liesOnAnother(mark: HTMLElement, field: HTMLElement): boolean {
  const { left, right, top, bottom } = mark.getBoundingClientRect();
  const others = field.closest('table')?.querySelectorAll('input, select') ?? [];
  return [...others].some((other) => {
    const box = other.getBoundingClientRect();
    const apart = box.right <= left || box.left >= right || box.bottom <= top || box.top >= bottom;
    return other !== field && !apart;
  });
}

/** Under the field, or over it where there is no room below. */
function placeNote(note: HTMLElement, field: HTMLElement): void {
  const box = field.getBoundingClientRect();
  const left = Math.min(box.left, window.innerWidth - note.offsetWidth - EDGE);
  const below = box.bottom + GAP;
  const fits = below + note.offsetHeight <= window.innerHeight - EDGE;
  note.style.left = `${Math.max(EDGE, left)}px`;
  note.style.top = `${fits ? below : Math.max(EDGE, box.top - GAP - note.offsetHeight)}px`;
}

/** Scrolled out of its own column, table or window a field is not seen, nor is what belongs to it. */
function isSeen(field: HTMLElement): boolean {
  const box = field.getBoundingClientRect();
  if (box.right < 0 || box.left >= window.innerWidth) return false;
  const frame = field.closest('.column, main')?.getBoundingClientRect();
  return !frame || (box.bottom >= frame.top && box.top <= frame.bottom);
}

export function FieldNote(props: { readonly notes: FieldNotes }): JSX.Element {
  const id = createUniqueId();
  const [ready, setReady] = createSignal(false);
  const [seen, setSeen] = createSignal(true);
  let mark: HTMLButtonElement | undefined;
  let note: HTMLDivElement | undefined;

  const place = (): void => {
    const field = props.notes.field();
    if (!field) return;
    setSeen(isSeen(field));
    if (mark) placeMark(mark, field);
    if (note) placeNote(note, field);
  };
  const focused = (): void => {
    // Pressing the mark itself is no way out of the field.
    if (!mark?.contains(document.activeElement)) props.notes.follow(document.activeElement);
  };
  const left = (): void => {
    queueMicrotask(focused);
  };
  const leaveNote = (event: KeyboardEvent): void => {
    if (event.key !== 'Escape' || !props.notes.shown()) return;
    // Only the note goes: what was typed in the field stays.
    event.preventDefault();
    event.stopPropagation();
    props.notes.close();
  };
  onMount(() => {
    document.addEventListener('focusin', focused);
    document.addEventListener('focusout', left);
    document.addEventListener('keydown', leaveNote, true);
    document.addEventListener('scroll', place, true);
    document.addEventListener('input', place);
    window.addEventListener('resize', place);
  });
  onCleanup(() => {
    document.removeEventListener('focusin', focused);
    document.removeEventListener('focusout', left);
    document.removeEventListener('keydown', leaveNote, true);
    document.removeEventListener('scroll', place, true);
    document.removeEventListener('input', place);
    window.removeEventListener('resize', place);
  });

  createEffect(() => {
    const field = props.notes.field();
    setReady(false);
    if (!field) return;
    const waiting = setTimeout(() => setReady(true), PAUSE);
    onCleanup(() => clearTimeout(waiting));
  });
  createEffect(() => {
    const field = props.notes.field();
    if (!field || !props.notes.shown()) return;
    const others = (): string[] =>
      (field.getAttribute('aria-describedby') ?? '').split(' ').filter((one) => one && one !== id);
    field.setAttribute('aria-describedby', [...others(), id].join(' '));
    onCleanup(() => {
      const left = others().join(' ');
      if (left === '') field.removeAttribute('aria-describedby');
      else field.setAttribute('aria-describedby', left);
    });
  });
  createEffect(() => {
    // A line that comes or goes above the field moves it, and nothing is scrolled.
    const field = props.notes.field();
    if (!field || typeof ResizeObserver === 'undefined') return;
    const moved = new ResizeObserver(place);
    for (let around = field.parentElement; around; around = around.parentElement) {
      moved.observe(around);
    }
    onCleanup(() => moved.disconnect());
  });
  createEffect(() => {
    // Both are asked, whatever the first says: each brings something to be placed.
    const [mark, note] = [ready(), props.notes.shown()];
    if (mark || note) place();
  });

  const help = (): FieldHelp | null => (props.notes.shown() ? helpAt(props.notes.field()) : null);
  return (
    <>
      <Show when={seen() && (ready() || props.notes.shown()) && props.notes.field()}>
        {(field) => (
          <button
            ref={mark}
            type="button"
            class="field-mark"
            tabindex="-1"
            aria-label={`What ${nameOf(field())} is`}
            aria-keyshortcuts="F2"
            title="What it is (F2)"
            onMouseDown={(event) => event.preventDefault()}
            onClick={() => props.notes.toggle()}
          >
            ?
          </button>
        )}
      </Show>
      <div role="status">
        <Show when={help()}>
          {(words) => (
            <div class="field-note" id={id} ref={note}>
              <p class="field-note-name">{nameOf(props.notes.field()!)}</p>
              <p>{words().what}</p>
              <p>
                <span class="field-note-key">From:</span> {words().whereFrom}
              </p>
              <p>
                {words().usual} <span class="units">{words().allowed}</span>
              </p>
            </div>
          )}
        </Show>
      </div>
    </>
  );
}
