/** Which units the page writes in: one of the presets, or a unit of one's own for each kind of quantity. */
import { createUniqueId, For, type JSX } from 'solid-js';
import { kindNames, presetNames, unitKinds } from '../../shared/display-units.ts';
import { KeysDialog } from '../actions/KeysDialog.tsx';
import { Choice } from '../size/Choice.tsx';
import type { Units } from '../units.ts';

export interface UnitsSheetProps {
  readonly units: Units;
  readonly onClose: () => void;
}

export function UnitsSheet(props: UnitsSheetProps): JSX.Element {
  const id = createUniqueId();
  return (
    <KeysDialog class="units-sheet" label="Units" onClose={props.onClose}>
      <header class="units-head">
        <h2>Units on the screen</h2>
        <fieldset class="segments">
          <legend class="hidden">Preset</legend>
          <For each={presetNames}>
            {(name) => (
              <label>
                <input
                  type="radio"
                  name={id}
                  checked={props.units.preset() === name}
                  onChange={() => props.units.take(name)}
                />
                <span>{name}</span>
              </label>
            )}
          </For>
        </fieldset>
        <button type="button" class="link" onClick={() => props.onClose()}>
          Close
        </button>
      </header>
      <div class="units-kinds">
        <For each={kindNames}>
          {(kind) => (
            <div class="units-kind">
              <span>{unitKinds[kind].title}</span>
              <Choice
                help="unit"
                name={`Unit of ${unitKinds[kind].title.toLowerCase()}`}
                options={unitKinds[kind].units.map((unit) => ({ value: unit, text: unit }))}
                value={props.units.choice()[kind]}
                onChoose={(unit) => props.units.choose(kind, unit as never)}
              />
            </div>
          )}
        </For>
      </div>
      <p class="units-note">
        Kept on this machine, not in the project: no figure of it changes. The sheet that is printed
        follows. Workings, bench card and test sheet, readings of the bench and results of coupons
        stay in N, mm, MPa and °C.
      </p>
    </KeysDialog>
  );
}
