/** One joint in the table; its flags and refusals stand in a row of their own under it. */

import { For, type JSX, Show } from 'solid-js';
import type { JointSummary, Margin } from '../../shared/reports.ts';
import { saidText } from '../../shared/said.ts';
import { toDisplay } from '../../shared/units.ts';
import {
  caseText,
  clocking,
  gapWords,
  placeText,
  sentence,
  signed,
  stateWords,
} from '../../shared/words.ts';
import { DomainMark } from '../parts/DomainMark.tsx';
import { Mark } from '../parts/Mark.tsx';
import type { JointDeeds } from '../state/joint-deeds.ts';
import { JointMenu } from './JointMenu.tsx';

export interface JointRowProps {
  readonly joint: JointSummary;
  /** Flags that every joint of the project has are said once, above the table. */
  readonly flags: JointSummary['flags'];
  /** Strips have no clocking. */
  readonly flat: boolean;
  readonly inTabOrder: boolean;
  readonly deeds: JointDeeds;
  readonly onOpen: () => void;
  readonly onFocus: () => void;
}

export const COLUMNS = 8;

function LowestCells(props: { readonly margin: Margin; readonly flat: boolean }): JSX.Element {
  return (
    <>
      <td class={`lowest is-${props.margin.state}`}>
        <span class="lowest-cell">
          <Mark state={props.margin.state} />
          <span class="state">{stateWords[props.margin.state]}</span>
          <span class="value">{signed(props.margin.margin)}</span>
        </span>
      </td>
      <td>
        {props.margin.label}
        <Show when={props.margin.typical}>
          {' '}
          <span class="typical">typical</span>
        </Show>
        <Show when={props.margin.flags.length > 0}>
          <span class="outside" title={props.margin.flags.map(saidText).join('\n')}>
            <DomainMark inside={false} /> outside domain
          </span>
        </Show>
      </td>
      <td>{caseText(props.margin.caseName, props.margin.conditionName)}</td>
      <td>
        {placeText(props.margin)}
        {props.flat ? '' : `, ${clocking(props.margin.theta)}`}
      </td>
      <td>{gapWords[props.margin.gapState].replace('gap ', '')}</td>
    </>
  );
}

export function JointRow(props: JointRowProps): JSX.Element {
  return (
    <tbody class="joint">
      <tr>
        <th scope="row">
          <button
            type="button"
            class="joint-name"
            data-joint={props.joint.jointId}
            tabindex={props.inTabOrder ? 0 : -1}
            onFocus={() => props.onFocus()}
            onClick={() => props.onOpen()}
          >
            {props.joint.name}
          </button>
          <span class="joint-kind">{props.joint.description}</span>
        </th>
        <td class="number">{toDisplay('overlap', props.joint.overlap)}</td>
        <Show
          when={props.joint.lowest}
          fallback={
            <td class="without" colspan={COLUMNS - 3}>
              {props.joint.refused ? 'cannot be computed' : 'no load case acts on it'}
            </td>
          }
        >
          {(margin) => <LowestCells margin={margin()} flat={props.flat} />}
        </Show>
        <td class="joint-deeds" onFocusIn={() => props.onFocus()}>
          <JointMenu
            id={props.joint.jointId}
            name={props.joint.name}
            deeds={props.deeds}
            onOpen={props.onOpen}
          />
        </td>
      </tr>
      <Show when={props.joint.refused}>
        {(error) => (
          <tr class="joint-note is-refused">
            <td colspan={COLUMNS}>{sentence(saidText(error()))}</td>
          </tr>
        )}
      </Show>
      <Show when={props.flags.length > 0}>
        <tr class="joint-note">
          <td colspan={COLUMNS}>
            <For each={props.flags}>{(flag) => <p>{saidText(flag)}</p>}</For>
          </td>
        </tr>
      </Show>
    </tbody>
  );
}
