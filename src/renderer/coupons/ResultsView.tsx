/** Results of one set: typed, pasted or read from a file; nothing is written over unasked. */

import { type JSX, Show } from 'solid-js';
import { couponSheet, UNPLANNED } from '../../shared/coupon-text.ts';
import { countedSentence } from '../../shared/coupon-words.ts';
import { figureOf, symbolOf } from '../../shared/measures.ts';
import type { CouponSet, Specimen } from '../../shared/project-coupons.ts';
import type { CouponLine } from '../../shared/reports-coupons.ts';
import { sentence } from '../../shared/words.ts';
import type { CouponEdits } from '../state/coupon-edits.ts';
import type { CouponsState } from '../state/coupons.ts';
import { plannedNumber, some } from './coupon-format.ts';
import { EntryNotes } from './EntryNotes.tsx';
import { createEntry } from './entry.ts';
import { FileTools } from './FileTools.tsx';
import { FlagList, isHeavy } from './FlagList.tsx';
import { Planned } from './Planned.tsx';
import { ResultGrid, type Worked } from './ResultGrid.tsx';
import { type CouponRows, gridColumns, resultColumns } from './result-columns.ts';
import { SetNote, TestedOn } from './SetNote.tsx';

export interface ResultsViewProps {
  readonly state: CouponsState;
  readonly edits: CouponEdits;
  readonly rows: CouponRows;
  readonly set: CouponSet;
  readonly specimen: Specimen | undefined;
}

/** What the report tells of each coupon. */
const worked = (): readonly Worked<CouponLine>[] => [
  {
    head: 'Over area',
    unit: symbolOf('stress'),
    help: 'Load over bonded area; compares coupons of a kind',
    text: ({ strength }) => figureOf('stress', strength),
  },
  {
    head: 'Of predicted',
    unit: '',
    help: 'Measured load over predicted load',
    text: ({ ratio }) => ratio?.toFixed(2) ?? '',
  },
];

export function ResultsView(props: ResultsViewProps): JSX.Element {
  const columns = () => resultColumns(props.specimen?.shape);
  const report = () => props.state.report(props.set.id);
  const flags = () => report()?.flags ?? [];
  const refusal = () => props.state.refusal(props.set.id);
  const inAll = (): string => {
    const planned = plannedNumber(props.set);
    const n = some(props.set.results.length, 'result');
    return planned === 0 ? n : `${n} of ${planned} planned`;
  };
  let section!: HTMLElement;
  const entry = createEntry({
    sheet: couponSheet,
    rows: props.rows,
    results: () => props.set.results,
    columns: () => gridColumns(props.specimen?.shape),
    focusNext: () => section.querySelector<HTMLElement>('tbody tr:last-child input')?.focus(),
  });

  return (
    <section data-pane class="coupon-view" aria-label="Results" ref={section}>
      <div class="coupon-tools">
        <p>
          <b>{inAll()}</b>
          <Show when={props.set.results.length > 0 && report() && !props.state.old(props.set.id)}>
            {' '}
            <span class="units">{countedSentence(report()!.lines)}</span>
          </Show>
        </p>
        <Planned
          set={props.set}
          onPlanned={(planned) => props.edits.set(props.set.id, 'planned', planned)}
        />
        <TestedOn
          tested={props.set.tested}
          onTested={(day) => props.edits.set(props.set.id, 'tested', day)}
        />
        <FileTools
          label="File of coupon results"
          file={`coupons-${props.set.id}.csv`}
          onText={entry.readText}
          results={() => couponSheet.writeCsv(props.set.results)}
          template={() => couponSheet.template(props.set.planned ?? UNPLANNED)}
        />
      </div>
      <EntryNotes entry={entry} />
      <Show when={refusal()}>
        {(error) => (
          <p class="refused" role="alert">
            {sentence(error().message)}
          </p>
        )}
      </Show>
      <FlagList flags={flags().filter(isHeavy)} />
      <ResultGrid
        rows={props.rows}
        columns={columns()}
        lineOf={(place, stored) => {
          const line = report()?.lines[place];
          return line?.coupon === stored.coupon && line.load === stored.load ? line : null;
        }}
        worked={worked()}
        isApart={({ apart }) => apart !== null}
        placeholder={(column, line) => (column === 'apart' ? (line?.why ?? '') : '')}
        onPaste={entry.paste}
        onRemove={entry.remove}
      />
      <Show when={props.set.results.length === 0}>
        <p class="units">
          Type the first load, or paste rows from a spreadsheet into a cell. Enter goes down, Tab
          goes across. The gap is that of the set where none is measured.
        </p>
      </Show>
      <SetNote
        note={props.set.note}
        onNote={(note) => props.edits.set(props.set.id, 'note', note)}
      />
      <FlagList flags={flags().filter((one) => !isHeavy(one))} />
    </section>
  );
}
