/** The rows of one group of inputs, whatever they hold. */
import { createUniqueId, For, type JSX, Match, Switch } from 'solid-js';
import type { Joint } from '../../shared/project.ts';
import { AdherendField } from './adherend/AdherendField.tsx';
import { AdhesiveField } from './adhesive/AdhesiveField.tsx';
import { EdgeMomentField } from './EdgeMomentField.tsx';
import type { FieldSource } from './entry.ts';
import type { Row } from './form-model.ts';
import { LapField } from './LapField.tsx';
import { NumberField } from './NumberField.tsx';
import { NumberRow } from './NumberRow.tsx';

type RowOf<K extends Row['kind']> = Extract<Row, { kind: K }>;
const as =
  <K extends Row['kind']>(...kinds: K[]) =>
  (row: Row): RowOf<K> | undefined =>
    (kinds as string[]).includes(row.kind) ? (row as RowOf<K>) : undefined;
const asNumber = as('number');
const asToleranced = as('toleranced');
const asAdherend = as('adherend');
const asAdhesive = as('adhesive');

export interface RowsProps extends FieldSource {
  readonly rows: readonly Row[];
  readonly joint: Joint;
  readonly index: number;
}

function TolerancedRow(props: FieldSource & { readonly row: RowOf<'toleranced'> }): JSX.Element {
  const id = createUniqueId();
  return (
    <div class="row is-toleranced">
      <label for={id}>{props.row.label}</label>
      <NumberField
        project={props.project}
        issues={props.issues}
        input={props.row.nominal}
        id={id}
      />
      <span class="sign" aria-hidden="true">
        ±
      </span>
      <NumberField project={props.project} issues={props.issues} input={props.row.tolerance} />
    </div>
  );
}

export function Rows(props: RowsProps): JSX.Element {
  return (
    <For each={props.rows}>
      {(row) => (
        <Switch>
          <Match when={row.kind === 'lap'}>
            <LapField
              project={props.project}
              issues={props.issues}
              joint={props.joint}
              index={props.index}
            />
          </Match>
          <Match when={asNumber(row)}>
            {(number) => (
              <NumberRow
                project={props.project}
                issues={props.issues}
                label={number().label}
                input={number()}
              />
            )}
          </Match>
          <Match when={asToleranced(row)}>
            {(pair) => <TolerancedRow project={props.project} issues={props.issues} row={pair()} />}
          </Match>
          <Match when={row.kind === 'edge-moment'}>
            <EdgeMomentField project={props.project} issues={props.issues} />
          </Match>
          <Match when={asAdherend(row)}>
            {(material) => (
              <AdherendField
                project={props.project}
                issues={props.issues}
                row={material()}
                joint={props.joint}
              />
            )}
          </Match>
          <Match when={asAdhesive(row)}>
            {(material) => (
              <AdhesiveField
                project={props.project}
                issues={props.issues}
                row={material()}
                joint={props.joint}
              />
            )}
          </Match>
        </Switch>
      )}
    </For>
  );
}
