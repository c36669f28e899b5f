/** A wall of plies: its stack as text and drawn, what there is to know of it, its figures and its ply. */

import { For, type JSX, Show } from 'solid-js';
import type { LaminateReport } from '../../../shared/reports.ts';
import { saidText } from '../../../shared/said.ts';
import { listed } from '../../../shared/words.ts';
import type { Path } from '../../state/project.ts';
import { Copies } from '../Copies.tsx';
import { Disclosure } from '../Disclosure.tsx';
import type { FieldSource } from '../entry.ts';
import { SourceField } from '../SourceField.tsx';
import { TextField } from '../TextField.tsx';
import { LaminateFigures } from './LaminateFigures.tsx';
import { NoteMark } from './NoteMark.tsx';
import { PlyChoice } from './PlyChoice.tsx';
import { PlyDrawing } from './PlyDrawing.tsx';
import { plyPicture } from './ply-rows.ts';
import { StackField } from './StackField.tsx';

export interface StackEditorProps extends FieldSource {
  /** Place of the laminate among the adherends. */
  readonly index: number;
  /** The part that is made of it, such as `Tube`. */
  readonly part: string;
  readonly flat: boolean;
  readonly report: LaminateReport | null;
  /** Other joints that use the same laminate. */
  readonly sharedWith: readonly string[];
  /** Makes the part of a new laminate instead, and leaves this one to the others. */
  readonly onAnother: () => void;
  /** Where the joint names it. */
  readonly path: Path;
  /** Name and source are to be open. */
  readonly opened: boolean;
  readonly onFresh: (id: string | null) => void;
}

export function StackEditor(props: StackEditorProps): JSX.Element {
  const faces = (): readonly [string, string] =>
    props.flat ? ['lower', 'upper'] : ['inside', 'outside'];
  const good = (report: LaminateReport): string =>
    [report.symmetric && 'symmetric', report.balanced && 'balanced'].filter(Boolean).join(', ');
  const drawnWhole = (report: LaminateReport): boolean =>
    plyPicture(report.plies.map(({ angle }) => angle)).toScale;

  return (
    <div class="stack">
      <StackField
        project={props.project}
        issues={props.issues}
        path={['adherends', props.index, 'stack']}
        name={`${props.part} stack`}
        innermost={faces()[0]}
      />
      <Show when={props.report}>
        {(report) => (
          <>
            <PlyDrawing report={report()} faces={faces()} />
            <p class="about">
              {report().plies.length} {report().plies.length === 1 ? 'ply' : 'plies'}
              {good(report()) && `, ${good(report())}`}
              {drawnWhole(report()) ? '' : '; drawn shortened, not to scale'}
              {props.sharedWith.length > 0 && ` · also in ${listed(props.sharedWith)}`}
            </p>
            <Show when={report().notes.length > 0}>
              <ul class="stack-notes" aria-label={`${props.part} stack, to know`}>
                <For each={report().notes}>
                  {(note) => (
                    <li>
                      <NoteMark /> {saidText(note)}
                    </li>
                  )}
                </For>
              </ul>
            </Show>
            <LaminateFigures report={report()} flat={props.flat} />
          </>
        )}
      </Show>
      <PlyChoice
        project={props.project}
        issues={props.issues}
        path={['adherends', props.index, 'ply']}
        part={props.part}
      />
      <Disclosure title="Laminate: name and source" opened={props.opened}>
        <TextField
          project={props.project}
          issues={props.issues}
          path={['adherends', props.index, 'name']}
          label="Name"
          name={`${props.part} laminate, name`}
        />
        <SourceField
          project={props.project}
          issues={props.issues}
          path={['adherends', props.index, 'source']}
          of={`${props.part} laminate`}
        />
        <Copies
          project={props.project}
          list="adherends"
          index={props.index}
          path={props.path}
          what="laminate"
          sharedWith={props.sharedWith}
          onFresh={props.onFresh}
        />
        <button
          type="button"
          class="link"
          title="Adds a laminate to the project and makes this part of it."
          onClick={props.onAnother}
        >
          New laminate from a stack
        </button>
      </Disclosure>
    </div>
  );
}
