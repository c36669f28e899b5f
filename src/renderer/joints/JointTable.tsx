/** Every joint with what limits it; arrow keys move from one to the next, Enter opens it. */

import { createEffect, createMemo, createSignal, For, type JSX, on, Show } from 'solid-js';
import type { CheckReport, JointSummary } from '../../shared/reports.ts';
import { saidText } from '../../shared/said.ts';
import { displayUnit } from '../../shared/units.ts';
import { TourNote } from '../help/TourNote.tsx';
import { useTour } from '../help/tour.ts';
import { jointNote } from '../help/tour-words.ts';
import { SortHead } from '../parts/SortHead.tsx';
import { TakeOut } from '../parts/TakeOut.tsx';
import { jointsSheet } from '../sheets/margin-sheets.ts';
import type { JointDeeds } from '../state/joint-deeds.ts';
import { COLUMNS, JointRow } from './JointRow.tsx';
import { ownFlags, sharedFlags } from './shared-flags.ts';
import { type Order, pressed, type SortKey, sorted } from './sort.ts';
import { type Held, steady } from './steady.ts';

export interface JointTableProps {
  /** What the project is called. */
  readonly project: string;
  readonly joints: readonly JointSummary[];
  /** Null as long as it does not hold every joint of the project. */
  readonly report: CheckReport | null;
  /** Joints of strips. */
  readonly flat: ReadonlySet<string>;
  readonly onOpen: (id: string) => void;
  readonly deeds: JointDeeds;
}

export function JointTable(props: JointTableProps): JSX.Element {
  let table: HTMLTableElement | undefined;
  const [order, setOrder] = createSignal<Order>({ by: 'margin', down: false });
  const [pointed, setPointed] = createSignal(false);
  const [focused, setFocused] = createSignal(false);
  const underHand = createMemo(() => pointed() || focused());
  const filling = createMemo(() => props.report === null);
  const ordered = createMemo(() => sorted(props.joints, order()));
  /** Rows are built anew with each report: whether one of them held the focus before. */
  let held = false;
  let orderBefore = order();
  const shown = createMemo<Held<JointSummary>>(
    (before) => {
      held = table?.contains(document.activeElement) ?? false;
      const asked = order() !== orderBefore;
      orderBefore = order();
      const now = { filling: filling(), underHand: underHand() && !asked };
      return steady(before, ordered(), now, ({ jointId }) => jointId);
    },
    { rows: [], kept: false },
  );
  const rows = createMemo(() => shown().rows);
  const inOrder = createMemo(() => rows().every((row, i) => row === ordered()[i]));
  const head = (by: SortKey) => ({
    get active() {
      return order().by === by && inOrder();
    },
    get down() {
      return order().down;
    },
    // Rows that were kept where they stood are put in order by a press, not turned round.
    onSort: () => setOrder(inOrder() ? pressed(order(), by) : { by, down: order().down }),
  });
  const shared = createMemo(() => sharedFlags(props.joints));
  const tour = useTour();
  const note = createMemo(() =>
    tour?.step() === 'joint' && props.report ? jointNote(props.report) : null,
  );
  const [current, setCurrent] = createSignal<string | null>(null);
  /** One row at a time is a stop of the tab key: the one last walked to, else the first. */
  const tabStop = createMemo(() =>
    rows().some(({ jointId }) => jointId === current()) ? current() : rows()[0]?.jointId,
  );

  createEffect(
    on(rows, () => {
      if (!held || table?.contains(document.activeElement)) return;
      names()
        .find(({ tabIndex }) => tabIndex === 0)
        ?.focus();
    }),
  );
  const names = (): HTMLButtonElement[] => [
    ...(table?.querySelectorAll<HTMLButtonElement>('.joint-name') ?? []),
  ];
  const move = (event: KeyboardEvent): void => {
    const all = names();
    const at = all.indexOf(document.activeElement as HTMLButtonElement);
    if (at < 0) return;
    const id = all[at]?.dataset.joint;
    if (id !== undefined && (event.key === 'F2' || event.key === 'Delete')) {
      event.preventDefault();
      void (event.key === 'F2' ? props.deeds.rename(id) : props.deeds.remove(id));
      return;
    }
    const to = { ArrowDown: at + 1, ArrowUp: at - 1, Home: 0, End: all.length - 1 }[event.key];
    if (to === undefined) return;
    event.preventDefault();
    all[Math.max(0, Math.min(all.length - 1, to))]?.focus();
  };

  return (
    <>
      <table
        class="joints"
        ref={table}
        onKeyDown={move}
        onPointerEnter={() => setPointed(true)}
        onPointerLeave={() => setPointed(false)}
        onFocusIn={() => setFocused(true)}
        onFocusOut={({ relatedTarget }) =>
          setFocused(relatedTarget instanceof Node && (table?.contains(relatedTarget) ?? false))
        }
      >
        <caption class="hidden">Joints of {props.project}, with their lowest margins</caption>
        <thead>
          <tr>
            <SortHead {...head('name')}>Joint</SortHead>
            <th scope="col" class="number">
              Overlap, {displayUnit('overlap').symbol}
            </th>
            <SortHead {...head('margin')}>Lowest margin</SortHead>
            <th scope="col">Mode</th>
            <th scope="col">Case</th>
            <th scope="col">Place, clocking</th>
            <th scope="col">Gap</th>
            <td>
              <Show when={props.report}>
                {(report) => <TakeOut what="Joints" sheet={() => jointsSheet(report())} />}
              </Show>
            </td>
          </tr>
        </thead>
        <For each={rows()}>
          {(joint) => (
            <>
              <JointRow
                joint={joint}
                flags={ownFlags(joint, shared())}
                flat={props.flat.has(joint.jointId)}
                inTabOrder={joint.jointId === tabStop()}
                deeds={props.deeds}
                onFocus={() => setCurrent(joint.jointId)}
                onOpen={() => props.onOpen(joint.jointId)}
              />
              <Show when={note()?.jointId === joint.jointId && note()}>
                {(found) => (
                  <tbody class="joint-tour">
                    <tr>
                      <td colspan={COLUMNS}>
                        <TourNote
                          step="joint"
                          text={found().text}
                          next={{
                            text: `Open ${found().name}`,
                            run: () => props.onOpen(found().jointId),
                          }}
                        />
                      </td>
                    </tr>
                  </tbody>
                )}
              </Show>
            </>
          )}
        </For>
      </table>
      <For each={shared()}>{(flag) => <p class="shared-flag">{saidText(flag)}</p>}</For>
    </>
  );
}
