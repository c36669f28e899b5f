/** Two to four joints or variants side by side: why one carries more, in words, curves and figures. */

import { createMemo, For, type JSX, Match, Show, Switch } from 'solid-js';
import type { Project } from '../../shared/project.ts';
import { saidText } from '../../shared/said.ts';
import { sentence } from '../../shared/words.ts';
import type { Compared } from '../charts/compare-data.ts';
import { readInk } from '../charts/ink.ts';
import { createFontsReady } from '../fonts.ts';
import { JobProgress } from '../parts/JobProgress.tsx';
import { Choice } from '../size/Choice.tsx';
import { createSize } from '../size-of.ts';
import { columnName, letterOf } from '../state/compared.ts';
import type { Comparison } from '../state/comparison.ts';
import type { ProjectState } from '../state/project.ts';
import type { Theme } from '../theme.ts';
import { AddColumn, AddList } from './AddColumn.tsx';
import { CompareTable } from './CompareTable.tsx';
import { Plots } from './Plots.tsx';
import { stateText } from './result-groups.ts';

export interface ComparePageProps {
  readonly comparison: Comparison;
  readonly state: ProjectState;
  readonly project: Project;
  readonly theme: Theme;
  readonly onJoint: (id: string) => void;
  readonly onSize: (id: string) => void;
  readonly onSheet: () => void;
}

export function ComparePage(props: ComparePageProps): JSX.Element {
  const comparison = () => props.comparison;
  const columns = () => comparison().columns();
  const report = () => comparison().report();
  const refusal = () => comparison().refusal();
  const stopped = () => refusal()?.code === 'stopped';
  const stale = (): boolean =>
    comparison().behind() && (refusal() !== null || comparison().byHand());
  const firstName = (): string => (columns()[0] ? columnName(props.project, columns()[0]!) : '');

  let page!: HTMLDivElement;
  const size = createSize(() => page);
  const fonts = createFontsReady();
  const ink = createMemo(() => {
    props.theme.version();
    fonts();
    return size() ? readInk(page) : null;
  });

  const compared = createMemo<Compared[]>(() =>
    columns().flatMap(({ id }, i) => {
      const column = report()?.columns.find((one) => one.id === id);
      return column?.stress
        ? [{ letter: letterOf(i), name: column.name, stress: column.stress }]
        : [];
    }),
  );
  const flags = createMemo(() => {
    const by = new Map<string, string[]>();
    for (const [i, { id }] of columns().entries()) {
      for (const flag of report()?.columns.find((one) => one.id === id)?.flags ?? []) {
        const text = saidText(flag);
        by.set(text, [...(by.get(text) ?? []), letterOf(i)]);
      }
    }
    return [...by].map(([text, letters]) => `${letters.join(', ')}: ${text}`);
  });
  /** Sentences are about the further columns in their order, unless one of them has none. */
  const lettered = (): boolean => {
    const said = report()?.sentences.length ?? 0;
    return said > 1 && said === columns().length - 1;
  };
  const where = (): string => {
    const loadCase = props.project.loadCases.find(({ id }) => id === report()?.caseId);
    return loadCase ? stateText(report()?.columns ?? [], loadCase.moisture) : '';
  };
  const caseOptions = () => [
    { value: '', text: `Governing${report()?.caseName ? `: ${report()!.caseName}` : ''}` },
    ...comparison()
      .cases()
      .map(({ id, name }) => ({ value: id, text: name })),
  ];

  return (
    <div
      class="compare-page"
      ref={page}
      tabindex="-1"
      classList={{ 'is-stale': stale(), 'is-slow': comparison().slow() }}
    >
      <h1 class="hidden">Compare {firstName()}</h1>
      <Show
        when={columns().length > 1}
        fallback={
          <section data-pane aria-label="What to compare" class="compare-start">
            <h2>What should stand beside it?</h2>
            <Choice
              name="Joint"
              help="joint"
              class="joint-choice"
              options={props.project.joints.map(({ id, name }) => ({ value: id, text: name }))}
              value={columns()[0]?.id ?? ''}
              onChoose={props.onJoint}
            />
            <AddList
              comparison={comparison()}
              project={props.project}
              onDone={() => page.focus()}
            />
          </section>
        }
      >
        <section data-pane aria-label="What is compared" class="compare-head">
          <div class="compare-words" aria-live="polite">
            <For
              each={report()?.sentences.map(saidText)}
              fallback={<p class="units">{saidInstead()}</p>}
            >
              {(text, i) => (
                <p>
                  <Show when={lettered()}>
                    <span class="letter">{letterOf(i() + 1)}</span>{' '}
                  </Show>
                  {text}
                </p>
              )}
            </For>
          </div>
          <div class="compare-tools">
            <span class="compare-case">
              <span class="units" aria-hidden="true">
                Compared in
              </span>
              <Choice
                name="Load case compared"
                help="comparedCase"
                options={caseOptions()}
                value={comparison().caseId() ?? ''}
                onChoose={(id) => comparison().setCase(id === '' ? null : id)}
              />
              <span class="units">{where()}</span>
            </span>
            <span class="compare-status" role="status">
              <Switch>
                <Match when={stale()}>
                  <span class="stale-word">not recalculated</span>
                </Match>
                <Match when={comparison().slow() && report() !== null}>
                  <span class="behind-word">recalculating …</span>
                </Match>
              </Switch>
            </span>
            <Show
              when={comparison().behind() && comparison().byHand() && !comparison().job.running()}
            >
              <button type="button" class="plain" onClick={() => comparison().again()}>
                Compare again
              </button>
            </Show>
            <AddColumn comparison={comparison()} project={props.project} />
            <button type="button" class="link" onClick={() => props.onSheet()}>
              Sheet …
            </button>
          </div>
          <Show when={comparison().slow() || report() === null || comparison().byHand()}>
            <JobProgress job={comparison().job} label="Comparison" />
          </Show>
          <Show when={stopped()}>
            <p class="units" role="status">
              The comparison was stopped before it was done.
            </p>
          </Show>
          <Show when={!stopped() && comparison().issues.elsewhere()}>
            {(error) => (
              <Show when={refusal()}>
                <p class="refused" role="alert">
                  These cannot be compared. {sentence(saidText(error()))}
                </p>
              </Show>
            )}
          </Show>
        </section>
        <div class="compare-body">
          <Plots compared={compared()} caseName={report()?.caseName ?? ''} ink={ink} />
          <section data-pane aria-label="Side by side" class="compare-side">
            <CompareTable
              comparison={comparison()}
              state={props.state}
              project={props.project}
              onJoint={props.onJoint}
              onSize={props.onSize}
              onGone={() => page.focus()}
            />
            <Show when={flags().length > 0}>
              <h3 class="notes-title">To know</h3>
              <ul class="notes">
                <For each={flags()}>{(text) => <li>{text}</li>}</For>
              </ul>
            </Show>
          </section>
        </div>
      </Show>
    </div>
  );

  function saidInstead(): string {
    if (report() === null) return refusal() === null ? 'Calculating …' : '';
    return report()?.caseId === null
      ? 'These carry no load case in common: strength and stress cannot be set side by side.'
      : 'In this case no bond is loaded: there is no strength to compare.';
  }
}
