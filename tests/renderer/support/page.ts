/** What a browser has and jsdom has not, as far as the page asks for it. */
import { cleanup, fireEvent, screen } from '@solidjs/testing-library';
import { afterEach, beforeAll, beforeEach, vi } from 'vitest';
import { fetchPages } from '../../../src/renderer/pages.ts';
import { useQuickStyle } from './quick-style.ts';

/** Gives every element a size, so that the drawing is drawn; canvases stay without a context. */
export function useBrowser(size = { width: 800, height: 200 }): void {
  // At hand as for a person, who is slower than the fetching; how they come later is tested apart.
  beforeAll(fetchPages);
  beforeEach(() => {
    useQuickStyle();
    vi.stubGlobal(
      'ResizeObserver',
      class {
        readonly #seen: () => void;
        constructor(seen: () => void) {
          this.#seen = seen;
        }
        observe(): void {
          this.#seen();
        }
        disconnect(): void {}
      },
    );
    vi.spyOn(HTMLElement.prototype, 'clientWidth', 'get').mockReturnValue(size.width);
    vi.spyOn(HTMLElement.prototype, 'clientHeight', 'get').mockReturnValue(size.height);
    vi.spyOn(HTMLCanvasElement.prototype, 'getContext').mockReturnValue(null);
    Object.assign(Element.prototype, { setPointerCapture: () => {} });
    localStorage.clear();
    sessionStorage.clear();
  });
  afterEach(() => {
    cleanup();
    vi.restoreAllMocks();
    vi.unstubAllGlobals();
  });
}

/** Chooses a line of the File menu, by the first words of it. */
export function fileMenu(line: string): void {
  fireEvent.click(screen.getByRole('button', { name: 'File' }));
  const item = screen
    .getAllByRole('menuitem')
    .find(({ textContent }) => textContent?.startsWith(line));
  if (!item) throw new Error(`The File menu has no line "${line}"`);
  fireEvent.click(item);
}
