/** Paper by day, night by night, or as the system has it; remembered on this machine only. */
import { type Accessor, createSignal, onCleanup } from 'solid-js';

export type ThemeChoice = 'paper' | 'night' | 'system';

const KEY = 'lapwright-theme';
const isChoice = (value: unknown): value is ThemeChoice =>
  value === 'paper' || value === 'night' || value === 'system';

export interface Theme {
  readonly choice: Accessor<ThemeChoice>;
  choose(choice: ThemeChoice): void;
  /** Changes whenever the colours do: canvases, which no style sheet reaches, redraw on it. */
  readonly version: Accessor<number>;
}

/** Storage can be forbidden; the page then simply does not remember. */
function remembered(): ThemeChoice {
  try {
    const value = localStorage.getItem(KEY);
    return isChoice(value) ? value : 'system';
  } catch {
    return 'system';
  }
}

function remember(choice: ThemeChoice): void {
  try {
    localStorage.setItem(KEY, choice);
  } catch {
    // Not remembered, then.
  }
}

/** What a person asks of the system, and changes the colours. */
const asked = [
  '(prefers-color-scheme: dark)',
  '(prefers-contrast: more)',
  '(forced-colors: active)',
];

export function createTheme(): Theme {
  const [choice, setChoice] = createSignal(remembered());
  const [version, setVersion] = createSignal(0);
  const apply = (): void => {
    document.documentElement.dataset.theme = choice();
    setVersion((n) => n + 1);
  };
  for (const query of asked) {
    const system = window.matchMedia?.(query);
    system?.addEventListener('change', apply);
    onCleanup(() => system?.removeEventListener('change', apply));
  }
  apply();
  return {
    choice,
    version,
    choose(next) {
      setChoice(next);
      remember(next);
      apply();
    },
  };
}
