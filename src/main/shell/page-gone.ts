/**
 * The page of a window died: it ran out of memory, or the system ended it. It is loaded anew, and offers what it had
 * kept. One that dies again soon after might do so for ever: its user is asked each time.
 */
import type { BrowserWindow, Dialog } from 'electron';

export interface PageGoneOptions {
  /** Nobody waits for its answers any more, and what it kept is nobody's. */
  readonly gone: () => void;
  /** Milliseconds of a clock that nobody sets. */
  readonly ran?: () => number;
}

/** Milliseconds after which a page that was loaded anew has shown that it can live. */
export const SOON = 60_000;
const LOAD = 0;
const CLOSE = 1;

export function reviveGonePage(
  window: BrowserWindow,
  dialog: Pick<Dialog, 'showMessageBox'>,
  { gone, ran = () => performance.now() }: PageGoneOptions,
): void {
  let loaded = Number.NEGATIVE_INFINITY;
  const load = (): void => {
    if (window.isDestroyed()) return;
    loaded = ran();
    window.webContents.reload();
  };
  const ask = async (): Promise<void> => {
    const { response } = await dialog.showMessageBox(window, {
      type: 'error',
      message: 'The page of this window stopped unexpectedly, and did so again.',
      detail:
        'Nothing that was kept is lost: changes up to a few seconds before are offered when it is loaded anew, or when Lapwright is next started.',
      buttons: ['Load it anew', 'Close this window'],
      defaultId: LOAD,
      cancelId: CLOSE,
      noLink: true,
    });
    if (response === LOAD) load();
    // A page that is gone cannot be asked whether it may.
    else if (!window.isDestroyed()) window.destroy();
  };
  window.webContents.on('render-process-gone', (_event, { reason }) => {
    if (reason === 'clean-exit') return;
    gone();
    // In the next turn: the window is still being told.
    setImmediate(() => {
      if (ran() - loaded >= SOON) load();
      else if (!window.isDestroyed()) void ask();
    });
  });
}
