/** A chart of single results with its head, its figures and its sentence. */

import { type Accessor, createUniqueId, type JSX, Show } from 'solid-js';
import type { Sheet } from '../../shared/sheet.ts';
import { Canvas } from '../charts/Canvas.tsx';
import { type DotPlot, makeDotChart } from '../charts/dot-chart.ts';
import type { Ink } from '../charts/ink.ts';
import { dotDrawing } from '../charts/plot-drawings.ts';
import { TakeOut } from '../parts/TakeOut.tsx';
import { Figures, type Table } from '../size/Figures.tsx';
import { createSize } from '../size-of.ts';

export interface DotFigureProps {
  readonly title: string;
  readonly units: string;
  readonly plot: DotPlot | null;
  /** Said where there is nothing to draw. */
  readonly empty: string;
  /** The picture in words. */
  readonly label: string;
  readonly tables: readonly Table[];
  /** All that is drawn, in figures. */
  readonly sheet: () => Sheet;
  /** What both axes are, for a picture of it that stands alone. */
  readonly axes: string;
  /** The set: it is part of the name of a file. */
  readonly of?: string;
  readonly ink: Accessor<Ink | null>;
  readonly tools?: JSX.Element;
}

export function DotFigure(props: DotFigureProps): JSX.Element {
  let body!: HTMLDivElement;
  const id = createUniqueId();
  const size = createSize(() => body);
  const picture = () => {
    const [plot, ink, box] = [props.plot, props.ink(), size()];
    return plot && ink && box ? { ...plot, ...box, ink } : null;
  };
  return (
    <section class="figure-block coupon-figure" aria-labelledby={id}>
      <header>
        <h2 id={id}>{props.title}</h2>
        <span class="units">{props.units}</span>
        <span class="figure-tools">
          {props.tools}
          <Show when={props.plot}>
            {(plot) => (
              <TakeOut
                what={[props.title, props.of].filter(Boolean).join(', ')}
                about={props.units}
                sheet={() => props.sheet()}
                picture={() => dotDrawing(plot(), props.axes)}
              />
            )}
          </Show>
          <Show when={props.plot}>
            <Figures tables={props.tables} />
          </Show>
        </span>
      </header>
      <div class="figure-body" ref={body}>
        <Show when={props.plot} fallback={<p class="figure-empty">{props.empty}</p>}>
          <Canvas label={props.label} make={makeDotChart} picture={picture()} />
        </Show>
      </div>
      <p class="coupon-caption">{props.plot ? props.label : ''}</p>
    </section>
  );
}
