/** The answer of a sizing: the sentence, the check, the drawing, what stops it, what would help. */

import { type Accessor, For, type JSX, Show } from 'solid-js';
import type { Joint } from '../../../shared/project.ts';
import type { Margin, SizingReport, SizingSuggestion } from '../../../shared/reports.ts';
import { saidText } from '../../../shared/said.ts';
import {
  noHelpText,
  setBy,
  sizeText,
  sizingAnswer,
  stateText,
  suggestionText,
  varyNote,
  varyQuantity,
} from '../../../shared/sizing-words.ts';
import { displayUnit, toDisplay } from '../../../shared/units.ts';
import { signed } from '../../../shared/words.ts';
import { Canvas } from '../../charts/Canvas.tsx';
import type { Ink } from '../../charts/ink.ts';
import { sizingDrawing } from '../../charts/plot-drawings.ts';
import { makeSizingChart } from '../../charts/sizing-chart.ts';
import { sizingSentence } from '../../charts/sizing-data.ts';
import { TakeOut } from '../../parts/TakeOut.tsx';
import {
  belowSheet,
  checksSheet,
  sizingSheet,
  suggestionsSheet,
} from '../../sheets/study-sheets.ts';
import { createSize } from '../../size-of.ts';
import { Figures } from '../Figures.tsx';
import { LEFT } from '../section/scale.ts';

export interface FindAnswerProps {
  readonly report: SizingReport;
  /** True when the report is of the document before its last change. */
  readonly old: boolean;
  readonly ink: Accessor<Ink | null>;
  /** Puts the joint into the document; the change in words, besides the size itself. */
  readonly onUse: (joint: Joint, change: string) => void;
}

export function FindAnswer(props: FindAnswerProps): JSX.Element {
  const text = (value: number): string => sizeText(props.report.vary, value);
  return (
    <div class="find-result" classList={{ 'is-old': props.old }}>
      <Show when={props.old}>
        <p class="stale-word">Of the joint before its last change. Find again.</p>
      </Show>
      <div class="find-answer">
        <p>{sizingAnswer(props.report)}</p>
        <Show when={props.report.found}>
          {(found) => (
            <UseIt
              old={props.old}
              name={`Use it: ${text(found().value)}`}
              onUse={() => props.onUse(found().joint, '')}
            />
          )}
        </Show>
      </div>
      <p class="asked-note">{varyNote(props.report)}</p>
      <Show when={props.report.found}>
        {(found) => (
          <>
            <p class="take-row">
              <TakeOut what="Sizes checked" sheet={() => checksSheet(props.report)} />
            </p>
            <table class="rows">
              <caption class="hidden">
                The full analysis at the answer and one step outside it
              </caption>
              <thead>
                <tr>
                  <th scope="col" class="number">
                    Checked
                  </th>
                  <th scope="col" class="number">
                    Margin
                  </th>
                  <th scope="col">Target</th>
                  <th scope="col">Set by</th>
                </tr>
              </thead>
              <tbody>
                <For each={found().checks}>
                  {({ value, reached, margin }) => (
                    <tr classList={{ 'is-answer': value === found().value }}>
                      <td class="number">{text(value)}</td>
                      <td class="number">{margin ? signed(margin.margin) : '–'}</td>
                      <td>{reached ? 'reached' : 'missed'}</td>
                      <td>{margin ? setBy(margin) : 'does not fit together'}</td>
                    </tr>
                  )}
                </For>
              </tbody>
            </table>
          </>
        )}
      </Show>
      <Drawing report={props.report} ink={props.ink} />
      <Show when={props.report.stop}>
        {(stop) => (
          <>
            <Below report={props.report} at={stop().best} margins={stop().atBest} />
            <Show when={stop().end !== stop().best}>
              <Below report={props.report} at={stop().end} margins={stop().atEnd} />
            </Show>
          </>
        )}
      </Show>
      <Show when={props.report.suggestions.length > 0 || props.report.noHelp.length > 0}>
        <h3>What would help</h3>
        <p class="asked-note">Each was put through the same sizing before it was offered.</p>
        <Show when={props.report.suggestions.length > 0}>
          <p class="take-row">
            <TakeOut what="What would help" sheet={() => suggestionsSheet(props.report)} />
          </p>
        </Show>
        <table class="rows">
          <caption class="hidden">Changes that help</caption>
          <tbody>
            <For each={props.report.suggestions}>
              {(suggestion) => (
                <tr>
                  <th scope="row">{shownChange(suggestion)}</th>
                  <td>{suggestionText(props.report, suggestion)}</td>
                  <td class="use">
                    <UseIt
                      old={props.old}
                      name={`Use it: ${shownChange(suggestion)}`}
                      onUse={() => props.onUse(suggestion.joint, shownChange(suggestion))}
                    />
                  </td>
                </tr>
              )}
            </For>
          </tbody>
        </table>
        <p class="asked-note">{noHelpText(props.report)}</p>
      </Show>
    </div>
  );
}

const shownChange = ({ change, changeFigures }: SizingSuggestion): string =>
  saidText({ message: change, figures: changeFigures });

/** Of an older joint nothing is used: it would undo what has been changed since. */
function UseIt(props: {
  readonly old: boolean;
  readonly name: string;
  readonly onUse: () => void;
}): JSX.Element {
  return (
    <button
      type="button"
      class="plain is-small"
      disabled={props.old}
      aria-label={props.name}
      onClick={() => props.onUse()}
    >
      Use it
    </button>
  );
}

function Below(props: {
  readonly report: SizingReport;
  readonly at: number;
  readonly margins: readonly Margin[];
}): JSX.Element {
  const title = (): string => `Below the target at ${sizeText(props.report.vary, props.at)}`;
  return (
    <table class="rows">
      <caption>
        {title()}{' '}
        <TakeOut what={title()} sheet={() => belowSheet(props.report, props.at, props.margins)} />
      </caption>
      <tbody>
        <For each={props.margins}>
          {(margin) => (
            <tr>
              <td class="number">{signed(margin.margin)}</td>
              <th scope="row">{margin.label}</th>
              <td>{margin.part}</td>
              <td>{stateText(margin)}</td>
            </tr>
          )}
        </For>
      </tbody>
    </table>
  );
}

function Drawing(props: {
  readonly report: SizingReport;
  readonly ink: Accessor<Ink | null>;
}): JSX.Element {
  let body!: HTMLDivElement;
  const size = createSize(() => body);
  const picture = () => {
    const [ink, box] = [props.ink(), size()];
    return ink && box ? { report: props.report, ink, left: LEFT, ...box } : null;
  };
  return (
    <section class="find-figure" aria-label="Lowest margin against size">
      <header>
        <h3>Lowest margin</h3>
        <span class="units">of all modes, cases and gap states</span>
        <span class="figure-tools">
          <TakeOut
            what="Lowest margin against size"
            about="of all modes, cases and gap states"
            sheet={() => sizingSheet(props.report)}
            picture={() => sizingDrawing(props.report, 'Up: lowest margin; along: the size, mm')}
          />
          <Figures
            tables={[
              {
                caption: 'Lowest margin against size',
                head: [displayUnit(varyQuantity(props.report.vary)).symbol, 'margin', 'set by'],
                rows: props.report.points.map(({ value, margin, label }) => [
                  toDisplay(varyQuantity(props.report.vary), value),
                  signed(margin),
                  label,
                ]),
              },
            ]}
          />
        </span>
      </header>
      <div class="figure-body" ref={body}>
        <Canvas label={sizingSentence(props.report)} make={makeSizingChart} picture={picture()} />
      </div>
    </section>
  );
}
