/** What can be set beside the joint: its other lap made equal, a copy, or what the project has already. */

import { createMemo, createSignal, createUniqueId, For, type JSX, Show } from 'solid-js';
import { pliesOf } from '../../shared/lap-variant.ts';
import type { Joint, Project } from '../../shared/project.ts';
import type { Equal } from '../../shared/reports-compare.ts';
import { saidText } from '../../shared/said.ts';
import { sentence } from '../../shared/words.ts';
import { JobProgress } from '../parts/JobProgress.tsx';
import { Choice } from '../size/Choice.tsx';
import { type Column, columnKey, found, letterOf, sameColumn } from '../state/compared.ts';
import type { Comparison } from '../state/comparison.ts';

export interface AddListProps {
  readonly comparison: Comparison;
  readonly project: Project;
  /** Told when a column has come, or is on its way no more. */
  readonly onDone: () => void;
}

const equals: readonly { readonly equal: Equal; readonly text: string }[] = [
  { equal: 'overlap', text: 'overlap' },
  { equal: 'mass', text: 'added mass' },
  { equal: 'margin', text: 'margin' },
];

export function AddList(props: AddListProps): JSX.Element {
  const making = () => props.comparison.making;
  const columns = () =>
    props.comparison.columns().flatMap((column, i) => {
      const joint = found(props.project, column)?.joint;
      return joint ? [{ column, joint, letter: letterOf(i) }] : [];
    });
  const first = (): Joint | undefined => columns()[0]?.joint;
  const other = () => {
    const joint = first();
    return joint && pliesOf(joint) === 'single' ? 'double' : 'single';
  };
  const [tried, setTried] = createSignal<Equal>('overlap');
  const labelOf = (equal: Equal): string =>
    `${other() === 'double' ? 'Double' : 'Single'} lap at equal ${equals.find((one) => one.equal === equal)!.text}`;
  const make = async (equal: Equal): Promise<void> => {
    setTried(equal);
    if (await making().lap(other(), equal)) props.onDone();
  };

  /** Variants first: they were made to be compared. */
  const rest = createMemo(() => {
    const all: (Column & { readonly text: string })[] = [
      ...(props.project.variants ?? []).map(({ joint }) => ({
        kind: 'variant' as const,
        id: joint.id,
        text: `variant: ${joint.name}`,
      })),
      ...props.project.joints.map(({ id, name }) => ({ kind: 'joint' as const, id, text: name })),
    ];
    return all.filter(
      (one) => !props.comparison.columns().some((column) => sameColumn(column, one)),
    );
  });
  const [picked, setPicked] = createSignal('');
  const pick = () => rest().find((one) => columnKey(one) === picked()) ?? rest()[0];

  return (
    <div class="add-list">
      <section aria-label="The other lap">
        <h3>
          {first()?.name} as a {other()} lap, at equal …
        </h3>
        <div class="add-buttons">
          <For each={equals}>
            {({ equal, text }) => (
              <button
                type="button"
                class="plain"
                disabled={making().job.running()}
                aria-label={labelOf(equal)}
                onClick={() => void make(equal)}
              >
                {text}
              </button>
            )}
          </For>
        </div>
        <JobProgress job={making().job} label={labelOf(tried())} />
        <Show when={making().refusal()}>
          {(error) => (
            <p class="refused" role="alert">
              {labelOf(tried())}: {sentence(saidText(error()))}
            </p>
          )}
        </Show>
        <p class="units">
          It becomes a variant of the joint in this project, saved with it, and no part of the
          frame.
        </p>
      </section>
      <section aria-label="A copy to change by hand">
        <h3>A copy to change by hand, of …</h3>
        <div class="add-buttons">
          <For each={columns()}>
            {({ joint, letter }) => (
              <button
                type="button"
                class="plain"
                onClick={() => {
                  making().copy(joint);
                  props.onDone();
                }}
              >
                {columns().length > 1 ? `${letter} ${joint.name}` : joint.name}
              </button>
            )}
          </For>
        </div>
      </section>
      <Show when={pick()}>
        {(chosen) => (
          <section aria-label="In the project already">
            <h3>In the project already</h3>
            <div class="add-buttons">
              <Choice
                name="Another joint or variant"
                help="column"
                options={rest().map((one) => ({ value: columnKey(one), text: one.text }))}
                value={columnKey(chosen())}
                onChoose={setPicked}
              />
              <button
                type="button"
                class="plain"
                onClick={() => {
                  props.comparison.add({ kind: chosen().kind, id: chosen().id });
                  props.onDone();
                }}
              >
                Add
              </button>
            </div>
          </section>
        )}
      </Show>
    </div>
  );
}

/** The same behind a button, for when there is something to look at already. */
export function AddColumn(props: Omit<AddListProps, 'onDone'>): JSX.Element {
  const [open, setOpen] = createSignal(false);
  const id = createUniqueId();
  let button!: HTMLButtonElement;
  const close = (): void => {
    setOpen(false);
    props.comparison.making.forget();
    button.focus();
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: Escape closes what the button opened, from anywhere inside.
    <div
      class="add-column"
      onKeyDown={(event) => {
        if (event.key !== 'Escape' || !open()) return;
        event.stopPropagation();
        close();
      }}
    >
      <button
        ref={button}
        type="button"
        class="plain"
        aria-expanded={open()}
        aria-controls={open() ? id : undefined}
        onClick={() => (open() ? close() : setOpen(true))}
      >
        Add a column
      </button>
      <Show when={open()}>
        <div class="add-sheet" id={id}>
          <Show
            when={!props.comparison.full()}
            fallback={<p>Four columns are the most: take one away first.</p>}
          >
            <AddList comparison={props.comparison} project={props.project} onDone={close} />
          </Show>
        </div>
      </Show>
    </div>
  );
}
