/** One plot along the bond, under the section and to its scale. */
import type { Accessor, JSX } from 'solid-js';
import { makeBondChart } from '../charts/bond-chart.ts';
import type { BondPlot } from '../charts/bond-picture.ts';
import { Canvas } from '../charts/Canvas.tsx';
import type { Ink } from '../charts/ink.ts';
import { createSize } from '../size-of.ts';
import type { View } from './section/scale.ts';

export interface BondFigureProps {
  readonly plot: BondPlot | null;
  readonly view: View | null;
  readonly ink: Accessor<Ink | null>;
  readonly foot: boolean;
  readonly label: string;
}

export function BondFigure(props: BondFigureProps): JSX.Element {
  let body!: HTMLDivElement;
  const size = createSize(() => body);
  const picture = () => {
    const [plot, view, ink, box] = [props.plot, props.view, props.ink(), size()];
    if (!plot || !view || !ink || !box) return null;
    return {
      ...plot,
      foot: props.foot,
      ink,
      view: { left: view.left, scale: view.scale, ...box },
    };
  };
  return (
    <div class="figure-body" ref={body}>
      <Canvas label={props.label} make={makeBondChart} picture={picture()} />
    </div>
  );
}
