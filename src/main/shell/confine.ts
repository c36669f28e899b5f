/** Keeps every page where it is: no other address, no new window, no permission. */
import type { Session, WebContents } from 'electron';
import { isPageAddress, PAGE_ADDRESS } from './page-protocol.ts';

interface Navigation {
  readonly url: string;
  readonly isMainFrame: boolean;
  preventDefault(): void;
}

/** The page may load itself again; nothing may lead it elsewhere or fill a frame in it. */
function keep(event: Navigation): void {
  if (!event.isMainFrame || !isPageAddress(event.url)) event.preventDefault();
}

export function confineContents(contents: WebContents): void {
  contents.on('will-navigate', keep);
  contents.on('will-frame-navigate', keep);
  contents.on('will-redirect', keep);
  contents.on('will-attach-webview', (event) => event.preventDefault());
  contents.setWindowOpenHandler(() => ({ action: 'deny' }));
}

/** The page takes out only what it has made itself; each of those has an address under its own. */
const isOwnBlob = (url: string): boolean => url.startsWith(`blob:${PAGE_ADDRESS}`);

export function confineSession(session: Session): void {
  session.on('will-download', (event, item) => {
    if (!isOwnBlob(item.getURL())) event.preventDefault();
  });
  session.setPermissionRequestHandler((_contents, _permission, answer) => answer(false));
  session.setPermissionCheckHandler(() => false);
  session.setDevicePermissionHandler(() => false);
}
