/** One frame size: what differs from the joint, and its figures once they are computed. */

import { type Accessor, createUniqueId, For, type JSX, Show } from 'solid-js';
import type { FlatSize, Joint, SleeveSize } from '../../../shared/project.ts';
import type { SizeResult } from '../../../shared/reports.ts';
import { saidText } from '../../../shared/said.ts';
import { setBy, sizeText } from '../../../shared/sizing-words.ts';
import { sentence, signed, stateWords } from '../../../shared/words.ts';
import { Mark } from '../../parts/Mark.tsx';
import { RemoveButton } from '../../parts/RemoveButton.tsx';
import type { FieldSource } from '../entry.ts';
import { loadFields } from '../form-model.ts';
import { NumberField } from '../NumberField.tsx';
import { TextField } from '../TextField.tsx';
import type { SizeColumn } from './columns.ts';

export interface SizeRowProps extends FieldSource {
  readonly joint: Joint;
  readonly index: number;
  /** Place among the sizes of the joint. */
  readonly place: number;
  readonly size: Accessor<SleeveSize | FlatSize>;
  readonly columns: readonly SizeColumn[];
  readonly result: SizeResult | null;
  readonly worst: boolean;
  readonly onRemove: () => void;
}

export function SizeRow(props: SizeRowProps): JSX.Element {
  const path = ['joints', props.index, 'sizes', props.place] as const;
  const nameId = createUniqueId();
  const hasOwn = (): boolean => props.size().loads !== undefined;
  const setOwn = (own: boolean): void =>
    props.project.edit(
      [...path, 'loads'],
      own ? JSON.parse(JSON.stringify(props.joint.loads)) : undefined,
    );
  const span = (): number => props.columns.length + 5;

  return (
    <tbody class="frame-size" classList={{ 'is-worst': props.worst }}>
      <tr classList={{ 'has-note': props.result?.lowest != null || hasOwn() }}>
        <th scope="row" id={nameId}>
          <TextField
            project={props.project}
            issues={props.issues}
            path={[...path, 'name']}
            name={`Name of size ${props.place + 1}`}
          />
        </th>
        <For each={props.columns}>
          {({ key, title, quantity, own }) => (
            <td class="field">
              <NumberField
                project={props.project}
                issues={props.issues}
                input={{
                  path: [...path, key],
                  quantity,
                  name: `${props.size().name}, ${title}`,
                  optional: true,
                  empty: own(props.joint),
                  help: `The joint's own, ${own(props.joint)}, when left out.`,
                }}
              />
            </td>
          )}
        </For>
        <td>
          <label class="tick" title="Loads of its own in place of the joint's">
            <input
              type="checkbox"
              aria-label={`${props.size().name}, loads of its own`}
              checked={hasOwn()}
              onChange={(event) => setOwn(event.currentTarget.checked)}
            />
            own
          </label>
        </td>
        <Result result={props.result} />
        <td>
          <RemoveButton
            label={`Remove ${props.size().name}`}
            title="Remove this size"
            onRemove={() => props.onRemove()}
          />
        </td>
      </tr>
      <Show when={props.result?.lowest}>
        {(margin) => (
          <tr class="size-note" classList={{ 'has-note': hasOwn() }}>
            <td colSpan={span()}>
              <Show when={props.worst}>
                <strong class="worst">worst</strong>
                {' · '}
              </Show>
              {setBy(margin())}
            </td>
          </tr>
        )}
      </Show>
      <Show when={hasOwn()}>
        <For each={props.size().loads}>
          {(load, place) => (
            <tr class="size-loads">
              <td colSpan={span()}>
                <span class="size-case">{caseName(props, load.case)}</span>
                <For
                  each={loadFields(
                    props.joint.type,
                    [...path, 'loads', place()],
                    `${props.size().name}, ${caseName(props, load.case)}`,
                  )}
                >
                  {(field) => (
                    <span class="field">
                      <span class="field-label">{field.label}</span>
                      <NumberField project={props.project} issues={props.issues} input={field} />
                    </span>
                  )}
                </For>
              </td>
            </tr>
          )}
        </For>
      </Show>
      <Show when={props.result?.refused}>
        {(error) => (
          <tr>
            <td colSpan={span()} class="callout">
              {sentence(saidText(error()))}
            </td>
          </tr>
        )}
      </Show>
    </tbody>
  );
}

const caseName = (props: SizeRowProps, id: string): string =>
  props.project.document()?.loadCases.find((one) => one.id === id)?.name ?? id;

function Result(props: { readonly result: SizeResult | null }): JSX.Element {
  return (
    <Show
      when={props.result?.lowest}
      fallback={
        <>
          <td class="number">–</td>
          <td class="number">–</td>
        </>
      }
    >
      {(margin) => (
        <>
          <td class={`number is-${margin().state}`}>
            <Mark state={margin().state} />{' '}
            <span class="value" title={stateWords[margin().state]}>
              {signed(margin().margin)}
            </span>
            <span class="hidden">{` ${stateWords[margin().state]}`}</span>
          </td>
          <td class="number">
            {props.result?.refused
              ? '–'
              : props.result?.overlap == null
                ? 'none'
                : sizeText('overlap', props.result.overlap)}
          </td>
        </>
      )}
    </Show>
  );
}
