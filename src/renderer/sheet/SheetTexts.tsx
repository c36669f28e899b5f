/** The words of the head and of the sign-off; they stand in the project file. */
import { createUniqueId, For, Index, type JSX, Show } from 'solid-js';
import {
  MOST_REVISIONS,
  type Revision,
  type RevisionText,
  revisionLengths,
  type SheetText,
  type SheetWords,
  sheetLengths,
} from '../../shared/project-sheet.ts';
import type { ProjectState } from '../state/project.ts';

const texts: readonly (readonly [SheetText, string])[] = [
  ['job', 'Job number'],
  ['drawing', 'Drawing number'],
  ['revision', 'Revision'],
  ['prepared', 'Prepared by'],
  ['checked', 'Checked by'],
  ['approved', 'Approved by'],
  ['remarks', 'Remarks'],
];
const columns: readonly (readonly [RevisionText, string])[] = [
  ['revision', 'Revision'],
  ['date', 'Date'],
  ['by', 'By'],
  ['change', 'Change'],
];

interface WordsProps {
  readonly label: string;
  /** Read out where the label alone would not tell which. */
  readonly name?: string;
  readonly value: string;
  readonly most: number;
  readonly long?: boolean;
  readonly onWords: (text: string) => void;
}

function Words(props: WordsProps): JSX.Element {
  const id = createUniqueId();
  return (
    <p class="sheet-text">
      <label for={id}>{props.label}</label>
      <Show
        when={props.long}
        fallback={
          <input
            id={id}
            type="text"
            autocomplete="off"
            maxlength={props.most}
            aria-label={props.name}
            value={props.value}
            onInput={(event) => props.onWords(event.currentTarget.value)}
          />
        }
      >
        <textarea
          id={id}
          rows="3"
          maxlength={props.most}
          value={props.value}
          onInput={(event) => props.onWords(event.currentTarget.value)}
        />
      </Show>
    </p>
  );
}

export function SheetTexts(props: { readonly project: ProjectState }): JSX.Element {
  const words = (): SheetWords | undefined => props.project.document()?.sheet;
  const revisions = (): readonly Revision[] => words()?.revisions ?? [];

  /** What is empty is not in the file. */
  const write = (key: SheetText | 'revisions', value: unknown): void => {
    if (words() === undefined) {
      if (value !== undefined) props.project.edit(['sheet'], { [key]: value });
    } else props.project.edit(['sheet', key], value);
  };
  const writeRevisions = (list: readonly Revision[]): void =>
    write('revisions', list.length === 0 ? undefined : list);
  const add = (): void => {
    const today = new Date().toISOString().slice(0, 10);
    writeRevisions([
      ...revisions().map((one) => ({ ...one })),
      { revision: words()?.revision ?? '', date: today },
    ]);
  };
  return (
    <>
      <fieldset class="sheet-choice">
        <legend>Head and sign-off</legend>
        <For each={texts}>
          {([key, label]) => (
            <Words
              label={label}
              value={words()?.[key] ?? ''}
              most={sheetLengths[key]}
              long={key === 'remarks'}
              onWords={(text) => write(key, text === '' ? undefined : text)}
            />
          )}
        </For>
      </fieldset>
      <fieldset class="sheet-choice">
        <legend>Revisions</legend>
        <Index each={revisions()}>
          {(row, i) => (
            <div class="sheet-revision">
              <For each={columns}>
                {([key, label]) => (
                  <Words
                    label={label}
                    name={`${label}, row ${i + 1}`}
                    value={row()[key] ?? ''}
                    most={revisionLengths[key]}
                    onWords={(text) => props.project.edit(['sheet', 'revisions', i, key], text)}
                  />
                )}
              </For>
              <button
                type="button"
                class="link"
                onClick={() =>
                  writeRevisions(
                    revisions()
                      .filter((_one, at) => at !== i)
                      .map((one) => ({ ...one })),
                  )
                }
              >
                Remove<span class="hidden"> row {i + 1}</span>
              </button>
            </div>
          )}
        </Index>
        <Show when={revisions().length < MOST_REVISIONS}>
          <button type="button" class="link" onClick={add}>
            Add a revision
          </button>
        </Show>
      </fieldset>
    </>
  );
}
