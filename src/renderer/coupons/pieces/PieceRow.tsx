/** A test piece in the list: its name, its sizes in a line, and the form beneath while it is open. */
import { createMemo, createUniqueId, type JSX, Show } from 'solid-js';
import {
  pieceLap,
  pieceMaterials,
  pieceSizes,
  pieceWords,
  usesOf,
} from '../../../shared/coupon-pieces.ts';
import type { Project } from '../../../shared/project.ts';
import type { Specimen } from '../../../shared/project-coupons.ts';
import { RemoveButton } from '../../parts/RemoveButton.tsx';
import type { FieldSource } from '../../size/entry.ts';
import { PieceForm } from './PieceForm.tsx';
import { fromText, useText } from './piece-words.ts';

export interface PieceRowProps extends FieldSource {
  readonly document: Project;
  readonly piece: Specimen;
  readonly place: number;
  readonly open: boolean;
  readonly onOpen: (open: boolean) => void;
  readonly onRename: (name: string) => void;
  readonly onCopy: () => void;
  readonly onRemove: () => void;
}

export const PIECE_COLUMNS = 6;

export function PieceRow(props: PieceRowProps): JSX.Element {
  const id = createUniqueId();
  const use = createMemo(() => usesOf(props.document.coupons ?? { sets: [] }, props.piece.id));
  const materials = (): string =>
    pieceMaterials(props.piece.shape)
      .map((one) => props.document.adherends.find((other) => other.id === one)?.name ?? one)
      .join(', ');
  return (
    <>
      <tr classList={{ 'is-open': props.open }}>
        <th scope="row">
          <input
            class="words"
            type="text"
            maxlength={120}
            autocomplete="off"
            data-piece={props.piece.id}
            aria-label={`Name of test piece ${props.piece.name}`}
            value={props.piece.name}
            onChange={(event) => {
              props.onRename(event.currentTarget.value);
              event.currentTarget.value = props.piece.name;
            }}
          />
          <span class="units">
            {[props.piece.standard, pieceWords[pieceLap(props.piece.shape)]]
              .filter(Boolean)
              .join(' · ')}
          </span>
        </th>
        <td>
          {pieceSizes(props.piece.shape)}
          <span class="units">{materials()}</span>
        </td>
        <td class="piece-from">{fromText(props.piece)}</td>
        <td>{useText(use())}</td>
        <td class="piece-buttons">
          <button
            type="button"
            class="link"
            aria-label={`Sizes of ${props.piece.name}`}
            aria-expanded={props.open}
            aria-controls={props.open ? id : undefined}
            onClick={() => props.onOpen(!props.open)}
          >
            Sizes
          </button>
          <button
            type="button"
            class="link"
            aria-label={`Copy ${props.piece.name}`}
            title="The same sizes as a test piece of your own"
            onClick={() => props.onCopy()}
          >
            Copy
          </button>
        </td>
        <td class="end">
          <RemoveButton
            label={`Remove test piece ${props.piece.name}`}
            title="Remove this test piece"
            onRemove={() => props.onRemove()}
          />
        </td>
      </tr>
      <Show when={props.open}>
        <tr class="piece-edit" id={id}>
          <td colspan={PIECE_COLUMNS}>
            {/* Fields are of one place and one kind: they are built anew for another, never for a figure. */}
            <Show when={`${props.place} ${props.piece.shape.type}`} keyed>
              {(_place) => (
                <PieceForm
                  project={props.project}
                  issues={props.issues}
                  document={props.document}
                  piece={props.piece}
                  place={props.place}
                  use={use()}
                  onCopy={props.onCopy}
                />
              )}
            </Show>
          </td>
        </tr>
      </Show>
    </>
  );
}
