/**
 * One test piece: its sizes, materials and where they are from. Sizes that a standard or results hang on
 * are shown first and changed only on purpose: a copy is offered before.
 */
import { createMemo, createSignal, For, type JSX, Match, Show, Switch, untrack } from 'solid-js';
import { isFlat } from '../../../shared/convert-lap.ts';
import { type PieceUse, pieceWords } from '../../../shared/coupon-pieces.ts';
import type { Project } from '../../../shared/project.ts';
import type { Specimen } from '../../../shared/project-coupons.ts';
import { displayUnit, toDisplay } from '../../../shared/units.ts';
import { aboutAdherend } from '../../size/about-adherend.ts';
import { Choice } from '../../size/Choice.tsx';
import type { FieldSource } from '../../size/entry.ts';
import { type NumberInput, pieceGroups, type Row } from '../../size/form-model.ts';
import { MaterialField } from '../../size/MaterialField.tsx';
import { NumberRow } from '../../size/NumberRow.tsx';
import { SourceField } from '../../size/SourceField.tsx';
import { TextField } from '../../size/TextField.tsx';
import { valueAt } from '../../state/project.ts';
import { heldBy } from './piece-words.ts';

export interface PieceFormProps extends FieldSource {
  readonly document: Project;
  readonly piece: Specimen;
  /** Its place among the pieces of the project. */
  readonly place: number;
  readonly use: PieceUse;
  readonly onCopy: () => void;
}

const sides = [
  { value: 'socket', text: pieceWords.socket },
  { value: 'spigot', text: pieceWords.spigot },
];

/** A size that is only looked at. */
function SizeRow(props: {
  readonly label: string;
  readonly input: NumberInput;
  readonly document: Project;
}): JSX.Element {
  return (
    <div class="row">
      <span>{props.label}</span>
      <span class="piece-size">
        {toDisplay(props.input.quantity, Number(valueAt(props.document, props.input.path)))}
      </span>
      <span class="unit">{displayUnit(props.input.quantity).symbol}</span>
    </div>
  );
}

function MaterialRow(
  props: FieldSource & {
    readonly row: Extract<Row, { kind: 'adherend' }>;
    readonly document: Project;
    readonly flat: boolean;
  },
): JSX.Element {
  const about = (): string => {
    const chosen = valueAt(props.document, props.row.path);
    const adherend = props.document.adherends.find(({ id }) => id === chosen);
    return adherend ? aboutAdherend(adherend, null, props.flat) : '';
  };
  return (
    <MaterialField
      project={props.project}
      issues={props.issues}
      all={props.document.adherends}
      path={props.row.path}
      name={props.row.name}
      help="adherend"
      about={about()}
    />
  );
}

const asNumber = (row: Row) => (row.kind === 'number' ? row : undefined);
const asMaterial = (row: Row) => (row.kind === 'adherend' ? row : undefined);

export function PieceForm(props: PieceFormProps): JSX.Element {
  const shape = () => ['coupons', 'specimens', props.place, 'shape'];
  const groups = createMemo(() => pieceGroups(props.piece.shape.type, shape()));
  /** The claim that it was opened with: one that is being typed holds nothing yet. */
  const claimed = untrack(() => props.piece.standard);
  const held = () => heldBy(props.piece.standard === claimed ? claimed : '', props.use);
  const [anyway, setAnyway] = createSignal(untrack(held).length === 0);
  const open = (): boolean => anyway() || held().length === 0;
  let box!: HTMLFormElement;
  const change = (): void => {
    setAnyway(true);
    // The button is gone with the question.
    box.querySelector<HTMLElement>('input.figure')?.focus();
  };

  return (
    <form
      class="piece-form"
      ref={box}
      aria-label={`Test piece ${props.piece.name}`}
      onSubmit={(event) => event.preventDefault()}
    >
      <Show when={held().length > 0}>
        <div class="piece-held">
          <For each={held()}>{(words) => <p>{words}</p>}</For>
          <p class="piece-answers">
            <button type="button" class="plain is-first" onClick={() => props.onCopy()}>
              Copy it and change the copy
            </button>
            <Show when={!open()}>
              <button type="button" class="plain" onClick={change}>
                Change these sizes
              </button>
            </Show>
          </p>
        </div>
      </Show>
      <div class="piece-groups">
        <For each={groups()}>
          {(group) => (
            <section class="group" aria-label={group.title}>
              <h3>{group.title}</h3>
              <Show when={group.title === 'Geometry' && props.piece.shape.type === 'sleeve-single'}>
                <Choice
                  name="Sleeve of the test piece"
                  help="side"
                  options={sides}
                  value={'side' in props.piece.shape ? props.piece.shape.side : ''}
                  onChoose={(side) => props.project.edit([...shape(), 'side'], side)}
                />
              </Show>
              <For each={group.rows}>
                {(row) => (
                  <Switch>
                    <Match when={asNumber(row)}>
                      {(number) => (
                        <Show
                          when={open()}
                          fallback={
                            <SizeRow
                              label={number().label}
                              input={number()}
                              document={props.document}
                            />
                          }
                        >
                          <NumberRow
                            project={props.project}
                            issues={props.issues}
                            label={number().label}
                            input={number()}
                          />
                        </Show>
                      )}
                    </Match>
                    <Match when={asMaterial(row)}>
                      {(material) => (
                        <MaterialRow
                          project={props.project}
                          issues={props.issues}
                          row={material()}
                          document={props.document}
                          flat={isFlat(props.piece.shape)}
                        />
                      )}
                    </Match>
                  </Switch>
                )}
              </For>
            </section>
          )}
        </For>
        <section class="group" aria-label="Where the sizes are from">
          <h3>Where the sizes are from</h3>
          <TextField
            project={props.project}
            issues={props.issues}
            path={['coupons', 'specimens', props.place, 'standard']}
            label="Standard"
            name="Standard whose sizes they are"
            about="standard"
            help="Such as ASTM D1002; empty where they are your own."
            most={80}
          />
          <SourceField
            project={props.project}
            issues={props.issues}
            path={['coupons', 'specimens', props.place, 'source']}
            of="Test piece"
            help="The drawing, standard or measurement that the sizes are from."
          />
          <p class="about">
            The gap is that of each set, all the way round; tube and sleeve stand on one axis.
          </p>
        </section>
      </div>
    </form>
  );
}
