/** Joints against load cases, the worst in each cell; arrow keys walk, Enter draws that state. */

import { createMemo, createSignal, For, type JSX, Show } from 'solid-js';
import {
  type CornerMargin,
  type CornersReport,
  isLowestOf,
  type JointCorners,
} from '../../../shared/reports.ts';
import { saidText } from '../../../shared/said.ts';
import { caseText, gapWords, sentence } from '../../../shared/words.ts';
import { SortHead } from '../../parts/SortHead.tsx';
import { TakeOut } from '../../parts/TakeOut.tsx';
import { cornersSheet } from '../../sheets/margin-sheets.ts';
import { pressed } from '../sort.ts';
import { CornerCell } from './CornerCell.tsx';
import { byCase, type CornerOrder, sortedCorners } from './order.ts';

export interface CornerTableProps {
  readonly report: CornersReport;
  readonly order: CornerOrder;
  readonly onOrder: (order: CornerOrder) => void;
  readonly onOpen: (jointId: string, corner: CornerMargin) => void;
}

/** Rows that are drawn at first, and again at each wish for more. */
const PAGE = 100;

/** Name of a place in the table, for the one stop of the tab key. */
const placeOf = (jointId: string, column: string): string => `${jointId} ${column}`;

interface RowProps {
  readonly joint: JointCorners;
  readonly cases: CornersReport['cases'];
  readonly stop: string | undefined;
  readonly onStop: (place: string) => void;
  readonly onOpen: (corner: CornerMargin) => void;
}

function Row(props: RowProps): JSX.Element {
  const cells = createMemo(() => new Map(props.joint.cells.map((cell) => [cell.caseId, cell])));
  const cell = (corner: CornerMargin, column: string, governs: boolean): JSX.Element => (
    <CornerCell
      corner={corner}
      jointName={props.joint.name}
      flat={props.joint.flat}
      governs={governs}
      inTabOrder={props.stop === placeOf(props.joint.jointId, column)}
      onFocus={() => props.onStop(placeOf(props.joint.jointId, column))}
      onOpen={() => props.onOpen(corner)}
    />
  );
  return (
    <tr>
      <th scope="row">
        {props.joint.name}
        <span class="joint-kind">{props.joint.description}</span>
      </th>
      <Show
        when={props.joint.refused}
        fallback={
          <>
            <For each={props.cases}>
              {({ caseId }) => (
                <td>
                  <Show when={cells().get(caseId)} fallback={<span class="no-corner">–</span>}>
                    {(found) => (
                      <Show when={found().lowest} fallback={<span class="no-corner">no load</span>}>
                        {(corner) => cell(corner(), caseId, isLowestOf(props.joint, caseId))}
                      </Show>
                    )}
                  </Show>
                </td>
              )}
            </For>
            <td class="governing">
              <Show when={props.joint.lowest} fallback={<span class="no-corner">no load</span>}>
                {(corner) => (
                  <>
                    {caseText(corner().caseName, corner().conditionName)}
                    <span class="joint-kind">
                      {corner().label}, {gapWords[corner().gapState]}
                    </span>
                  </>
                )}
              </Show>
            </td>
          </>
        }
      >
        {(error) => (
          <td class="is-refused" colspan={props.cases.length + 1}>
            Cannot be computed. {sentence(saidText(error()))}
          </td>
        )}
      </Show>
    </tr>
  );
}

export function CornerTable(props: CornerTableProps): JSX.Element {
  const [shown, setShown] = createSignal(PAGE);
  const [current, setCurrent] = createSignal<string | null>(null);
  const sorted = createMemo(() => sortedCorners(props.report.joints, props.order));
  const rows = createMemo(() => sorted().slice(0, shown()));
  const places = createMemo(
    () =>
      new Set(
        rows().flatMap(({ jointId, cells }) =>
          cells.flatMap(({ caseId, lowest }) => (lowest ? [placeOf(jointId, caseId)] : [])),
        ),
      ),
  );
  /** The cell last walked to, else the first: one stop of the tab key for the whole table. */
  const stop = createMemo((): string | undefined => {
    const last = current();
    return last !== null && places().has(last) ? last : [...places()][0];
  });

  let table!: HTMLTableElement;
  const move = (event: KeyboardEvent): void => {
    const held = document.activeElement?.closest('td');
    const row = held?.closest('tr');
    if (!held || !row) return;
    const buttons = (): HTMLButtonElement[] => [
      ...row.querySelectorAll<HTMLButtonElement>('.corner'),
    ];
    const at = buttons().indexOf(document.activeElement as HTMLButtonElement);
    let next: HTMLButtonElement | null | undefined;
    if (event.key === 'ArrowRight') next = buttons()[at + 1];
    else if (event.key === 'ArrowLeft') next = buttons()[at - 1];
    else if (event.key === 'Home') next = buttons()[0];
    else if (event.key === 'End') next = buttons().at(-1);
    else if (event.key === 'ArrowDown' || event.key === 'ArrowUp') {
      const down = event.key === 'ArrowDown';
      // The next row that has a figure in this column.
      for (
        let other = down ? row.nextElementSibling : row.previousElementSibling;
        other && !next;
        other = down ? other.nextElementSibling : other.previousElementSibling
      ) {
        next = (other as HTMLTableRowElement).cells[held.cellIndex]?.querySelector('button');
      }
    } else return;
    event.preventDefault();
    next?.focus();
  };
  const head = (by: string) => ({
    get active() {
      return props.order.by === by;
    },
    get down() {
      return props.order.down;
    },
    onSort: () => props.onOrder(pressed(props.order, by)),
  });

  return (
    <>
      <p class="take-row">
        <TakeOut what="Corners" sheet={() => cornersSheet(props.report)} />
      </p>
      <div class="corners-frame">
        <table class="corners" ref={table} onKeyDown={move}>
          <caption class="hidden">
            Joints of {props.report.project} against load cases: the lowest margin of each over gaps
            and conditions
          </caption>
          <thead>
            <tr>
              <SortHead {...head('joint')}>Joint</SortHead>
              <For each={props.report.cases}>
                {({ caseId, name }) => <SortHead {...head(byCase(caseId))}>{name}</SortHead>}
              </For>
              <SortHead {...head('margin')}>Governing</SortHead>
            </tr>
          </thead>
          <tbody>
            <For each={rows()}>
              {(joint) => (
                <Row
                  joint={joint}
                  cases={props.report.cases}
                  stop={stop()}
                  onStop={setCurrent}
                  onOpen={(corner) => props.onOpen(joint.jointId, corner)}
                />
              )}
            </For>
          </tbody>
        </table>
      </div>
      <Show when={sorted().length > rows().length}>
        <p class="corners-more">
          {rows().length} of {sorted().length} joints are shown.{' '}
          <button type="button" class="link" onClick={() => setShown(shown() + PAGE)}>
            Show {Math.min(PAGE, sorted().length - rows().length)} more
          </button>
        </p>
      </Show>
    </>
  );
}
