/** What the bar has: finding, changes taken back, the theme. */
import type { ThemeChoice } from '../theme.ts';
import type { Action, Reach } from './action.ts';

export const findActions = ({ find, listKeys }: Reach): Action[] => [
  {
    id: 'find',
    title: () => 'Find an action, joint, load case, adhesive or coupon set',
    group: 'keys',
    keys: [{ key: 'k', ctrl: true, writing: true }],
    available: () => true,
    run: find,
  },
  {
    id: 'list keys',
    title: () => 'List of keys',
    group: 'keys',
    keys: [
      { key: 'F1', writing: true },
      { key: '/', ctrl: true },
    ],
    also: 'help keyboard shortcuts',
    available: () => true,
    run: listKeys,
  },
];

const named = (what: string, change: string | null): string =>
  change === null ? what : `${what} ${change}`;

export const changeActions = ({ project: { history }, undoing }: Reach): Action[] => [
  {
    id: 'undo',
    title: () => named('Undo', history.undoes()),
    group: 'change',
    keys: [{ key: 'z', ctrl: true, repeats: true }],
    also: 'take back',
    likely: ['joints', 'size', 'compare', 'gap', 'coupons'],
    available: () => history.undoes() !== null,
    run: undoing.undo,
  },
  {
    id: 'redo',
    title: () => named('Redo', history.redoes()),
    group: 'change',
    keys: [
      { key: 'z', ctrl: true, shift: true, repeats: true },
      { key: 'y', ctrl: true, repeats: true },
    ],
    also: 'do again',
    likely: ['joints', 'size', 'compare', 'gap', 'coupons'],
    available: () => history.redoes() !== null,
    run: undoing.redo,
  },
];

const themes: readonly { readonly choice: ThemeChoice; readonly title: string }[] = [
  { choice: 'paper', title: 'Paper' },
  { choice: 'night', title: 'Night' },
  { choice: 'system', title: 'As the system' },
];
const themeWords: Readonly<Record<ThemeChoice, string>> = {
  paper: 'theme light white day colours',
  night: 'theme dark black colours',
  system: 'theme colours',
};

export const themeActions = ({ theme }: Reach): Action[] =>
  themes.map(({ choice, title }) => ({
    id: `theme ${choice}`,
    title: () => title,
    group: 'look',
    also: themeWords[choice],
    available: () => true,
    run: () => theme.choose(choice),
  }));
