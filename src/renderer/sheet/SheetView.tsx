/** The sheet before it is printed: beside its pages, what is to stand on them. */

import { createMemo, createSignal, type JSX, onCleanup, onMount, Show } from 'solid-js';
import type { Bridge } from '../../shared/contract.ts';
import { saidText } from '../../shared/said.ts';
import { sentence } from '../../shared/words.ts';
import { JobProgress } from '../parts/JobProgress.tsx';
import type { Check } from '../state/check.ts';
import type { ProjectState } from '../state/project.ts';
import { refusedSentence } from '../state/refused.ts';
import type { SheetState } from '../state/sheet.ts';
import { type SheetData, sheetName } from './data.ts';
import { createPrinterPaper } from './paper.ts';
import { SheetPages } from './SheetPages.tsx';
import { SheetTexts } from './SheetTexts.tsx';
import { WhatStandsOnIt } from './WhatStandsOnIt.tsx';

export interface SheetViewProps {
  readonly bridge: Bridge;
  readonly project: ProjectState;
  readonly sheet: SheetState;
  readonly check: Check;
}

export function SheetView(props: SheetViewProps): JSX.Element {
  let printButton!: HTMLButtonElement;
  const sheet = () => props.sheet;
  const [pages, setPages] = createSignal(0);
  const [saved, setSaved] = createSignal('');
  const [trouble, setTrouble] = createSignal<string | null>(null);

  const table = (): boolean => sheet().table();
  const refusal = () => (table() ? props.check.refusal() : null);
  const tableReady = (): boolean =>
    !table() || (props.check.report() !== null && !props.check.behind() && refusal() === null);
  const stopped = (): boolean => sheet().stopped() || refusal()?.code === 'stopped';

  const data = createMemo((): SheetData | null => {
    props.project.revision();
    const project = props.project.plain();
    if (!project || !sheet().ready() || !tableReady()) return null;
    return {
      project,
      origin: props.project.origin(),
      unsaved: props.project.unsaved(),
      at: sheet().at(),
      about: sheet().about(),
      check: table() ? props.check.report() : null,
      parts: sheet().parts(),
      paper: sheet().paper(),
    };
  });

  createPrinterPaper(() => sheet().paper());

  const print = (): void => {
    if (pages() > 0) window.print();
  };
  const save = async (): Promise<void> => {
    const now = data();
    if (!now || pages() === 0) return;
    setTrouble(null);
    const reply = await props.bridge.ask('sheet.pdf', { name: sheetName(now) || 'sheet' });
    if (!reply.ok) setTrouble(reply.error.message);
    else setSaved(reply.value.name === null ? '' : `Saved as ${reply.value.name}.`);
  };
  const again = (): void => {
    if (refusal() !== null) props.check.again();
    if (sheet().stopped()) sheet().again();
  };
  const keys = (event: KeyboardEvent): void => {
    if (event.key !== 'Escape' || event.defaultPrevented) return;
    if (document.querySelector('dialog[open]')) return;
    event.preventDefault();
    sheet().close();
  };
  onMount(() => {
    printButton.focus();
    window.addEventListener('keydown', keys);
  });
  onCleanup(() => window.removeEventListener('keydown', keys));

  return (
    <div class="sheet-view">
      <section class="sheet-panel" data-pane aria-labelledby="sheet-title">
        <header>
          <h1 id="sheet-title">Sheet</h1>
          <button
            type="button"
            class="link"
            aria-keyshortcuts="Escape"
            onClick={() => sheet().close()}
          >
            Close<span class="hidden"> the sheet</span>
          </button>
        </header>
        <div class="sheet-buttons">
          <button
            ref={printButton}
            type="button"
            class="plain is-first"
            aria-disabled={pages() === 0 ? 'true' : undefined}
            aria-keyshortcuts="Control+P"
            title="Ctrl+P"
            onClick={print}
          >
            Print …
          </button>
          <Show when={props.bridge.carrier === 'electron'}>
            <button
              type="button"
              class="plain"
              aria-disabled={pages() === 0 ? 'true' : undefined}
              onClick={() => void save()}
            >
              Save as PDF …
            </button>
          </Show>
        </div>
        <p class="units" role="status">
          <Show when={pages() > 0} fallback={stopped() ? '' : 'Calculating …'}>
            {pages()} {pages() === 1 ? 'page' : 'pages'}, {sheet().paper()}. {saved()}
          </Show>
        </p>
        <Show when={props.bridge.carrier !== 'electron'}>
          <p class="units">To keep it as a PDF, choose that in the browser’s print dialog.</p>
        </Show>
        <Show when={!stopped() && refusal()}>
          {(error) => (
            <p class="refused" role="alert">
              The project cannot be checked. {sentence(saidText(error()))}
            </p>
          )}
        </Show>
        <Show when={props.project.refused.all().length > 0}>
          <p class="refused" role="status">
            {refusedSentence(props.project.refused.all(), 'stands on the sheet')}
          </p>
        </Show>
        <Show when={trouble()}>
          {(message) => (
            <p class="refused" role="alert">
              {sentence(message())}
            </p>
          )}
        </Show>
        <Show when={props.project.document()}>
          {(project) => (
            <>
              <WhatStandsOnIt sheet={sheet()} project={project()} check={props.check.report()} />
              <SheetTexts project={props.project} />
            </>
          )}
        </Show>
      </section>
      {/* What scrolls can be reached by keys. */}
      <section class="sheet-pages" data-pane tabindex="0" aria-label="Pages">
        <Show when={pages() === 0 && (stopped() || refusal() === null)}>
          <div class="sheet-waiting">
            <Show
              when={stopped()}
              fallback={
                <>
                  <p>The pages come when their figures are calculated.</p>
                  <Show when={table() && !tableReady()}>
                    <JobProgress job={props.check.job} label="Check of every joint" />
                  </Show>
                  <JobProgress job={sheet().job} label="Details of the joints" />
                </>
              }
            >
              <p role="status">The sheet was stopped before it was done.</p>
              <button type="button" class="plain" onClick={again}>
                Go on
              </button>
            </Show>
          </div>
        </Show>
        <SheetPages data={data()} onLaid={setPages} />
      </section>
    </div>
  );
}
