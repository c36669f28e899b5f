/** What counts for every joint of the project: target, factors, how it is calculated, what sizing and printing round to. */
import { createUniqueId, type JSX, Show } from 'solid-js';
import type { Settings } from '../../shared/project-settings.ts';
import type { QuantityName } from '../../shared/quantities.ts';
import { usualSteps } from '../../shared/usual-steps.ts';
import { Choice } from '../size/Choice.tsx';
import { Disclosure } from '../size/Disclosure.tsx';
import type { FieldSource } from '../size/entry.ts';
import { NumberRow } from '../size/NumberRow.tsx';
import type { Path } from '../state/project.ts';

/** What is taken where the project says nothing. */
const usual = (): Required<Pick<Settings, 'steps' | 'printing'>> => ({
  steps: usualSteps(),
  printing: { layerThickness: 0.06, base: 0 },
});

/** In the words of the printed sheet. */
const adherendShear = [
  { value: 'yes', text: 'included' },
  { value: 'no', text: 'left out' },
] as const;

const titles = { steps: 'sizing steps', printing: 'printing' } as const;

export function ProjectSettings(props: FieldSource): JSX.Element {
  const shearId = createUniqueId();
  const settings = () => props.project.document()?.settings;
  const row = (
    label: string,
    quantity: QuantityName,
    path: Path,
    name: string,
    help: string,
  ): JSX.Element => (
    <NumberRow
      project={props.project}
      issues={props.issues}
      label={label}
      input={{ path: ['settings', ...path], quantity, name, help }}
    />
  );
  /** A group that a project may leave to the program. */
  const Group = (group: {
    readonly of: keyof ReturnType<typeof usual>;
    readonly title: string;
    readonly without: string;
    readonly children: JSX.Element;
  }): JSX.Element => (
    <section aria-label={group.title}>
      <h3>{group.title}</h3>
      <Show
        when={settings()?.[group.of]}
        fallback={
          <>
            <p class="about">{group.without}</p>
            <button
              type="button"
              class="link"
              onClick={() => props.project.edit(['settings', group.of], usual()[group.of])}
            >
              Set {titles[group.of]}
            </button>
          </>
        }
      >
        {group.children}
        <button
          type="button"
          class="link"
          onClick={() => props.project.edit(['settings', group.of], undefined)}
        >
          Usual {titles[group.of]} instead
        </button>
      </Show>
    </section>
  );

  return (
    <Disclosure
      title="Project settings"
      class="project-settings"
      about={{ issues: props.issues, path: ['settings'] }}
    >
      <section aria-label="What is asked">
        <h3>Asked of every joint</h3>
        {row(
          'Target margin',
          'targetMargin',
          ['targetMargin'],
          'Target margin',
          'Margins below it are marked low; sizing aims at it.',
        )}
        {row(
          'Limit factor',
          'factor',
          ['factors', 'limit'],
          'Factor on limit loads',
          'Asked of limit and cyclic loads before yield.',
        )}
        {row(
          'Ultimate factor',
          'factor',
          ['factors', 'ultimate'],
          'Factor on ultimate loads',
          'Asked of limit and cyclic loads before failure; an ultimate case contains it already.',
        )}
        {row(
          'Fitting factor',
          'factor',
          ['factors', 'fitting'],
          'Fitting factor',
          'Asked in addition of every mode.',
        )}
      </section>
      <Group of="steps" title="Sizing rounds to" without="Usual steps.">
        {row(
          'Overlap',
          'step',
          ['steps', 'overlap'],
          'Sizing step of the overlap',
          'What sizing rounds to.',
        )}
        {row('Wall', 'step', ['steps', 'wall'], 'Sizing step of walls', 'What sizing rounds to.')}
        {row('Gap', 'gapStep', ['steps', 'gap'], 'Sizing step of gaps', 'What sizing rounds to.')}
      </Group>
      <Group of="printing" title="Printing" without="Usual layers, no base.">
        {row(
          'Layer',
          'layerThickness',
          ['printing', 'layerThickness'],
          'Printed layer',
          'Thickness of one printed layer.',
        )}
        {row(
          'Base',
          'printBase',
          ['printing', 'base'],
          'Printed base',
          'Height of solid metal printed under the root of the sleeve.',
        )}
      </Group>
      <section aria-label="How it is calculated">
        <h3>Calculated with</h3>
        <div class="row is-choice">
          <label for={shearId} title="Whether the walls themselves shear, and so soften the bond.">
            Shear of the walls
          </label>
          <Choice
            id={shearId}
            name="Shear of the walls"
            help="adherendShear"
            options={adherendShear}
            value={settings()?.adherendShear === false ? 'no' : 'yes'}
            onChoose={(value) => props.project.edit(['settings', 'adherendShear'], value === 'yes')}
          />
        </div>
      </section>
    </Disclosure>
  );
}
