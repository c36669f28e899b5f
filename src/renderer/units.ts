/** The units that a person reads in; remembered on this machine only, never in a project. */
import { type Accessor, createSignal, onCleanup } from 'solid-js';
import {
  type PresetName,
  presetOf,
  presets,
  readChoice,
  type UnitChoice,
  type UnitKind,
  type UnitsOf,
} from '../shared/display-units.ts';
import { showUnitsOf } from '../shared/shown-units.ts';

const KEY = 'lapwright-units';

export interface Units {
  readonly choice: Accessor<UnitChoice>;
  /** Null where the choice is none of them. */
  readonly preset: Accessor<PresetName | null>;
  take(preset: PresetName): void;
  choose<K extends UnitKind>(kind: K, unit: UnitsOf<K>): void;
}

/** Storage can be forbidden, or hold what another version wrote. */
function remembered(): UnitChoice {
  try {
    return readChoice(JSON.parse(localStorage.getItem(KEY) ?? 'null'));
  } catch {
    return presets.SI;
  }
}

function remember(choice: UnitChoice): void {
  try {
    localStorage.setItem(KEY, JSON.stringify(choice));
  } catch {
    // Not remembered, then.
  }
}

/** From now on every figure of the page is written so, and anew when the choice changes. */
export function createUnits(): Units {
  const [choice, setChoice] = createSignal(remembered());
  onCleanup(showUnitsOf(choice));
  const set = (next: UnitChoice): void => {
    setChoice(next);
    remember(next);
  };
  return {
    choice,
    preset: () => presetOf(choice()),
    take: (preset) => set(presets[preset]),
    choose: (kind, unit) => set({ ...choice(), [kind]: unit }),
  };
}
