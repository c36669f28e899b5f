/** Every margin of the joint, lowest first, with what it rests on; and all that must be known of them. */

import { For, type JSX, Show } from 'solid-js';
import { isFlat } from '../../shared/convert-lap.ts';
import type { Joint, Project } from '../../shared/project.ts';
import type { Margin } from '../../shared/reports.ts';
import type { JointSheet } from '../../shared/reports-sheet.ts';
import { saidText } from '../../shared/said.ts';
import { remarksOf, restsOnText } from '../../shared/sheet-words.ts';
import {
  caseOf,
  figure,
  remarkText,
  sentence,
  signed,
  stateWords,
  whereText,
} from '../../shared/words.ts';
import { DomainMark } from '../parts/DomainMark.tsx';
import { Mark } from '../parts/Mark.tsx';

export interface MarginsPartProps {
  readonly project: Project;
  readonly joint: Joint;
  readonly sheet: JointSheet;
}

function MarginRow(props: {
  readonly margin: Margin;
  readonly joint: Joint;
  readonly project: Project;
}): JSX.Element {
  const { margin } = props;
  return (
    <tr data-mode={margin.mode} data-margin-part={margin.part}>
      <td class="state-cell">
        <Mark state={margin.state} /> {stateWords[margin.state]}
      </td>
      <td class="paper-number margin-figure">{signed(margin.margin)}</td>
      <th scope="row">
        {margin.label}
        <Show when={remarkText(margin)}>
          {(remark) => <span class="paper-under">{remark()}</span>}
        </Show>
      </th>
      <td>{caseOf(margin)}</td>
      <td>{whereText(margin, isFlat(props.joint))}</td>
      <td class="paper-number">
        {figure(margin.reached)} of {figure(margin.asked)}
      </td>
      <td>
        <span classList={{ typical: margin.typical }}>
          {restsOnText(margin, props.joint, props.project)}
        </span>
        <Show when={margin.flags.length > 0}>
          <span class="paper-under">
            <DomainMark inside={false} /> outside domain
          </span>
        </Show>
      </td>
    </tr>
  );
}

export function MarginsPart(props: MarginsPartProps): JSX.Element {
  const { report } = props.sheet;
  return (
    <>
      <h2>Margins, lowest first</h2>
      <Show
        when={report.margins.length > 0}
        fallback={<p class="sheet-line">No load case acts on this joint.</p>}
      >
        <table class="paper-rows margins-table">
          <thead>
            <tr>
              <th scope="col">State</th>
              <th scope="col" class="paper-number">
                Margin
              </th>
              <th scope="col">Mode</th>
              <th scope="col">Case</th>
              <th scope="col">Place, gap</th>
              <th scope="col" class="paper-number">
                Factor reached, asked
              </th>
              <th scope="col">Rests on</th>
            </tr>
          </thead>
          <tbody>
            <For each={report.margins}>
              {(margin) => (
                <MarginRow margin={margin} joint={props.joint} project={props.project} />
              )}
            </For>
          </tbody>
        </table>
        <Show when={report.margins.some(({ typical }) => typical)}>
          <p class="sheet-line">
            Where <span class="typical">typical values</span> stand behind a margin, replace them by
            your coupons.
          </p>
        </Show>
      </Show>
    </>
  );
}

export function RemarksPart(props: MarginsPartProps): JSX.Element {
  const { report, sweep, couponFlags } = props.sheet;
  const remarks = remarksOf(report, sweep, couponFlags);
  return (
    <>
      <h2>To know: domains left and other flags</h2>
      <Show
        when={remarks.length > 0}
        fallback={
          <p class="sheet-line">No domain of the method is left, nothing else is flagged.</p>
        }
      >
        <For each={remarks}>
          {({ said, about }) => (
            <p class="sheet-flag">
              {sentence(saidText(said))}
              <Show when={about.length > 0}>
                <span class="paper-under">Said of: {about.join('; ')}.</span>
              </Show>
            </p>
          )}
        </For>
      </Show>
    </>
  );
}
