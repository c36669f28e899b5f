/** Shear and peel of every column over one another, on one axis. */

import {
  type Accessor,
  createMemo,
  createSignal,
  createUniqueId,
  For,
  type JSX,
  Show,
} from 'solid-js';
import { symbolOf } from '../../shared/measures.ts';
import { figure } from '../../shared/words.ts';
import { Canvas } from '../charts/Canvas.tsx';
import { makeCompareChart } from '../charts/compare-chart.ts';
import {
  type Compared,
  comparePlot,
  compareSentence,
  compareTables,
  type From,
  type Quantity,
} from '../charts/compare-data.ts';
import type { Ink } from '../charts/ink.ts';
import { compareDrawing } from '../charts/plot-drawings.ts';
import { Mark } from '../parts/Mark.tsx';
import { TakeOut } from '../parts/TakeOut.tsx';
import { compareSheet } from '../sheets/stress-sheets.ts';
import { Figures } from '../size/Figures.tsx';
import { createSize } from '../size-of.ts';

export interface PlotsProps {
  readonly compared: readonly Compared[];
  readonly caseName: string;
  readonly ink: Accessor<Ink | null>;
}

interface PlotProps extends PlotsProps {
  readonly quantity: Quantity;
  readonly from: From;
}

function Plot(props: PlotProps): JSX.Element {
  let body!: HTMLDivElement;
  const size = createSize(() => body);
  const plot = createMemo(() => comparePlot(props.compared, props.quantity, props.from));
  const picture = () => {
    const [ink, box] = [props.ink(), size()];
    return ink && box ? { ...plot(), ...box, ink } : null;
  };
  return (
    <div class="figure-body" ref={body}>
      <Canvas
        label={compareSentence(props.compared, props.quantity, props.caseName)}
        make={makeCompareChart}
        picture={picture()}
      />
    </div>
  );
}

const ends: readonly { readonly from: From; readonly text: string }[] = [
  { from: 'root', text: 'from the root' },
  { from: 'mouth', text: 'from the mouth' },
];

export function Plots(props: PlotsProps): JSX.Element {
  const [from, setFrom] = createSignal<From>('root');
  const group = createUniqueId();
  const overloaded = () => props.compared.filter(({ stress }) => !stress.carried);
  const take = (quantity: Quantity): JSX.Element => {
    const plot = () => comparePlot(props.compared, quantity, from());
    return (
      <Show when={props.compared.length > 0}>
        <TakeOut
          what={`${quantity === 'shear' ? 'Shear' : 'Peel'} compared`}
          about={props.caseName}
          sheet={() => compareSheet(plot(), quantity, props.compared)}
          picture={() =>
            compareDrawing(
              plot(),
              new Map(props.compared.map(({ letter, name }) => [letter, name])),
              `Up: ${quantity} stress, MPa${quantity === 'peel' ? ', opening +' : ''}; along: from the ${from()}, mm`,
            )
          }
        />
      </Show>
    );
  };
  return (
    <section data-pane class="compare-plots" aria-label="Stress along the bonds">
      <div class="plot">
        <header>
          <h2>Shear along the bonds</h2>
          <span class="units">{symbolOf('stress')}, at the loads of the case</span>
          <fieldset class="segments">
            <legend class="hidden">Drawn from</legend>
            <For each={ends}>
              {(end) => (
                <label>
                  <input
                    type="radio"
                    name={group}
                    checked={from() === end.from}
                    onChange={() => setFrom(end.from)}
                  />
                  <span>{end.text}</span>
                </label>
              )}
            </For>
          </fieldset>
          <span class="figure-tools">{take('shear')}</span>
        </header>
        <Plot {...props} quantity="shear" from={from()} />
      </div>
      <div class="plot">
        <header>
          <h2>Peel along the bonds</h2>
          <span class="units">{symbolOf('stress')}, opening +</span>
          <span class="figure-tools">
            {take('peel')}
            <Figures tables={compareTables(props.compared, from())} />
          </span>
        </header>
        <Plot {...props} quantity="peel" from={from()} />
      </div>
      <Show when={overloaded().length > 0}>
        <ul class="plot-notes">
          <For each={overloaded()}>
            {({ letter, stress }) => (
              <li class="not-carried">
                <Mark state="fails" /> {letter} cannot carry this load: its curves are at the most
                it carries (× {figure(stress.capacity)})
              </li>
            )}
          </For>
        </ul>
      </Show>
    </section>
  );
}
