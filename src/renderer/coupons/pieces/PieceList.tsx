/** The test pieces of the project: made, copied, renamed, their sizes changed; removed where no set uses them. */

import { createEffect, createMemo, createSignal, For, type JSX, Show } from 'solid-js';
import type { Lap } from '../../../shared/convert-lap.ts';
import { MOST_PIECES, pieceLaps, pieceWords, usesOf } from '../../../shared/coupon-pieces.ts';
import type { Project } from '../../../shared/project.ts';
import type { Specimen } from '../../../shared/project-coupons.ts';
import { TakeOut } from '../../parts/TakeOut.tsx';
import { piecesSheet } from '../../sheets/coupon-sheets.ts';
import { Choice } from '../../size/Choice.tsx';
import type { CouponsState } from '../../state/coupons.ts';
import { createIssues } from '../../state/issues.ts';
import { createPieceEdits } from '../../state/piece-edits.ts';
import type { ProjectState } from '../../state/project.ts';
import { PieceRow } from './PieceRow.tsx';
import { usedBy } from './piece-words.ts';

export interface PieceListProps {
  readonly source: ProjectState;
  readonly project: Project;
  readonly state: CouponsState;
}

/** The place of a refused size: the question holds other pieces than the document. */
const inShape = (field: string, place: number): string =>
  field.replace(/^coupons\.specimens\.\d+\./, `coupons.specimens.${place}.`);

export function PieceList(props: PieceListProps): JSX.Element {
  const edits = createPieceEdits(props.source);
  const issues = createIssues();
  const [lap, setLap] = createSignal<Lap>('flat-single');
  const [opened, setOpened] = createSignal<string | null>(null);
  const [said, setSaid] = createSignal('');
  const [removed, setRemoved] = createSignal<Specimen | null>(null);
  let section!: HTMLElement;

  const all = () => props.state.specimens();
  /** By id: a row lasts as long as its piece, whatever is changed of it. */
  const ids = createMemo(() => all().map(({ id }) => id));
  const placeOf = (id: string): number => all().findIndex((one) => one.id === id);
  const clear = (): void => {
    setSaid('');
    setRemoved(null);
  };
  const show = (id: string | null, words: string): void => {
    clear();
    if (id === null) return;
    setOpened(id);
    setSaid(words);
    const name = section.querySelector<HTMLInputElement>(`[data-piece="${id}"]`);
    name?.focus();
    name?.select();
  };
  const remove = (id: string): void => {
    clear();
    const piece = all()[placeOf(id)];
    const gone = edits.remove(id);
    if (gone) {
      setRemoved(gone);
      // The button that had the focus is gone with its row.
      section.focus();
    } else if (piece) setSaid(usedBy(piece.name, usesOf(props.project.coupons!, id)));
  };
  // What the core says of sets of the piece that is open, at its own field.
  createEffect(() => {
    const id = opened();
    const sets = props.state.sets().filter(({ specimen }) => specimen === id);
    const found = sets
      .map((set) => props.state.refusal(set.id))
      .find((error) => error?.field.startsWith('coupons.specimens.'));
    issues.setRefusal(
      id !== null && found ? { ...found, field: inShape(found.field, placeOf(id)) } : null,
    );
  });

  return (
    <section class="piece-list" aria-labelledby="piece-list-title" ref={section} tabindex="-1">
      <h2 id="piece-list-title">Test pieces</h2>
      <Show
        when={ids().length > 0}
        fallback={
          <p class="units">
            None yet: those of the standards and joints come with their sets. One of your own is
            made here, and chosen above then.
          </p>
        }
      >
        <p class="take-row">
          <TakeOut what="Test pieces" sheet={() => piecesSheet(all())} />
        </p>
        <table class="piece-table">
          <caption class="hidden">Test pieces, with their sizes and where these are from</caption>
          <thead>
            <tr>
              <th scope="col">Test piece</th>
              <th scope="col">Sizes</th>
              <th scope="col">Sizes from</th>
              <th scope="col">Used by</th>
              <th scope="col">
                <span class="hidden">Change</span>
              </th>
              <th scope="col">
                <span class="hidden">Remove</span>
              </th>
            </tr>
          </thead>
          <tbody>
            <For each={ids()}>
              {(id) => (
                <Show when={all()[placeOf(id)]}>
                  {(piece) => (
                    <PieceRow
                      project={edits.fields}
                      issues={issues}
                      document={props.project}
                      piece={piece()}
                      place={placeOf(id)}
                      open={opened() === id}
                      onOpen={(open) => {
                        clear();
                        setOpened(open ? id : null);
                      }}
                      onRename={(name) => edits.rename(id, name)}
                      onCopy={() => show(edits.copy(id), 'A copy, as one of your own.')}
                      onRemove={() => remove(id)}
                    />
                  )}
                </Show>
              )}
            </For>
          </tbody>
        </table>
      </Show>
      <form
        class="coupon-tools"
        aria-label="New test piece"
        onSubmit={(event) => {
          event.preventDefault();
          show(edits.add(lap()), 'Made, with sizes to begin with: put in your own.');
        }}
      >
        <Choice
          name="Kind of the new test piece"
          help="testPiece"
          options={pieceLaps.map((value) => ({ value, text: pieceWords[value] }))}
          value={lap()}
          onChoose={(value) => setLap(value as Lap)}
        />
        <button
          type="submit"
          class="plain"
          disabled={props.project.adherends.length === 0 || ids().length >= MOST_PIECES}
        >
          New test piece
        </button>
        <p class="coupon-said" role="status">
          {said()}
          <Show when={removed()}>
            {(piece) => (
              <>
                “{piece().name}” was removed.{' '}
                <button
                  type="button"
                  class="plain"
                  onClick={() => {
                    const back = piece();
                    clear();
                    edits.putBack(back);
                    section.focus();
                  }}
                >
                  Put it back
                </button>
              </>
            )}
          </Show>
        </p>
      </form>
    </section>
  );
}
