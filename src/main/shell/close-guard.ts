/** A page with unsaved changes asks before it goes; Electron asks nobody by itself. */
import type { BrowserWindow, Dialog } from 'electron';
import { COMMAND_CHANNEL } from '../../shared/channel.ts';
import type { MenuCommand } from '../../shared/menu-commands.ts';

export interface CloseGuardOptions {
  /** The changes of this window are put away. */
  readonly discarded: () => void;
  /** The window stays: the program does not end either. */
  readonly stayed: () => void;
}

const SAVE = 0;
const DISCARD = 1;
const STAY = 2;

export function guardClose(
  window: BrowserWindow,
  dialog: Pick<Dialog, 'showMessageBoxSync'>,
  options: CloseGuardOptions,
): void {
  /** Else the page is only loaded anew. */
  let closing = false;
  window.on('close', () => {
    closing = true;
  });
  window.webContents.on('will-prevent-unload', (event) => {
    const closes = closing;
    closing = false;
    const choice = dialog.showMessageBoxSync(window, {
      type: 'question',
      message: 'There are changes that are not saved.',
      detail: closes
        ? 'Discarded, they are lost when this window closes.'
        : 'Discarded, they are lost when the page is loaded anew.',
      buttons: ['Save', 'Discard changes', 'Stay'],
      defaultId: SAVE,
      cancelId: STAY,
      noLink: true,
    });
    if (choice === DISCARD) {
      options.discarded();
      // Preventing the page's prevention lets it go.
      event.preventDefault();
    } else if (choice === SAVE) {
      // It stays until it has saved: a window is then closed by its own page.
      const command: MenuCommand = { name: closes ? 'save-and-close' : 'save' };
      window.webContents.send(COMMAND_CHANNEL, command);
    } else options.stayed();
  });
}
