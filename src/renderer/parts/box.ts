/**
 * The text of a box whose number belongs to a question. Its owner keeps text in the stored unit; here it is
 * shown in the unit on the screen, as it was typed while one types.
 */
import { type Accessor, createSignal } from 'solid-js';
import { boxToKeep, boxToShow, boxUnit, readBox, readTyped } from '../../shared/box-entry.ts';
import type { FieldEntry } from '../../shared/expression-entry.ts';
import type { QuantityName } from '../../shared/quantities.ts';
import { isInSi, toDisplayWhole } from '../../shared/units.ts';

export interface BoxOptions {
  quantity(): QuantityName;
  /** As it is kept. */
  kept(): string;
  keep(text: string): void;
  /** What else is wrong with a value that can be read. */
  wrong?(value: number): string | null;
}

export interface Box {
  readonly text: Accessor<string>;
  readonly read: Accessor<FieldEntry>;
  readonly unit: Accessor<string>;
  enter(): void;
  typed(text: string): void;
  /** Left, it shows the plain figure. */
  leave(): void;
}

export function createBox({ quantity, kept, keep, wrong }: BoxOptions): Box {
  /** What is being written, in the unit on the screen; null while nobody writes. */
  const [draft, setDraft] = createSignal<{ text: string; kept: string } | null>(null);
  // Where the owner has put another text in its place, the draft is no longer what is there.
  const own = (): string | null => {
    const now = draft();
    return now && now.kept === kept() ? now.text : null;
  };
  const text = (): string => own() ?? boxToShow(quantity(), kept());
  const read = (): FieldEntry => {
    const now = own();
    const entry = now === null ? readBox(kept(), quantity()) : readTyped(now, quantity());
    const message = entry.ok ? (wrong?.(entry.value) ?? null) : null;
    return message === null ? entry : { ok: false, message };
  };
  return {
    text,
    read,
    unit: () => boxUnit(quantity()),
    enter() {
      setDraft({ text: boxToShow(quantity(), kept(), true), kept: kept() });
    },
    typed(next) {
      const text = boxToKeep(quantity(), next);
      setDraft({ text: next, kept: text });
      keep(text);
    },
    leave() {
      const entry = read();
      setDraft(null);
      if (!entry.ok || entry.understood === undefined) return;
      keep(isInSi(quantity()) ? toDisplayWhole(quantity(), entry.value) : String(entry.value));
    },
  };
}
