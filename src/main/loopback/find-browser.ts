/** Where a browser that can show a page as a window of its own is usually installed. */
import { join } from 'node:path';

type Env = Readonly<Record<string, string | undefined>>;

const onPath = ['google-chrome', 'google-chrome-stable', 'chromium', 'chromium-browser'];
const edgeOnPath = ['microsoft-edge', 'microsoft-edge-stable'];
const macPrograms = [
  'Google Chrome.app/Contents/MacOS/Google Chrome',
  'Chromium.app/Contents/MacOS/Chromium',
  'Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
];
const windowsPrograms = [
  ['Google', 'Chrome', 'Application', 'chrome.exe'],
  ['Chromium', 'Application', 'chrome.exe'],
  ['Microsoft', 'Edge', 'Application', 'msedge.exe'],
];

const isText = (value: string | undefined): value is string => value !== undefined && value !== '';

export function browserPlaces(platform: NodeJS.Platform, env: Env): string[] {
  if (platform === 'win32') {
    const roots = [env.LOCALAPPDATA, env.PROGRAMFILES, env['PROGRAMFILES(X86)']].filter(isText);
    return windowsPrograms.flatMap((parts) => roots.map((root) => join(root, ...parts)));
  }
  if (platform === 'darwin') {
    const roots = ['/Applications', ...(isText(env.HOME) ? [join(env.HOME, 'Applications')] : [])];
    return macPrograms.flatMap((program) => roots.map((root) => join(root, program)));
  }
  const folders = (env.PATH ?? '').split(':').filter(isText);
  return [...onPath, ...edgeOnPath].flatMap((name) => folders.map((folder) => join(folder, name)));
}

/** The command that hands an address to the default browser, with what goes before the address. */
export function defaultOpener(platform: NodeJS.Platform): readonly [string, ...string[]] {
  if (platform === 'win32') return ['rundll32.exe', 'url.dll,FileProtocolHandler'];
  if (platform === 'darwin') return ['open'];
  return ['xdg-open'];
}

/** A Linux session without a screen has no browser to show, whatever is installed. */
export const hasScreen = (platform: NodeJS.Platform, env: Env): boolean =>
  platform !== 'linux' || isText(env.DISPLAY) || isText(env.WAYLAND_DISPLAY);
