/** Where a set of figures comes from. What is typical or from memory is marked wherever it is used. */
import { createUniqueId, type JSX } from 'solid-js';
import type { Source } from '../../shared/project.ts';
import { type Path, valueAt } from '../state/project.ts';
import { Choice } from './Choice.tsx';
import type { FieldSource } from './entry.ts';
import { TextField } from './TextField.tsx';

export interface SourceFieldProps extends FieldSource {
  /** Of the source itself. */
  readonly path: Path;
  /** Whose figures they are, as in `Ply`. */
  readonly of: string;
  /** Where it is no figures of a material that have a source. */
  readonly help?: string;
}

export const sourceKinds: readonly { readonly value: Source['kind']; readonly text: string }[] = [
  { value: 'tested', text: 'tested, our own' },
  { value: 'published', text: 'published' },
  { value: 'typical', text: 'typical' },
  { value: 'memory', text: 'from memory' },
];

export function SourceField(props: SourceFieldProps): JSX.Element {
  const id = createUniqueId();
  const kind = [...props.path, 'kind'];
  return (
    <>
      <div class="row is-choice">
        <label for={id}>Source</label>
        <Choice
          id={id}
          help="sourceKind"
          name={`${props.of}, kind of source`}
          options={sourceKinds}
          value={String(valueAt(props.project.document(), kind))}
          onChoose={(value) => props.project.edit(kind, value)}
        />
      </div>
      <TextField
        project={props.project}
        issues={props.issues}
        path={[...props.path, 'text']}
        name={`${props.of}, source in words`}
        help={props.help ?? 'The report, paper or coupons that the figures come from.'}
        about="sourceText"
        most={400}
      />
    </>
  );
}
