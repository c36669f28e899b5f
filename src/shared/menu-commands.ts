/** What the menu of the window may ask of its page; the page does it, and nothing else than these. */
export const menuCommands = [
  'new',
  'open',
  /** With the path of a file that was open lately, or that the system hands over. */
  'open-file',
  'save',
  'save-as',
  'print',
  /** The guide, the list of keys, what the program is: as the “?” of the page has them. */
  'guide',
  'list keys',
  'about',
  /** Saves, and closes the window with `window.close()` once that is done. */
  'save-and-close',
] as const;

export type MenuCommandName = (typeof menuCommands)[number];

export interface MenuCommand {
  readonly name: MenuCommandName;
  /** Of `open-file` alone. */
  readonly path?: string;
}

/** A command of ours, made anew from what arrived; null when it is none. */
export function readMenuCommand(arrived: unknown): MenuCommand | null {
  if (typeof arrived !== 'object' || arrived === null) return null;
  const { name, path } = arrived as { name?: unknown; path?: unknown };
  const known = menuCommands.find((one) => one === name);
  if (known === undefined) return null;
  if (known !== 'open-file') return { name: known };
  return typeof path === 'string' && path !== '' ? { name: known, path } : null;
}
