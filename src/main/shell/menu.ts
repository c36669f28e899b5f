/** A plain menu of the system's own commands; those of the project are in the page. */
import type { MenuItemConstructorOptions } from 'electron';

export function menuTemplate(
  platform: NodeJS.Platform,
  packaged: boolean,
): MenuItemConstructorOptions[] {
  const mac = platform === 'darwin';
  const forDevelopers: MenuItemConstructorOptions[] = packaged
    ? []
    : [{ type: 'separator' }, { role: 'reload' }, { role: 'toggleDevTools' }];
  return [
    ...(mac ? [{ role: 'appMenu' } as const] : []),
    { label: 'File', submenu: [{ role: mac ? 'close' : 'quit' }] },
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
    { role: 'help', submenu: [{ role: 'about' }] },
  ];
}
