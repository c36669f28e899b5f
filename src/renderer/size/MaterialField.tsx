/** Which adherend or adhesive of the project a part is made of, with what matters of it. */
import { createUniqueId, type JSX, onCleanup, Show } from 'solid-js';
import type { Adherend, Adhesive, Source } from '../../shared/project.ts';
import { withUnit } from '../../shared/units.ts';
import { sentence } from '../../shared/words.ts';
import type { Path } from '../state/project.ts';
import { pathText, valueAt } from '../state/project.ts';
import { Choice } from './Choice.tsx';
import type { FieldSource } from './NumberField.tsx';

export interface MaterialFieldProps extends FieldSource {
  readonly kind: 'adherend' | 'adhesive';
  readonly path: Path;
  readonly name: string;
}

/** Typical values are fit for a first look, not for a sign-off: they are marked wherever they are used. */
export const isTypical = (source: Source): boolean =>
  source.kind === 'typical' || source.kind === 'memory';

const ofAdherend = (adherend: Adherend): string =>
  adherend.kind === 'isotropic'
    ? `E ${withUnit('modulus', adherend.modulus)}, yield ${withUnit('strength', adherend.yieldStrength)}`
    : `E ${withUnit('modulus', adherend.axialModulus)} along, ${withUnit('modulus', adherend.hoopModulus)} around`;

const ofAdhesive = (adhesive: Adhesive): string =>
  `stress-free at ${withUnit('temperature', adhesive.stressFreeTemperature)}`;

export function MaterialField(props: MaterialFieldProps): JSX.Element {
  const id = createUniqueId();
  const path = pathText(props.path);
  props.issues.mount(path);
  onCleanup(() => props.issues.unmount(path));

  const all = (): readonly (Adherend | Adhesive)[] => {
    const document = props.project.document();
    return (props.kind === 'adherend' ? document?.adherends : document?.adhesives) ?? [];
  };
  const chosen = (): string => String(valueAt(props.project.document(), props.path));
  const current = (): Adherend | Adhesive | undefined => all().find(({ id }) => id === chosen());
  const message = (): string | undefined => props.issues.at(path);
  const options = () => {
    const listed = all().map(({ id: value, name, source }) => ({
      value,
      text: isTypical(source) ? `${name} (typical)` : name,
    }));
    return current() ? listed : [{ value: chosen(), text: `${chosen()} (missing)` }, ...listed];
  };
  const about = (material: Adherend | Adhesive): string =>
    'kind' in material ? ofAdherend(material) : ofAdhesive(material);

  return (
    <div class="row is-wide">
      <Choice
        name={props.name}
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
              {about(material())}
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
