import { describe, expect, it } from 'vitest';
import { browserPlaces, defaultOpener, hasScreen } from '../../src/main/loopback/find-browser.ts';

/** Whatever system the test runs on joins with its own separator. */
const slashes = (paths: readonly string[]): string[] =>
  paths.map((path) => path.replaceAll('\\', '/'));

describe('where browsers are', () => {
  it('looks along the path on Linux, for Chrome and Chromium before Edge', () => {
    const places = slashes(browserPlaces('linux', { PATH: 'a::b' }));
    expect(places[0]).toBe('a/google-chrome');
    expect(places).toContain('b/chromium');
    expect(places.at(-1)).toBe('b/microsoft-edge-stable');
    expect(places.every((place) => /^[ab]\//.test(place))).toBe(true);
  });

  it('looks where Windows installs programs, for all users or for one', () => {
    const env = { LOCALAPPDATA: 'L', PROGRAMFILES: 'P', 'PROGRAMFILES(X86)': '' };
    expect(slashes(browserPlaces('win32', env))).toEqual([
      'L/Google/Chrome/Application/chrome.exe',
      'P/Google/Chrome/Application/chrome.exe',
      'L/Chromium/Application/chrome.exe',
      'P/Chromium/Application/chrome.exe',
      'L/Microsoft/Edge/Application/msedge.exe',
      'P/Microsoft/Edge/Application/msedge.exe',
    ]);
  });

  it('looks among the applications on macOS', () => {
    const places = slashes(browserPlaces('darwin', { HOME: 'H' }));
    expect(places).toContain('/Applications/Google Chrome.app/Contents/MacOS/Google Chrome');
    expect(places).toContain('H/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge');
  });

  it.each(['linux', 'darwin', 'win32'] as const)(
    'survives an empty environment: %s',
    (platform) => {
      expect(Array.isArray(browserPlaces(platform, {}))).toBe(true);
      expect(defaultOpener(platform)[0]).toMatch(/^(xdg-open|open|rundll32\.exe)$/);
    },
  );

  it('knows a Linux session without a screen', () => {
    expect(hasScreen('linux', {})).toBe(false);
    expect(hasScreen('linux', { DISPLAY: '' })).toBe(false);
    expect(hasScreen('linux', { DISPLAY: ':0' })).toBe(true);
    expect(hasScreen('linux', { WAYLAND_DISPLAY: 'wayland-0' })).toBe(true);
    expect(hasScreen('darwin', {})).toBe(true);
    expect(hasScreen('win32', {})).toBe(true);
  });
});
