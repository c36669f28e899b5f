/** Stands for the contents of a window: a page of a real browser, with Electron's events around it. */
import { EventEmitter } from 'node:events';
import type { WebPreferences, WindowOpenHandlerResponse } from 'electron';
import type { BrowserContext, Frame, Page, Route } from 'playwright-core';
import { browser } from '../e2e/support/browser.ts';
import { ipcMain } from './ipc.ts';
import { fromBrowser, toBrowser } from './pages.ts';
import { CLOSE, HEAR, INVOKE, preloadScript } from './preload-script.ts';
import { defaultSession } from './session.ts';

/** What a frame is to a handler in the main process. */
export interface StandInFrame {
  readonly url: string;
}

/** An event that a listener may prevent. */
class Preventable {
  defaultPrevented = false;
  preventDefault(): void {
    this.defaultPrevented = true;
  }
}

let lastId = 0;

export class StandInContents extends EventEmitter {
  readonly id: number;
  /** Addresses of popups that were let through. */
  readonly popups: string[] = [];
  /** How often the handler of popups said no. */
  popupsDenied = 0;
  /** How often the shell had the page loaded anew. */
  reloads = 0;
  /** Requests that left the page's own scheme. */
  readonly foreignRequests: string[] = [];
  readonly ready: Promise<Page>;
  /** The page closes its own window. */
  closeAsked: () => void = () => {};
  readonly #frames = new WeakMap<Frame, StandInFrame>();
  #page: Page | null = null;
  #loading: string | null = null;
  #openHandler: ((details: { url: string }) => WindowOpenHandlerResponse) | null = null;

  constructor(preferences: WebPreferences) {
    super();
    lastId += 1;
    this.id = lastId;
    this.ready = this.#open(preferences);
  }

  get mainFrame(): StandInFrame | null {
    return this.#page && this.frameOf(this.#page.mainFrame());
  }

  /** To the listeners of the preload. */
  send(channel: string, ...args: unknown[]): void {
    void this.#page
      ?.evaluate(
        ([hear, ...message]) =>
          (globalThis as unknown as Record<string, (...all: unknown[]) => void>)[hear as string]?.(
            ...message,
          ),
        [HEAR, channel, ...args],
      )
      .catch(() => {});
  }

  setWindowOpenHandler(handler: (details: { url: string }) => WindowOpenHandlerResponse): void {
    this.#openHandler = handler;
  }

  /** One and the same object for a frame, as long as it lives: handlers compare by identity. */
  frameOf(frame: Frame): StandInFrame {
    const known = this.#frames.get(frame);
    if (known) return known;
    const made: StandInFrame = {
      get url() {
        return fromBrowser(frame.url());
      },
    };
    this.#frames.set(frame, made);
    return made;
  }

  async loadURL(address: string): Promise<void> {
    const page = await this.ready;
    this.#loading = toBrowser(address);
    await page.goto(this.#loading);
  }

  reload(): void {
    this.reloads += 1;
    void this.#page?.reload().catch(() => {});
  }

  /** Inches of margin are the page's own there too. */
  async printToPDF(options: {
    preferCSSPageSize?: boolean;
    printBackground?: boolean;
  }): Promise<Buffer> {
    const { preferCSSPageSize = false, printBackground = false } = options;
    return (await this.ready).pdf({ preferCSSPageSize, printBackground });
  }

  async #open(preferences: WebPreferences): Promise<Page> {
    const context = await (await browser()).newContext();
    await context.exposeBinding(INVOKE, ({ frame }, channel: string, ...args: unknown[]) =>
      ipcMain.deliver(this, this.frameOf(frame), channel, args),
    );
    await context.exposeBinding(CLOSE, () => this.closeAsked());
    if (preferences.preload) {
      await context.addInitScript({ content: preloadScript(preferences.preload) });
    }
    const page = await context.newPage();
    this.#page = page;
    await context.route('**/*', (route) => this.#answer(route, page));
    context.on('page', (popup) => this.#popUp(popup));
    page.on('dialog', (dialog) => {
      if (dialog.type() !== 'beforeunload') return void dialog.dismiss();
      const event = new Preventable();
      this.emit('will-prevent-unload', event);
      return void (event.defaultPrevented ? dialog.accept() : dialog.dismiss());
    });
    page.on('close', () => void this.#closed(context));
    return page;
  }

  async #closed(context: BrowserContext): Promise<void> {
    this.emit('destroyed');
    // The browser may be on its way out itself.
    await context.close().catch(() => {});
  }

  /** Everything, as in Electron, unless a handler says no. */
  #mayOpen(url: string): boolean {
    const may = this.#openHandler === null || this.#openHandler({ url }).action === 'allow';
    if (!may) this.popupsDenied += 1;
    return may;
  }

  #popUp(popup: Page): void {
    const url = popup.url();
    if (this.#mayOpen(url)) this.popups.push(url);
    else void popup.close();
  }

  /** Whether a page may go where it wants to; `loadURL` does not ask. */
  #mayNavigate(route: Route, frame: Frame, page: Page): boolean {
    const url = route.request().url();
    if (url === this.#loading) {
      this.#loading = null;
      return true;
    }
    const isMainFrame = frame === page.mainFrame();
    const event = Object.assign(new Preventable(), { url: fromBrowser(url), isMainFrame });
    if (isMainFrame) this.emit('will-navigate', event);
    this.emit('will-frame-navigate', event);
    return !event.defaultPrevented;
  }

  async #answer(route: Route, page: Page): Promise<void> {
    const request = route.request();
    const url = fromBrowser(request.url());
    let frame: Frame | null = null;
    try {
      frame = request.frame();
    } catch {
      // A popup on its way to its first address has no frame yet.
    }
    const isOwn = frame?.page() === page;
    if (isOwn && frame && request.isNavigationRequest() && !this.#mayNavigate(route, frame, page)) {
      return route.abort('aborted');
    }
    if (!isOwn && !this.#mayOpen(url)) return route.abort('aborted');
    if (!url.startsWith('app:')) {
      this.foreignRequests.push(url);
      return route.fulfill({ contentType: 'text/html', body: '<h1>Elsewhere</h1>' });
    }
    const response = await defaultSession.respond(new Request(url, { method: request.method() }));
    return route.fulfill({
      status: response.status,
      headers: Object.fromEntries(response.headers),
      body: Buffer.from(await response.arrayBuffer()),
    });
  }
}
