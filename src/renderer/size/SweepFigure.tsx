/** Strength against overlap, with the present overlap marked. */

import { type Accessor, createMemo, type JSX, Show } from 'solid-js';
import { fixedOf, symbolOf } from '../../shared/measures.ts';
import type { SweepReport } from '../../shared/reports.ts';
import { figure } from '../../shared/words.ts';
import { Canvas } from '../charts/Canvas.tsx';
import type { Ink } from '../charts/ink.ts';
import { sweepDrawing } from '../charts/plot-drawings.ts';
import { makeSweepChart } from '../charts/sweep-chart.ts';
import { strengthAt, sweepSentence, sweepTable } from '../charts/sweep-data.ts';
import { TakeOut } from '../parts/TakeOut.tsx';
import { sweepSheet } from '../sheets/stress-sheets.ts';
import { createSize } from '../size-of.ts';
import type { Subject } from '../state/working.ts';
import { Figures } from './Figures.tsx';
import { type OpenWorking, Reading } from './Reading.tsx';
import { LEFT } from './section/scale.ts';

export interface SweepFigureProps {
  readonly sweep: SweepReport | null;
  /** The sweep is still that of the joint before the last change. */
  readonly slow: boolean;
  readonly overlap: number;
  readonly target: number;
  /** Strength at the present overlap by the margins, the durability trough apart. */
  readonly strength: number | null;
  readonly ink: Accessor<Ink | null>;
  readonly hasLoads: boolean;
  readonly explained: Subject | null;
  readonly onWorking: OpenWorking;
}

export function SweepFigure(props: SweepFigureProps): JSX.Element {
  let body!: HTMLDivElement;
  const size = createSize(() => body);
  const picture = () => {
    const [sweep, ink, box] = [props.sweep, props.ink(), size()];
    if (!sweep || !ink || !box) return null;
    return {
      sweep,
      target: props.target,
      present: props.overlap,
      strength: props.strength,
      ink,
      left: LEFT,
      ...box,
    };
  };
  const drawing = () =>
    props.sweep &&
    sweepDrawing(
      {
        sweep: props.sweep,
        target: props.target,
        present: props.overlap,
        strength: props.strength,
      },
      'Up: strength over the load asked for, 1 is margin 0; along: overlap, mm',
    );
  const here = () => (props.sweep ? strengthAt(props.sweep, props.overlap) : null);
  const rows = createMemo(() =>
    props.sweep
      ? sweepTable(props.sweep).map(({ overlap, bond, all, mode }) => [
          fixedOf('length', overlap, 1),
          figure(bond),
          figure(all),
          mode,
        ])
      : null,
  );

  return (
    <section
      class="figure-block is-sweep"
      classList={{ 'is-slow': props.slow }}
      aria-labelledby="sweep-title"
    >
      <header>
        <h2 id="sweep-title">Strength against overlap</h2>
        <span class="units" title="1 is margin 0; the durability trough is left out">
          over the load asked, trough apart
        </span>
        <span class="readings">
          <Show when={here()}>
            {(now) => (
              <Reading
                class="is-shear"
                subject={{ kind: 'figure', subject: 'bond-strength' }}
                open={props.explained}
                onWorking={props.onWorking}
                said=" times the load asked, at the present overlap"
              >
                {`bond ${figure(now().bond)}`}
              </Reading>
            )}
          </Show>
          <Show when={props.sweep?.plateau}>
            {(plateau) => (
              <Reading
                subject={{ kind: 'figure', subject: 'plateau' }}
                open={props.explained}
                onWorking={props.onWorking}
                said=", past which more overlap buys under 2 %"
              >
                {`plateau ${fixedOf('length', plateau(), 0)} ${symbolOf('length')}`}
              </Reading>
            )}
          </Show>
        </span>
        <span class="figure-tools">
          <Show when={props.sweep}>
            <TakeOut
              what="Strength against overlap"
              about="all load cases, durability trough apart"
              sheet={() => props.sweep && sweepSheet(props.sweep, props.target)}
              picture={drawing}
            />
          </Show>
          <Show when={rows()}>
            {(figures) => (
              <Figures
                tables={[
                  {
                    caption: 'Strength over the load asked for, against overlap',
                    head: [`overlap, ${symbolOf('length')}`, 'bond', 'all but trough', 'set by'],
                    rows: figures(),
                  },
                ]}
              />
            )}
          </Show>
        </span>
      </header>
      <div class="figure-body" ref={body}>
        <Show
          when={props.sweep}
          fallback={
            <p class="figure-empty">
              {props.hasLoads ? 'Calculating …' : 'Give the joint a load case to see this.'}
            </p>
          }
        >
          {(sweep) => (
            <Canvas
              label={sweepSentence(sweep(), props.overlap, props.target)}
              make={makeSweepChart}
              picture={picture()}
            />
          )}
        </Show>
      </div>
    </section>
  );
}
