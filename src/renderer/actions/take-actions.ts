/** Whatever the page lets one take out of it, by name: each is the press of its own button. */
import type { Action } from './action.ts';

const isThere = (button: HTMLElement): boolean =>
  button.closest('[inert]') === null && button.getClientRects().length > 0;

export const takeActions = (): Action[] =>
  [...document.querySelectorAll<HTMLButtonElement>('[data-takes]')]
    .filter(isThere)
    .map((button, i) => {
      const name = button.getAttribute('aria-label') ?? button.textContent ?? '';
      return {
        id: `take ${i} ${name}`,
        title: () => `Save ${name.replace(/^(CSV|PNG), (.*)$/, '$2 as $1')}`,
        group: 'file',
        also: 'export download table plot figure comma-separated values picture image',
        available: () => true,
        run: () => button.click(),
      };
    });
