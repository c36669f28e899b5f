/** The lap: changing it changes the kind of the joint, and loses nothing that both kinds have. */
import { createUniqueId, type JSX } from 'solid-js';
import { unwrap } from 'solid-js/store';
import { convertLap, type Lap, lapOf, lapsFor } from '../../shared/convert-lap.ts';
import type { Joint } from '../../shared/project.ts';
import { lapWords } from '../../shared/words.ts';
import type { ProjectState } from '../state/project.ts';
import { Choice } from './Choice.tsx';
import type { FieldSource } from './entry.ts';

export interface LapFieldProps extends FieldSource {
  readonly joint: Joint;
  readonly index: number;
}

/**
 * Joints as they last were with a double lap, so that trying a single lap costs nothing. Kept beside
 * the project, since the form that this field stands in is rebuilt by the very change it makes.
 */
const memory = new WeakMap<ProjectState, Map<string, Joint>>();

function doublesOf(project: ProjectState): Map<string, Joint> {
  const known = memory.get(project) ?? new Map<string, Joint>();
  memory.set(project, known);
  return known;
}

const copy = (joint: Joint): Joint => JSON.parse(JSON.stringify(unwrap(joint))) as Joint;
const isLap = (value: string, laps: readonly Lap[]): value is Lap =>
  (laps as readonly string[]).includes(value);

export function LapField(props: LapFieldProps): JSX.Element {
  const id = createUniqueId();

  const choose = (value: string): void => {
    const joint = copy(props.joint);
    if (!isLap(value, lapsFor(joint))) return;
    const doubles = doublesOf(props.project);
    const key = `${props.project.opening()} ${joint.id}`;
    if (joint.type === 'sleeve-double' || joint.type === 'flat-double') doubles.set(key, joint);
    const changed = convertLap(joint, value, doubles.get(key));
    props.project.edit(['joints', props.index], copy(changed));
  };

  return (
    <div class="row is-choice">
      <label for={id}>Lap</label>
      <Choice
        id={id}
        name="Lap"
        help="lap"
        options={lapsFor(props.joint).map((lap) => ({ value: lap, text: lapWords[lap] }))}
        value={lapOf(props.joint)}
        onChoose={choose}
      />
    </div>
  );
}
