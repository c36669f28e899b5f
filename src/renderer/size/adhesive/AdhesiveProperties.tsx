/** What thermal stress and fracture need of an adhesive: its temperature, expansion, energies. */
import { createUniqueId, type JSX, Show } from 'solid-js';
import type { Adhesive } from '../../../shared/project.ts';
import { Disclosure } from '../Disclosure.tsx';
import type { FieldSource } from '../entry.ts';
import { NumberRow } from '../NumberRow.tsx';
import { SourceField } from '../SourceField.tsx';

export interface OfAdhesive extends FieldSource {
  /** Place of the adhesive in the project. */
  readonly index: number;
}

/** Of a toughened epoxy paste; to be replaced, and marked until it is. */
const typicalFracture: NonNullable<Adhesive['fracture']> = {
  modeI: 1,
  modeII: 3,
  exponent: 1,
  source: { kind: 'typical', text: 'Typical, from memory: replace by your coupons.' },
};

const adhesiveOf = (props: OfAdhesive): Adhesive | undefined =>
  props.project.document()?.adhesives[props.index];

function Fracture(props: OfAdhesive): JSX.Element {
  const title = createUniqueId();
  const path = (key: string) => ['adhesives', props.index, 'fracture', key];
  const set = (fracture: Adhesive['fracture']): void =>
    props.project.edit(['adhesives', props.index, 'fracture'], fracture);
  return (
    <section class="part" aria-labelledby={title}>
      <h3 id={title}>Fracture energies</h3>
      <Show
        when={adhesiveOf(props)?.fracture}
        fallback={
          <>
            <p class="about">None: fracture is not checked.</p>
            <button
              type="button"
              class="link"
              onClick={() => set({ ...typicalFracture, source: { ...typicalFracture.source } })}
            >
              Add fracture energies
            </button>
          </>
        }
      >
        <NumberRow
          project={props.project}
          issues={props.issues}
          label="GIc opening"
          input={{
            path: path('modeI'),
            quantity: 'fractureEnergy',
            name: 'Fracture energy, opening',
            help: 'Energy per area that a crack takes when it opens; 1 N/mm is 1 kJ/m².',
          }}
        />
        <NumberRow
          project={props.project}
          issues={props.issues}
          label="GIIc sliding"
          input={{
            path: path('modeII'),
            quantity: 'fractureEnergy',
            name: 'Fracture energy, sliding',
            help: 'Energy per area that a crack takes when it slides; 1 N/mm is 1 kJ/m².',
          }}
        />
        <NumberRow
          project={props.project}
          issues={props.issues}
          label="Mode-mix exponent"
          input={{
            path: path('exponent'),
            quantity: 'fractureExponent',
            name: 'Mode-mix exponent',
          }}
        />
        <SourceField
          project={props.project}
          issues={props.issues}
          path={path('source')}
          of="Fracture energies"
        />
        <button type="button" class="link" onClick={() => set(undefined)}>
          Remove fracture energies
        </button>
      </Show>
    </section>
  );
}

export function AdhesiveProperties(props: OfAdhesive): JSX.Element {
  return (
    <Disclosure
      title="Thermal and fracture"
      about={{
        issues: props.issues,
        fields: ['stressFreeTemperature', 'expansion', 'fracture'].map((key) => [
          'adhesives',
          props.index,
          key,
        ]),
      }}
    >
      <NumberRow
        project={props.project}
        issues={props.issues}
        label="Stress-free at"
        input={{
          path: ['adhesives', props.index, 'stressFreeTemperature'],
          quantity: 'temperature',
          name: 'Stress-free temperature',
          help: 'Temperature at which the joint is free of thermal stress; that of the cure unless known better.',
        }}
      />
      <NumberRow
        project={props.project}
        issues={props.issues}
        label="Expansion"
        input={{
          path: ['adhesives', props.index, 'expansion'],
          quantity: 'expansion',
          name: 'Adhesive expansion',
          help: 'Thermal expansion of the adhesive; not set, its own shrinkage is left out.',
          optional: true,
        }}
      />
      <Fracture {...props} />
    </Disclosure>
  );
}
