/** The first part of a project's sheet: how it stands, and every joint of it, the lowest margin first. */

import { For, type JSX, Show } from 'solid-js';
import { isFlat } from '../../shared/convert-lap.ts';
import type { CheckReport, JointSummary } from '../../shared/reports.ts';
import { saidText } from '../../shared/said.ts';
import { displayUnit, toDisplay } from '../../shared/units.ts';
import {
  caseText,
  clocking,
  gapWords,
  placeText,
  sentence,
  signed,
  stateWords,
  tally,
} from '../../shared/words.ts';
import { ownFlags, sharedFlags } from '../joints/shared-flags.ts';
import { sorted } from '../joints/sort.ts';
import { Mark } from '../parts/Mark.tsx';
import type { SheetData } from './data.ts';
import { Head, Remarks } from './Head.tsx';

function Lowest(props: { readonly joint: JointSummary; readonly flat: boolean }): JSX.Element {
  return (
    <Show
      when={props.joint.lowest}
      fallback={
        <td colspan="5">
          {props.joint.refused
            ? `cannot be computed: ${sentence(saidText(props.joint.refused))}`
            : 'no load case acts on it'}
        </td>
      }
    >
      {(margin) => (
        <>
          <td class="state-cell">
            <Mark state={margin().state} /> {stateWords[margin().state]}
          </td>
          <td class="paper-number">{signed(margin().margin)}</td>
          <td>
            {margin().label}
            <Show when={margin().typical}>
              {' '}
              <em class="typical">typical</em>
            </Show>
            <Show when={margin().flags.length > 0}> (outside domain)</Show>
          </td>
          <td>{caseText(margin().caseName, margin().conditionName)}</td>
          <td>
            {placeText(margin())}
            {props.flat ? '' : `, ${clocking(margin().theta)}`}, {gapWords[margin().gapState]}
          </td>
        </>
      )}
    </Show>
  );
}

export function ProjectPart(props: {
  readonly data: SheetData;
  readonly check: CheckReport;
}): JSX.Element {
  const { check, data } = props;
  const joints = sorted(check.joints, { by: 'margin', down: false });
  const shared = sharedFlags(check.joints);
  const flat = new Set(data.project.joints.filter(isFlat).map(({ id }) => id));
  const refused = check.joints.filter((joint) => joint.refused !== null).length;
  return (
    <>
      <Head data={data} title={data.project.name} what="All joints of the project" />
      <Remarks data={data} />
      <p class="sheet-verdict">
        <strong>{tally(check.counts, check.joints.length, refused)}</strong> Low is below the target
        of {signed(check.targetMargin)}.
      </p>
      <h2>All joints, lowest margin first</h2>
      <table class="paper-rows joints-table">
        <thead>
          <tr>
            <th scope="col">Joint</th>
            <th scope="col" class="paper-number">
              Overlap, {displayUnit('overlap').symbol}
            </th>
            <th scope="col">State</th>
            <th scope="col" class="paper-number">
              Margin
            </th>
            <th scope="col">Mode</th>
            <th scope="col">Case</th>
            <th scope="col">Place, clocking, gap</th>
          </tr>
        </thead>
        <For each={joints}>
          {(joint) => (
            <tbody data-joint-id={joint.jointId}>
              <tr>
                <th scope="row">
                  {joint.name}
                  <span class="paper-under">{joint.description}</span>
                </th>
                <td class="paper-number">{toDisplay('overlap', joint.overlap)}</td>
                <Lowest joint={joint} flat={flat.has(joint.jointId)} />
              </tr>
              <For each={ownFlags(joint, shared)}>
                {(flag) => (
                  <tr class="note-row">
                    <td colspan="7">{saidText(flag)}</td>
                  </tr>
                )}
              </For>
            </tbody>
          )}
        </For>
      </table>
      <For each={shared}>{(flag) => <p class="sheet-flag">All joints: {saidText(flag)}</p>}</For>
    </>
  );
}
