/** Lives of one set: typed, pasted or read from a file; nothing is written over unasked. */
import { type JSX, Show } from 'solid-js';
import { LIVES_TO_FILL_IN, lifeSheet } from '../../../shared/life-text.ts';
import { livesCounted, shareText } from '../../../shared/life-words.ts';
import type { LifeSet } from '../../../shared/project-coupons.ts';
import type { LifeLineReport, LifeSetReport } from '../../../shared/reports-coupons.ts';
import type { LifeEdits } from '../../state/life-edits.ts';
import { EntryNotes } from '../EntryNotes.tsx';
import { createEntry } from '../entry.ts';
import { FileTools } from '../FileTools.tsx';
import { ResultGrid, type Worked } from '../ResultGrid.tsx';
import { SetNote, TestedOn } from '../SetNote.tsx';
import { type LifeRows, lifeColumns } from './life-columns.ts';

export interface LifeEntryProps {
  readonly set: LifeSet;
  readonly report: LifeSetReport | null;
  readonly rows: LifeRows;
  readonly edits: LifeEdits;
  readonly onRemove: () => void;
  /** What the lives come to, beside the grid. */
  readonly children: JSX.Element;
}

/** What the report tells of each coupon. */
const worked: readonly Worked<LifeLineReport>[] = [
  {
    head: 'Peak shear',
    unit: 'of yield',
    help: 'Elastic peak shear at the highest load of the cycle, over the yield of the adhesive',
    text: ({ share }) => (share === null ? '–' : shareText(share)),
  },
];

export function LifeEntry(props: LifeEntryProps): JSX.Element {
  let section!: HTMLElement;
  const entry = createEntry({
    sheet: lifeSheet,
    rows: props.rows,
    results: () => props.set.results,
    columns: () => lifeColumns.map(({ column }) => column),
    focusNext: () => section.querySelector<HTMLElement>('tbody tr:last-child input')?.focus(),
  });
  return (
    <section data-pane class="coupon-view" aria-label="Lives" ref={section}>
      <div class="coupon-tools">
        <label class="coupon-line life-name">
          Name
          <input
            class="words"
            type="text"
            maxlength={120}
            autocomplete="off"
            value={props.set.name}
            onChange={(event) => {
              props.edits.rename(props.set.id, event.currentTarget.value);
              event.currentTarget.value = props.set.name;
            }}
          />
        </label>
        <p>
          <b>{props.set.results.length === 0 ? 'No results' : livesCounted(props.set.results)}</b>
        </p>
        <TestedOn
          tested={props.set.tested}
          onTested={(day) => props.edits.set(props.set.id, 'tested', day)}
        />
        <FileTools
          label="File of lives"
          file={`lives-${props.set.id}.csv`}
          onText={entry.readText}
          results={() => lifeSheet.writeCsv(props.set.results)}
          template={() => lifeSheet.template(LIVES_TO_FILL_IN)}
        />
        <button type="button" class="link" onClick={() => props.onRemove()}>
          Remove set …
        </button>
      </div>
      <EntryNotes entry={entry} />
      <div class="coupon-halves is-lives">
        <div>
          <ResultGrid
            rows={props.rows}
            columns={lifeColumns}
            lineOf={(place, stored) => {
              const line = props.report?.lines[place];
              return line?.coupon === stored.coupon && line.peak === stored.peak ? line : null;
            }}
            worked={worked}
            onPaste={entry.paste}
            onRemove={entry.remove}
          />
          <Show when={props.set.results.length === 0}>
            <p class="units">
              Type the first load, or paste rows from a spreadsheet into a cell. Enter goes down,
              Tab goes across. A coupon that was taken off unbroken has run out: write yes.
            </p>
          </Show>
          <SetNote
            note={props.set.note}
            onNote={(note) => props.edits.set(props.set.id, 'note', note)}
          />
        </div>
        <div>{props.children}</div>
      </div>
    </section>
  );
}
