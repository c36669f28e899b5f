/** What is asked of a person on the way of opening and saving: one question at a time, answered once. */
import { type Accessor, createSignal } from 'solid-js';
import type { Lap } from '../../../shared/convert-lap.ts';

/** What would take the place of the project that is open. */
export type Instead = 'open' | 'begin';

export interface NewWish {
  readonly name: string;
  /** Lap of the first joint; null for none. */
  readonly lap: Lap | null;
}

export interface BrowseWish {
  readonly purpose: 'open' | 'save';
  /** Name of the project. */
  readonly project: string;
  /** Name that is offered for the file. */
  readonly name: string;
  /** Folder to begin in; null for the youngest that was chosen. */
  readonly folder: string | null;
}

/** Each kind of question with what it is about and how it is answered; null is always no answer. */
export interface Questions {
  unsaved: {
    about: { readonly name: string; readonly instead: Instead };
    answer: 'save' | 'discard';
  };
  changed: { about: { readonly name: string }; answer: 'replace' | 'as' };
  exists: { about: { readonly name: string; readonly folder: string }; answer: 'replace' | 'as' };
  readOnly: { about: { readonly name: string; readonly folder: string }; answer: 'as' };
  lost: { about: { readonly name: string; readonly folder: string }; answer: 'forget' };
  begin: { about: { readonly name: string }; answer: NewWish };
  remove: {
    about: {
      readonly title: string;
      readonly text: string;
      readonly keep: string;
      readonly remove: string;
    };
    answer: 'remove';
  };
  rename: { about: { readonly what: string; readonly name: string }; answer: string };
  /** A path, or a file that the browser hands over. */
  browse: { about: BrowseWish; answer: string | File };
}
export type QuestionKind = keyof Questions;

export type Question = {
  readonly [K in QuestionKind]: {
    readonly kind: K;
    readonly about: Questions[K]['about'];
    readonly answer: (answer: Questions[K]['answer'] | null) => void;
  };
}[QuestionKind];

export interface Asking {
  readonly open: Accessor<Question | null>;
  ask<K extends QuestionKind>(
    kind: K,
    about: Questions[K]['about'],
  ): Promise<Questions[K]['answer'] | null>;
}

export function createAsking(): Asking {
  const [open, setOpen] = createSignal<Question | null>(null);
  return {
    open,
    ask: (kind, about) =>
      new Promise((resolve) => {
        // One that is still open is not answered any more.
        open()?.answer(null);
        const question = {
          kind,
          about,
          answer(answer: never) {
            if (open() === question) setOpen(null);
            resolve(answer);
          },
        } as unknown as Question;
        setOpen(question);
      }),
  };
}
