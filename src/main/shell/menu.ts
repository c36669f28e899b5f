/** The menu: the system's own commands, and those of the project, which the page carries out. */
import type { MenuItemConstructorOptions } from 'electron';
import type { MenuCommand } from '../../shared/menu-commands.ts';
import type { RecentFile } from '../../shared/reports-files.ts';

export interface MenuSource {
  readonly recent: readonly Pick<RecentFile, 'path' | 'name' | 'folder' | 'found'>[];
  /** To the page of the window in front. */
  command(command: MenuCommand): void;
}

/** An ampersand would underline the letter after it. */
const plain = (text: string): string => text.replaceAll('&', '&&');

function recentItems({ recent, command }: MenuSource): MenuItemConstructorOptions[] {
  const found = recent.filter((file) => file.found);
  if (found.length === 0) return [{ label: 'No file yet', enabled: false }];
  return found.map(({ path, name, folder }) => ({
    label: plain(`${name} (${folder})`),
    click: () => command({ name: 'open-file', path }),
  }));
}

function fileItems(mac: boolean, menu: MenuSource): MenuItemConstructorOptions[] {
  const { command } = menu;
  return [
    { label: 'New project', click: () => command({ name: 'new' }) },
    { label: 'Open …', click: () => command({ name: 'open' }) },
    { label: 'Open recent', submenu: recentItems(menu) },
    { type: 'separator' },
    { label: 'Save', click: () => command({ name: 'save' }) },
    { label: 'Save as …', click: () => command({ name: 'save-as' }) },
    { type: 'separator' },
    { label: 'Print …', click: () => command({ name: 'print' }) },
    { type: 'separator' },
    { role: mac ? 'close' : 'quit' },
  ];
}

const aboutItem = ({ command }: MenuSource): MenuItemConstructorOptions => ({
  label: 'About Lapwright',
  click: () => command({ name: 'about' }),
});

/** The system's own, but that its first line opens ours. */
const appItems = (menu: MenuSource): MenuItemConstructorOptions[] => [
  aboutItem(menu),
  { type: 'separator' },
  { role: 'services' },
  { type: 'separator' },
  { role: 'hide' },
  { role: 'hideOthers' },
  { role: 'unhide' },
  { type: 'separator' },
  { role: 'quit' },
];

function helpItems(mac: boolean, menu: MenuSource): MenuItemConstructorOptions[] {
  const { command } = menu;
  return [
    { label: 'Guide', click: () => command({ name: 'guide' }) },
    { label: 'Keys', click: () => command({ name: 'list keys' }) },
    // On macOS it stands where the system has it.
    ...(mac ? [] : [{ type: 'separator' } as const, aboutItem(menu)]),
  ];
}

export function menuTemplate(
  platform: NodeJS.Platform,
  packaged: boolean,
  menu: MenuSource,
): MenuItemConstructorOptions[] {
  const mac = platform === 'darwin';
  const forDevelopers: MenuItemConstructorOptions[] = packaged
    ? []
    : [{ type: 'separator' }, { role: 'reload' }, { role: 'toggleDevTools' }];
  return [
    ...(mac ? [{ role: 'appMenu', submenu: appItems(menu) } as const] : []),
    { label: 'File', submenu: fileItems(mac, menu) },
    { role: 'editMenu' },
    {
      label: 'View',
      submenu: [
        { role: 'zoomIn' },
        { role: 'zoomOut' },
        { role: 'resetZoom' },
        { type: 'separator' },
        { role: 'togglefullscreen' },
        ...forDevelopers,
      ],
    },
    { role: 'help', submenu: helpItems(mac, menu) },
  ];
}
