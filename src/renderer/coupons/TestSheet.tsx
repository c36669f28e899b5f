/** The sheet for the testing machine: each set with what is expected, blanks for what is read. On paper only, in N and mm as results are typed. */

import { For, type JSX } from 'solid-js';
import { cautions } from '../../shared/cautions.ts';
import type { Project } from '../../shared/project.ts';
import type { CouponSet } from '../../shared/project-coupons.ts';
import { inSi } from '../../shared/shown-units.ts';
import { smallLapNote } from '../../shared/standard-specimens.ts';
import { environment } from '../../shared/words.ts';
import type { CouponsState } from '../state/coupons.ts';
import { areaText, loadText, plannedNumber, plannedText } from './coupon-format.ts';

export interface TestSheetProps {
  readonly project: Project;
  readonly state: CouponsState;
}

const blank = '\u00A0';
/** Boxes of a set at most: more go on a sheet of their own. */
const MOST_BOXES = 36;
const USUAL_BOXES = 6;

/** One list of boxes for each batch, as far as the sheet takes them. */
function boxesOf(set: CouponSet): readonly (readonly number[])[] {
  const { batches, each } = set.planned ?? { batches: 1, each: USUAL_BOXES };
  const boxes = Array.from({ length: batches }, (_, i) =>
    Array.from({ length: each }, (_, k) => 1 + i * each + k),
  );
  return boxes
    .map((list) => list.filter((n) => n <= MOST_BOXES))
    .filter(({ length }) => length > 0);
}

export function TestSheet(props: TestSheetProps): JSX.Element {
  const modelVersion = (): string => props.state.modelVersion() ?? '–';
  return (
    <article class="test-sheet" aria-hidden="true">
      <header>
        <h1>Coupon tests</h1>
        <p>
          {props.project.name} · machine ________ · load cell ________ · by ____________ · date
          ____________
        </p>
      </header>
      <For each={props.state.sets()}>
        {(set) => {
          const report = () => props.state.report(set.id);
          const specimen = () => props.state.specimens().find(({ id }) => id === set.specimen);
          const load = () => report()?.predicted.load ?? null;
          const grip = () => report()?.grip ?? null;
          return (
            <section>
              <p class="sheet-name">
                <b>{set.name}</b> {specimen()?.standard}
              </p>
              <p>
                {inSi(() => environment(set.temperature, set.moisture))} · gap <b>{set.gap} mm</b> ·
                area <b>{report() ? inSi(() => areaText(report()!.area)) : '____'}</b> · expected{' '}
                <b>{load() === null ? '____' : inSi(() => loadText(load()!))}</b>
                {report()?.predicted.mode ? `, ${report()!.predicted.mode}` : ''} · grips{' '}
                <b>{grip() === null ? '____' : inSi(() => loadText(grip()!))}</b> · number{' '}
                <b>
                  {plannedText(set)}
                  {set.planned ? ` = ${plannedNumber(set)}` : ''}
                </b>
              </p>
              <For each={boxesOf(set)}>
                {(boxes) => (
                  <p class="sheet-boxes">
                    <span class="sheet-batch">batch{blank.repeat(12)}</span>
                    <For each={boxes}>{(n) => <span class="sheet-box">{n}</span>}</For>
                  </p>
                )}
              </For>
            </section>
          );
        }}
      </For>
      <footer>
        <p>
          In each box: load, N, and how it failed in per cent: C cohesive, T thin layer, A at a
          surface (adhesion), B adherend.
        </p>
        <p>{smallLapNote}</p>
        <p>
          {cautions.join(' ')} Expected loads by mean properties, without knockdowns and factors.
          Model {modelVersion()}.
        </p>
      </footer>
    </article>
  );
}
