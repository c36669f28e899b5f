/** Beside the names of the plots: their peaks as figures that open their working. */
import { For, type JSX, Show } from 'solid-js';
import { figureOf, lengthText, symbolOf } from '../../shared/measures.ts';
import type { BondStress, StressReport } from '../../shared/reports.ts';
import { placeAlong } from '../charts/bond-picture.ts';
import type { Subject } from '../state/working.ts';
import { type OpenWorking, Reading } from './Reading.tsx';

export interface StressReadingsProps {
  readonly stress: StressReport;
  readonly quantity: 'shear' | 'peel';
  readonly explained: Subject | null;
  readonly onWorking: OpenWorking;
}

const subjects = { shear: 'peak-shear', peel: 'peak-peel' } as const;

export function StressReadings(props: StressReadingsProps): JSX.Element {
  const peakOf = (bond: BondStress) => (props.quantity === 'shear' ? bond.peak : bond.layered.peak);
  const short = (part: string): string =>
    props.stress.bonds.length === 1 ? '' : `${part.replace(/ bond$/, '')} `;
  const where = (x: number): string =>
    placeAlong(x, props.stress.x.at(-1) ?? 0, `${lengthText(x)} from the root`);
  const opens = (): boolean =>
    props.quantity === 'shear' || props.stress.bonds.some(({ layered }) => layered.peak.value > 0);
  return (
    <span class="readings">
      <Show when={opens()} fallback={<span class="units">nothing opens</span>}>
        <For each={props.stress.bonds}>
          {(bond) => (
            <Reading
              class={`is-${props.quantity}`}
              subject={{ kind: 'figure', subject: subjects[props.quantity], part: bond.part }}
              open={props.explained}
              onWorking={props.onWorking}
              said={` ${symbolOf('stress')} ${props.quantity} ${where(peakOf(bond).x)}`}
            >
              {`${short(bond.part)}peak ${figureOf('stress', peakOf(bond).value)}`}
            </Reading>
          )}
        </For>
      </Show>
    </span>
  );
}
