/** One joint in its frame sizes: a table of what differs, and what each of them needs. */

import { createSignal, For, Index, type JSX, Show } from 'solid-js';
import type { FlatSize, SleeveSize } from '../../../shared/project.ts';
import type { SizesReport } from '../../../shared/reports.ts';
import { sizesAnswer, sizeText } from '../../../shared/sizing-words.ts';
import { signed } from '../../../shared/words.ts';
import { TakeOut } from '../../parts/TakeOut.tsx';
import { sizesSheet } from '../../sheets/study-sheets.ts';
import { createFound } from '../../state/found.ts';
import { FoundStatus } from '../FoundStatus.tsx';
import type { ViewProps } from '../views.ts';
import { columnsOf, newSize } from './columns.ts';
import { SizeRow } from './SizeRow.tsx';

export function SizesView(props: ViewProps): JSX.Element {
  /** Fields stand for places in the document: another joint has fields of its own. */
  const key = (): string =>
    `${props.project.opening()} ${props.index} ${props.joint.id} ${props.joint.type}`;
  return (
    <Show when={key()} keyed>
      {(_key) => <Table {...props} />}
    </Show>
  );
}

function Table(props: ViewProps): JSX.Element {
  const found = createFound('joint.sizes', {
    bridge: props.bridge,
    project: props.project,
    index: () => props.index,
  });
  const [each, setEach] = createSignal(found.answer()?.each ?? false);
  const sizes = (): readonly (SleeveSize | FlatSize)[] => props.joint.sizes ?? [];
  const columns = columnsOf(props.joint);
  const path = ['joints', props.index, 'sizes'] as const;
  const resultOf = (id: string) =>
    found.answer()?.sizes.find(({ sizeId }) => sizeId === id) ?? null;

  return (
    <div class="sizes" classList={{ 'is-old': found.old() }}>
      <form
        class="find-question"
        onSubmit={(event) => {
          event.preventDefault();
          void found.ask({ each: each() });
        }}
      >
        <fieldset class="segments" aria-label="Overlap">
          <For
            each={[
              { value: false, text: 'One overlap for all' },
              { value: true, text: 'One each' },
            ]}
          >
            {({ value, text }) => (
              <label>
                <input
                  type="radio"
                  name="each"
                  checked={each() === value}
                  onChange={() => setEach(value)}
                />
                <span>{text}</span>
              </label>
            )}
          </For>
        </fieldset>
        <button
          type="submit"
          class="plain is-first"
          disabled={sizes().length === 0 || props.sizing.issues.stale()}
        >
          Analyse
        </button>
        <button
          type="button"
          class="link"
          onClick={() =>
            props.project.edit(path, [...JSON.parse(JSON.stringify(sizes())), newSize(sizes())])
          }
        >
          Add a size
        </button>
      </form>
      <FoundStatus
        found={found}
        label="Frame sizes"
        stopped="Stopped before all sizes were computed."
      />
      <Show when={found.old()}>
        <p class="stale-word">Figures of the joint before its last change. Analyse again.</p>
      </Show>
      <Show
        when={sizes().length > 0}
        fallback={
          <p class="asked-note">
            The same joint in other sizes of the frame: add them, give what differs, and they are
            analysed together.
          </p>
        }
      >
        <p class="take-row">
          <TakeOut what="Frame sizes" sheet={() => sizesSheet(props.joint, found.answer())} />
        </p>
        <div class="sizes-sheet">
          <table class="rows">
            <caption class="hidden">Frame sizes of {props.joint.name}</caption>
            <thead>
              <tr>
                <th scope="col">Size</th>
                <For each={columns}>{({ title }) => <th scope="col">{title}</th>}</For>
                <th scope="col">Loads</th>
                <th scope="col" class="number">
                  {`At ${sizeText('overlap', found.answer()?.overlap ?? props.joint.overlap)}`}
                </th>
                <th scope="col" class="number">
                  Needs
                </th>
                <th scope="col">
                  <span class="hidden">Remove</span>
                </th>
              </tr>
            </thead>
            <Index each={sizes()}>
              {(size, place) => (
                <SizeRow
                  project={props.project}
                  issues={props.sizing.issues}
                  joint={props.joint}
                  index={props.index}
                  place={place}
                  size={size}
                  columns={columns}
                  result={resultOf(size().id)}
                  worst={found.answer()?.worst === size().id}
                  onRemove={() =>
                    props.project.edit(
                      path,
                      JSON.parse(JSON.stringify(sizes().filter((_size, i) => i !== place))),
                    )
                  }
                />
              )}
            </Index>
          </table>
        </div>
      </Show>
      <Show when={found.answer()}>
        {(report) => (
          <Common
            report={report()}
            old={found.old()}
            present={props.joint.overlap}
            onUse={(overlap) => props.project.edit(['joints', props.index, 'overlap'], overlap)}
          />
        )}
      </Show>
    </div>
  );
}

/** The overlap that serves all sizes, with the figures of its check. */
function Common(props: {
  readonly report: SizesReport;
  readonly old: boolean;
  readonly present: number;
  readonly onUse: (overlap: number) => void;
}): JSX.Element {
  const nameOf = (id: string): string =>
    props.report.sizes.find(({ sizeId }) => sizeId === id)?.name ?? id;
  return (
    <div class="sizes-common">
      <div class="find-answer">
        <p>{sizesAnswer(props.report)}</p>
        <Show when={props.report.common}>
          {(common) => (
            <button
              type="button"
              class="plain is-small"
              aria-label={`Use it: ${sizeText('overlap', common().overlap)}`}
              title={`The overlap is ${sizeText('overlap', props.present)} now`}
              disabled={props.old || common().overlap === props.present}
              onClick={() => props.onUse(common().overlap)}
            >
              Use it
            </button>
          )}
        </Show>
      </div>
      <Show when={props.report.common}>
        {(common) => (
          <p class="asked-note">
            {`Checked with ${sizeText('overlap', common().overlap)}: ${common()
              .checks.map(({ sizeId, margin }) => `${nameOf(sizeId)} ${signed(margin.margin)}`)
              .join(', ')}.`}
          </p>
        )}
      </Show>
    </div>
  );
}
