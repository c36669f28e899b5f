/** An adhesive at temperature, dry and wet: a line for each state, which opens into its figures. */
import { createSignal, createUniqueId, For, Index, type JSX, Show } from 'solid-js';
import type { Adhesive } from '../../../shared/project.ts';
import { displayUnit, toDisplay } from '../../../shared/units.ts';
import { environment } from '../../../shared/words.ts';
import { RemoveButton } from '../../parts/RemoveButton.tsx';
import { Choice } from '../Choice.tsx';
import { Disclosure } from '../Disclosure.tsx';
import { moistures } from '../form-model.ts';
import { NumberRow } from '../NumberRow.tsx';
import type { OfAdhesive } from './AdhesiveProperties.tsx';
import { type AdhesiveState, MOST_STATES, nextState, stateFields } from './state-fields.ts';

/** What is seen of a closed row; the words are for those who do not see its heads. */
function Brief(props: { readonly state: AdhesiveState }): JSX.Element {
  const peel = (): string => {
    const { peelStrength } = props.state;
    return peelStrength === undefined ? '–' : toDisplay('peelStrength', peelStrength);
  };
  return (
    <span class="state-brief">
      <span>
        <span class="hidden">G </span>
        {toDisplay('adhesiveShearModulus', props.state.shearModulus)}
      </span>
      <span>
        <span class="hidden">, yield </span>
        {toDisplay('shearYield', props.state.shearYield)}
      </span>
      <span>
        <span class="hidden">, peel </span>
        {peel()}
        <span class="hidden"> {displayUnit('peelStrength').symbol}</span>
      </span>
    </span>
  );
}

interface StateRowProps extends OfAdhesive {
  readonly state: AdhesiveState;
  readonly place: number;
  readonly opened: boolean;
  /** Undefined for the only one: an adhesive needs a state. */
  readonly onRemove: (() => void) | undefined;
}

function StateRow(props: StateRowProps): JSX.Element {
  const id = createUniqueId();
  const path = (...keys: readonly string[]) => [
    'adhesives',
    props.index,
    'states',
    props.place,
    ...keys,
  ];
  const which = `State ${props.place + 1}`;
  const where = (): string => environment(props.state.temperature, props.state.moisture);
  return (
    <div class="state">
      <Disclosure
        title={where()}
        aside={<Brief state={props.state} />}
        opened={props.opened}
        about={{ issues: props.issues, path: path() }}
      >
        <NumberRow
          project={props.project}
          issues={props.issues}
          label="Temperature"
          input={{
            path: path('temperature'),
            quantity: 'temperature',
            name: `${which}, temperature`,
            help: 'At which these figures were found.',
          }}
        />
        <div class="row is-choice">
          <label for={id}>Moisture</label>
          <Choice
            id={id}
            name={`${which}, moisture`}
            help="moisture"
            options={moistures}
            value={props.state.moisture}
            onChoose={(moisture) => props.project.edit(path('moisture'), moisture)}
          />
        </div>
        <For each={stateFields}>
          {({ key, label, name, ...field }) => (
            <NumberRow
              project={props.project}
              issues={props.issues}
              label={label}
              input={{ ...field, path: path(key), name: `${name} at ${where()}` }}
            />
          )}
        </For>
      </Disclosure>
      <Show when={props.onRemove}>
        {(remove) => (
          <RemoveButton
            label={`Remove ${where()}, state ${props.place + 1}`}
            title="Take this state away"
            onRemove={() => remove()()}
          />
        )}
      </Show>
    </div>
  );
}

export function States(props: OfAdhesive): JSX.Element {
  const path = () => ['adhesives', props.index, 'states'];
  const states = (): Adhesive['states'] =>
    props.project.document()?.adhesives[props.index]?.states ?? [];
  /** Rows are told apart by place: with one taken away, they are closed and built anew. */
  const [generation, setGeneration] = createSignal(1);
  /** Place of the row that is being added. */
  let added = -1;
  let adder: HTMLButtonElement | undefined;

  /** One for all columns where they agree. */
  const unitsOfRows = (): string =>
    [
      ...new Set([displayUnit('adhesiveShearModulus').symbol, displayUnit('shearYield').symbol]),
    ].join(', ');

  const add = (): void => {
    added = states().length;
    props.project.edit([...path(), added], nextState(states()));
    added = -1;
  };
  const remove = (k: number): void => {
    props.project.edit(
      path(),
      states().filter((_one, i) => i !== k),
    );
    setGeneration((n) => n + 1);
    adder?.focus();
  };

  return (
    <Disclosure
      title="Stiffness and strength"
      aside={states().length === 1 ? '1 state' : `${states().length} states`}
      about={{ issues: props.issues, path: path() }}
    >
      <p class="about">
        In shear and across the bond; linear in temperature between states, the nearest beyond them.
      </p>
      <p class="state-heads" aria-hidden="true">
        <span>{unitsOfRows()}</span>
        <span class="state-brief">
          <span title="Shear modulus">G</span>
          <span title="Shear yield stress">yield</span>
          <span title="Stress across the bond at which it opens; –, peel is not checked">peel</span>
        </span>
      </p>
      <Show when={generation()} keyed>
        {(_generation) => (
          <Index each={states()}>
            {(state, k) => (
              <StateRow
                {...props}
                state={state()}
                place={k}
                opened={k === added}
                onRemove={states().length > 1 ? () => remove(k) : undefined}
              />
            )}
          </Index>
        )}
      </Show>
      <Show when={states().length < MOST_STATES}>
        <button type="button" class="link" ref={adder} onClick={add}>
          Add a state
        </button>
      </Show>
    </Disclosure>
  );
}
