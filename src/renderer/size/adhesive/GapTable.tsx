/** Strength against gap, from coupons: rows of a gap and what is left there. */

import { createUniqueId, Index, type JSX, Show } from 'solid-js';
import type { Knockdowns } from '../../../shared/project.ts';
import { quantities } from '../../../shared/quantities.ts';
import { RemoveButton } from '../../parts/RemoveButton.tsx';
import { type Path, valueAt } from '../../state/project.ts';
import type { FieldSource } from '../entry.ts';
import { NumberField } from '../NumberField.tsx';

export interface GapTableProps extends FieldSource {
  /** Of the list of rows. */
  readonly path: Path;
}

type GapRow = Knockdowns['gap'][number];
const MOST = 40;

const WIDEST = quantities.gap.max;
const STEP = 0.1;
const rounded = (gap: number): number => Number(gap.toFixed(3));

/**
 * A step past the widest, or where that is the end of the range the widest still free, and as strong
 * as the last row: to be changed, not to be believed. No two rows may stand at one gap.
 */
function next(rows: readonly GapRow[]): GapRow {
  const last = rows.at(-1);
  if (last === undefined) return { gap: 0.2, factor: 1 };
  let gap = Math.min(WIDEST, rounded(Math.max(...rows.map((row) => row.gap)) + STEP));
  while (rows.some((row) => row.gap === gap)) gap = rounded(gap - STEP);
  return { gap, factor: last.factor };
}

export function GapTable(props: GapTableProps): JSX.Element {
  const title = createUniqueId();
  const rows = (): readonly GapRow[] =>
    (valueAt(props.project.document(), props.path) as readonly GapRow[] | undefined) ?? [];
  const add = (): void => props.project.edit([...props.path, rows().length], next(rows()));
  const remove = (k: number): void =>
    props.project.edit(
      props.path,
      rows().filter((_, i) => i !== k),
    );
  return (
    <section class="part" aria-labelledby={title}>
      <h3 id={title}>Gap</h3>
      <p class="about">
        Strength at a gap, from coupons; linear between rows, the nearest beyond them.
        {rows().length === 0 ? ' No row: the gap takes nothing away.' : ''}
      </p>
      <Index each={rows()}>
        {(_row, k) => (
          <div class="row gap-row">
            <NumberField
              project={props.project}
              issues={props.issues}
              input={{
                path: [...props.path, k, 'gap'],
                quantity: 'gap',
                name: `Knockdown, gap of row ${k + 1}`,
                help: 'Gap of the coupons.',
                usual: { from: 0.05, to: 1 },
              }}
            />
            <NumberField
              project={props.project}
              issues={props.issues}
              input={{
                path: [...props.path, k, 'factor'],
                quantity: 'knockdown',
                name: `Knockdown, factor of row ${k + 1}`,
                help: 'Their strength over that at the gap of the states above.',
              }}
            />
            <RemoveButton
              label={`Remove gap row ${k + 1}`}
              title="Take this row away"
              onRemove={() => remove(k)}
            />
          </div>
        )}
      </Index>
      <Show when={rows().length < MOST}>
        <button type="button" class="link" onClick={add}>
          Add a gap
        </button>
      </Show>
    </section>
  );
}
