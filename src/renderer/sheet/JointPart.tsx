/** One joint on the sheet: verdict, inputs, section, method, curves, margins, remarks, working. */

import { For, type JSX, Match, Show, Switch } from 'solid-js';
import { isFlat, lapOf } from '../../shared/convert-lap.ts';
import type { JointReport } from '../../shared/reports.ts';
import type { JointSheet } from '../../shared/reports-sheet.ts';
import { saidText } from '../../shared/said.ts';
import { methodSentences, stateText } from '../../shared/sheet-words.ts';
import { headline, lapWords, sentence, signed, verdict, whereText } from '../../shared/words.ts';
import { Mark } from '../parts/Mark.tsx';
import type { SheetPart } from '../state/sheet.ts';
import type { SheetData } from './data.ts';
import { Head, Remarks } from './Head.tsx';
import { InputsPart } from './InputsPart.tsx';
import { MarginsPart, RemarksPart } from './MarginsPart.tsx';
import { PaperPlots, PaperSection } from './PaperPlots.tsx';
import { WorkingPart } from './WorkingPart.tsx';

export interface JointPartProps {
  readonly data: SheetData;
  readonly part: SheetPart;
  /** Of the body of a page, pixels. */
  readonly width: number;
}

function Verdict(props: { readonly report: JointReport; readonly flat: boolean }): JSX.Element {
  const lowest = props.report.margins[0];
  return (
    <div class="sheet-verdict">
      <Show when={lowest} fallback={<p>{headline(props.report)}</p>}>
        {(margin) => (
          <>
            <p class="verdict-word">
              <Mark state={margin().state} /> <strong>{signed(margin().margin)}</strong>{' '}
              {stateText(margin().state, props.report.targetMargin)}
            </p>
            <p>
              {headline(props.report)}, {whereText(margin(), props.flat)}. {verdict(props.report)}
            </p>
          </>
        )}
      </Show>
    </div>
  );
}

function Body(props: JointPartProps & { readonly sheet: JointSheet }): JSX.Element {
  const { project } = props.data;
  const joint = props.part.joint;
  const about = { project, joint, sheet: props.sheet };
  return (
    <>
      <Verdict report={props.sheet.report} flat={isFlat(joint)} />
      <InputsPart {...about} />
      <h2>Section and method</h2>
      <PaperSection {...about} width={props.width} />
      <For each={methodSentences(joint, props.sheet.report)}>
        {(text) => <p class="sheet-line">{text}</p>}
      </For>
      <PaperPlots {...about} width={props.width} />
      <MarginsPart {...about} />
      <RemarksPart {...about} />
      <WorkingPart sheet={props.sheet} />
    </>
  );
}

export function JointPart(props: JointPartProps): JSX.Element {
  const { joint, reply, column } = props.part;
  const variantOf = (): string => {
    const { variants, joints } = props.data.project;
    const of = variants?.find((one) => one.joint.id === joint.id)?.of;
    return `, variant of ${joints.find(({ id }) => id === of)?.name ?? of}: no part of the frame`;
  };
  const what = reply.ok ? reply.value.report.description : lapWords[lapOf(joint)];
  return (
    <>
      <Head
        data={props.data}
        title={joint.name}
        what={`${what}${column.kind === 'variant' ? variantOf() : ''}`}
      />
      <Show when={props.data.check === null}>
        <Remarks data={props.data} />
      </Show>
      <Switch>
        <Match when={reply.ok && reply.value}>
          {(sheet) => <Body {...props} sheet={sheet()} />}
        </Match>
        <Match when={!reply.ok && reply.error}>
          {(error) => (
            <p class="sheet-verdict">
              This joint cannot be computed. {sentence(saidText(error()))}
            </p>
          )}
        </Match>
      </Switch>
    </>
  );
}
