/**
 * The parts of a page, gone round by F6: whatever carries `data-pane`, in the order of the page. A part
 * can be focused only while it is gone to: else a press on its empty ground would take the focus.
 */

const isThere = (pane: HTMLElement): boolean =>
  pane.closest('[inert]') === null && pane.getClientRects().length > 0;

const panes = (): HTMLElement[] =>
  [...document.querySelectorAll<HTMLElement>('[data-pane]')].filter(isThere);

export function focusPane(pane: HTMLElement): void {
  if (!pane.hasAttribute('tabindex')) {
    pane.setAttribute('tabindex', '-1');
    pane.addEventListener('blur', () => pane.removeAttribute('tabindex'), { once: true });
  }
  pane.focus();
}

/** To the next pane, or the one before; round from the last to the first. */
export function movePane(by: 1 | -1): void {
  const all = panes();
  if (all.length === 0) return;
  const held = document.activeElement?.closest<HTMLElement>('[data-pane]') ?? null;
  const at = held === null ? -1 : all.indexOf(held);
  // From nowhere the page comes first, the bar over it last.
  const from = at >= 0 ? at : by === 1 ? 0 : all.length;
  focusPane(all[(from + by + all.length) % all.length] ?? all[0]!);
}

/** Where the focus is lost, as when its page went away, it comes to the first part of the page. */
export function keepFocus(): void {
  const held = document.activeElement;
  if (held !== null && held !== document.body) return;
  const first = panes().find((pane) => pane.closest('main') !== null);
  if (first) focusPane(first);
}

/**
 * Where the focus went away with a page, it comes to the page that is there now, before its first part and
 * without a frame: nothing was gone to yet, and the next key goes on from there.
 */
export function keepFocusOnPage(): void {
  const held = document.activeElement;
  if (held !== null && held !== document.body) return;
  const page = document.querySelector('main');
  if (page) focusPane(page);
}
