/** Units by name: both presets, the sheet of them all, and every unit of every kind of quantity. */
import { kindNames, presetNames, unitKinds } from '../../shared/display-units.ts';
import type { Action, Reach } from './action.ts';

const words = { SI: 'metric millimetres newtons', US: 'inch imperial customary pounds' } as const;

export const presetActions = ({ units, chooseUnits }: Reach): Action[] => [
  ...presetNames.map(
    (name): Action => ({
      id: `units ${name}`,
      title: () => `Units: ${name}`,
      group: 'units',
      also: words[name],
      available: () => units.preset() !== name,
      run: () => units.take(name),
    }),
  ),
  {
    id: 'units',
    title: () => 'Units of each quantity …',
    group: 'units',
    available: () => true,
    run: chooseUnits,
  },
];

/** Those that are not on the screen now. */
export const unitActions = ({ units }: Reach): Action[] =>
  kindNames.flatMap((kind) =>
    unitKinds[kind].units.map(
      (unit): Action => ({
        id: `unit ${kind} ${unit}`,
        title: () => `${unitKinds[kind].title} in ${unit}`,
        group: 'units',
        also: 'unit',
        available: () => units.choice()[kind] !== unit,
        run: () => units.choose(kind, unit as never),
      }),
    ),
  );
