import type { MenuItemConstructorOptions } from 'electron';
import { describe, expect, it } from 'vitest';
import { type MenuSource, menuTemplate } from '../../src/main/shell/menu.ts';
import { type MenuCommand, readMenuCommand } from '../../src/shared/menu-commands.ts';

function roles(items: readonly MenuItemConstructorOptions[]): string[] {
  return items.flatMap(({ role, submenu }) => [
    ...(role ? [role] : []),
    ...(Array.isArray(submenu) ? roles(submenu) : []),
  ]);
}

const asked: MenuCommand[] = [];
const menu = (
  platform: NodeJS.Platform,
  packaged: boolean,
  recent: MenuSource['recent'] = [],
): MenuItemConstructorOptions[] =>
  menuTemplate(platform, packaged, { recent, command: (one) => asked.push(one) });

/** What the menu of files says, and what is asked when it is clicked through. */
function files(recent: MenuSource['recent'] = []) {
  const top = menu('linux', true, recent).find(({ label }) => label === 'File')!;
  const items = top.submenu as MenuItemConstructorOptions[];
  const lately = items.find(({ label }) => label === 'Open recent')!
    .submenu as MenuItemConstructorOptions[];
  asked.length = 0;
  for (const { click } of [...items, ...lately]) (click as (() => void) | undefined)?.();
  return { items, lately };
}

describe('the menu', () => {
  it('asks the page for what a file needs, and nothing that the page does not know', () => {
    files();
    expect(asked).toEqual(['new', 'open', 'save', 'save-as', 'print'].map((name) => ({ name })));
    expect(asked.map(readMenuCommand)).toEqual(asked);
  });

  it.each(['linux', 'darwin'] as const)('opens what helps: %s', (platform) => {
    const menus = menu(platform, true);
    const help = menus.find(({ role }) => role === 'help')!.submenu as MenuItemConstructorOptions[];
    const [first] = menus;
    const own = (first!.role === 'appMenu' ? first!.submenu : []) as MenuItemConstructorOptions[];
    asked.length = 0;
    for (const { click } of [...help, ...own]) (click as (() => void) | undefined)?.();
    expect(asked).toEqual(['guide', 'list keys', 'about'].map((name) => ({ name })));
    expect(asked.map(readMenuCommand)).toEqual(asked);
  });

  it('lists the files that were open lately and are still there', () => {
    expect(files().lately).toEqual([{ label: 'No file yet', enabled: false }]);
    const recent = [
      { path: '/a/b & c/x.json', name: 'x.json', folder: '/a/b & c', found: true },
      { path: '/gone.json', name: 'gone.json', folder: '/', found: false },
    ];
    expect(files(recent).lately.map(({ label }) => label)).toEqual(['x.json (/a/b && c)']);
    expect(asked.at(-1)).toEqual({ name: 'open-file', path: '/a/b & c/x.json' });
  });

  it.each(['linux', 'win32', 'darwin'] as const)('holds no tools of developers: %s', (platform) => {
    const found = roles(menu(platform, true));
    expect(found).not.toContain('toggleDevTools');
    expect(found).not.toContain('reload');
    expect(found).not.toContain('forceReload');
    expect(found).toEqual(expect.arrayContaining(['editMenu', 'zoomIn', 'help']));
  });

  it('holds them where the program is not packaged', () => {
    expect(roles(menu('linux', false))).toContain('toggleDevTools');
  });

  it('begins with the application on macOS and ends the program elsewhere', () => {
    expect(menu('darwin', true)[0]).toMatchObject({ role: 'appMenu' });
    const file = (platform: NodeJS.Platform) =>
      roles(menu(platform, true).filter(({ label }) => label === 'File'));
    expect(file('linux')).toContain('quit');
    expect(file('darwin')).not.toContain('quit');
    expect(roles(menu('darwin', true))).toContain('quit');
  });

  it('takes no key that the page uses', () => {
    const own = JSON.stringify(menu('linux', false));
    expect(own).not.toContain('accelerator');
  });
});
