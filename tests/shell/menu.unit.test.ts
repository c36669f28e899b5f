import type { MenuItemConstructorOptions } from 'electron';
import { describe, expect, it } from 'vitest';
import { menuTemplate } from '../../src/main/shell/menu.ts';

function roles(items: readonly MenuItemConstructorOptions[]): string[] {
  return items.flatMap(({ role, submenu }) => [
    ...(role ? [role] : []),
    ...(Array.isArray(submenu) ? roles(submenu) : []),
  ]);
}

describe('the menu', () => {
  it.each(['linux', 'win32', 'darwin'] as const)('holds no tools of developers: %s', (platform) => {
    const found = roles(menuTemplate(platform, true));
    expect(found).not.toContain('toggleDevTools');
    expect(found).not.toContain('reload');
    expect(found).not.toContain('forceReload');
    expect(found).toEqual(expect.arrayContaining(['editMenu', 'zoomIn', 'help', 'about']));
  });

  it('holds them where the program is not packaged', () => {
    expect(roles(menuTemplate('linux', false))).toContain('toggleDevTools');
  });

  it('begins with the application on macOS and ends the program elsewhere', () => {
    expect(menuTemplate('darwin', true)[0]).toEqual({ role: 'appMenu' });
    expect(roles(menuTemplate('linux', true))).toContain('quit');
    expect(roles(menuTemplate('darwin', true))).not.toContain('quit');
  });

  it('takes no key that the page uses', () => {
    const own = JSON.stringify(menuTemplate('linux', false));
    expect(own).not.toContain('accelerator');
  });
});
