/** Section and curves of a joint on paper: in lines, to one scale, each plot with its sentence. */

import { type JSX, Show } from 'solid-js';
import { isFlat } from '../../shared/convert-lap.ts';
import type { Joint, Project } from '../../shared/project.ts';
import type { JointReport, SweepReport } from '../../shared/reports.ts';
import type { JointSheet } from '../../shared/reports-sheet.ts';
import { saidText } from '../../shared/said.ts';
import { displayUnit } from '../../shared/units.ts';
import {
  caseText,
  clocking,
  edgeMomentText,
  environment,
  figure,
  gapWords,
  sentence,
} from '../../shared/words.ts';
import { makeBondChart } from '../charts/bond-chart.ts';
import type { BondPlot } from '../charts/bond-picture.ts';
import { varInk } from '../charts/ink.ts';
import { peelPlot, peelSentence } from '../charts/peel-data.ts';
import { shearPlot, shearSentence } from '../charts/shear-data.ts';
import { svgElement } from '../charts/svg-pen.ts';
import { svgPlotInto } from '../charts/svg-plot.ts';
import { makeSweepChart } from '../charts/sweep-chart.ts';
import { sweepSentence } from '../charts/sweep-data.ts';
import { roomForLayers } from '../size/section/layout.ts';
import { SectionDrawing } from '../size/section/SectionDrawing.tsx';
import { fitView, LEFT, scaleNote, type View } from '../size/section/scale.ts';
import { stackOf } from '../size/section/stack.ts';

/** Pixels of paper, 96 to the inch. */
const HEIGHT = { section: 200, shear: 150, peel: 140, sweep: 170 } as const;

const picture = (width: number, height: number, label: string): SVGSVGElement =>
  svgElement('svg', {
    class: 'paper-plot',
    width,
    height,
    viewBox: `0 0 ${width} ${height}`,
    role: 'img',
    'aria-label': label,
  });

function bondSvg(
  plot: BondPlot,
  view: View,
  box: { width: number; height: number },
  foot: boolean,
  label: string,
): SVGSVGElement {
  const svg = picture(box.width, box.height, label);
  // The chart asks for a canvas; in lines nothing is drawn on it.
  const chart = makeBondChart(document.createElement('canvas'), svgPlotInto(svg, box));
  chart.show({ ...plot, foot, ink: varInk, view: { left: view.left, scale: view.scale, ...box } });
  return svg;
}

function sweepSvg(
  sweep: SweepReport,
  joint: Joint,
  report: JointReport,
  box: { width: number; height: number },
): SVGSVGElement {
  const target = report.targetMargin;
  const svg = picture(box.width, box.height, sweepSentence(sweep, joint.overlap, target));
  const chart = makeSweepChart(document.createElement('canvas'), svgPlotInto(svg, box));
  chart.show({
    sweep,
    target,
    present: joint.overlap,
    strength: strengthOf(report),
    ink: varInk,
    left: LEFT,
    ...box,
  });
  return svg;
}

/** As the margins have it, the durability trough apart: what the Size page marks. */
function strengthOf({ margins }: JointReport): number | null {
  const rows = margins.filter(({ mode }) => mode !== 'durability-trough');
  return rows.length === 0 ? null : 1 + Math.min(...rows.map(({ margin }) => margin));
}

export interface PaperPlotsProps {
  readonly project: Project;
  readonly joint: Joint;
  readonly sheet: JointSheet;
  /** Of the body of a page, pixels. */
  readonly width: number;
}

export function viewOf(props: PaperPlotsProps): View {
  const stack = stackOf(props.joint, props.project.adherends);
  return fitView(stack, props.joint.overlap, props.width, roomForLayers(stack, HEIGHT.section));
}

export function PaperSection(props: PaperPlotsProps): JSX.Element {
  const view = viewOf(props);
  return (
    <figure class="paper-figure is-section">
      <figcaption>
        <strong>Section</strong> {scaleNote(view)}
      </figcaption>
      <SectionDrawing
        joint={props.joint}
        stack={stackOf(props.joint, props.project.adherends)}
        description={props.sheet.report.description}
        view={view}
        width={props.width}
        height={HEIGHT.section}
        role="img"
      />
    </figure>
  );
}

export function PaperPlots(props: PaperPlotsProps): JSX.Element {
  const { joint, sheet, width } = props;
  const { report, sweep } = sheet;
  const view = viewOf(props);
  const stress = report.stress;
  const caseName = (): string => {
    const found = props.project.loadCases.find(({ id }) => id === stress?.caseId);
    return caseText(found?.name ?? '', stress?.conditionName ?? null);
  };
  const stressUnit = displayUnit('shearYield').symbol;
  return (
    <>
      <h2>Shear and peel along the bond</h2>
      <Show
        when={stress}
        fallback={<p class="sheet-line">No load acts: there is no stress to draw.</p>}
      >
        {(drawn) => {
          const where = environment(drawn().temperature, drawn().moisture);
          const shear = shearSentence(drawn(), caseName());
          const peel = peelSentence(drawn(), caseName());
          return (
            <>
              <p class="sheet-line" data-heading="">
                State drawn: {caseName()}, {where}, {gapWords[drawn().gapState]}
                {isFlat(joint) ? '' : `, clocking ${clocking(drawn().theta)}`}, loads as applied
                {drawn().carried
                  ? ''
                  : `; the bond cannot carry this load: curves at the most it carries, × ${figure(drawn().capacity)}`}
                {drawn().edgeMoment
                  ? `; edge moment k: ${edgeMomentText(drawn().edgeMoment!)}`
                  : ''}
                .
              </p>
              <figure class="paper-figure">
                <figcaption>
                  <strong>Shear</strong> {stressUnit}
                </figcaption>
                {bondSvg(shearPlot(drawn()), view, { width, height: HEIGHT.shear }, true, shear)}
                <p class="plot-sentence">{shear}</p>
              </figure>
              <figure class="paper-figure">
                <figcaption>
                  <strong>Peel</strong> {stressUnit}, opening +
                </figcaption>
                {bondSvg(peelPlot(drawn()), view, { width, height: HEIGHT.peel }, true, peel)}
                <p class="plot-sentence">{peel}</p>
              </figure>
            </>
          );
        }}
      </Show>
      <Show when={sweep}>
        {(found) => (
          <>
            <h2>Strength against overlap</h2>
            <figure class="paper-figure">
              <figcaption>
                over the load asked for; 1 is margin 0; durability trough left out
              </figcaption>
              {sweepSvg(found(), joint, report, { width, height: HEIGHT.sweep })}
              <p class="plot-sentence">
                {sweepSentence(found(), joint.overlap, report.targetMargin)}
              </p>
            </figure>
          </>
        )}
      </Show>
      <Show when={sheet.sweepRefused}>
        {(error) => (
          <p class="sheet-line">
            Strength against overlap cannot be shown: {sentence(saidText(error()))}
          </p>
        )}
      </Show>
    </>
  );
}
