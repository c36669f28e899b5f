/** The right column: every margin, lowest first; taking one draws the state that sets it. */
import { Index, type JSX, Show } from 'solid-js';
import type { JointReport, Margin } from '../../shared/reports.ts';
import { governs, signed, stateWords, whereText } from '../../shared/words.ts';
import { Mark } from '../parts/Mark.tsx';

export interface MarginsProps {
  readonly report: JointReport;
  readonly flat: boolean;
  readonly chosen: (margin: Margin) => boolean;
  readonly onChoose: (margin: Margin) => void;
}

function MarginRow(props: {
  readonly margin: Margin;
  readonly flat: boolean;
  readonly chosen: boolean;
  readonly onChoose: () => void;
}): JSX.Element {
  return (
    <li>
      <button
        type="button"
        class={`margin is-${props.margin.state}`}
        aria-pressed={props.chosen}
        title="Draw the case, gap and clocking that set this margin"
        onClick={() => props.onChoose()}
      >
        <Mark state={props.margin.state} />
        <span class="what">{props.margin.label}</span>
        <span class="value">{signed(props.margin.margin)}</span>
        <span class="where">
          <span class="state">{stateWords[props.margin.state]}</span>
          {' · '}
          {whereText(props.margin, props.flat)}
        </span>
        <span class="where">
          {props.margin.caseName}
          <Show when={props.margin.remark}>{(remark) => <> · {remark()}</>}</Show>
          <Show when={props.margin.typical}>
            {' · '}
            <span class="typical">typical</span>
          </Show>
        </span>
      </button>
    </li>
  );
}

export function Margins(props: MarginsProps): JSX.Element {
  return (
    <>
      <Show when={props.report.margins.length > 0}>
        {/* By position: rows keep their place in the document while the figures in them move. */}
        <ol class="margins" aria-label="Margins, lowest first">
          <Index each={props.report.margins}>
            {(margin) => (
              <MarginRow
                margin={margin()}
                flat={props.flat}
                chosen={props.chosen(margin())}
                onChoose={() => props.onChoose(margin())}
              />
            )}
          </Index>
        </ol>
      </Show>
      <p class="governs">{governs(props.report)}</p>
      <Show when={props.report.flags.length > 0}>
        <h3 class="notes-title">To know</h3>
        <ul class="notes">
          <Index each={props.report.flags}>{(flag) => <li>{flag().message}</li>}</Index>
        </ul>
      </Show>
    </>
  );
}
