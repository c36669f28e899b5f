/** Results into a set, from a file or a spreadsheet, whatever their columns: nothing is written over unasked. */
import { type Accessor, createSignal } from 'solid-js';
import {
  type LineError,
  MOST_RESULTS,
  type Numbered,
  type Sheet,
} from '../../shared/coupon-sheet.ts';
import type { GridRows } from '../state/grid-rows.ts';
import type { Question } from './AskOver.tsx';
import { some } from './coupon-format.ts';
import { sortArrived, writtenOver } from './take-in.ts';

export interface EntrySource<Column extends string, Result extends Numbered> {
  readonly sheet: Sheet<Column, Result>;
  readonly rows: GridRows<Column, Result>;
  /** Of the set, as they are in the document. */
  readonly results: () => readonly Result[];
  readonly columns: () => readonly Column[];
  /** To the next coupon: called once the button that had the focus is gone. */
  readonly focusNext: () => void;
}

export interface Entry {
  /** What is wrong with a file. */
  readonly errors: Accessor<readonly LineError[]>;
  readonly question: Accessor<Question | null>;
  /** What came of it, in words. */
  readonly said: Accessor<string>;
  /** The coupon that was removed last, by its number. */
  readonly removed: Accessor<string | null>;
  putBack(): void;
  /** Comma-separated values. */
  readText(text: string): void;
  paste(text: string, row: number, column: number): void;
  remove(row: number): void;
}

export function createEntry<Column extends string, Result extends Numbered>(
  source: EntrySource<Column, Result>,
): Entry {
  const { sheet, rows } = source;
  const [errors, setErrors] = createSignal<readonly LineError[]>([]);
  const [question, setQuestion] = createSignal<Question | null>(null);
  const [said, setSaid] = createSignal('');
  const [removed, setRemoved] = createSignal<{ readonly result: Result } | null>(null);

  const clear = (): void => {
    setErrors([]);
    setQuestion(null);
    setSaid('');
    setRemoved(null);
  };
  const answer = (run: () => void, done: string): (() => void) => {
    return () => {
      const asked = question() !== null;
      clear();
      run();
      setSaid(done);
      if (asked) source.focusNext();
    };
  };
  const takeIn = (results: readonly Result[]): void => {
    const { fresh, same, clashes } = sortArrived(source.results(), results);
    const there = same > 0 ? ` ${some(same, 'result')} stood here already.` : '';
    if (source.results().length + fresh.length > MOST_RESULTS) {
      setSaid(`A set takes ${MOST_RESULTS} results: nothing was taken in.`);
      return;
    }
    if (clashes.length === 0) {
      rows.append(fresh);
      setSaid(`${some(fresh.length, 'result')} taken in.${there}`);
      return;
    }
    const list = clashes.map(({ coupon }) => coupon).join(', ');
    const which = list.length > 80 ? `${list.slice(0, 80)} …` : list;
    const [n, others] = [clashes.length, fresh.length];
    const leave = {
      text: `Leave what is here, take in ${others} ${others === 1 ? 'other' : 'others'}`,
      run: answer(() => rows.append(fresh), `${some(others, 'result')} taken in.`),
    };
    const replace = answer(
      () => {
        rows.replace(clashes);
        rows.append(fresh);
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
    const read = sheet.readCsv(text);
    if (read.ok) takeIn(read.results);
    else setErrors(read.errors);
  };

  return {
    errors,
    question,
    said,
    removed: () => removed()?.result.coupon ?? null,
    putBack() {
      const back = removed();
      clear();
      if (back) rows.append([back.result]);
    },
    readText,
    paste(text, row, column) {
      const read = sheet.readPaste(text, source.columns()[column]);
      if (read.kind === 'file') {
        readText(text);
        return;
      }
      clear();
      if (read.kind === 'refused') {
        setErrors([read]);
        return;
      }
      const { block } = read;
      if (rows.rows().length + block.length > MOST_RESULTS + 1) {
        setSaid(`A set takes ${MOST_RESULTS} results: nothing was pasted.`);
        return;
      }
      const put = (at: number) => answer(() => rows.put(at, column, block), '');
      const over = writtenOver(rows.rows(), block, row, source.columns(), column);
      if (over === 0) {
        put(row)();
        return;
      }
      setQuestion({
        words: `What you paste would write over ${some(over, 'cell')}.`,
        answers: [
          { text: `Write over ${over === 1 ? 'it' : `those ${over}`}`, run: put(row) },
          { text: 'Put it below the last row', run: put(rows.rows().length - 1) },
          { text: 'Paste nothing', run: answer(() => {}, '') },
        ],
      });
    },
    remove(row) {
      const result = rows.rows()[row]?.stored ?? null;
      clear();
      setRemoved(result && { result });
      rows.remove(row);
    },
  };
}
