/** A page with unsaved changes asks before it goes; Electron asks nobody by itself. */
import type { BrowserWindow, Dialog } from 'electron';

export function guardClose(
  window: BrowserWindow,
  dialog: Pick<Dialog, 'showMessageBoxSync'>,
): void {
  window.webContents.on('will-prevent-unload', (event) => {
    const choice = dialog.showMessageBoxSync(window, {
      type: 'question',
      message: 'There are changes that are not saved.',
      detail: 'They are lost when this window closes.',
      buttons: ['Keep the window open', 'Close without saving'],
      defaultId: 0,
      cancelId: 0,
    });
    // Preventing the page's prevention lets it go.
    if (choice === 1) event.preventDefault();
  });
}
