/** Which adherend or adhesive of the project a part is made of, with what matters of it. */
import { createUniqueId, type JSX, onCleanup, Show } from 'solid-js';
import type { Source } from '../../shared/project.ts';
import { sentence } from '../../shared/words.ts';
import { type Path, pathText, valueAt } from '../state/project.ts';
import { Choice } from './Choice.tsx';
import type { FieldSource } from './entry.ts';

export interface Material {
  readonly id: string;
  readonly name: string;
  readonly source: Source;
}

export interface MaterialFieldProps extends FieldSource {
  readonly all: readonly Material[];
  readonly path: Path;
  readonly name: string;
  /** What is said of it on asking. */
  readonly help: 'adherend' | 'adhesive' | 'ply';
  /** In a few words, what the chosen one is like. */
  readonly about: string;
  /** Seen beside the list; left out, its name is only read out. */
  readonly label?: string;
}

/** Typical values are fit for a first look, not for a sign-off: they are marked wherever they are used. */
export const isTypical = (source: Source): boolean =>
  source.kind === 'typical' || source.kind === 'memory';

export function MaterialField(props: MaterialFieldProps): JSX.Element {
  const id = createUniqueId();
  const path = pathText(props.path);
  props.issues.mount(path);
  onCleanup(() => props.issues.unmount(path));

  const chosen = (): string => String(valueAt(props.project.document(), props.path));
  const current = (): Material | undefined => props.all.find(({ id }) => id === chosen());
  const message = (): string | undefined => props.issues.at(path);
  const options = () => {
    const listed = props.all.map(({ id: value, name, source }) => ({
      value,
      text: isTypical(source) ? `${name} (typical)` : name,
    }));
    return current() ? listed : [{ value: chosen(), text: `${chosen()} (missing)` }, ...listed];
  };

  return (
    <div class={`row ${props.label === undefined ? 'is-wide' : 'is-choice'}`}>
      <Show when={props.label}>{(label) => <label for={`${id}-choice`}>{label()}</label>}</Show>
      <Choice
        id={`${id}-choice`}
        name={props.name}
        help={props.help}
        options={options()}
        value={chosen()}
        invalid={message() !== undefined}
        describedBy={message() === undefined ? `${id}-about` : `${id}-error`}
        onChoose={(value) => props.project.edit(props.path, value)}
      />
      <Show when={message()}>
        {(words) => (
          <p class="callout" id={`${id}-error`}>
            {sentence(words())}
          </p>
        )}
      </Show>
      <p class="about" id={`${id}-about`}>
        <Show when={current()}>
          {(material) => (
            <>
              {props.about}
              <Show when={isTypical(material().source)}>
                {' · '}
                <abbr class="typical" title={material().source.text}>
                  typical
                </abbr>
              </Show>
            </>
          )}
        </Show>
      </p>
    </div>
  );
}
