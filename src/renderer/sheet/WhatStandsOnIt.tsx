/** What is to stand on the sheet: the table of all joints, details of which, the working of which margins. */
import { For, type JSX, Show } from 'solid-js';
import type { Project } from '../../shared/project.ts';
import type { CheckReport } from '../../shared/reports.ts';
import { type Column, sameColumn } from '../state/compared.ts';
import { LOWEST, MOST_DETAILS, type SheetState, type WorkingChoice } from '../state/sheet.ts';
import { papers } from './paper.ts';

export interface WhatStandsOnItProps {
  readonly sheet: SheetState;
  readonly project: Project;
  /** For the joints that do not reach the target; null until it is known. */
  readonly check: CheckReport | null;
}

const workings: readonly { readonly id: WorkingChoice; readonly text: string }[] = [
  { id: 'none', text: 'none' },
  { id: 'lowest', text: `of the ${LOWEST === 3 ? 'three' : LOWEST} lowest margins` },
  { id: 'all', text: 'of all margins' },
];

export function WhatStandsOnIt(props: WhatStandsOnItProps): JSX.Element {
  const sheet = () => props.sheet;
  const joints = (): Column[] =>
    props.project.joints.map(({ id }) => ({ kind: 'joint' as const, id }));
  const below = (): Column[] =>
    props.check?.joints
      .filter(({ lowest }) => lowest !== null && lowest.state !== 'holds')
      .map(({ jointId }) => ({ kind: 'joint' as const, id: jointId })) ?? [];
  const isChosen = (column: Column): boolean =>
    sheet()
      .chosen()
      .some((one) => sameColumn(one, column));
  const full = (): boolean => sheet().chosen().length >= MOST_DETAILS;
  const rows = (): readonly { readonly column: Column; readonly name: string }[] => [
    ...props.project.joints.map(({ id, name }) => ({
      column: { kind: 'joint' as const, id },
      name,
    })),
    ...(props.project.variants ?? []).map(({ joint }) => ({
      column: { kind: 'variant' as const, id: joint.id },
      name: `${joint.name} (variant)`,
    })),
  ];
  return (
    <>
      <fieldset class="sheet-choice">
        <legend>Paper</legend>
        <For each={papers}>
          {(paper) => (
            <label class="tick">
              <input
                type="radio"
                name="paper"
                checked={sheet().paper() === paper}
                onChange={() => sheet().setPaper(paper)}
              />
              {paper}
            </label>
          )}
        </For>
      </fieldset>
      <fieldset class="sheet-choice">
        <legend>All joints</legend>
        <label class="tick">
          <input
            type="checkbox"
            checked={sheet().table()}
            onChange={(event) => sheet().setTable(event.currentTarget.checked)}
          />
          Table, lowest margin first
        </label>
      </fieldset>
      <fieldset class="sheet-choice">
        <legend>
          Details of {sheet().chosen().length} of {props.project.joints.length}{' '}
          {props.project.joints.length === 1 ? 'joint' : 'joints'}
        </legend>
        <div class="sheet-joints">
          <For each={rows()}>
            {({ column, name }) => (
              <label class="tick">
                <input
                  type="checkbox"
                  checked={isChosen(column)}
                  disabled={full() && !isChosen(column)}
                  onChange={(event) => sheet().choose(column, event.currentTarget.checked)}
                />
                {name}
              </label>
            )}
          </For>
        </div>
        <p class="sheet-all">
          <Show when={joints().length <= MOST_DETAILS}>
            <button type="button" class="link" onClick={() => sheet().chooseOnly(joints())}>
              All
            </button>
          </Show>
          <button type="button" class="link" onClick={() => sheet().chooseOnly([])}>
            None
          </button>
          <Show when={below().length > 0}>
            <button type="button" class="link" onClick={() => sheet().chooseOnly(below())}>
              Below the target
            </button>
          </Show>
        </p>
        <Show when={full()}>
          <p class="units">A sheet takes the details of {MOST_DETAILS} joints.</p>
        </Show>
      </fieldset>
      <fieldset class="sheet-choice">
        <legend>Working</legend>
        <For each={workings}>
          {({ id, text }) => (
            <label class="tick">
              <input
                type="radio"
                name="working"
                checked={sheet().working() === id}
                onChange={() => sheet().setWorking(id)}
              />
              {text}
            </label>
          )}
        </For>
      </fieldset>
    </>
  );
}
