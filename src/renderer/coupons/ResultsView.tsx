/** Results of one set: typed, pasted or read from a file; nothing is written over unasked. */
import { createSignal, For, type JSX, Show } from 'solid-js';
import {
  couponsTemplate,
  hasHead,
  type LineError,
  MOST_RESULTS,
  readCouponBlock,
  readCouponsCsv,
  writeCouponsCsv,
} from '../../shared/coupon-text.ts';
import { countedSentence } from '../../shared/coupon-words.ts';
import type { CouponResult, CouponSet, Specimen } from '../../shared/project-coupons.ts';
import { sentence } from '../../shared/words.ts';
import { download } from '../files.ts';
import { ReadFile } from '../parts/ReadFile.tsx';
import type { CouponEdits } from '../state/coupon-edits.ts';
import type { CouponRows } from '../state/coupon-rows.ts';
import type { CouponsState } from '../state/coupons.ts';
import { AskOver, type Question } from './AskOver.tsx';
import { plannedNumber } from './coupon-format.ts';
import { FlagList, isHeavy } from './FlagList.tsx';
import { Planned } from './Planned.tsx';
import { ResultGrid } from './ResultGrid.tsx';
import { gridColumns, resultColumns } from './result-columns.ts';
import { sortArrived, writtenOver } from './take-in.ts';

export interface ResultsViewProps {
  readonly state: CouponsState;
  readonly edits: CouponEdits;
  readonly rows: CouponRows;
  readonly set: CouponSet;
  readonly specimen: Specimen | undefined;
}

const some = (n: number, what: string): string => `${n} ${what}${n === 1 ? '' : 's'}`;
const fileOf = (set: CouponSet): string => `coupons-${set.id}.csv`;

