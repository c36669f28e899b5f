/** Under the choice of state: what the strengths were cut by, and how a flat lap is bent. */
import { For, type JSX, Show } from 'solid-js';
import type { Ledger, StressReport } from '../../shared/reports.ts';
import { edgeMomentText, ledgerText } from '../../shared/words.ts';
import type { Subject } from '../state/working.ts';
import { type OpenWorking, Reading } from './Reading.tsx';

export interface StressNotesProps {
  readonly stress: StressReport;
  readonly layered: boolean;
  /** False while the maps are drawn: they are of the layered shells already. */
  readonly canLayer: boolean;
  readonly onLayered: (shown: boolean) => void;
  readonly explained: Subject | null;
  readonly onWorking: OpenWorking;
}

/** Bonds with the same knockdowns share a line. */
export function ledgerLines(ledgers: readonly Ledger[]): { name: string; text: string }[] {
  const lines: { name: string; text: string }[] = [];
  for (const ledger of ledgers) {
    const text = ledgerText(ledger);
    const same = lines.find((line) => line.text === text);
    if (same) same.name = 'both bonds';
    else lines.push({ name: ledgers.length > 1 ? ledger.part : '', text });
  }
  return lines;
}

export function StressNotes(props: StressNotesProps): JSX.Element {
  return (
    <div class="stress-notes">
      <ul>
        <For each={ledgerLines(props.stress.ledgers)}>
          {({ name, text }) => (
            <li>
              <span class="note-name">Knockdowns{name === '' ? '' : `, ${name}`}</span> {text}
            </li>
          )}
        </For>
        <Show when={props.stress.edgeMoment}>
          {(moment) => (
            <li>
              <span class="note-name">Edge moment k</span>{' '}
              <Reading
                subject={{ kind: 'figure', subject: 'edge-moment' }}
                open={props.explained}
                onWorking={props.onWorking}
                said=", edge moment factors"
              >
                {edgeMomentText(moment())}
              </Reading>
            </li>
          )}
        </Show>
      </ul>
      <Show when={props.canLayer}>
        <label
          class="tick"
          title="Elastic shear of the layered shells, thin, beside the shear that counts"
        >
          <input
            type="checkbox"
            checked={props.layered}
            onChange={(event) => props.onLayered(event.currentTarget.checked)}
          />
          layered shells
        </label>
      </Show>
    </div>
  );
}
