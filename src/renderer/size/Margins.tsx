/** The right column: every margin, lowest first; taking one draws the state that sets it. */

import { Index, type JSX, Show } from 'solid-js';
import type { JointReport, Margin } from '../../shared/reports.ts';
import { saidText, shownRest } from '../../shared/said.ts';
import {
  caseText,
  headline,
  remarkText,
  signed,
  stateWords,
  verdict,
  whereText,
} from '../../shared/words.ts';
import { DomainMark } from '../parts/DomainMark.tsx';
import { Mark } from '../parts/Mark.tsx';
import { type Subject, subjectOfMargin } from '../state/working.ts';
import { type OpenWorking, Reading } from './Reading.tsx';

export interface MarginsProps {
  readonly report: JointReport;
  readonly flat: boolean;
  readonly chosen: (margin: Margin) => boolean;
  readonly onChoose: (margin: Margin) => void;
  readonly explained: Subject | null;
  readonly onWorking: OpenWorking;
}

interface MarginRowProps {
  readonly margin: Margin;
  readonly flat: boolean;
  readonly chosen: boolean;
  readonly onChoose: () => void;
  readonly explained: Subject | null;
  readonly onWorking: OpenWorking;
}

function MarginRow(props: MarginRowProps): JSX.Element {
  return (
    <li class={`margin is-${props.margin.state}`} classList={{ 'is-chosen': props.chosen }}>
      <button
        type="button"
        class="margin-state"
        aria-pressed={props.chosen}
        title="Draw the case, gap and clocking that set this margin"
        onClick={() => props.onChoose()}
      >
        <Mark state={props.margin.state} />
        <span class="what">{props.margin.label}</span>
        <span class="where">
          <span class="state">{stateWords[props.margin.state]}</span>
          {` · ${whereText(props.margin, props.flat)} · ${caseText(props.margin.caseName, props.margin.conditionName)}`}
          <Show when={props.margin.typical}>
            {' · '}
            <span class="typical">typical</span>
          </Show>
          <Show when={/-basis|mean, no/.test(props.margin.restsOn)}>
            {' · '}
            <span class="rests-on">{shownRest(props.margin)}</span>
          </Show>
          <Show when={props.margin.remark}> · {remarkText(props.margin)}</Show>
        </span>
        <Show when={props.margin.flags.length > 0}>
          <span class="outside" title={props.margin.flags.map(saidText).join('\n')}>
            <DomainMark inside={false} /> outside domain
          </span>
        </Show>
      </button>
      <Reading
        class="value"
        subject={subjectOfMargin(props.margin)}
        open={props.explained}
        onWorking={props.onWorking}
        said={`, ${props.margin.label}`}
      >
        {signed(props.margin.margin)}
      </Reading>
    </li>
  );
}

export function Margins(props: MarginsProps): JSX.Element {
  const lowest = (): Margin | undefined => props.report.margins[0];
  return (
    <>
      <div class={`governs is-${lowest()?.state ?? 'none'}`}>
        <Show when={lowest()}>{(margin) => <Mark state={margin().state} />}</Show>
        <p class="headline">{headline(props.report)}</p>
        <Show when={lowest()}>
          <p class="verdict">{verdict(props.report)}</p>
        </Show>
      </div>
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
                explained={props.explained}
                onWorking={props.onWorking}
              />
            )}
          </Index>
        </ol>
      </Show>
      <Show when={props.report.flags.length > 0}>
        <h3 class="notes-title">To know</h3>
        <ul class="notes">
          <Index each={props.report.flags}>{(flag) => <li>{saidText(flag())}</li>}</Index>
        </ul>
      </Show>
    </>
  );
}
