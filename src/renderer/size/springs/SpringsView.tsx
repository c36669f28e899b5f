/** The joint as springs for a frame model: a table to copy or save, with units and signs. */

import { createSignal, For, type JSX, onCleanup, Show } from 'solid-js';
import type { Measure } from '../../../shared/display-units.ts';
import { figureOf, inShown, symbolOf } from '../../../shared/measures.ts';
import type { Spring, SpringState, SpringsReport } from '../../../shared/reports-springs.ts';
import { saidText } from '../../../shared/said.ts';
import {
  conventionWords,
  makingWords,
  springsCsv,
  springUnits,
  springWords,
  stateWords,
  typicalWords,
} from '../../../shared/springs-text.ts';
import { copyText } from '../../clipboard.ts';
import { download, takenName } from '../../files.ts';
import { useTakenFrom } from '../../parts/TakeOut.tsx';
import { createSprings } from '../../state/springs.ts';
import type { ViewProps } from '../views.ts';
import { SpringSketch } from './SpringSketch.tsx';

/** Four figures and the power of ten apart, as they are written on paper. */
function Power(props: { readonly value: number }): JSX.Element {
  const parts = () => props.value.toExponential(3).split('e');
  return (
    <>
      {parts()[0]} × 10<sup>{Number(parts()[1])}</sup>
    </>
  );
}

function SpringRow(props: { readonly spring: Spring }): JSX.Element {
  const measure = () => (props.spring.kind === 'axial' ? 'spring' : 'turnSpring');
  return (
    <>
      <th scope="row">{springWords[props.spring.kind]}</th>
      <td>
        <Power value={inShown(measure(), props.spring.stiffness)} />
      </td>
      <td class="is-unit">{symbolOf(measure())}</td>
      <td>
        <Show when={props.spring.atRoot} fallback="none">
          {(value) => <Power value={inShown(measure(), value())} />}
        </Show>
      </td>
      <td>{figureOf('length', props.spring.tubeLength)}</td>
    </>
  );
}

const bareMeasure = (kind: Spring['kind']): Measure =>
  kind === 'axial' ? 'load' : 'bendingStiffness';

/** EA, EI and GJ of the tube that the frame model has already. */
function Bare(props: { readonly report: SpringsReport }): JSX.Element {
  return (
    <p>
      Bare {props.report.flat ? 'strip' : 'tube'}:{' '}
      <For each={props.report.states[0]?.springs}>
        {({ kind, tube }, i) => (
          <>
            {i() > 0 && ', '}
            {springUnits[kind].name} <Power value={inShown(bareMeasure(kind), tube)} />{' '}
            {symbolOf(bareMeasure(kind))}
          </>
        )}
      </For>
      .
    </p>
  );
}

function StateRows(props: { readonly state: SpringState }): JSX.Element {
  return (
    <tbody>
      <For each={props.state.springs}>
        {(spring, i) => (
          <tr>
            <Show when={i() === 0}>
              <th scope="rowgroup" rowspan={props.state.springs.length + 1} class="spring-state">
                {stateWords(props.state)}
                <span class="units">{props.state.names.join(', ')}</span>
              </th>
            </Show>
            <SpringRow spring={spring} />
          </tr>
        )}
      </For>
      <tr>
        <th scope="row">across</th>
        <td>
          <Power value={inShown('spring', props.state.shear)} />
        </td>
        <td class="is-unit">{symbolOf('spring')}</td>
        <td colspan={2} class="is-note">
          walls side by side, bond rigid
        </td>
      </tr>
    </tbody>
  );
}

export function SpringsView(props: ViewProps): JSX.Element {
  const springs = createSprings(props.bridge, props.project, () => props.index);
  const from = useTakenFrom();
  const [said, setSaid] = createSignal('');
  let timer: ReturnType<typeof setTimeout> | undefined;
  const say = (text: string): void => {
    clearTimeout(timer);
    setSaid(text);
    timer = setTimeout(() => setSaid(''), 4000);
  };
  onCleanup(() => clearTimeout(timer));

  const copy = async (report: SpringsReport): Promise<void> => {
    const done = await copyText(springsCsv(report));
    say(done ? 'Copied.' : 'The clipboard cannot be reached: save the file instead.');
  };
  const save = (report: SpringsReport): void => {
    const { project } = from();
    download(
      takenName({ project, joint: report.name }, 'springs', 'csv'),
      springsCsv(report),
      'text/csv',
    );
    say('Saved.');
  };

  const refused = (): string | null => {
    const error = springs.refused();
    return error && saidText(error);
  };

  return (
    <div class="springs" classList={{ 'is-old': springs.refused() !== null }}>
      <Show
        when={springs.report()}
        fallback={<p class="figure-empty">{refused() ?? 'Calculating …'}</p>}
      >
        {(report) => (
          <>
            <header>
              <h2>Springs</h2>
              <span class="units">elastic, nominal gap</span>
              <Show when={springs.refused()}>
                <span class="stale-word">not recalculated</span>
              </Show>
              <div class="figure-tools">
                <output class="units">{said()}</output>
                <button
                  type="button"
                  class="link"
                  title="In N, mm and radians"
                  onClick={() => void copy(report())}
                >
                  Copy
                </button>
                <button
                  type="button"
                  class="link"
                  data-takes="csv"
                  title="In N, mm and radians"
                  onClick={() => save(report())}
                >
                  Save as CSV
                </button>
              </div>
            </header>
            <table class="springs-table">
              <caption class="hidden">
                Stiffness of {report().name} at each temperature and moisture
              </caption>
              <thead>
                <tr>
                  <th scope="col">State</th>
                  <th scope="col">Spring</th>
                  <th scope="col" colspan={2}>
                    At the mouth
                  </th>
                  <th scope="col">At the root</th>
                  <th scope="col">
                    {report().flat ? 'Strip' : 'Tube'} past the mouth, {symbolOf('length')}
                  </th>
                </tr>
              </thead>
              <For each={report().states}>{(state) => <StateRows state={state} />}</For>
            </table>
            <div class="springs-words">
              <SpringSketch flat={report().flat} />
              <div>
                <For each={conventionWords(report())}>{(text) => <p>{text}</p>}</For>
                <Bare report={report()} />
                <p>{makingWords(report())}</p>
                <p>{typicalWords(report())}</p>
                <For each={report().flags}>
                  {(flag) => <p class="spring-flag">{saidText(flag)}</p>}
                </For>
              </div>
            </div>
          </>
        )}
      </Show>
    </div>
  );
}
