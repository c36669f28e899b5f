/** Paper, night, or as the system has it. */
import { For, type JSX } from 'solid-js';
import type { Theme, ThemeChoice } from '../theme.ts';

const choices: readonly { choice: ThemeChoice; name: string; icon: string }[] = [
  {
    choice: 'paper',
    name: 'Paper',
    icon: 'M8 5 a3 3 0 1 0 0.01 0 M8 1.2 V2.8 M8 13.2 V14.8 M1.2 8 H2.8 M13.2 8 H14.8 M3.2 3.2 L4.3 4.3 M11.7 11.7 L12.8 12.8 M3.2 12.8 L4.3 11.7 M11.7 4.3 L12.8 3.2',
  },
  {
    choice: 'night',
    name: 'Night',
    icon: 'M13.6 9.6 A6 6 0 1 1 6.4 2.4 A4.8 4.8 0 0 0 13.6 9.6 Z',
  },
  {
    choice: 'system',
    name: 'As the system',
    icon: 'M8 2 A6 6 0 1 0 8.01 2 M8 2 V14 M8 5 H12.6 M8 8 H14 M8 11 H12.6',
  },
];

export function ThemeControl(props: { readonly theme: Theme }): JSX.Element {
  return (
    <fieldset class="theme">
      <legend class="hidden">Theme</legend>
      <For each={choices}>
        {({ choice, name, icon }) => (
          <label title={name}>
            <input
              type="radio"
              name="theme"
              aria-label={name}
              checked={props.theme.choice() === choice}
              onChange={() => props.theme.choose(choice)}
            />
            <svg width="16" height="16" viewBox="0 0 16 16" aria-hidden="true">
              <path d={icon} />
            </svg>
          </label>
        )}
      </For>
    </fieldset>
  );
}