export function ResultsView(props: ResultsViewProps): JSX.Element {
  const [errors, setErrors] = createSignal<readonly LineError[]>([]);
  const [question, setQuestion] = createSignal<Question | null>(null);
  const [said, setSaid] = createSignal('');
  const [removed, setRemoved] = createSignal<CouponResult | null>(null);
  const columns = () => resultColumns(props.specimen?.shape);
  const report = () => props.state.report(props.set.id);
  const flags = () => report()?.flags ?? [];
  const refusal = () => props.state.refusal(props.set.id);
  const inAll = (): string => {
    const planned = plannedNumber(props.set);
    const n = some(props.set.results.length, 'result');
    return planned === 0 ? n : `${n} of ${planned} planned`;
  };
  const clear = (): void => {
    setErrors([]);
    setQuestion(null);
    setSaid('');
    setRemoved(null);
  };
  let section!: HTMLElement;
  const answer = (run: () => void, done: string): (() => void) => {
    return () => {
      const asked = question() !== null;
      clear();
      run();
      setSaid(done);
      // The button that had the focus is gone: on with the next coupon.
      if (asked) section.querySelector<HTMLElement>('tbody tr:last-child input')?.focus();
    };
  };

  const takeIn = (results: readonly CouponResult[]): void => {
    const { fresh, same, clashes } = sortArrived(props.set.results, results);
    const there = same > 0 ? ` ${some(same, 'result')} stood here already.` : '';
    if (props.set.results.length + fresh.length > MOST_RESULTS) {
      setSaid(`A set takes ${MOST_RESULTS} results: nothing was taken in.`);
      return;
    }
    if (clashes.length === 0) {
      props.rows.append(fresh);
      setSaid(`${some(fresh.length, 'result')} taken in.${there}`);
      return;
    }
    const list = clashes.map(({ coupon }) => coupon).join(', ');
    const which = list.length > 80 ? `${list.slice(0, 80)} …` : list;
    const [n, others] = [clashes.length, fresh.length];
    const leave = {
      text: `Leave what is here, take in ${others} ${others === 1 ? 'other' : 'others'}`,
      run: answer(() => props.rows.append(fresh), `${some(others, 'result')} taken in.`),
    };
    const replace = answer(
      () => {
        props.rows.replace(clashes);
        props.rows.append(fresh);
      },
      `${some(n, 'result')} replaced, ${others} taken in.`,
    );
    setQuestion({
      words: `${some(n, 'coupon')} ${n === 1 ? 'is' : 'are'} here already with other figures: ${which}.`,
      answers: [
        ...(others > 0 ? [leave] : []),
        { text: `Replace ${n === 1 ? 'it' : `those ${n}`}`, run: replace },
        { text: 'Take in nothing', run: answer(() => {}, 'Nothing was taken in.') },
      ],
    });
  };
  const readText = (text: string): void => {
    clear();
    const read = readCouponsCsv(text);
    if (read.ok) takeIn(read.results);
    else setErrors(read.errors);
  };
  const paste = (text: string, row: number, column: number): void => {
    const block = readCouponBlock(text);
    if (hasHead(block)) {
      readText(text);
      return;
    }
    clear();
    if (props.rows.rows().length + block.length > MOST_RESULTS + 1) {
      setSaid(`A set takes ${MOST_RESULTS} results: nothing was pasted.`);
      return;
    }
    const put = (at: number) => answer(() => props.rows.put(at, column, block), '');
    const over = writtenOver(
      props.rows.rows(),
      block,
      row,
      gridColumns(props.specimen?.shape),
      column,
    );
    if (over === 0) {
      put(row)();
      return;
    }
    setQuestion({
      words: `What you paste would write over ${some(over, 'cell')}.`,
      answers: [
        { text: `Write over ${over === 1 ? 'it' : `those ${over}`}`, run: put(row) },
        { text: 'Put it below the last row', run: put(props.rows.rows().length - 1) },
        { text: 'Paste nothing', run: answer(() => {}, '') },
      ],
    });
  };
  const remove = (row: number): void => {
    clear();
    setRemoved(props.rows.rows()[row]?.stored ?? null);
    props.rows.remove(row);
  };

  return (
    <section class="coupon-view" aria-label="Results" ref={section}>
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
        <label class="coupon-line">
          Tested on
          <input
            class="words"
            type="date"
            value={props.set.tested ?? ''}
            onChange={(event) =>
              props.edits.set(props.set.id, 'tested', event.currentTarget.value || undefined)
            }
          />
        </label>
        <ReadFile label="File of coupon results" onText={readText} />
        <button
          type="button"
          class="link"
          onClick={() =>
            download(fileOf(props.set), writeCouponsCsv(props.set.results), 'text/csv')
          }
        >
          Results as CSV
        </button>
        <button
          type="button"
          class="link"
          onClick={() =>
            download(`to-fill-in-${fileOf(props.set)}`, couponsTemplate(props.set), 'text/csv')
          }
        >
          Empty CSV to fill in
        </button>
      </div>
      <Show when={question()} keyed>
        {(one) => <AskOver {...one} />}
      </Show>
      <For each={errors()}>
        {({ line, message }) => (
          <p class="refused" role="alert">
            Line {line}: {sentence(message)}
          </p>
        )}
      </For>
      <Show when={errors().length > 0}>
        <p class="units">Nothing was taken in.</p>
      </Show>
      <p class="coupon-said" role="status">
        {said()}
        <Show when={removed()}>
          {(one) => (
            <>
              Coupon {one().coupon} was removed.{' '}
              <button
                type="button"
                class="plain"
                onClick={() => {
                  const back = one();
                  clear();
                  props.rows.append([back]);
                }}
              >
                Put it back
              </button>
            </>
          )}
        </Show>
      </p>
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
        report={report()}
        onPaste={paste}
        onRemove={remove}
      />
      <Show when={props.set.results.length === 0}>
        <p class="units">
          Type the first load, or paste rows from a spreadsheet into a cell. Enter goes down, Tab
          goes across. The gap is that of the set where none is measured.
        </p>
      </Show>
      <label class="coupon-note">
        Note
        <input
          class="words"
          type="text"
          maxlength={4000}
          value={props.set.note ?? ''}
          onChange={(event) =>
            props.edits.set(props.set.id, 'note', event.currentTarget.value || undefined)
          }
        />
      </label>
      <FlagList flags={flags().filter((one) => !isHeavy(one))} />
    </section>
  );
}
