/** What the program says of itself: versions, carrier, licences to open, cautions; and where the focus goes. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fireEvent, render, screen, waitFor, within } from '@solidjs/testing-library';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { root } from '../../src/launch/root.mjs';
import { App } from '../../src/renderer/App.tsx';
import { cautions } from '../../src/shared/cautions.ts';
import type { MenuCommand } from '../../src/shared/menu-commands.ts';
import { ok } from '../../src/shared/reply.ts';
import { useDialogs } from './support/dialogs.ts';
import { type FakeBridge, makeFakeBridge } from './support/fake-bridge.ts';
import { useBrowser } from './support/page.ts';

useBrowser();
useDialogs();

let bridge: FakeBridge;
beforeEach(() => {
  bridge = makeFakeBridge();
  vi.spyOn(HTMLElement.prototype, 'getClientRects').mockReturnValue([{}] as never);
});
const open = async (more: Partial<FakeBridge> = {}): Promise<void> => {
  render(() => <App bridge={{ ...bridge, ...more }} />);
  await screen.findByRole('heading', { name: 'Test frame' });
};
function find(typed: string): void {
  fireEvent.keyDown(document.activeElement ?? window, { key: 'k', ctrlKey: true });
  const text = screen.getByRole('combobox', { name: /^Action, joint/ });
  fireEvent.input(text, { target: { value: typed } });
  fireEvent.keyDown(text, { key: 'Enter' });
}
const about = (): HTMLElement => screen.getByRole('dialog', { name: 'About Lapwright' });
const press = (name: string): boolean =>
  fireEvent.click(within(about()).getByRole('button', { name }));
/** What stands behind a name in the list of facts. */
const fact = (name: string): string =>
  [...about().querySelectorAll('dt')].find(({ textContent }) => textContent === name)
    ?.nextElementSibling?.textContent ?? '';

describe('About Lapwright', () => {
  it('is found by name, says what the program is, and gives the focus back', async () => {
    await open();
    const row = await screen.findByRole('button', { name: 'Boom root' });
    row.focus();
    find('about lapwright');
    await waitFor(() => expect(fact('Program')).toBe('9.9.9'));
    expect(fact('Model')).toMatch(/^1 /);
    expect(fact('Runs in')).toBe('a browser, by the host on this machine');
    expect(fact('Calculates with')).toBe('Node 20.19.0');
    expect(fact('Licence')).toContain('MIT');
    for (const caution of cautions) expect(about().textContent).toContain(caution);
    expect(about().textContent).not.toContain('Chromium');
    fireEvent.keyDown(document.activeElement!, { key: 'Escape' });
    expect(screen.queryByRole('dialog')).toBeNull();
    expect(document.activeElement).toBe(row);
  });

  it('tells Electron and its Chromium, and where their notices lie', async () => {
    const electron = { version: '45.4.1', chromium: '144.0.1' };
    bridge.answer('app.about', () =>
      ok({ version: '1', modelVersion: '1', carrier: 'electron', node: '24.1.0', electron }),
    );
    await open();
    find('about lapwright');
    await waitFor(() => expect(fact('Runs in')).toBe('Electron 45.4.1, with Chromium 144.0.1'));
    expect(about().textContent).toContain('LICENSES.chromium.html');
  });

  it('says why there are no versions, and has the licences and cautions all the same', async () => {
    bridge.refuse('app.about', { message: 'Lapwright does not answer.' });
    await open();
    find('about lapwright');
    expect((await within(about()).findByRole('alert')).textContent).toBe(
      'Lapwright does not answer.',
    );
    expect(about().textContent).toContain(cautions[0]);
    expect(within(about()).getByRole('button', { name: 'Read the licence' })).toBeTruthy();
  });

  it('opens the licence and the notices as they stand, and comes back to where it was', async () => {
    await open();
    find('about lapwright');
    press('Read the licence');
    const licence = await within(about()).findByRole('region', { name: 'Licence' });
    const words = readFileSync(join(root, 'LICENSE'), 'utf8').replaceAll(/\s+/g, ' ').trim();
    expect(licence.textContent!.replaceAll(/\s+/g, ' ')).toContain(words.slice(12));
    await waitFor(() => expect(document.activeElement).toBe(licence));
    expect(about().querySelector('dl')).toBeNull();
    press('Back');
    expect(document.activeElement?.textContent).toBe('Read the licence');
    expect(within(about()).queryByRole('button', { name: 'Back' })).toBeNull();

    press('Read their notices');
    const notices = await within(about()).findByRole('region', { name: 'Third-party notices' });
    expect(notices.textContent).toMatch(/solid-js \d.*\(MIT\)/);
    expect(notices.textContent).toContain('SIL OPEN FONT LICENSE');
    press('Back');
    expect(document.activeElement?.textContent).toBe('Read their notices');
  });

  it('is in the menu of help, and in the menu of the window', async () => {
    let hear = (_: MenuCommand): void => {};
    await open({
      onCommand(listener) {
        hear = listener;
        return () => {};
      },
    });
    const help = screen.getByRole('button', { name: 'Help' });
    help.focus();
    fireEvent.click(help);
    fireEvent.click(screen.getByRole('button', { name: 'About Lapwright' }));
    fireEvent.click(within(about()).getByRole('button', { name: 'Close' }));
    expect(document.activeElement).toBe(help);
    hear({ name: 'about' });
    expect(about()).toBeTruthy();
    fireEvent.click(within(about()).getByRole('button', { name: 'Close' }));
    hear({ name: 'list keys' });
    expect(screen.getByRole('dialog', { name: 'Keys' })).toBeTruthy();
  });
});
