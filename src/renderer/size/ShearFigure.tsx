/** Shear along the bond: what is drawn, the curve, and its figures. */
import { type Accessor, createMemo, type JSX, Show } from 'solid-js';
import { isFlat } from '../../shared/convert-lap.ts';
import type { Joint, Project } from '../../shared/project.ts';
import type { JointReport } from '../../shared/reports.ts';
import { environment, figure } from '../../shared/words.ts';
import { Canvas } from '../charts/Canvas.tsx';
import type { Ink } from '../charts/ink.ts';
import { makeShearChart } from '../charts/shear-chart.ts';
import { shearSentence, shearTable } from '../charts/shear-data.ts';
import { Mark } from '../parts/Mark.tsx';
import { createSize } from '../size-of.ts';
import { askedFactor, type Choice } from '../state/drawn-state.ts';
import { DrawnState } from './DrawnState.tsx';
import { Figures } from './Figures.tsx';
import type { View } from './section/scale.ts';

export interface ShearFigureProps {
  readonly report: JointReport | null;
  readonly project: Project;
  readonly joint: Joint;
  readonly view: View | null;
  readonly ink: Accessor<Ink | null>;
  readonly choice: Choice;
  readonly onChoice: (choice: Choice) => void;
}

export function ShearFigure(props: ShearFigureProps): JSX.Element {
  let body!: HTMLDivElement;
  const size = createSize(() => body);
  const stress = () => props.report?.stress ?? null;
  const cases = createMemo(() =>
    props.project.loadCases.filter(({ id }) => props.joint.loads.some((load) => load.case === id)),
  );
  const drawnCase = () => cases().find(({ id }) => id === stress()?.caseId);
  const allowable = (level: number): string => {
    const drawn = stress();
    const where = drawn ? environment(drawn.temperature, drawnCase()?.moisture ?? 'dry') : '';
    return `yield ${figure(level)}, ${where}`;
  };
  const picture = () => {
    const [drawn, view, ink, box] = [stress(), props.view, props.ink(), size()];
    if (!drawn || !view || !ink || !box) return null;
    return {
      stress: drawn,
      allowable,
      ink,
      view: { left: view.left, scale: view.scale, ...box },
    };
  };
  const table = createMemo(() => {
    const drawn = stress();
    return drawn
      ? {
          head: ['x, mm', ...drawn.bonds.map(({ part }) => `${part}, MPa`)],
          rows: shearTable(drawn).map(({ x, shear }) => [x.toFixed(2), ...shear.map(figure)]),
        }
      : null;
  });
  const caseName = (): string => drawnCase()?.name ?? '';

  return (
    <section class="figure-block is-shear" aria-labelledby="shear-title">
      <header>
        <h2 id="shear-title">Shear along the bond</h2>
        <span class="units">MPa</span>
        <Show when={stress()?.carried === false && stress()}>
          {(drawn) => (
            <p class="not-carried">
              <Mark state="fails" /> the bond cannot carry this load: curve at the most it carries
              (× {figure(drawn().capacity)})
            </p>
          )}
        </Show>
        <Show when={table()}>
          {(figures) => (
            <Figures
              caption={`Shear along the bond, ${caseName()}`}
              head={figures().head}
              rows={figures().rows}
            />
          )}
        </Show>
      </header>
      <Show when={stress()} fallback={<div class="drawn" />}>
        {(drawn) => (
          <DrawnState
            cases={cases()}
            stress={drawn()}
            flat={isFlat(props.joint)}
            choice={props.choice}
            asked={props.report ? askedFactor(props.report, props.project) : 1}
            onChoice={props.onChoice}
          />
        )}
      </Show>
      <div class="figure-body" ref={body}>
        <Show
          when={stress()}
          fallback={
            <p class="figure-empty">
              {props.report ? 'No load acts: there is no stress to draw.' : 'Calculating …'}
            </p>
          }
        >
          {(drawn) => (
            <Canvas
              label={shearSentence(drawn(), caseName())}
              make={makeShearChart}
              picture={picture()}
            />
          )}
        </Show>
      </div>
    </section>
  );
}
