/** What is done to the project as a file, and the files that were open lately. */
import type { JSX } from 'solid-js';
import type { Action } from '../actions/action.ts';
import { chordText } from '../actions/chord.ts';
import { Menu, type MenuEntry } from '../parts/Menu.tsx';
import type { ProjectFiles } from '../state/files/project-files.ts';
import { shortFolder, whenText } from './file-words.ts';

export interface FileMenuProps {
  readonly files: ProjectFiles;
  /** The actions of files: what is in the menu is what the keys do. */
  readonly actions: readonly Action[];
}

/** As many as the menu has room for on a small screen; the rest are found by Ctrl+K. */
const RECENT = 6;

/** Lines of the menu, by the ids of their actions. */
const parts: readonly (readonly string[])[] = [
  ['new', 'open'],
  ['save', 'save-as', 'save-copy', 'rename'],
  ['upload', 'demo'],
];

export function FileMenu(props: FileMenuProps): JSX.Element {
  const entriesOf = (ids: readonly string[]): MenuEntry[] =>
    ids.flatMap((id) => {
      const action = props.actions.find((one) => one.id === id);
      if (!action) return [];
      const [chord] = action.keys ?? [];
      return [
        {
          kind: 'item' as const,
          label: action.title(),
          disabled: !action.available(),
          ...(chord ? { end: chordText(chord), isKey: true } : {}),
          onChoose: action.run,
        },
      ];
    });
  const recent = (): MenuEntry[] => {
    const files = props.files.places().recent.slice(0, RECENT);
    if (files.length === 0) return [];
    return [
      { kind: 'line' },
      { kind: 'heading', label: 'Open recent' },
      ...files.map(
        (file): MenuEntry => ({
          kind: 'item',
          label: file.project,
          detail: `${file.name}, ${shortFolder(file.folder)}`,
          end: file.found ? whenText(file.at) : 'not there any more',
          title: file.path,
          faint: !file.found,
          onChoose: () => void props.files.openRecent(file),
        }),
      ),
    ];
  };
  const [first = [], ...others] = parts;
  const entries = (): readonly MenuEntry[] => [
    ...entriesOf(first),
    ...recent(),
    ...others.flatMap((ids): MenuEntry[] => [{ kind: 'line' }, ...entriesOf(ids)]),
  ];
  return (
    <Menu label="File" class="bar-file" entries={entries}>
      File
      <svg width="9" height="6" viewBox="0 0 9 6" aria-hidden="true">
        <path d="M1 1 L4.5 4.5 L8 1" />
      </svg>
    </Menu>
  );
}
